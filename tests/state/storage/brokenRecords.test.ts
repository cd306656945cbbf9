import { describe, expect, it } from 'vitest'
import { readDocument } from '../../../src/state/storage/shelfFile.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setPart } from '../../../src/core/spec/edit.ts'
import { editField } from '../../../src/state/actions/edit.ts'
import { keepNote, noteTabs } from '../../../src/state/storage/note.ts'
import { memoryShelf } from '../../../src/state/storage/port.ts'
import { openRecord, shelved } from '../../../src/state/storage/record.ts'
import { startSession } from '../../../src/state/storage/session.ts'
import { isTime, rawText } from '../../../src/state/storage/stored.ts'
import { storedDocuments } from '../../../src/state/storage/storedDocuments.ts'
import { readWitness } from '../../../src/state/storage/witness.ts'
import { fakePage, fakeTab, freshStore, memoryStorage } from '../freshStore.ts'
import { freshShelf, pier, pierRecord } from '../shelf/parts.ts'
import { dice, hostileValues, placesIn, withAt } from './hostile.ts'
import { until } from '../../until.ts'

const record = pierRecord({ ...defaultDocument, name: 'Good' }, { id: 'good', revision: 1, made: 1, changed: 2 })
const dates = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium' })

describe('[M29] a record that can not be shown is listed with what was found, and takes nothing else with it', () => {
  it('every field of a stored record broken in turn: it is listed, can be taken along, and the good one opens', async () => {
    for (const path of placesIn(record).filter(({ length }) => length > 0 && length < 4)) {
      for (const value of hostileValues) {
        const raw = withAt(record, path, value)
        const one = shelved(raw)
        expect(() => dates.format(one.changed ?? 0)).not.toThrow()
        expect(rawText(one.raw).length).toBeGreaterThan(0)
        if (one.kind === 'whole') expect(() => openRecord(pier, one.record)).not.toThrow()
      }
    }
    const broken = Object.keys(record)
      .filter((key) => key !== 'id')
      .flatMap((key) => hostileValues.map((value, i) => ({ ...record, id: `${key}${i}`, [key]: value })))
    const inner = memoryShelf()
    const set = freshShelf({ port: { ...inner, kind: 'browser', list: async () => [...broken, null, 7, record] } })
    await inner.put(record, null)
    await set.shelf.refresh()
    const { piers, trouble } = set.shelf.state.getState()
    expect([piers.length, trouble]).toEqual([broken.length + 3, null])
    expect(JSON.parse(set.shelf.exportText())).toMatchObject({ piers: { length: broken.length + 3 } })
    expect(await set.shelf.openPier('good')).toBe(true)
    expect(set.pier.getState().document.name).toBe('Good')
  })

  it('times have bounds, in a file of saved piers and in what it came from', async () => {
    expect([0, 1, 1e12, 253_402_300_799_999].map(isTime)).toEqual([true, true, true, true])
    expect([-1, 1e20, 253_402_300_800_000, Number.NaN, '5', null].map(isTime)).toEqual(Array(6).fill(false))
    const { check: _, thumbnail: __, job, ...rest } = record
    for (const time of [1e20, -1, 'x', null]) {
      const set = freshShelf()
      const entry = { ...rest, made: time, changed: time, job: JSON.parse(job) as unknown }
      const found = { ...record, id: 'found', changed: time }
      await set.shelf.importText(JSON.stringify({ pierglassShelf: 1, piers: [entry, { asFound: found }] }))
      const { piers, said } = set.shelf.state.getState()
      expect(said).toMatchObject({ code: 'imported', added: 2 })
      expect(piers.map(({ id, kind }) => `${id} ${kind}`).sort()).toEqual(['found damaged', 'good whole'])
      for (const { changed } of piers) expect(changed === null || isTime(changed)).toBe(true)
      expect(JSON.parse(rawText(piers.find(({ id }) => id === 'found')?.raw))).toEqual(found)
    }
  })

  it('every field of a note broken in turn: the page opens, and the note is there to be taken along', async () => {
    const storage = memoryStorage()
    const before = freshStore()
    await startSession(before, fakePage(), storage, fakeTab('own'))
    editField(before, 'hole.depth', '50 in')
    const note = JSON.parse(storage.kept.get('pierglass.note.own') ?? '{}') as Record<string, unknown>
    const all = memoryStorage()
    for (const key of Object.keys(note)) {
      for (const [at, value] of hostileValues.entries()) {
        const raw = rawText({ ...note, [key]: value })
        const kept = memoryStorage()
        kept.setItem('pierglass.note.old', raw)
        const store = freshStore()
        await startSession(store, fakePage(), kept, fakeTab('new', ['old']))
        const isOpened = Math.abs(store.getState().document.spec.hole.depth - 1.27) < 1e-9
        const isAside =
          kept.kept.get('pierglass.unread.old') === raw && store.getState().notices.some(({ code }) => code === 'note-damaged')
        // One of a kind that this page does not know is left where it is.
        const isLeft = key === 'of' && kept.kept.get('pierglass.note.old') === raw
        expect(isOpened || isAside || isLeft, `${key}: ${raw.slice(0, 80)}`).toBe(true)
        all.setItem(`pierglass.note.${key}${at}`, raw)
      }
    }
    const set = freshShelf({ storage: all, tab: { id: 'shelf', live: async () => new Set(['shelf']) } })
    await set.shelf.refresh()
    expect(set.shelf.state.getState().drafts).toHaveLength(noteTabs(all).length)
    for (const one of set.shelf.state.getState().drafts) expect(() => dates.format(one.at)).not.toThrow()
  })

  it('what else is remembered may be anything', async () => {
    for (const value of ['{', '7', 'null', '"x"', '[]', '{"count":-1,"unfiled":1e99,"persisted":3}']) {
      const storage = memoryStorage()
      for (const key of ['pierglass.shelf', 'pierglass.page', 'pierglass.notes']) storage.setItem(key, value)
      expect(readWitness(storage)).toEqual({ count: 0, unfiled: 0, persisted: null })
      const store = freshStore()
      await startSession(store, fakePage(), storage, fakeTab('own'))
      editField(store, 'hole.depth', '50 in')
      expect(noteTabs(storage)).toEqual(['own'])
    }
  })

  it('everything that is stored can be had as files, without any of it being read', async () => {
    const storage = memoryStorage()
    const store = freshShelf({ storage })
    keepNote(store.parts.holder, storage, { tab: 'own', revision: 0, hash: () => '' })
    editField(store.pier, 'hole.depth', '50 in')
    storage.setItem('pierglass.note.odd', '{"half')
    storage.setItem('pierglass.unread.older', 'older')
    storage.setItem('another.program', 'not ours')
    const hurt = { id: 'hurt', job: 7 }
    const files = await storedDocuments(storage, async () => [record, hurt, null])
    expect(files.map(({ text }) => text)).toEqual([
      pier.write(store.pier.getState().document),
      '{"half',
      'older',
      record.job,
      rawText(hurt),
      'null',
    ])
    expect(files.map(({ isWhole }) => isWhole)).toEqual([true, false, false, true, false, false])
    expect(files[3]?.name).toBe('Good')
    const without = await storedDocuments(null, async () => {
      throw new Error('no store')
    })
    expect(without).toEqual([])
    const hanging = storedDocuments(storage, () => new Promise(() => undefined), 10)
    await until(async () => expect(await hanging).toHaveLength(3))
  })
})

