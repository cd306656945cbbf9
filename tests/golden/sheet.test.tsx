// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest'
import { comparePiers } from '../../src/state/compareActions.ts'
import { compareStore } from '../../src/state/compare.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { derived } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { Pages } from '../../src/view/sheet/Pages.tsx'
import { legendFigure, planned, sectionFigure } from '../../src/view/sheet/sheetSection.ts'
import { comparedSheet, type SheetContent } from '../../src/view/sheet/useSheet.ts'
import { draw } from '../view/page.ts'
import { kept, leftOver } from './kept.ts'
import { exampleDocuments } from './piers.ts'

HTMLCanvasElement.prototype.getContext = () => null

const piers = ['bag-at-foot', 'bracket', 'collar', 'dry-pour-cored', 'flowable', 'steep-bank']
const documents = piers.map((end) => exampleDocuments.find(([name]) => name.endsWith(end))?.[1] ?? expect.fail(end))
const facts = { date: '2026-01-02', mark: '0000-0000', view: 'Section', scale: '1:20', units: 'us' } as const

const sheetOf = (document: (typeof documents)[number]): SheetContent => {
  const result = derived(document.spec)
  const plan = planned({ document, result, view: defaultView, date: facts.date, version: '1.2.3' }, { width: 136, height: 97 })
  const figures = { section: sectionFigure(plan, 'a-'), legend: legendFigure([plan], 'b-', 180), notes: plan.words.notes }
  return { kind: 'one', document, result, picture: null, facts: { ...facts, name: document.name }, figures }
}

/** The words of the sheet, a part of the page a line. The version of the page stands on the sheet and may be any. */
const wordsOf = (root: Element): string => {
  const lines: string[] = []
  const walk = document.createTreeWalker(root, NodeFilter.SHOW_TEXT)
  let block: Element | null = null
  while (walk.nextNode()) {
    const own = walk.currentNode.parentElement?.closest('p, li, h2, h3, h4, td, th, dt, dd, text, title, footer, figcaption') ?? null
    const words = walk.currentNode.textContent ?? ''
    if (own === block && own !== null) lines.push(`${lines.pop() ?? ''}${words}`)
    else lines.push(words)
    block = own
  }
  const text = lines.map((line) => line.replace(/\s+/g, ' ').trim())
  return `${text.filter((line) => line !== '').join('\n')}\n`.replace(/Pierglass \d+\.\d+\.\d+/g, 'Pierglass')
}

/** How words are parted into lines is the page's own affair; the words and their order are held. */
const together = (text: string): string => text.replaceAll(/\s+/g, '')
/** Where two texts part, with what stands round it; null where they do not. */
const parting = (now: string, was: string): string | null => {
  const [a, b] = [together(now), together(was)]
  if (a === b) return null
  let at = 0
  while (a[at] === b[at]) at++
  return `was "${b.slice(Math.max(0, at - 60), at + 60)}", is "${a.slice(Math.max(0, at - 60), at + 60)}"`
}

let page: Awaited<ReturnType<typeof draw>> | null = null
const shown = async (content: SheetContent): Promise<string> => {
  page = await draw(<Pages content={content} />)
  return wordsOf(globalThis.document.body)
}
afterEach(async () => {
  await page?.end()
  page = null
})

describe('[Z4] the printed sheet says what it said', () => {
  it.each(piers.map((name, i) => [name, documents[i] ?? expect.fail(name)] as const))('%s', async (name, document) => {
    openDocument(pierStore, document)
    const now = await shown(sheetOf(document))
    expect(now.split('\n').length).toBeGreaterThan(100)
    expect(parting(now, kept(`sheets/${name}.txt`, now))).toBeNull()
  })

  it('of four piers side by side', async () => {
    openDocument(pierStore, documents[0] ?? expect.fail())
    comparePiers(compareStore, documents.slice(0, 4))
    const content = comparedSheet()
    const now = await shown({ ...content, facts: { ...content.facts, date: facts.date } })
    expect(parting(now, kept('sheets/compared.txt', now))).toBeNull()
    expect(
      leftOver(
        'sheets',
        [...piers, 'compared'].map((name) => `${name}.txt`),
      ),
    ).toEqual([])
  })

  it('and a letter that changes is found, but not a line that breaks elsewhere', () => {
    expect(parting('One pier\nof two', 'One\npier of two')).toBeNull()
    expect(parting('One pier\nof two', 'One pear of two')).toBe('was "Onepearoftwo", is "Onepieroftwo"')
  })
})
