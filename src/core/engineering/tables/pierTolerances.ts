import type { Metres } from '../../units/quantity.ts'
import { metres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'

const share = (printed: number) => cited(printed, '%', 'aci-117m-10', 'secondary')
/** How far a pier may lean: reinforced; plain with soil at its sides (shares of its length); plain without (share of its diameter). Source: aci-117m-10. */
export const pierPlumb = {
  reinforced: share(2),
  plainHeldByGround: share(1.5),
  plainNotHeld: share(12.5),
} as const

/** Diameter from which the drilled-pier specification holds: a post hole is out of its scope. Source: aci-336-1-scope. */
export const drilledPierScope = cited<Metres>(30, 'in', 'aci-336-1-scope', 'secondary')

/**
 * Offset over the length of a pier that the tolerance allows.
 * @param pier how it is made and held
 * @param length of the shaft [m]
 * @param diameter of the shaft [m]
 * @returns offset [m]
 * Source: aci-117m-10
 * Checked by: tests/external/aci-117m-10/check.test.ts
 */
export const plumbAllowance = (pier: keyof typeof pierPlumb, length: Metres, diameter: Metres): Metres =>
  metres(pierPlumb[pier].value * (pier === 'plainNotHeld' ? diameter : length))
