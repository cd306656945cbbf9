// @vitest-environment jsdom
import { readdirSync, readFileSync } from 'node:fs'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { parseJob } from '../../../src/core/spec/jobFile.ts'
import { undo } from '../../../src/state/actions/history.ts'
import { exampleFiles } from '../../../src/state/exampleFiles.ts'
import { pierStore } from '../../../src/state/store.ts'
import { examples as words } from '../../../src/words/en/examples.ts'
import { ExampleList } from '../../../src/view/shelf/ExampleList.tsx'
import { draw } from '../page.ts'

const folder = 'public/examples'
const left = vi.fn()
let view: Awaited<ReturnType<typeof draw>>

beforeEach(async () => {
  pierStore.setState({ notices: [] })
  view = await draw(<ExampleList onLeave={left} />)
})
afterEach(async () => {
  await view.end()
  vi.unstubAllGlobals()
})

const open = async (name: string): Promise<void> => {
  const button = [...document.querySelectorAll('button')].find((one) => one.textContent === name)
  await view.act(async () => button?.click())
  await vi.waitFor(() => expect(pierStore.getState().notices).not.toEqual([]), 30_000)
}
const host = (answer: (path: string) => Promise<Response>) => vi.stubGlobal('fetch', (url: URL) => answer(url.pathname))

describe('[F5] an example opens as a file does', () => {
  it('lists every file that comes with the page', () => {
    expect(readdirSync(folder).sort()).toEqual(exampleFiles.map((file) => `${file}.json`).sort())
    expect([...document.querySelectorAll('li')].map((item) => item.textContent)).toEqual(Object.values(words.names))
  })

  it.each(exampleFiles)('%s, as one undo step', async (file) => {
    host(async (path) => new Response(readFileSync(`public${path}`)))
    const before = pierStore.getState()
    await open(words.names[file])
    const job = parseJob(readFileSync(`${folder}/${file}.json`, 'utf8'))
    const opened = pierStore.getState()
    expect(opened.document).toEqual(job.ok && job.value)
    expect(opened.notices).toEqual([{ code: 'file-opened', detail: words.names[file] }])
    expect(opened.lineage).not.toBe(before.lineage)
    expect(left).toHaveBeenCalled()
    undo(pierStore)
    expect(pierStore.getState().document).toEqual(before.document)
  })

  it.each([
    ['no answer', () => Promise.reject(new TypeError('no network'))],
    ['no file', async () => new Response('', { status: 404 })],
  ])('says so where there is %s, and the open pier stays', async (_, answer) => {
    host(answer)
    const { document: before } = pierStore.getState()
    await open(words.names['boat-shelter-mixed'])
    expect(pierStore.getState().document).toBe(before)
    expect(pierStore.getState().notices).toMatchObject([{ code: 'file-refused', issues: [{ code: 'file-unreadable' }] }])
  })
})
