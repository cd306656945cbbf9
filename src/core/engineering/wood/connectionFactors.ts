import { type Newtons, newtons } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

const duration = (printed: number) => cited(printed, '1', 'nds-2018-2-3-2', 'secondary')
/** Load duration factor CD, allowable stress design. Never above 1.6 for a connection. Source: nds-2018-2-3-2. */
export const loadDuration = {
  dead: duration(0.9),
  occupancy: duration(1),
  snow: duration(1.15),
  construction: duration(1.25),
  wind: duration(1.6),
} as const

const wet = (printed: number) => cited(printed, '1', 'nds-2018-11-3', 'secondary')
/**
 * Wet service factor CM of laterally loaded dowels by moisture when made and in service. 'dry-after-wet' is 1.0 for one
 * fastener or one row along the grain. A post in the ground stays wet. Source: nds-2018-11-3.
 */
export const wetService = { dry: wet(1), 'dry-after-wet': wet(0.4), wet: wet(0.7) } as const

const heat = (printed: number) => cited(printed, '1', 'nds-2018-11-3', 'secondary')
/** Temperature factor Ct: up to 100 F, to 125 F, to 150 F. Source: nds-2018-11-3. */
export const temperature = {
  dry: { '100F': heat(1), '125F': heat(0.8), '150F': heat(0.7) },
  wet: { '100F': heat(1), '125F': heat(0.7), '150F': heat(0.5) },
} as const

/** End-grain factor Ceg, lateral. Source: nds-2018-12-5-2. */
export const endGrain = cited(0.67, '1', 'nds-2018-12-5-2', 'secondary')

type Inputs = Readonly<{
  reference: Newtons
  count: number
  duration: number
  wet: number
  temperature: number
  group: number
  geometry: number
  endGrain: number
}>

/**
 * Adjusted lateral value of a group of like dowels, allowable stress design.
 * @param reference value Z of one dowel [N]
 * @param count number of dowels [1]
 * @param duration CD [1], up to 1.6
 * @param wet CM [1]
 * @param temperature Ct [1]
 * @param group Cg [1]
 * @param geometry Cdelta [1]
 * @param endGrain Ceg [1], 1 away from end grain
 * @returns adjusted value Z' of the group [N]
 * Formula: Z' = n Z CD CM Ct Cg Cdelta Ceg
 * Valid: allowable stress design. Outside: strength design uses its own factors and no CD.
 * Source: nds-2018-11-3, nds-2018-2-3-2
 * Checked by: tests/external/load-path-example/check.test.ts
 */
export function adjustedDowelValue({
  reference,
  count,
  duration: cd,
  wet: cm,
  temperature: ct,
  group: cg,
  geometry,
  endGrain: ceg,
}: Inputs): Newtons {
  return newtons(count * reference * cd * cm * ct * cg * geometry * ceg)
}

/** Adjusted value, with its work shown. */
export const workedAdjustedDowelValue = showing({
  id: 'adjusted-dowel-value',
  quantity: 'force',
  formula: String.raw`Z' = n\,Z\,C_D C_M C_t C_g C_\Delta C_{eg}`,
  terms: {
    count: ['n', 'count'],
    reference: ['Z', 'force'],
    duration: ['C_D', 'ratio'],
    wet: ['C_M', 'ratio'],
    temperature: ['C_t', 'ratio'],
    group: ['C_g', 'ratio'],
    geometry: [String.raw`C_\Delta`, 'ratio'],
    endGrain: ['C_{eg}', 'ratio'],
  },
  sources: ['nds-2018-2-3-2', 'nds-2018-11-3'],
  of: adjustedDowelValue,
})
