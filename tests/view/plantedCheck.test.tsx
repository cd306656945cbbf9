// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest'
import type { Check } from '../../src/core/model/worked.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { resultCsv } from '../../src/export/numbers/resultCsv.ts'
import { resultJson } from '../../src/export/numbers/resultJson.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { derived, shownResult } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { AnswersPanel } from '../../src/view/panels/answers/AnswersPanel.tsx'
import { cells } from '../../src/view/cells/cells.tsx'
import { PathBlock, ChecksBlock } from '../../src/view/sheet/factBlocks.tsx'
import { draw } from './page.ts'

/** A check that no line of the page knows. */
const planted = (id: string, group: Check['group'], like: Check | undefined): Check => {
  if (!like) throw new Error('no check to plant another one like it')
  return { ...like, id: id as Check['id'], group }
}
const link = 'a-new-link'
const detail = 'a-new-detail'

const document_ = { ...defaultDocument, spec: structuredClone(defaultDocument.spec) }
const result = derived(document_.spec)
const { checks } = result
Object.assign(result, {
  checks: [
    ...checks,
    planted(
      link,
      'uplift-concrete',
      checks.find(({ group }) => group === 'uplift-concrete'),
    ),
    planted(
      detail,
      'detail',
      checks.find(({ group }) => group === 'detail'),
    ),
  ],
})

let page: Awaited<ReturnType<typeof draw>> | null = null
afterEach(async () => {
  await page?.end()
  page = null
  openDocument(pierStore, defaultDocument)
})

describe('[C19] a check that is added to the core is told everywhere, and no view is touched', () => {
  it('on the panel, in the load path and in the table of checks', async () => {
    openDocument(pierStore, document_)
    expect(shownResult(pierStore.getState())).toBe(result)
    page = await draw(<AnswersPanel />)
    const said = (where: string) => [...document.querySelectorAll(where)].map((one) => one.textContent)
    expect(said('.link-name')).toContain(link)
    expect(said('.checks .fact-head')).toContain(detail)
  })

  it('on paper', async () => {
    page = await draw(
      <>
        <PathBlock result={result} />
        <ChecksBlock result={result} />
      </>,
    )
    for (const id of [link, detail]) expect(document.body.textContent).toContain(id)
  })

  it('beside other piers, on the screen and on paper', async () => {
    const Links = cells.links
    for (const as of ['cell', 'paper'] as const) {
      page = await draw(<Links result={result} as={as} />)
      expect(document.body.textContent).toContain(link)
      await page.end()
    }
    page = null
  })

  it('in files of numbers', () => {
    const json = resultJson(document_, result, [])
    for (const id of [link, detail]) {
      expect(JSON.stringify(json)).toContain(`"id":"${id}"`)
      expect(resultCsv(json)).toContain(`checks,${id}`)
    }
  })
})
