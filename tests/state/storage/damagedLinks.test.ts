import { describe, expect, it } from 'vitest'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { setField } from '../../../src/core/spec/edit.ts'
import { linkIn, linkTo } from '../../../src/state/storage/address.ts'
import { alphabet, encodeLink } from '../../../src/state/storage/link.ts'
import { startSession } from '../../../src/state/storage/session.ts'
import { fakePage, fakeTab, freshStore, memoryStorage } from '../freshStore.ts'
import { until } from '../../until.ts'

const typed = setField(defaultDocument, 'hole.depth', '61 in', 'us')
const pier = typed.ok ? typed.value : expect.fail()
const code = encodeLink(pier)
const { hash } = new URL(linkTo(pier, 'http://pier.test/app/'))

describe('[R12] whatever stands behind # and is no link is told, and percent-encoding is undone', () => {
  it.each([
    `#P=${code}`,
    `#q=${code}`,
    `#/p=${code}`,
    `#!p=${code}`,
    `#p:${code}`,
    `#p${code}`,
    `#${code}`,
    '#p',
    '#p=',
    '#…',
    '#%',
    '#%E2%80%A6',
    '#inputs',
    `#p%3D${code.slice(0, -4)}`,
    `#p=${code}&utm=1`,
  ])('%s', async (damaged) => {
    expect((await linkIn(damaged)).kind).toBe('damaged')
    const store = freshStore()
    await startSession(store, fakePage(damaged), memoryStorage(), fakeTab())
    expect(store.getState().notices.map((notice) => notice.code)).toEqual(['link-damaged'])
    expect(store.getState()).toMatchObject({ document: defaultDocument, looking: null })
  })

  const percent = (text: string): string => [...text].map((letter) => `%${letter.charCodeAt(0).toString(16)}`).join('')
  it.each([
    `#p%3D${code}`,
    `#p%3d${code}`,
    `#p%253D${code}`,
    `#p%25253D${code}`,
    `#%70=${code}`,
    `#${percent(`p=${code}`)}`,
    `#${percent(percent(`p=${code}`))}`,
    `#p=${percent(code)}`,
    `${hash.slice(0, 40)}\r\n> ${hash.slice(40)}.`,
  ])('%s opens the pier', async (encoded) => {
    const found = await linkIn(encoded)
    expect(found.kind === 'document' && found.document.spec).toEqual(pier.spec)
  })

  it('an empty address and a bare # are no link', async () => {
    expect([await linkIn(''), await linkIn('#')]).toEqual([{ kind: 'none' }, { kind: 'none' }])
  })

  it('one that is pasted into the open page is told too', async () => {
    const page = fakePage()
    const store = freshStore()
    await startSession(store, page, memoryStorage(), fakeTab())
    page.go(`#P=${code}`)
    await until(() => expect(store.getState().notices.map((notice) => notice.code)).toEqual(['link-damaged']))
    page.go(hash)
    await until(() => expect(store.getState().looking?.spec).toEqual(pier.spec))
    expect(store.getState().notices).toEqual([])
  })

  it('five thousand codes, each damaged in another place: told, or the same pier, never another', async () => {
    let dice = 7
    const roll = (sides: number): number => {
      dice = (dice * 48271) % 2147483647
      return dice % sides
    }
    let told = 0
    for (let i = 0; i < 5000; i++) {
      const at = roll(code.length)
      const way = roll(4)
      const letter = alphabet.charAt(roll(64))
      const damaged = [
        `${code.slice(0, at)}${letter}${code.slice(at + 1)}`,
        `${code.slice(0, at)}${code.slice(at + 1)}`,
        `${code.slice(0, at)}${letter}${code.slice(at)}`,
        code.slice(0, at),
      ][way]
      const found = await linkIn(`#p=${damaged}`)
      if (found.kind === 'damaged') told++
      else expect(found.kind === 'document' && found.document).toEqual({ ...pier, name: '', note: '' })
    }
    expect(told).toBeGreaterThan(4800)
  })
})
