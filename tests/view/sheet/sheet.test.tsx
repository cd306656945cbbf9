// @vitest-environment jsdom
import jsQR from 'jsqr'
import { afterEach, describe, expect, it } from 'vitest'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setChoice } from '../../../src/core/spec/edit.ts'
import { formatText } from '../../../src/core/units/format.ts'
import { linkTo } from '../../../src/state/storage/address.ts'
import { derived } from '../../../src/state/derived.ts'
import { sheet } from '../../../src/words/en/sheet.ts'
import { OnTheDay, Questions } from '../../../src/view/sheet/blocks.tsx'
import { DrawingBlock, PathBlock, NumbersBlock, ChecksBlock, OrderBlock, WoodBlock } from '../../../src/view/sheet/factBlocks.tsx'
import { isLocal, qrPath } from '../../../src/view/sheet/Code.tsx'
import { fewestQuestions, questionsFor } from '../../../src/view/sheet/questions.ts'
import { Sources } from '../../../src/view/sheet/sourcesBlock.tsx'
import { draw } from '../page.ts'

const pierOf = (kind: string) => {
  const set = setChoice(defaultDocument, 'fill.kind', kind)
  if (!set.ok) throw new Error(kind)
  return set.value
}

let view: Awaited<ReturnType<typeof draw>> | null = null
afterEach(async () => {
  await view?.end()
  view = null
})

describe.each(fillKinds.map(({ id }) => id))('the sheet of %s', (kind) => {
  it('holds every number of the result that it is about', async () => {
    const result = derived(pierOf(kind).spec)
    view = await draw(
      <>
        <NumbersBlock result={result} />
        <PathBlock result={result} />
        <DrawingBlock result={result} />
        <OrderBlock result={result} />
        <WoodBlock result={result} />
        <ChecksBlock result={result} />
        <OnTheDay result={result} />
        <Questions results={[result]} />
        <Sources results={[result]} />
      </>,
    )
    const shown = document.body.textContent ?? ''
    const numbers = [
      ...result.headlines.map(({ value, quantity }) => formatText(value, quantity, 'us')),
      ...result.quantities.map(({ weight }) => formatText(weight, 'weight', 'us')),
      ...result.exposure.lines.map(({ belowGrade }) => (result.exposure.areaBelowGrade > 0 ? formatText(belowGrade, 'length', 'us') : '')),
      ...Object.values(result.depths).map((depth) => formatText(depth, 'length', 'us')),
      ...result.checks.flatMap(({ allowable, counted }) =>
        allowable && counted !== 'not counted' ? [formatText(allowable.value, allowable.quantity, 'us')] : [],
      ),
      result.uplift.allowable === null ? "Can't be verified" : formatText(result.uplift.allowable, 'force', 'us'),
    ]
    for (const number of numbers) expect(shown).toContain(number)
    for (const banned of [/\bsafe\b/i, /\bapproved\b/i, /OK to build/i, /guarantee/i]) expect(shown).not.toMatch(banned)
  })

  it('asks the builder at least six things', () => {
    expect(questionsFor([derived(pierOf(kind).spec)]).length).toBeGreaterThanOrEqual(fewestQuestions)
  })
})

describe('questions', () => {
  it('belong to the state shown', () => {
    const dry = questionsFor([derived(pierOf('dry-full-height').spec)])
    const bracket = questionsFor([derived(pierOf('mixed-bracket-pier').spec)])
    expect(dry).toContain('placed-dry')
    expect(bracket).not.toContain('placed-dry')
    expect(bracket).toContain('bracket')
    for (const id of [...dry, ...bracket]) expect(sheet.questions[id]).toMatch(/\?$/)
  })
})

/** Draws the path on a grid of dots, 4 to a module, without the code's own reader. */
const dotsOf = ({ size, path }: { size: number; path: string }) => {
  const scale = 4
  const side = size * scale
  const dots = new Uint8ClampedArray(side * side * 4).fill(255)
  for (const [, x, y, width] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let row = 0; row < scale; row++) {
      for (let column = 0; column < Number(width) * scale; column++) {
        const at = ((Number(y) * scale + row) * side + Number(x) * scale + column) * 4
        dots.fill(0, at, at + 3)
      }
    }
  }
  return { dots, side }
}

describe('the code', () => {
  it.each(fillKinds.map(({ id }) => id))('of %s is read back by an independent reader', (kind) => {
    const link = linkTo(pierOf(kind), 'https://pier.example/page/')
    const code = qrPath(link)
    if (!code) throw new Error('no code')
    const { dots, side } = dotsOf(code)
    expect(jsQR(dots, side, side)?.data).toBe(link)
  })
  it('is left out when nothing could read it', () => expect(qrPath('x'.repeat(4000))).toBeNull())
  it('knows a page that is on this machine only', () => {
    expect(isLocal({ protocol: 'file:', hostname: '' })).toBe(true)
    expect(isLocal({ protocol: 'http:', hostname: '127.0.0.1' })).toBe(true)
    expect(isLocal({ protocol: 'https:', hostname: 'pier.example' })).toBe(false)
  })
})
