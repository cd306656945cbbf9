// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { memoryShelf } from '../../src/state/storage/port.ts'
import { PierList } from '../../src/view/shelf/PierList.tsx'
import { ShelfContext } from '../../src/view/shelf/useShelf.ts'
import { loadWords, wordsOf } from '../../src/words/index.ts'
import { freshShelf, pierRecord } from '../state/shelf/parts.ts'
import { hostileValues } from '../state/storage/hostile.ts'
import { draw } from './page.ts'

await loadWords(['shelf'])
const words = wordsOf('shelf')
let view: Awaited<ReturnType<typeof draw>> | null = null
afterEach(async () => {
  await view?.end()
  view = null
})

describe('[M32] every record is listed, whatever is in it', () => {
  const record = pierRecord({ ...defaultDocument, name: 'Good' }, { id: 'good', revision: 1, made: 1, changed: 2 })

  it('each field broken in turn: a row for each, and what was found can be taken along from those that can not be opened', async () => {
    const broken = Object.keys(record)
      .filter((key) => key !== 'id')
      .flatMap((key) => hostileValues.map((value, at) => ({ ...record, id: `${key}${at}`, [key]: value })))
    const { shelf } = freshShelf({ port: { ...memoryShelf(), kind: 'browser', list: async () => [record, ...broken] } })
    await shelf.refresh()
    const errors = vi.spyOn(console, 'error')
    view = await draw(
      <ShelfContext value={shelf}>
        <PierList onLeave={() => undefined} />
      </ShelfContext>,
    )
    const rows = [...document.querySelectorAll('li.shelf-pier')]
    expect(rows).toHaveLength(broken.length + 1)
    const damaged = rows.filter((row) => row.getAttribute('data-kind') !== 'whole')
    expect(damaged.length).toBeGreaterThan(100)
    for (const row of damaged) expect(row.textContent).toContain(words.actions.saveFound)
    expect(errors).not.toHaveBeenCalled()
  })
})
