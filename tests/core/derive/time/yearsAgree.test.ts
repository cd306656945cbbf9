import { describe, expect, it } from 'vitest'
import { deriveLife } from '../../../../src/core/derive/life/deriveLife.ts'
import { failedInterval } from '../../../../src/core/engineering/life/failedInterval.ts'
import {
  aboveGroundEvidence,
  lifeEvidence,
  treatedEvidence,
  untreatedEvidence,
} from '../../../../src/core/engineering/tables/lifeEvidence.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import { withChoice } from '../../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../../src/core/spec/defaults.ts'

type Zone = PierSpec['life']['decayZone']
const zones: readonly Zone[] = [null, 1, 2, 3, 4, 5]
const treatments: readonly PierSpec['post']['treatment'][] = ['untreated', 'UC3B', 'UC4A', 'UC4B', 'UC4C']
const pier = (treatment: PierSpec['post']['treatment'], decayZone: Zone, fill = 'mixed-full-height'): PierSpec => {
  const spec = withChoice(defaultSpec, 'fill.kind', fill)
  return { ...spec, post: { ...spec.post, treatment }, life: { ...spec.life, decayZone } }
}
const every = treatments.flatMap((treatment) => zones.map((zone) => [treatment, zone] as const))
const row = (id: string) => lifeEvidence.find((one) => one.id === id) ?? expect.fail(`no row ${id}`)
const hair = 1e-9

describe('[Q3] what is said of the years agrees with its own evidence', () => {
  it.each(every)('%s, zone %s: every row lies inside its band, or is told apart with a reason', (treatment, zone) => {
    const { rows, apart, bands } = deriveLife(pier(treatment, zone))
    const about = treatment === 'untreated' ? untreatedEvidence : treatedEvidence
    const told = [...rows, ...apart.map((one) => one.row)]
    expect(new Set(told).size).toBe(told.length)
    for (const { id } of about) expect(told).toContain(id)
    expect(bands.flatMap((band) => band.rows)).toEqual(rows)
    for (const band of bands)
      for (const id of band.rows) {
        const { sample, watched, life, specimen, contact, zone: at } = row(id)
        expect([specimen, contact]).toEqual(['post', 'in-ground'])
        if (zone !== null) expect(at).toBeGreaterThanOrEqual(zone)
        const year = watched?.printed ?? life?.low.printed ?? expect.fail(id)
        const { low, high } = band.sound[year]?.share ?? expect.fail(`${id} has no year ${year}`)
        const failed = sample ? (sample.failed ?? 0) / sample.count : 0.5
        expect(1 - failed).toBeGreaterThanOrEqual(low - hair)
        // Rows of a harsher zone show the most that may be lost and not the least.
        if (!band.isOneSided) expect(1 - failed).toBeLessThanOrEqual(high + hair)
        else expect(high).toBe(1)
      }
  })

  it.each(every)('%s, zone %s: no band is wider than the interval of its rows', (treatment, zone) => {
    for (const band of deriveLife(pier(treatment, zone)).bands)
      for (const id of band.rows) {
        const { sample, watched } = row(id)
        if (!sample || sample.failed === null || !watched) continue
        const { low, high } = failedInterval({ failed: sample.failed, sample: sample.count, confidence: 0.95 })
        for (const { year, share } of band.sound) {
          expect(year).toBeLessThanOrEqual(watched.printed)
          expect(1 - share.low).toBeLessThanOrEqual(high + hair)
          expect(1 - share.high).toBeLessThanOrEqual(Math.max(low, 0) + hair)
          expect(share.high - share.low).toBeLessThan(0.42)
        }
      }
  })

  it('says no half gone by year 10 from stakes that were mostly sound, and no 12 in 100 gone where 0 of 125 failed', () => {
    const { sound, bands } = deriveLife(pier('UC4B', 5))
    expect(sound?.[10]?.share.low).toBeGreaterThan(0.9)
    expect(sound?.[50]?.share.high).toBe(1)
    const cca = bands.find(({ wood }) => wood === 'cca')?.sound[50]?.share
    expect(cca?.low).toBeCloseTo(0.05 ** (1 / 125), 9)
    expect(cca?.high).toBe(1)
  })

  it('takes no row of bare wood for treated wood, nor the other way round, nor wood in the ground for wood above it', () => {
    for (const [treatment, zone] of every) {
      const told = (spec: PierSpec) => {
        const { rows, apart } = deriveLife(spec)
        return [...rows, ...apart.map((one) => one.row)].map(row)
      }
      const bare = new Set<string>(untreatedEvidence.map(({ id }) => id))
      const treated = new Set<string>(treatedEvidence.map(({ id }) => id))
      const other = treatment === 'untreated' ? treated : bare
      for (const { id } of told(pier(treatment, zone))) expect(other.has(id), id).toBe(false)
      for (const { contact } of told(pier(treatment, zone, 'mixed-bracket-pier'))) expect(contact).toBe('above-ground')
    }
  })

  it('shows of a post on a bracket what was found of wood above the ground, treated or bare, and the climate index', () => {
    for (const treatment of treatments) {
      const spec = pier(treatment, null, 'mixed-bracket-pier')
      const { apart, sound, lacks, climate } = deriveLife({ ...spec, life: { ...spec.life, climate: 'seattle' } })
      const isBare = treatment === 'untreated'
      expect(apart.map((one) => one.row)).toEqual(
        aboveGroundEvidence.filter(({ wood }) => wood.endsWith('untreated') === isBare).map(({ id }) => id),
      )
      expect(apart.length).toBeGreaterThan(1)
      expect(sound).toBeNull()
      expect(lacks).toEqual(['no-post-on-bracket'])
      expect(climate?.hazard).toBe('moderate')
    }
  })

  it('tells termites where wood is in the ground, with the zone, and keeps bare from treated wood', () => {
    expect(deriveLife(pier('UC4B', null)).termites).toEqual(['termites-corvallis', 'termites-mississippi', 'termites-canada'])
    expect(deriveLife(pier('untreated', null)).termites).toEqual([
      'termites-corvallis',
      'termites-mississippi',
      'termites-canada-untreated',
    ])
    expect(deriveLife(pier('UC4B', null, 'mixed-bracket-pier')).termites).toEqual([])
  })

  it('says of no post how long it lasts unless a row or own years are chosen, and leaves "or more" open', () => {
    for (const [treatment, zone] of every) expect(deriveLife(pier(treatment, zone)).estimated).toBeNull()
    const chosen = (reference: PierSpec['life']['reference']) => deriveLife({ ...defaultSpec, life: { ...defaultSpec.life, reference } })
    expect(chosen('posts-penta-60').estimated?.high).toBeNull()
    expect(chosen('posts-aca-50').rows).toEqual(['posts-aca-50'])
    expect(chosen('own').estimated).toEqual(defaultSpec.life.own)
  })
})
