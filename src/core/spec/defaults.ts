import type { PierDocument, PierSpec } from '../model/spec.ts'
import { metres, pascals, radians, slope } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { deepFreeze } from './freeze.ts'
import { firstLife } from './lifeFields.ts'
import { firstPlacing } from './placingFields.ts'
import { firstBars } from './steelFields.ts'
import { firstWater } from './waterFields.ts'

const inch = (value: number) => metres(toSI(value, 'in'))

/**
 * A finished pier to start from: mixed concrete full height, one bar, a crown, on a gentle slope. The sizes are a scenario of
 * this project, not a design.
 */
export const defaultSpec: PierSpec = deepFreeze<PierSpec>({
  site: {
    soil: { kind: 'presumptive', class: 'sand' },
    lower: null,
    topsoil: inch(6),
    slope: slope(toSI(8, '%')),
    downhill: radians(0),
    waterTable: null,
    frostDepth: inch(42),
    blows: null,
    slopeHeight: null,
    weathering: 'severe',
  },
  hole: { diameter: inch(20), depth: inch(48), bell: null, flare: null, base: null },
  post: { section: '6x6', species: 'southern-pine', treatment: 'UC4B', heightAboveGrade: inch(120), lean: radians(0) },
  support: { kind: 'embedded', foot: inch(6) },
  fill: { kind: 'mixed-full-height' },
  bars: firstBars,
  verticalBars: null,
  top: { shape: 'crowned', rise: inch(1.5), rim: inch(2), heaped: inch(0) },
  concrete: { strength: pascals(toSI(3500, 'psi')), unitWeight: 'plain', bagSize: 80, waste: toSI(10, '%'), cores: null },
  placing: firstPlacing,
  water: firstWater,
  piers: 1,
  loads: { entered: null, estimate: null },
  sideways: { ground: 'as-tabulated', top: 'free' },
  spacing: null,
  code: 'irc-2012-2018',
  judgement: null,
  callout: null,
  life: firstLife,
  costs: null,
})

export const defaultDocument: PierDocument = deepFreeze<PierDocument>({ spec: defaultSpec, written: {}, name: '', note: '' })
