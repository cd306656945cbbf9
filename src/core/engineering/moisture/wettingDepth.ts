import { type CubicMetres, cubicMetres, type Metres, metres, type SquareMetres } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/**
 * Ranges within which poured water is spread, a project choice: share of the voids filled behind the front, and share lost
 * to the wall of the hole. No loss is the most hopeful. Source: assumption.
 */
export const wettingRanges = {
  saturation: { low: cited(0.4, '1', 'assumption', 'assumed here'), high: cited(1, '1', 'assumption', 'assumed here') },
  loss: { low: cited(0, '1', 'assumption', 'assumed here'), high: cited(0.3, '1', 'assumption', 'assumed here') },
} as const

type Inputs = Readonly<{
  poured: CubicMetres
  loss: number
  area: SquareMetres
  voids: number
  saturation: number
  height: Metres
}>
/** Where the water went: `lost` + `held` + `over` is what was poured. */
export type Wetting = Readonly<{ lost: CubicMetres; held: CubicMetres; over: CubicMetres; depth: Metres; reachesFoot: boolean }>

/**
 * Depth of loose dry mix that poured water wets, by balance of water.
 * @param poured volume of water [m3], non-negative
 * @param loss share taken by the wall of the hole [1], 0 to 1
 * @param area of mix across the hole, post taken out [m2], positive
 * @param voids share of the loose mix that is not solid [1], positive
 * @param saturation share of the voids filled behind the front [1], positive to 1
 * @param height of the mix [m], non-negative
 * @returns water lost [m3], held [m3], left over once all is wet [m3]; depth wetted [m]; whether the foot is reached [1];
 *   null where the mix has no room for water
 * Formula: L = V (1 - lambda)/(A n Sw), no more than the height
 * Valid: water spread evenly across the hole. Outside: crust, early set and trapped air slow the front and are left out.
 * Source: computed-here
 * Checked by: tests/external/water-and-time-examples/check.test.ts
 */
export function wettingDepth({ poured, loss, area, voids, saturation, height }: Inputs): Wetting | null {
  const perDepth = area * voids * saturation
  if (!(perDepth > 0)) return null
  const into = poured * (1 - loss)
  const room = perDepth * height
  const held = Math.min(into, room)
  return {
    lost: cubicMetres(poured - into),
    held: cubicMetres(held),
    over: cubicMetres(into - held),
    depth: metres(into >= room ? height : held / perDepth),
    reachesFoot: into >= room,
  }
}

type Range = Readonly<{ low: number; high: number }>
type BandInputs = Readonly<{
  poured: CubicMetres
  loss: Range
  area: SquareMetres
  voids: number
  saturation: Range
  height: Metres
}>

/**
 * Shortest and longest depth wetted while loss and saturation stay inside their ranges.
 * @param poured volume of water [m3], non-negative
 * @param loss least and greatest share lost to the wall [1]
 * @param area of mix across the hole, post taken out [m2], positive
 * @param voids share of the loose mix that is not solid [1], positive
 * @param saturation least and greatest share of the voids filled [1]
 * @param height of the mix [m]
 * @returns shortest and longest wetting, each with its own balance [m3, m]; null where the mix has no room for water
 * Formula: shortest with most loss and fullest voids, longest with least of both
 * Valid: as for one wetting. Outside: as for one wetting.
 * Source: computed-here
 * Checked by: tests/core/engineering/moisture/wettingDepth.test.ts
 */
export function wettingBand({ loss, saturation, ...rest }: BandInputs): Readonly<{ shortest: Wetting; longest: Wetting }> | null {
  const shortest = wettingDepth({ ...rest, loss: loss.high, saturation: saturation.high })
  const longest = wettingDepth({ ...rest, loss: loss.low, saturation: saturation.low })
  return shortest && longest && { shortest, longest }
}

/** Depth wetted, with its work shown. */
export const workedWettingDepth = showing({
  id: 'wetting-depth',
  quantity: 'length',
  formula: String.raw`L = \frac{V(1-\lambda)}{A\,n\,S_w} \le H`,
  terms: {
    poured: ['V', 'volume'],
    loss: [String.raw`\lambda`, 'ratio'],
    area: ['A', 'area'],
    voids: ['n', 'ratio'],
    saturation: ['S_w', 'ratio'],
    height: ['H', 'length'],
  },
  sources: ['computed-here'],
  of: (inputs: Inputs) => wettingDepth(inputs)?.depth ?? null,
})
