import type { PresumptiveClass, Soil } from '../../core/model/spec.ts'
import type { Role } from '../../core/model/solid.ts'

/** Marks that a cut face carries; one drawing rule each, on paper and in the picture. */
export const hatches = [
  'none',
  'concrete',
  'earth',
  'sand',
  'stones',
  'pebbles',
  'clay',
  'rock',
  'mortar',
  'grain',
  'steel',
  'broken-earth',
  'topsoil',
  'flowable',
] as const
export type Hatch = (typeof hatches)[number]

/** Marks of native ground by its class; a soil the user describes gets the general earth symbol. */
const groundHatch: Readonly<Record<PresumptiveClass, Hatch>> = {
  'crystalline-rock': 'rock',
  'foliated-rock': 'rock',
  gravel: 'pebbles',
  sand: 'sand',
  clay: 'clay',
}

const roleHatch: Readonly<Record<Exclude<Role, 'soil' | 'soil-lower'>, Hatch>> = {
  topsoil: 'topsoil',
  backfill: 'broken-earth',
  granular: 'stones',
  gravel: 'stones',
  mulch: 'topsoil',
  'dry-mix': 'mortar',
  concrete: 'concrete',
  'flowable-fill': 'flowable',
  wood: 'grain',
  bar: 'none',
  steel: 'steel',
}

/** Earth strokes stand for undisturbed ground whatever its class, so the class adds its own marks to them. */
export const hatchOfRole = (role: Role): Hatch => (role === 'soil' || role === 'soil-lower' ? 'earth' : roleHatch[role])
export const hatchOfGround = (soil: Soil): Hatch => (soil.kind === 'user' ? 'earth' : groundHatch[soil.class])
