// @vitest-environment jsdom
import 'fake-indexeddb/auto'
import { openDB } from 'idb'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { databaseName, rawRecords, storeName } from '../../src/state/storage/rawRecords.ts'
import { Crash } from '../../src/view/app/Crash.tsx'
import { saveTextFile } from '../../src/view/files/jobFiles.ts'
import { wordsOf } from '../../src/words/index.ts'
import { draw } from './page.ts'
import { until } from '../until.ts'

vi.mock('../../src/view/files/jobFiles.ts', () => ({ saveTextFile: vi.fn(), saveJobFile: vi.fn() }))

const words = wordsOf('app')
beforeEach(() => localStorage.clear())
let view: Awaited<ReturnType<typeof draw>> | null = null
afterEach(async () => {
  await view?.end()
  view = null
})

describe('[R14] the page that broke offers everything that is kept, each as a file', () => {
  it('asks for no database where there is none, and makes none', async () => {
    await expect(rawRecords()).rejects.toBeDefined()
    expect(await indexedDB.databases()).toEqual([])
  })

  it('notes, what could not be read, and every record, the damaged ones as they were found', async () => {
    localStorage.setItem('pierglass.note.a', JSON.stringify({ job: '{"pierglass":1,"name":"Noted"}' }))
    localStorage.setItem('pierglass.unread.b', '{"half')
    const database = await openDB(databaseName, 1, { upgrade: (created) => void created.createObjectStore(storeName, { keyPath: 'id' }) })
    await database.put(storeName, { id: '1', name: 'Saved', job: '{"pierglass":1}', changed: 1e20 })
    await database.put(storeName, { id: '2', job: 7 })
    database.close()
    view = await draw(<Crash error={new Error('it broke')} />)
    const buttons = () => [...document.querySelectorAll('.crash li button')] as HTMLButtonElement[]
    await until(async () => {
      await view?.act(async () => undefined)
      expect(buttons().map(({ textContent }) => textContent)).toEqual(['Noted', words.crash.found, 'Saved', words.crash.found])
    })
    for (const button of buttons()) button.click()
    const saved = vi.mocked(saveTextFile).mock.calls.map(([name, text]) => `${name}: ${text}`)
    expect(saved).toEqual([
      'noted-pier.json: {"pierglass":1,"name":"Noted"}',
      'found.txt: {"half',
      'saved-pier.json: {"pierglass":1}',
      expect.stringContaining('"job": 7'),
    ])
    expect(document.querySelector('pre')?.textContent).toContain('it broke')
  })
})
