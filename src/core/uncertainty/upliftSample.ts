import { pierFrame } from '../derive/pierFrame.ts'
import { type Properties, tableProperties } from '../derive/properties.ts'
import type { Weighing } from '../derive/unitWeights.ts'
import { type Chain, chainOf } from '../derive/uplift/governing.ts'
import { studyLinks } from '../derive/uplift/chain.ts'
import type { SoilValues } from '../derive/uplift/soilValues.ts'
import { woodUnitWeight, postMoisture } from '../engineering/wood/woodUnitWeight.ts'
import type { Role } from '../model/solid.ts'
import type { Bracket, Concrete, Fill, PierSpec, Soil } from '../model/spec.ts'
import { metres, type Pascals, pascals, type Radians } from '../units/quantity.ts'
import type { Draw } from './inputs.ts'

/**
 * The chain of a pier that came out as drawn: the same links and rule for the governing one as `derivePier(spec).uplift`, of which nobody
 * asks the work, so that no zone is made.
 */
export function upliftSample(spec: PierSpec, draw: Readonly<Draw>, properties: Properties = tableProperties(spec)): Chain {
  const frame = pierFrame(drawnSpec(spec, draw))
  const drawn = drawnProperties(properties, draw, spec)
  return chainOf(studyLinks(frame, drawn), spec.judgement?.mechanism ?? null)
}

/** The pier with its sizes and its concrete as drawn. A bar off the middle of the post by e bears on its short side like one 2 e shorter. */
export function drawnSpec(spec: PierSpec, draw: Readonly<Draw>): PierSpec {
  const { site, hole, support, bars } = spec
  return {
    ...spec,
    site: {
      ...site,
      waterTable: site.waterTable === null ? null : metres(site.waterTable + draw['water-table']),
      blows: site.blows === null ? null : site.blows * draw['blow-count'],
    },
    hole: {
      ...hole,
      diameter: metres(hole.diameter + draw['hole-diameter']),
      depth: metres(hole.depth + draw['hole-depth']),
      bell: hole.bell && { ...hole.bell, diameter: metres(hole.bell.diameter + draw['bell-diameter']) },
    },
    support: support.kind === 'bracket' ? { ...support, bracket: drawnBracket(support.bracket, draw['bracket-embedment']) } : support,
    fill: drawnFill(spec.fill, draw['fill-height']),
    bars: bars && {
      ...bars,
      aboveFoot: metres(bars.aboveFoot + draw['bar-height']),
      length: metres(bars.length - 2 * draw['bar-off-middle']),
    },
    concrete: drawnConcrete(spec.concrete, draw['concrete-strength']),
  }
}

const drawnBracket = (bracket: Bracket, more: number): Bracket => ({ ...bracket, embedment: metres(bracket.embedment + more) })
const drawnFill = (fill: Fill, more: number): Fill => ('height' in fill ? { ...fill, height: metres(fill.height + more) } : fill)

const drawnConcrete = (concrete: Concrete, times: number): Concrete => {
  const { strength, cores } = concrete
  const drawnCores = cores && {
    first: pascals(cores.first * times),
    second: pascals(cores.second * times),
    third: pascals(cores.third * times),
  }
  return { ...concrete, strength: pascals(strength * times), cores: drawnCores }
}

const weighed = (weighing: Weighing, times: number): Weighing => ({
  ...weighing,
  moist: weighing.moist * times,
  saturated: weighing.saturated * times,
})

/** The figures of the tables looked up once, for a study that asks for them at every try. */
export function keptProperties(spec: PierSpec): Properties {
  const { gravity, weighing, soil } = tableProperties(spec)
  const weights = new Map<Role, Weighing>()
  const soils = new Map<Soil, SoilValues>()
  return {
    gravity,
    weighing: (role) => {
      const known = weights.get(role) ?? weighing(role)
      weights.set(role, known)
      return known
    },
    soil: (asked) => {
      const known = soils.get(asked) ?? soil(asked)
      soils.set(asked, known)
      return known
    },
  }
}

/** Materials as drawn. One draw holds for both soils of a site, and for soil above and below the water. */
export function drawnProperties(properties: Properties, draw: Readonly<Draw>, spec: PierSpec): Properties {
  const gravity = properties.gravity * draw['wood-gravity']
  const wood = woodUnitWeight({ gravity, moisture: postMoisture.light })
  const drawn: Partial<Record<Role, Weighing>> = {
    concrete: weighed(properties.weighing('concrete'), draw['concrete-weight']),
    'dry-mix': weighed(properties.weighing('dry-mix'), draw['concrete-weight']),
    soil: weighed(properties.weighing('soil'), draw['soil-weight']),
    'soil-lower': weighed(properties.weighing('soil-lower'), draw['soil-weight']),
    wood: { ...properties.weighing('wood'), moist: wood, saturated: wood },
  }
  const soil = drawnSoil(properties.soil(spec.site.soil), draw)
  const lower = spec.site.lower ? drawnSoil(properties.soil(spec.site.lower.soil), draw) : soil
  return {
    gravity,
    weighing: (role) => drawn[role] ?? properties.weighing(role),
    soil: (asked: Soil) => (asked === spec.site.soil ? soil : lower),
  }
}

const drawnSoil = (values: SoilValues, draw: Readonly<Draw>): SoilValues => {
  const times = (figure: Pascals | null, by: number) => (figure === null ? null : pascals(figure * by))
  const { frictionAngle } = values
  return {
    ...values,
    frictionAngle: frictionAngle === null ? null : ((frictionAngle + draw['friction-angle']) as Radians),
    cohesion: times(values.cohesion, draw['clay-strength']),
    userFriction: times(values.userFriction, draw['user-friction']),
  }
}
