import { describe, expect, it } from 'vitest'
import { buildSteps } from '../../../../src/core/derive/build/buildSteps.ts'
import { mistakes, withMistakes } from '../../../../src/core/derive/build/mistakes.ts'
import { stepPractice } from '../../../../src/core/derive/build/practice.ts'
import { derivePier } from '../../../../src/core/derive/derivePier.ts'
import { bracketKinds, fillKinds } from '../../../../src/core/kinds/index.ts'
import type { PierSpec } from '../../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../../src/core/spec/defaults.ts'
import { metres } from '../../../../src/core/units/quantity.ts'
import { build } from '../../../../src/words/en/build.ts'
import { cautions } from '../../../../src/words/en/cautions.ts'
import { ofEach } from '../manyPiers.ts'

describe('the steps of building', () => {
  it('every step of every kind has its practice, and every key its words', () => {
    const keys = [...fillKinds, ...bracketKinds].flatMap(({ steps }) => [...steps])
    expect(keys.filter((key) => !Object.hasOwn(stepPractice, key))).toEqual([])
    const practices = Object.values(stepPractice)
    expect(practices.flatMap(({ checks }) => checks).filter((key) => !Object.hasOwn(build.checks, key))).toEqual([])
    const dangers = new Set<string>(cautions.standing.map(({ id }) => id))
    expect(practices.flatMap((one) => one.dangers ?? []).filter((key) => !dangers.has(key))).toEqual([])
    expect(Object.keys(build.mistakes).sort()).toEqual(mistakes.map(({ id }) => id).sort())
    expect(mistakes.flatMap(({ at }) => at).filter((key) => !Object.hasOwn(stepPractice, key))).toEqual([])
  })

  it('of 300 piers: nothing goes away, what is hidden stood there, the last step leaves the whole pier', () => {
    ofEach((spec) => {
      const result = derivePier(spec)
      const steps = buildSteps(spec, result)
      steps.forEach(({ zones, hiddenAfter }, i) => {
        const before = steps[i - 1]
        for (const id of before?.zones ?? []) expect(zones).toContain(id)
        for (const id of before?.hiddenAfter ?? []) expect(hiddenAfter).toContain(id)
        for (const id of hiddenAfter) expect(zones).toContain(id)
      })
      expect([...(steps.at(-1)?.zones ?? [])].sort()).toEqual(result.zones.map(({ id }) => id).sort())
      expect(steps[0]?.dangers).toContain('call-before-you-dig')
      expect(steps.every(({ zones }, i) => i < 2 || !spec.hole.base || zones.includes('base'))).toBe(true)
      if (spec.bars && spec.support.kind === 'embedded') expect(steps.at(-1)?.hiddenAfter).toContain('bars')
    })
  })

  it('no step places a part that the pier has not', () => {
    const ids = (spec: PierSpec) => buildSteps(spec, derivePier(spec)).map(({ id }) => id)
    ofEach((spec) => {
      const steps = ids(spec)
      if (!spec.hole.base) expect(steps).not.toContain('place-base')
      if (!spec.bars) expect(steps).not.toContain('place-bar')
      if (!spec.verticalBars) expect(steps).not.toContain('place-vertical-bars')
    })
    expect(ids(defaultSpec)).toContain('place-bar')
    expect(ids({ ...defaultSpec, hole: { ...defaultSpec.hole, base: { material: 'gravel', thickness: metres(0.1) } } })).toContain(
      'place-base',
    )
  })

  it('loose soil is there as soon as the hole is called clean', () => {
    const steps = buildSteps(defaultSpec, derivePier(withMistakes(defaultSpec, ['loose-bottom'])))
    const at = steps.findIndex(({ wrong }) => wrong.includes('loose-bottom'))
    expect(steps[at]?.id).toBe('clean-out')
    expect(steps.map(({ zones }) => zones.includes('base'))).toEqual(steps.map((_, i) => i >= at))
  })

  it('every mistake that applies is made at one step, and moves nobody to another step', () => {
    ofEach((spec) => {
      const steps = buildSteps(spec, derivePier(spec))
      const applying = mistakes.filter((one) => one.applies(spec)).map(({ id }) => id)
      expect(steps.flatMap(({ wrong }) => wrong).sort()).toEqual([...applying].sort())
      const wrong = withMistakes(spec, applying)
      expect(buildSteps(spec, derivePier(wrong)).map(({ id, wrong: at }) => [id, at])).toEqual(steps.map(({ id, wrong: at }) => [id, at]))
    })
  })
})
