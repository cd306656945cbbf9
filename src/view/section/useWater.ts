import { useEffect, useState } from 'react'
import type { waterAndYears } from './waterAndYears.ts'

/** What shows water and years. It is large, so the page opens without it. */
export type WaterParts = typeof waterAndYears
let fetched: WaterParts | null = null

/** Handed in by the file that holds it, whoever has fetched that. */
export const offerWater = (water: WaterParts): void => {
  fetched = water
}

/** What shows water and years, for who is not drawn by React; null before it has been fetched. */
export const waterNow = (): WaterParts | null => fetched

/** What shows water and years: fetched when it is asked for, null until it is there. */
export function useWater(isAsked: boolean): WaterParts | null {
  const [water, setWater] = useState(fetched)
  useEffect(() => {
    if (isAsked && !water) void import('./waterAndYears.ts').then(() => setWater(fetched))
  }, [isAsked, water])
  return water
}
