import { describe, expect, it } from 'vitest'
import { compareStore } from '../../src/state/compare.ts'
import { bringFile } from '../../src/view/compare/useBroughtFiles.ts'
import { freshShelf } from '../state/shelf/parts.ts'

/** What a browser hands over for a folder, or for a file that was taken away meanwhile. */
const unreadable = Object.assign(new File([''], 'folder'), {
  arrayBuffer: () => Promise.reject(new DOMException('gone', 'NotFoundError')),
})

describe('[M33] a file that can not be read is told, wherever it was to be opened', () => {
  it('to compare', async () => {
    const before = compareStore.getState()
    expect(await bringFile(unreadable)).toMatchObject({ file: 'folder', issues: [{ code: 'file-unreadable' }] })
    expect(compareStore.getState()).toBe(before)
  })

  it('of saved piers', async () => {
    const { shelf } = freshShelf()
    await shelf.importText(null)
    expect(shelf.state.getState().said).toMatchObject({ code: 'import-refused', issues: [{ code: 'file-unreadable' }] })
  })
})
