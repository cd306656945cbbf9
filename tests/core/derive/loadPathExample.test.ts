import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { Check } from '../../../src/core/model/worked.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, pascals, slope } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'

/**
 * One full load path, link by link: 6x6 southern pine No.2, 18 in pier, 2,500 psi, Grade 60 #5 bar 4 in above the post's end with
 * 3 in of cover, wet, wind ASD. Source: computed for this project from the formulas of NDS 2018 and ACI 318-19, independently of this code.
 */
const inch = (value: number) => metres(toSI(value, 'in'))
const example: PierSpec = {
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: slope(0) },
  hole: { ...defaultSpec.hole, diameter: inch(18) },
  concrete: { ...defaultSpec.concrete, strength: pascals(toSI(2500, 'psi')) },
  bars: { size: '#5', count: 1, aboveFoot: inch(4), spacing: inch(4), length: inch(12), grade: '60', coating: 'galvanised' },
}
const bars = example.bars ?? expect.fail('the example has a bar')

const pounds = (spec: PierSpec, id: string): number => {
  const check: Check | undefined = derivePier(spec).checks.find((one) => one.id === id)
  return check?.allowable ? fromSI(check.allowable.value, 'lb') : Number.NaN
}
/** Half a printed pound, and a hair: 2,906.51 stands in print as 2,906. */
const printed = { abs: 0.55, rel: 0 }

describe('[L1] the load path of the reference, link by link', () => {
  it.each([
    ['post-net-tension', 23_595],
    ['post-tear-out', 5808],
    ['bar-through-post', 2906],
    ['bar-shear', 13_365],
    ['concrete-breakout', 5818],
  ])('%s is %i lb', (id, want) => close(pounds(example, id), want, id === 'bar-shear' ? { abs: 1, rel: 0 } : printed))

  it('a #4 bar: 2,035 lb', () => close(pounds({ ...example, bars: { ...bars, size: '#4' } }, 'bar-through-post'), 2035, printed))

  it('in a 12 in pier only 1/4 in of bar is left: 656 lb', () => {
    const narrow = { ...example, hole: { ...example.hole, diameter: inch(12) } }
    close(pounds(narrow, 'bar-through-post'), 656 * 0.9143, { abs: 1, rel: 0 })
  })

  it('at 4.375 in or higher the whole value counts: 3,179 lb', () =>
    close(pounds({ ...example, bars: { ...bars, aboveFoot: inch(4.375) } }, 'bar-through-post'), 3179, printed))
})