describe('[M30] hostile documents', () => {
  const withAll = ['bars', 'verticalBars', 'hole.bell', 'hole.base', 'callout', 'costs', 'site.lower'].reduce((document, path) => {
    const made = setPart(document, path, true)
    return made.ok ? made.value : document
  }, defaultDocument)
  const good = JSON.parse(pier.write(withAll)) as unknown
  const places = placesIn(good)

  it('two thousand, broken at one to three places: refused with reasons, or a pier that is written and read alike', async () => {
    const roll = dice(20)
    let refused = 0
    for (let i = 0; i < 2000; i++) {
      let data = good
      for (let k = 0; k <= roll(3); k++) {
        const place = places[roll(places.length)] ?? []
        try {
          data = withAt(data, place, hostileValues[roll(hostileValues.length)])
        } catch {
          // The place went with another one.
        }
      }
      const text = i % 10 === 0 ? rawText(data).slice(0, roll(4000)) : rawText(data)
      const { read } = await readDocument(text)
      if (!read.ok) {
        refused++
        expect(read.issues.length).toBeGreaterThan(0)
      } else {
        const text = pier.write(read.value as typeof defaultDocument)
        const back = await readDocument(text)
        expect(back.read.ok && pier.write(back.read.value as typeof defaultDocument)).toBe(text)
      }
    }
    expect(refused).toBeGreaterThan(1500)
  })
})
