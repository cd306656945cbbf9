import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { pierFrame } from '../../../src/core/derive/pierFrame.ts'
import { sources } from '../../../src/core/engineering/sources.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import { type AnyFillKind, bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { Shape } from '../../../src/core/fields/node.ts'
import type { Counting } from '../../../src/core/model/kind.ts'
import type { Cut } from '../../../src/core/model/solid.ts'
import type { Bracket, Fill, PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { metres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { unpairedEdges } from '../../meshFacts.ts'

const withFill = (kind: AnyFillKind, fill: Fill = kind.defaults, bracket: Bracket | undefined = bracketKinds[0]?.defaults): PierSpec => ({
  ...defaultSpec,
  fill,
  bars: kind.support === 'bracket' ? null : defaultSpec.bars,
  support: kind.support === 'bracket' && bracket ? { kind: 'bracket', bracket, standOff: metres(0.0254) } : defaultSpec.support,
})

/** The defaults with one own field put to each end of its range, or to each of its choices. */
const extremes = <T extends object>({ defaults, fields }: Readonly<{ defaults: T; fields: Shape }>): T[] =>
  Object.entries(fields).flatMap(([key, field]) => {
    const values = field.type === 'number' ? [field.min, field.max] : field.type === 'choice' ? field.choices : []
    return values.map((value) => ({ ...defaults, [key]: value }))
  })

const checkWhole = (spec: PierSpec) => {
  const result = derivePier(spec)
  const filled = result.zones.reduce((sum, zone) => sum + (zone.build === 'swept' ? zone.inHole : 0), 0)
  close(filled + result.hole.void, result.hole.volume.value, { abs: 0, rel: 1e-9 }, 'hole = zones + void')
  const cut = { open: 1.7, facing: 0.4 } as Cut
  for (const [id, mesh] of cutMeshes(result.zones, cut, { segments: 32, cutPost: true })) expect(unpairedEdges(mesh), id).toBe(0)
  for (const line of result.quantities) {
    expect(line.volume.value, line.id).toBeGreaterThan(0)
    expect(Number.isFinite(line.buoyantWeight), line.id).toBe(true)
  }
  for (const check of result.checks) {
    for (const id of check.sources) expect(sources[id], id).toBeDefined()
    if (check.allowable) expect(Number.isFinite(check.allowable.value)).toBe(true)
  }
  return result
}

describe('[K1] every kind keeps the promises of its record', () => {
  it('ids are unique', () => {
    expect(new Set(fillKinds.map((kind) => kind.id)).size).toBe(fillKinds.length)
    expect(new Set(bracketKinds.map((kind) => kind.id)).size).toBe(bracketKinds.length)
  })

  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('%s: defaults can be built, fill the hole and close', (_, kind) => {
    const spec = withFill(kind)
    expect(validateSpec(spec).filter((issue) => issue.severity === 'error')).toEqual([])
    const result = checkWhole(spec)
    expect(result.zones.map((zone) => zone.id)).toEqual([...new Set(result.zones.map((zone) => zone.id))])
    expect(result.hole.void).toBe(0)
  })

  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('%s: own fields at both ends are refused or hold', (_, kind) => {
    for (const fill of extremes<Fill>(kind)) {
      const spec = withFill(kind, fill)
      if (validateSpec(spec).every((issue) => issue.severity !== 'error')) checkWhole(spec)
    }
  })

  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('%s: lifts rise, and every supply belongs to a lift', (_, kind) => {
    const { lifts, fillBottom } = pierFrame(withFill(kind))
    let from = fillBottom
    for (const lift of lifts) {
      if (lift.to.kind !== 'level') continue
      expect(lift.to.y).toBeGreaterThan(from)
      from = lift.to.y
    }
    expect(lifts[lifts.length - 1]?.to.kind).not.toBe('level')
    const roles = new Set(lifts.map((lift) => lift.role))
    for (const role of Object.keys(kind.supply)) expect([...roles]).toContain(role)
  })

  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('%s: survives JSON and names only known sources', (_, kind) => {
    expect(JSON.parse(JSON.stringify(kind.defaults))).toEqual(kind.defaults)
    const countings: Counting[] = [...Object.values(kind.counting), ...Object.values(kind.cored ?? {})]
    for (const id of [...kind.sources, ...countings.flatMap((counting) => counting.sources)]) expect(sources[id], id).toBeDefined()
    expect(kind.steps.length).toBeGreaterThan(3)
  })

  it.each(bracketKinds.map((kind) => [kind.id, kind] as const))('bracket %s: defaults and ends of its fields hold', (_, kind) => {
    const pier = fillKinds.find((fill) => fill.support === 'bracket') ?? expect.fail('no fill takes a bracket')
    for (const bracket of [kind.defaults, ...extremes<Bracket>(kind)]) {
      const spec = withFill(pier, pier.defaults, bracket)
      if (validateSpec(spec).some((issue) => issue.severity === 'error')) continue
      const result = checkWhole(spec)
      const steel = result.zones.filter((zone) => zone.build === 'placed' && zone.role === 'steel')
      expect(steel.length).toBeGreaterThan(2)
      const post = result.zones.find((zone) => zone.id === 'post')
      expect(post?.build === 'swept' ? post.inHole : -1).toBe(0)
    }
  })
})
