/** Load kinds: dead, live, roof live, snow, wind. Earthquake is not covered. */
export type LoadKind = 'dead' | 'live' | 'roofLive' | 'snow' | 'wind'
export type Factors = Readonly<Partial<Record<LoadKind, number>>>
export type Combination = Readonly<{ id: string; factors: Factors }>
export type CombinationEdition = '7-16' | '7-22'
export type DesignMethod = 'ASD' | 'LRFD'

/** Roof live or snow, whichever: one combination each. In 7-22 ground snow is strength level, so allowable design takes 0.7 of it. */
const roofs = (id: string, base: Factors, share: number, snowLevel: number): readonly Combination[] => [
  { id: `${id}-roof-live`, factors: { ...base, roofLive: share } },
  { id: `${id}-snow`, factors: { ...base, snow: share * snowLevel } },
]
const asd = (snowLevel: number): readonly Combination[] => [
  { id: 'D', factors: { dead: 1 } },
  { id: 'D-L', factors: { dead: 1, live: 1 } },
  ...roofs('D', { dead: 1 }, 1, snowLevel),
  ...roofs('D-0.75L-0.75', { dead: 1, live: 0.75 }, 0.75, snowLevel),
  { id: 'D-0.6W', factors: { dead: 1, wind: 0.6 } },
  ...roofs('D-0.75L-0.45W-0.75', { dead: 1, live: 0.75, wind: 0.75 * 0.6 }, 0.75, snowLevel),
  { id: '0.6D-0.6W', factors: { dead: 0.6, wind: 0.6 } },
]
/** Snow factors of strength design: as a companion and as the leading load. */
const lrfd = (companion: number, leading: number): readonly Combination[] => [
  { id: '1.4D', factors: { dead: 1.4 } },
  { id: '1.2D-1.6L-roof-live', factors: { dead: 1.2, live: 1.6, roofLive: 0.5 } },
  { id: '1.2D-1.6L-snow', factors: { dead: 1.2, live: 1.6, snow: companion } },
  { id: '1.2D-1.6Lr-L', factors: { dead: 1.2, roofLive: 1.6, live: 1 } },
  { id: '1.2D-1.6Lr-0.5W', factors: { dead: 1.2, roofLive: 1.6, wind: 0.5 } },
  { id: '1.2D-S-L', factors: { dead: 1.2, snow: leading, live: 1 } },
  { id: '1.2D-S-0.5W', factors: { dead: 1.2, snow: leading, wind: 0.5 } },
  { id: '1.2D-W-L-roof-live', factors: { dead: 1.2, wind: 1, live: 1, roofLive: 0.5 } },
  { id: '1.2D-W-L-snow', factors: { dead: 1.2, wind: 1, live: 1, snow: companion } },
  { id: '0.9D-W', factors: { dead: 0.9, wind: 1 } },
]
/** Basic combinations without earthquake. The snow factors of 7-22 are from memory. Source: asce-7-16-2, asce-7-22-2. */
export const loadCombinations: Readonly<Record<CombinationEdition, Readonly<Record<DesignMethod, readonly Combination[]>>>> = {
  '7-16': { ASD: asd(1), LRFD: lrfd(0.5, 1.6) },
  '7-22': { ASD: asd(0.7), LRFD: lrfd(0.3, 1) },
}
