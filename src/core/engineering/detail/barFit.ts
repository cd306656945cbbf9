import { type Metres, metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Least bar left outside each face of the post before a warning, a project default. Source: assumption. */
export const leastBarOutside = cited<Metres>(2, 'in', 'assumption', 'assumed here')

type Inputs = Readonly<{ diameter: Metres; cover: Metres }>

/**
 * Longest straight bar across a round pier through its axis.
 * @param diameter of the concrete at the bar [m], positive
 * @param cover clear cover at each end [m], non-negative
 * @returns length [m]; null when cover takes the whole width
 * Formula: L = D - 2 c
 * Valid: bar through the axis. Outside: a bar beside the axis has a shorter chord.
 * Source: aci-318-19-20-5-1-3
 * Checked by: tests/external/aci-318-19-20-5-1-3/check.test.ts
 */
export function longestBar({ diameter, cover }: Inputs): Metres | null {
  const length = diameter - 2 * cover
  return length > 0 ? metres(length) : null
}

/** Longest bar, with its work shown. */
export const workedLongestBar = showing({
  id: 'longest-bar',
  quantity: 'length',
  formula: 'L = D - 2c',
  terms: { diameter: ['D', 'length'], cover: ['c', 'length'] },
  sources: ['aci-318-19-20-5-1-3'],
  of: longestBar,
})
