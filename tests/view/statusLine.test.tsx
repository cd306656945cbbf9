// @vitest-environment jsdom
import { readFileSync } from 'node:fs'
import { afterEach, describe, expect, it } from 'vitest'
import { calcJob } from '../../src/cli/calcJob.ts'
import { parseJob } from '../../src/core/spec/jobFile.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { statusParts } from '../../src/facts/statusWords.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { derived, factsAbout } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { cells } from '../../src/view/cells/cells.tsx'
import { TitleBlock } from '../../src/view/panels/answers/TitleBlock.tsx'
import { draw } from './page.ts'

const text = readFileSync('public/examples/boat-shelter-dry-pour.json', 'utf8')
const job = parseJob(text)
if (!job.ok) throw new Error('the example does not open')
const parts = statusParts(factsAbout(derived(job.value.spec)))

let page: Awaited<ReturnType<typeof draw>> | null = null
afterEach(async () => {
  await page?.end()
  page = null
  openDocument(pierStore, defaultDocument)
})

/** What each part of the line says, and the shape that it is told by. */
const shown = () =>
  [...document.querySelectorAll('.status-part')].map((one) => ({
    says: one.textContent,
    mark: one.querySelector('.mark')?.getAttribute('class'),
  }))
const expected = parts.map(({ stand, count, names }) => ({
  says: expect.stringContaining(stand === 'short' || stand === 'unverified' ? `${count}: ${names.join('; ')}` : count) as string,
  mark: expect.stringContaining(`mark-${stand}`) as string,
}))

describe('[C41] the line stands first, the same in every medium', () => {
  it('over the answers, as shapes and words', async () => {
    openDocument(pierStore, job.value)
    page = await draw(<TitleBlock />)
    expect(document.querySelector('.title')?.firstElementChild?.classList.contains('status-line')).toBe(true)
    expect(shown()).toEqual(expected)
  })

  it('beside other piers', async () => {
    const Status = cells.status
    page = await draw(<Status result={derived(job.value.spec)} />)
    expect(shown()).toEqual(expected)
  })

  it('in front of all that calc says', () => {
    const result = JSON.parse(calcJob(text).out) as { status: { line: string; fallShort: string[]; cannotBeVerified: string[] } }
    expect(Object.keys(result)[0]).toBe('status')
    expect(result.status.fallShort).toEqual(parts.find(({ stand }) => stand === 'short')?.names)
    for (const name of result.status.cannotBeVerified) expect(result.status.line).toContain(name)
  })
})
