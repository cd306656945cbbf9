import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import { fillKind } from '../../src/core/kinds/index.ts'
import { anyPier } from '../anyPier.ts'
import { close } from '../close.ts'
import { solidKit } from './bodies.ts'
import { blockOf, solidPier } from './solidPier.ts'

const piers = fc.sample(anyPier, { numRuns: 220, seed: 20_711 })
const coarse = await solidKit(32)
const fine = await solidKit(64)

/** Volumes by zone id at two numbers of sides, extended to a circle: the error of a prism falls fourfold when its sides double. */
const referenceVolumes = (spec: (typeof piers)[number], zones: Parameters<typeof blockOf>[0]): Map<string, number> => {
  const block = blockOf(zones)
  const at = (kit: typeof fine) => {
    const volumes = new Map([...solidPier(kit, spec, block)].map(([id, body]) => [id, body.volume()]))
    kit.free()
    return volumes
  }
  const few = at(coarse)
  return new Map([...at(fine)].map(([id, volume]) => [id, (4 * volume - (few.get(id) ?? Number.NaN)) / 3]))
}

describe('[G5] volumes agree with a general solid library', () => {
  it('draws piers of every kind', () => {
    expect(piers.length).toBeGreaterThanOrEqual(200)
    expect(new Set(piers.map((pier) => pier.fill.kind)).size).toBe(7)
    for (const part of ['bell', 'flare', 'base'] as const)
      expect(piers.filter((pier) => pier.hole[part] !== null).length).toBeGreaterThan(40)
  })

  it.each(piers.map((spec, i) => [`${i + 1} ${spec.fill.kind}`, spec] as const))('pier %s', (_, spec) => {
    const { zones } = derivePier(spec)
    const reference = referenceVolumes(spec, zones)
    const swept = new Map<string, number>()
    for (const zone of zones) {
      if (zone.build === 'swept') swept.set(zone.partOf ?? zone.id, (swept.get(zone.partOf ?? zone.id) ?? 0) + zone.volume.value)
    }
    expect([...swept.keys()].sort()).toEqual([...reference.keys()].sort())
    for (const [id, volume] of swept) {
      if (id !== 'heap') close(volume, reference.get(id) ?? Number.NaN, { abs: 1e-8, rel: 1e-5 }, id)
    }
  })

  // A heap's edge on the top or on sloping ground is not smooth in the angle, so the extension to a circle is less exact.
  const heaped = piers.filter((spec) => spec.top.heaped > 0 && fillKind(spec.fill.kind).hasTop)
  it.each(heaped.map((spec) => [`${piers.indexOf(spec) + 1} ${spec.fill.kind}`, spec] as const))('heap on pier %s', (_, spec) => {
    const { zones } = derivePier(spec)
    const reference = referenceVolumes(spec, zones)
    const heap = zones.find((zone) => zone.id === 'heap')
    close(heap?.volume.value ?? 0, reference.get('heap') ?? Number.NaN, { abs: 1e-7, rel: 1e-4 }, 'heap')
  })
})
