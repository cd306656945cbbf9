import type { Field } from '../model/field.ts'
import type { PierSpec, Soil } from '../model/spec.ts'
import { metres } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { choiceField, countField, inches, numberField, partField } from '../model/fieldMakers.ts'

export const presumptiveClasses = ['crystalline-rock', 'foliated-rock', 'gravel', 'sand', 'clay'] as const

/** One soil: a presumptive class, or values that the user answers for. `soil` picks it out of the spec; null when absent. */
const soilFields = (path: string, soil: (spec: PierSpec) => Soil | null): readonly Field[] => {
  const present = { shown: (spec: PierSpec) => soil(spec) !== null }
  const presumptive = { shown: (spec: PierSpec) => soil(spec)?.kind === 'presumptive' }
  const user = { shown: (spec: PierSpec) => soil(spec)?.kind === 'user' }
  const pressure = (name: string, from: number, to: number, step: number) =>
    numberField(`${path}.${name}`, 'site', 'pressure', { from, to, in: 'psf', step, metric: step >= 100 ? 5 : 1, metricUnit: 'kPa' }, user)
  return [
    choiceField(`${path}.kind`, 'site', ['presumptive', 'user'], present),
    choiceField(`${path}.class`, 'site', presumptiveClasses, presumptive),
    numberField(
      `${path}.unitWeight`,
      'site',
      'unitWeight',
      { from: 60, to: 180, in: 'pcf', step: 1, metric: 0.1, metricUnit: 'kN/m3' },
      user,
    ),
    numberField(`${path}.frictionAngle`, 'site', 'angle', { from: 0, to: 50, in: 'deg', step: 1, metric: 1, metricUnit: 'deg' }, user),
    pressure('cohesion', 0, 10_000, 50),
    pressure('allowableBearing', 100, 40_000, 100),
    numberField(`${path}.lateral`, 'site', 'gradient', { from: 0, to: 2400, in: 'psf/ft', step: 10, metric: 1, metricUnit: 'kPa/m' }, user),
    pressure('sideFriction', 0, 5_000, 10),
  ]
}

const lowerLayer = { from: metres(toSI(36, 'in')), soil: { kind: 'presumptive', class: 'clay' } }

/** Ground, slope, water and frost, from the top down. Bounds are those of the tool, set here; no source. */
export const siteFields: readonly Field[] = [
  ...soilFields('site.soil', (spec) => spec.site.soil),
  inches('site.topsoil', 'site', 0, 36, 1),
  partField('site.lower', 'site', lowerLayer),
  inches('site.lower.from', 'site', 6, 144, 1, { shown: (spec) => spec.site.lower !== null }),
  ...soilFields('site.lower.soil', (spec) => spec.site.lower?.soil ?? null),
  numberField('site.slope', 'site', 'slope', { from: 0, to: 50, in: '%', step: 1, metric: 1, metricUnit: '%' }),
  numberField('site.downhill', 'site', 'angle', { from: 0, to: 360, in: 'deg', step: 15, metric: 15, metricUnit: 'deg' }),
  inches('site.waterTable', 'site', 0, 240, 1, { nullable: true }),
  inches('site.frostDepth', 'site', 0, 96, 1),
  countField('site.blows', 'site', 1, 100, { nullable: true }),
  inches('site.slopeHeight', 'site', 12, 1200, 12, { nullable: true, shown: ({ site }) => site.slope > 0 }),
  choiceField('site.weathering', 'site', ['negligible', 'moderate', 'severe']),
  inches('spacing', 'site', 12, 600, 6, { nullable: true }),
  choiceField('sideways.ground', 'site', ['as-tabulated', 'doubled']),
  choiceField('sideways.top', 'site', ['free', 'held-at-grade']),
]
