import type { FieldOf } from '../core/model/field.ts'
import { fromSI, inputUnit, toSI } from '../core/units/factors.ts'
import type { UnitSystem } from '../core/units/quantity.ts'

/** A slider's places are whole steps of the unit shown, so that every stop is a round number. */
export type Slider = Readonly<{
  first: number
  last: number
  /** The place nearest to an SI value. */
  placeOf(value: number): number
  /** The SI value of a place, held within the field's bounds. */
  valueAt(place: number): number
}>

const slack = 1e-9
// Adding 0 below turns a negative zero into zero.

export const sliderOf = (field: FieldOf<'number'>, system: UnitSystem): Slider => {
  const unit = inputUnit[system][field.quantity]
  const step = Number(fromSI(field.step[system], unit).toPrecision(9))
  const inSteps = (value: number): number => fromSI(value, unit) / step
  const within = (value: number): number => Math.min(field.max, Math.max(field.min, value)) + 0
  return {
    first: Math.ceil(inSteps(field.min) - slack) + 0,
    last: Math.floor(inSteps(field.max) + slack) + 0,
    placeOf: (value) => Math.round(inSteps(within(value))) + 0,
    valueAt: (place) => within(toSI(Number((place * step).toPrecision(9)), unit)),
  }
}
