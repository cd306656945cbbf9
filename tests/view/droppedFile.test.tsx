// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { pierStore } from '../../src/state/store.ts'
import { DropZone } from '../../src/view/app/DropZone.tsx'
import { bringFile } from '../../src/view/compare/useBroughtFiles.ts'
import { until } from '../until.ts'
import { draw } from './page.ts'

/** A folder as a browser hands it over: a file that no way of reading opens. */
const folder = (): File => {
  const file = new File([], 'a folder')
  const refuse = () => Promise.reject(new DOMException('A requested file or directory could not be found.', 'NotFoundError'))
  return Object.assign(file, { text: refuse, arrayBuffer: refuse })
}

let view: Awaited<ReturnType<typeof draw>>
beforeEach(async () => {
  pierStore.setState({ notices: [] })
  view = await draw(<DropZone />)
})
afterEach(async () => view.end())

describe('[F7] a folder, or a file that can not be read, is told', () => {
  it('dropped on the page: a word, and the open pier stays', async () => {
    const { document } = pierStore.getState()
    const drop = Object.assign(new Event('drop', { cancelable: true }), { dataTransfer: { types: ['Files'], files: [folder()] } })
    await view.act(async () => void window.dispatchEvent(drop))
    await until(() =>
      expect(pierStore.getState().notices).toMatchObject([
        { code: 'file-refused', detail: 'a folder', issues: [{ code: 'file-unreadable' }] },
      ]),
    )
    expect(pierStore.getState().document).toBe(document)
  })

  it('set beside other piers: the same word', async () => {
    expect(await bringFile(folder())).toEqual({ file: 'a folder', issues: [{ code: 'file-unreadable', severity: 'error', path: '' }] })
  })
})
