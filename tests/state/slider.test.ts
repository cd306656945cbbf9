import { describe, expect, it } from 'vitest'
import { allFields } from '../../src/core/spec/fields.ts'
import { editText } from '../../src/core/units/editText.ts'
import type { FieldOf } from '../../src/core/model/field.ts'
import { sliderOf } from '../../src/state/slider.ts'

const numbers = allFields.filter((field): field is FieldOf<'number'> => field.type === 'number')

describe('[J8] sliders', () => {
  it('has fields to look at', () => expect(numbers.length).toBeGreaterThan(25))

  it.each(numbers.map((field) => [field.path, field] as const))('%s stops at round values inside its bounds', (_, field) => {
    for (const system of ['us', 'metric'] as const) {
      const slider = sliderOf(field, system)
      expect(slider.last).toBeGreaterThan(slider.first)
      for (let place = slider.first; place <= slider.last; place += Math.max(1, Math.floor((slider.last - slider.first) / 7))) {
        const value = slider.valueAt(place)
        expect(value).toBeGreaterThanOrEqual(field.min)
        expect(value).toBeLessThanOrEqual(field.max)
        expect(slider.placeOf(value)).toBe(place)
        expect(editText(value, field.quantity, system).length).toBeLessThan(18)
      }
    }
  })
})
