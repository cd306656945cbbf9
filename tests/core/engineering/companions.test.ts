import { readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import katex from 'katex'
import { describe, expect, it } from 'vitest'
import type { Recipe } from '../../../src/core/engineering/showing.ts'
import { sources } from '../../../src/core/engineering/sources.ts'

const home = join(dirname(fileURLToPath(import.meta.url)), '../../../src/core/engineering')
const folders = ['soil', 'wood', 'concrete', 'loads', 'detail', 'moisture', 'mix', 'life']
const files = folders.flatMap((folder) => readdirSync(join(home, folder)).map((file) => join(home, folder, file)))

/** Give a whole verdict or a set of numbers, each of which is shown by another of the same file or by what uses it. */
const without = new Set([
  'barDowelProblem',
  'barDowelValue',
  'sidePlateProblem',
  'knifePlateProblem', // set up the yield equations, which show themselves
  'tabulatedBearing',
  'bagCount', // a rounding of what is shown
  'moistureDeficit', // goes into the start of ponding, which is shown
  'effectiveStress',
  'plainStress', // a stress inside what is shown
  'stressBreaks',
  'sideFrictionByBeta', // layers; the caller shows beta, mean stress and length
  'soilWeights',
  'governingLoads',
  'treatmentClass',
  'freezeThawClass',
  'jointGapAt', // one place along a joint that is shown at its top
  'wettingBand', // two wettings, each shown
  'soilWetnessAt',
  'woodWetness',
  'waterPath',
  'fallAway',
  'splashBand', // classes and lengths read off a table
  'waterCementAtDepth', // the local ratio or nothing
  'strengthRatio', // shown with the hydration that water allows
  'seededNoise',
  'dryPourScatter',
  'scatterField', // a picture, never a result
  'weatherFlags',
  'waterCementForStrength',
  'airForExposure', // read off a table
  'factorsOutside',
  'estimatedLifeBand', // two estimates, each shown
  'zeroFailureCount', // the bound as a count
  'scaleOfMedian',
  'shareSoundBand', // corners of the curve that is shown
  'monthShare',
  'decayHazard',
  'evidenceBand',
  'lifeBand',
  'steepestOf', // what a row leaves open
  'failedInterval', // found by halving
  'referenceLife', // what a row may say
  'timesBefore',
  'replacementTimes',
  'methodCostBand', // two costs, each shown
])

type Named = Readonly<{ name: string; recipe: Recipe<Record<string, unknown>, number | null> }>
const modules: readonly (readonly [file: string, text: string, exports: Readonly<Record<string, unknown>>])[] = await Promise.all(
  files.map(
    async (file) =>
      [file.slice(home.length + 1), readFileSync(file, 'utf8'), (await import(file)) as Readonly<Record<string, unknown>>] as const,
  ),
)
const shown: readonly Named[] = modules.flatMap(([, , exports]) =>
  Object.entries(exports).flatMap(([name, value]) =>
    typeof value === 'function' && 'recipe' in value ? [{ name, recipe: value.recipe as Named['recipe'] }] : [],
  ),
)

describe('every calculation can show its work', () => {
  it.each(modules)('%s', (_, text) => {
    // The formatter ends a recipe at the indent at which it began.
    const recipes = [...text.matchAll(/^( *).*showing\(\{$[\s\S]*?^\1\}\)$/gm)].map(([recipe]) => recipe).join('\n')
    for (const [, name = ''] of text.matchAll(/export function (\w+)/g)) {
      if (!without.has(name)) expect(recipes, name).toMatch(new RegExp(`\\b${name}\\b`))
    }
  })

  it('sees them all', () => expect(shown.length).toBeGreaterThan(90))

  it('no two share an id', () => {
    const ids = shown.map(({ recipe }) => recipe.id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[A-Za-z0-9]+)*$/)
  })

  it.each(shown.map(({ name, recipe }) => [name, recipe] as const))('%s sets in TeX and names known sources', (_, recipe) => {
    const set = (tex: string) => katex.renderToString(tex, { throwOnError: true, strict: 'error', output: 'mathml' })
    if (typeof recipe.formula === 'string') {
      expect(recipe.formula).not.toBe('')
      set(recipe.formula)
    }
    for (const term of Object.values(recipe.terms)) if (term) set(term[0])
    expect(recipe.sources.length).toBeGreaterThan(0)
    for (const id of recipe.sources) expect(id in sources).toBe(true)
  })
})
