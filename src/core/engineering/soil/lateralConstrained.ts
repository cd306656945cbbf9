import { type Metres, type NewtonMetres, type Newtons, type PressureGradient, metres, newtons } from '../../units/quantity.ts'
import type { Term } from '../../model/worked.ts'
import { showing } from '../showing.ts'
import { lateralDepthLimit, lateralTerms } from './lateralNonconstrained.ts'

const newtonMetres = (value: number): NewtonMetres => value as NewtonMetres

type Load = Readonly<{ moment: NewtonMetres; gradient: PressureGradient; multiplier: number; width: Metres }>

/**
 * Required embedment with a rigid floor or pavement holding the post at grade.
 * @param moment at grade Mg = P h [N.m], non-negative
 * @param gradient presumptive lateral bearing per depth [Pa/m], positive
 * @param multiplier 1; the doubling for poles contradicts a held top and is not for this form [1]
 * @param width diameter or diagonal b [m], positive
 * @returns embedment [m]
 * Formula: d^2 = 4.25 Mg/(S3 b), S3 = k Lt min(d, 12 ft); for d <= 12 ft: d = [4.25 Mg/(k Lt b)]^(1/3)
 * Valid: the floor touches the post or pier and carries the reaction. Outside: past 12 ft the pressure stays at its 12 ft value.
 * Source: ibc-1807-3-2-2
 * Checked by: tests/external/ibc-1807-3-2-2/check.test.ts
 */
export function embedmentConstrained({ moment, gradient, multiplier, width }: Load): Metres {
  const free = Math.cbrt((4.25 * moment) / (multiplier * gradient * width))
  const limit: number = lateralDepthLimit.value
  return metres(free <= limit ? free : Math.sqrt((4.25 * moment) / (multiplier * gradient * limit * width)))
}

/** The pressure at a depth, for a formula that shows its work. */
const pressureAt = ({ gradient, multiplier }: Pick<Load, 'gradient' | 'multiplier'>, depth: Metres): readonly Term[] => [
  { symbol: 'S_3', name: 'sidePressure', value: multiplier * gradient * Math.min(depth, lateralDepthLimit.value), quantity: 'pressure' },
]

type Provided = Readonly<{ depth: Metres; gradient: PressureGradient; multiplier: number; width: Metres }>

/**
 * Allowable moment at grade for the depth that is there, post held at grade.
 * @param depth embedment [m], non-negative
 * @param gradient presumptive lateral bearing per depth [Pa/m]
 * @param multiplier 1 [1]
 * @param width diameter or diagonal b [m]
 * @returns allowable moment [N.m]
 * Formula: Mg = k Lt min(d, 12 ft) b d^2 / 4.25
 * Valid: as the required depth. Outside: past 12 ft the pressure stays.
 * Source: ibc-1807-3-2-2
 * Checked by: tests/external/ibc-1807-3-2-2/check.test.ts
 */
export function allowableMomentConstrained({ depth, gradient, multiplier, width }: Provided): NewtonMetres {
  return newtonMetres((multiplier * gradient * Math.min(depth, lateralDepthLimit.value) * width * depth ** 2) / 4.25)
}

type ShownLoad = Readonly<{ force: Newtons; height: Metres; gradient: PressureGradient; multiplier: number; width: Metres }>

/** Required embedment with the post held at grade, with its work shown. */
export const workedEmbedmentConstrained = showing({
  id: 'embedment-constrained',
  quantity: 'length',
  formula: String.raw`d = \sqrt{\frac{4.25\,M_g}{S_3 b}},\quad M_g = P h,\quad S_3 = k L_t \min(d,\ 12\ \mathrm{ft})`,
  terms: lateralTerms,
  along: ({ force, height, ...soil }: ShownLoad) => {
    const moment = newtonMetres(force * height)
    return [
      { symbol: 'M_g', name: 'moment', value: moment, quantity: 'moment' },
      ...pressureAt(soil, embedmentConstrained({ ...soil, moment })),
    ]
  },
  sources: ['ibc-1807-3-2-2', 'ibc-1806-2'],
  of: ({ force, height, ...soil }: ShownLoad) => embedmentConstrained({ ...soil, moment: newtonMetres(force * height) }),
})

/** Allowable lateral force at a height, post held at grade, with its work shown; null for a force at grade. */
export const workedAllowableConstrained = showing({
  id: 'allowable-constrained',
  quantity: 'force',
  formula: String.raw`P = \frac{S_3\,b\,d^2}{4.25\,h},\quad S_3 = k L_t \min(d,\ 12\ \mathrm{ft})`,
  terms: {
    multiplier: ['k', 'ratio'],
    gradient: ['L_t', 'gradient'],
    width: ['b', 'length'],
    depth: ['d', 'length'],
    height: ['h', 'length'],
  },
  along: (provided: Provided & Readonly<{ height: Metres }>) => pressureAt(provided, provided.depth),
  sources: ['ibc-1807-3-2-2', 'ibc-1806-2'],
  of: ({ height, ...provided }: Provided & Readonly<{ height: Metres }>): Newtons | null =>
    height > 0 ? newtons(allowableMomentConstrained(provided) / height) : null,
})
