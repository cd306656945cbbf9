import type { Seconds } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'

/** In-ground decay zone, 1 the mildest. It is drawn on a map and crosses state lines: the user says which. */
export type DecayZone = '1' | '2-3' | '4-5'
const years = (printed: number) => cited<Seconds>(printed, 'yr', 'rus-1730b-121', 'secondary')

/** First inspection of poles after setting, and time between later ones. Source: rus-1730b-121. */
export const inspectionIntervals: Readonly<
  Record<DecayZone, Readonly<{ first: Readonly<{ low: Cited<Seconds>; high: Cited<Seconds> }>; later: Cited<Seconds> }>>
> = {
  '1': { first: { low: years(12), high: years(15) }, later: years(12) },
  '2-3': { first: { low: years(10), high: years(12) }, later: years(10) },
  '4-5': { first: { low: years(8), high: years(10) }, later: years(8) },
}
