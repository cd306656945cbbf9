import { seededNoise } from './seededNoise.ts'

/** What a place in a dry pour may have turned into, best first. Classes of a picture: nothing is measured or counted. */
export const scatterClasses = ['sound', 'weak', 'crumbly', 'powder'] as const
export type ScatterClass = (typeof scatterClasses)[number]

type Inputs = Readonly<{
  /** Whole number; the same seed gives the same picture. */
  seed: number
  /** Shortest and longest depth wetted, as shares of the height of the mix [1], 0 to 1. */
  wetted: Readonly<{ shortest: number; longest: number }>
}>

/** Steps of the grid across the mix, and down it. */
const grain = { across: 3, down: 5 } as const

/**
 * One way in which a dry pour wetted from the top may have turned out. An illustration: no share, chance or strength
 * comes out of it, and two seeds are two pictures, not a sample.
 * @param seed whole number [1]
 * @param wetted shortest and longest depth wetted, shares of the height [1]
 * @returns a function from place (share of the way from post to wall [1], share of the way from the top down [1]) to a class
 * Formula: the front lies between shortest and longest by noise; below it powder, just above it crumbly, above that sound with weak patches
 * Valid: as a picture. Outside: never as a result.
 * Source: assumption
 * Checked by: tests/core/engineering/mix/dryPourScatter.test.ts
 */
export function dryPourScatter({ seed, wetted }: Inputs): (across: number, down: number) => ScatterClass {
  const { shortest, longest } = wetted
  return (across, down) => {
    const front = shortest + (longest - shortest) * seededNoise(seed, across * grain.across, 0)
    if (down > front) return 'powder'
    if (down > front - 0.12 * front) return 'crumbly'
    const patch = seededNoise(seed + 1, across * grain.across, down * grain.down)
    if (patch > 0.82) return 'crumbly'
    return patch > 0.55 ? 'weak' : 'sound'
  }
}

type FieldInputs = Inputs & Readonly<{ rows: number; columns: number }>

/**
 * The same picture as a raster.
 * @param seed whole number [1]
 * @param wetted shortest and longest depth wetted, shares of the height [1]
 * @param rows from the top down [1], positive
 * @param columns from the post to the wall [1], positive
 * @returns classes at the middles of the cells; shape [rows][columns]
 * Formula: as above
 * Valid: as a picture. Outside: never as a result.
 * Source: assumption
 * Checked by: tests/core/engineering/mix/dryPourScatter.test.ts
 */
export function scatterField({ seed, wetted, rows, columns }: FieldInputs): readonly (readonly ScatterClass[])[] {
  const classAt = dryPourScatter({ seed, wetted })
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => classAt((column + 0.5) / columns, (row + 0.5) / rows)),
  )
}
