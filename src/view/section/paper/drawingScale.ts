import type { UnitSystem } from '../../../core/units/quantity.ts'

/** Pixels of the drawn section to a millimetre on paper: its letters of 16 px have capitals of 2.5 mm. */
export const pixelsPerMillimetre = 4.2

/** Scales that drawings use, 1 to so many, the largest first. In the US they are so many inches to a foot. */
const ladder: Readonly<Record<UnitSystem, readonly number[]>> = {
  us: [4, 8, 12, 16, 24, 32, 48, 64, 96, 128],
  metric: [5, 10, 20, 25, 50, 100, 200],
}
const inchesToTheFoot: Readonly<Record<number, string>> = {
  4: '3',
  8: '1 1/2',
  12: '1',
  16: '3/4',
  24: '1/2',
  32: '3/8',
  48: '1/4',
  64: '3/16',
  96: '1/8',
  128: '3/32',
}

/** The scales as pixels to a metre. */
export const paperScales = (units: UnitSystem): number[] => ladder[units].map((scale) => (1000 * pixelsPerMillimetre) / scale)

/** 1 to so many, from pixels to a metre. */
export const scaleOf = (perMetre: number): number => Math.round(((1000 * pixelsPerMillimetre) / perMetre) * 1000) / 1000

/** `3/4" = 1'-0" (1:16)`, or `1:20`. */
export function scaleWords(scale: number, units: UnitSystem): string {
  const inches = units === 'us' ? inchesToTheFoot[scale] : undefined
  return inches === undefined ? `1:${scale}` : `${inches}" = 1'-0" (1:${scale})`
}

/** A bar of `parts` equal parts of `step` metres each; the first is split again into `fine`, to the left of nought. */
export type ScaleBar = Readonly<{ step: number; parts: number; fine: number }>

const steps: Readonly<Record<UnitSystem, readonly ScaleBar[]>> = {
  us: [
    { step: 0.0762, parts: 4, fine: 3 },
    { step: 0.1524, parts: 3, fine: 6 },
    { step: 0.3048, parts: 3, fine: 4 },
    { step: 0.6096, parts: 3, fine: 4 },
    { step: 1.524, parts: 2, fine: 5 },
    { step: 3.048, parts: 2, fine: 5 },
  ],
  metric: [
    { step: 0.05, parts: 4, fine: 5 },
    { step: 0.1, parts: 4, fine: 5 },
    { step: 0.2, parts: 4, fine: 4 },
    { step: 0.5, parts: 2, fine: 5 },
    { step: 1, parts: 2, fine: 5 },
    { step: 2, parts: 2, fine: 4 },
  ],
}

/** The bar whose length on paper is nearest to `wanted` pixels. */
export function scaleBar(perMetre: number, units: UnitSystem, wanted: number): ScaleBar {
  const misses = (bar: ScaleBar): number => Math.abs(Math.log(((bar.parts + 1) * bar.step * perMetre) / wanted))
  return steps[units].reduce((best, bar) => (misses(bar) < misses(best) ? bar : best))
}
