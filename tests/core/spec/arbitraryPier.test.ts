import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bracketKinds, fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { arbitraryPier } from '../../arbitraryPier.ts'

const piers: readonly PierDocument[] = fc.sample(arbitraryPier(), { numRuns: 1500, seed: 7 })
const share = (holds: (pier: PierDocument) => boolean) => piers.filter(holds).length / piers.length

describe('random piers', () => {
  it('are all valid and frozen', () => {
    for (const { spec } of piers) {
      expect(validateSpec(spec).filter((issue) => issue.severity === 'error')).toEqual([])
      expect(Object.isFrozen(spec.site.soil)).toBe(true)
    }
  })

  it.each(fillKinds.map((kind) => kind.id))('cover %s', (id) => expect(share(({ spec }) => spec.fill.kind === id)).toBeGreaterThan(0.05))

  it.each(bracketKinds.map((kind) => kind.id))('cover %s', (id) =>
    expect(share(({ spec }) => spec.support.kind === 'bracket' && spec.support.bracket.kind === id)).toBeGreaterThan(0.01),
  )

  it.each<readonly [string, (pier: PierDocument) => boolean]>([
    ['a bell', ({ spec }) => spec.hole.bell !== null],
    ['a wider mouth', ({ spec }) => spec.hole.flare !== null],
    ['a gravel base', ({ spec }) => spec.hole.base?.material === 'gravel'],
    ['a concrete base', ({ spec }) => spec.hole.base?.material === 'concrete'],
    ['bars', ({ spec }) => spec.bars !== null],
    ['several bars', ({ spec }) => (spec.bars?.count ?? 0) > 1],
    ['vertical bars', ({ spec }) => spec.verticalBars !== null],
    ['two layers', ({ spec }) => spec.site.lower !== null],
    ['soil values of the user', ({ spec }) => spec.site.soil.kind === 'user'],
    ['a round post', ({ spec }) => spec.post.section.startsWith('round')],
    ['a dish', ({ spec }) => spec.top.shape === 'dished'],
    ['water', ({ spec }) => spec.site.waterTable !== null],
    ['level ground', ({ spec }) => spec.site.slope === 0],
    ['the steepest ground', ({ spec }) => spec.site.slope > 0.45],
    ['a hole under 14 in', ({ spec }) => spec.hole.diameter < 0.36],
    ['a hole over 40 in', ({ spec }) => spec.hole.diameter > 1.02],
    ['typed texts', ({ written }) => Object.keys(written).length > 0],
  ])('cover %s', (_, holds) => expect(share(holds)).toBeGreaterThan(0.005))
})
