import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { frameOf } from '../../../src/core/derive/pierFrame.ts'
import { takeOff } from '../../../src/core/derive/takeOff.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { ofEach } from './manyPiers.ts'

describe('[C21] the take-off of a pier stands by itself', () => {
  it('and is that of the whole result', () => {
    ofEach((spec, i) => {
      if (i % 5 > 0) return
      const { frame, ...placed } = takeOff(spec)
      expect(frame).toBe(frameOf(spec))
      const told = ({ zones, sheets, depths, hole, quantities }: typeof placed) => ({
        zones: zones.map(({ id, volume, inHole }) => ({ id, volume, inHole })),
        sheets: sheets.map(({ id }) => id),
        depths,
        hole,
        quantities,
      })
      expect(told(placed)).toEqual(told(derivePier(spec)))
    })
  })

  it('what is asked of the same spec again is not worked out again', () => {
    ofEach((spec, i) => {
      if (i < 5) expect(validateSpec(spec)).toBe(validateSpec(spec))
    })
  })
})
