import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { whatIf } from '../../../src/core/derive/whatIf/whatIf.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { close } from '../../close.ts'
import { soundPier } from '../../soundPier.ts'

describe('[L2] what changes the number most', () => {
  const list = whatIf(soundPier)
  const now = derivePier(soundPier).uplift.allowable ?? Number.NaN

  it('tries a wider auger, more depth, more bar, a bell and a heavier post', () => {
    expect(list.map((one) => one.id).sort()).toEqual(
      ['add-bell', 'another-bar', 'next-auger', 'next-bar', 'next-post', 'six-inches-deeper'].sort(),
    )
  })

  it('ranks by gain, and each gain is what the changed pier really holds', () => {
    for (let i = 1; i < list.length; i++) expect(list[i - 1]?.gain).toBeGreaterThanOrEqual(list[i]?.gain ?? 0)
    for (const one of list) {
      expect(validateSpec(one.spec).filter((issue) => issue.severity === 'error')).toEqual([])
      close(one.allowable, derivePier(one.spec).uplift.allowable ?? Number.NaN, { abs: 0, rel: 1e-12 }, one.id)
      close(one.gain, one.allowable - now, { abs: 1e-6, rel: 0 }, one.id)
    }
  })

  it('where the ground governs, a wider or deeper hole helps and a bigger bar does not', () => {
    const gain = (id: string) => list.find((one) => one.id === id)?.gain ?? Number.NaN
    expect(gain('next-auger')).toBeGreaterThan(0)
    expect(gain('six-inches-deeper')).toBeGreaterThan(0)
    close(gain('next-bar'), 0, { abs: 5, rel: 0 })
  })

  it('says nothing where a link can not be verified', () => {
    const dry = fillKinds.find((kind) => kind.counting.strength.counted === 'not counted' && kind.hasTop) ?? expect.fail('no dry kind')
    expect(whatIf({ ...soundPier, fill: dry.defaults })).toEqual([])
  })
})
