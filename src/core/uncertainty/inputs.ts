import { soilValues } from '../derive/uplift/soilValues.ts'
import { tableProperties } from '../derive/properties.ts'
import type { PierSpec, Soil } from '../model/spec.ts'
import { places, usesConcrete } from '../spec/placement.ts'
import type { QuantityKind } from '../units/quantity.ts'

/** Figures of a pier that may come out otherwise than they were entered, in the order in which a pier is built. */
export const inputIds = [
  'friction-angle',
  'clay-strength',
  'user-friction',
  'blow-count',
  'soil-weight',
  'water-table',
  'hole-diameter',
  'bell-diameter',
  'hole-depth',
  'fill-height',
  'bar-height',
  'bar-off-middle',
  'bracket-embedment',
  'concrete-strength',
  'concrete-weight',
  'wood-gravity',
] as const
export type InputId = (typeof inputIds)[number]

/** How a draw changes a figure: times it, or added to it. The draw that changes nothing is 1, or 0. */
export type Input = Readonly<{
  id: InputId
  as: 'times' | 'plus'
  quantity: QuantityKind
  /** The figure as entered or as the tables have it; null where this pier has none. */
  figure: (spec: PierSpec) => number | null
}>

const soilsOf = ({ site }: PierSpec): readonly Soil[] => (site.lower ? [site.soil, site.lower.soil] : [site.soil])
/** The first soil that has a figure of this kind. */
const ofSoil = (spec: PierSpec, pick: (values: ReturnType<typeof soilValues>) => number | null): number | null =>
  soilsOf(spec).reduce<number | null>((found, soil) => found ?? pick(soilValues(soil)), null)

const row = (id: InputId, as: Input['as'], quantity: QuantityKind, figure: Input['figure']): Input => ({ id, as, quantity, figure })

export const inputs: readonly Input[] = [
  row('friction-angle', 'plus', 'angle', (spec) => ofSoil(spec, (values) => values.frictionAngle)),
  row('clay-strength', 'times', 'pressure', (spec) => ofSoil(spec, ({ cohesion }) => (cohesion ? cohesion : null))),
  row('user-friction', 'times', 'pressure', (spec) => ofSoil(spec, (values) => values.userFriction)),
  row('blow-count', 'times', 'count', (spec) => spec.site.blows),
  row('soil-weight', 'times', 'unitWeight', (spec) => tableProperties(spec).weighing('soil').moist),
  row('water-table', 'plus', 'length', (spec) => spec.site.waterTable),
  row('hole-diameter', 'plus', 'length', (spec) => spec.hole.diameter),
  row('bell-diameter', 'plus', 'length', (spec) => spec.hole.bell?.diameter ?? null),
  row('hole-depth', 'plus', 'length', (spec) => spec.hole.depth),
  row('fill-height', 'plus', 'length', ({ fill }) => ('height' in fill ? fill.height : null)),
  row('bar-height', 'plus', 'length', (spec) => spec.bars?.aboveFoot ?? null),
  row('bar-off-middle', 'plus', 'length', (spec) => (spec.bars ? 0 : null)),
  row('bracket-embedment', 'plus', 'length', ({ support }) => (support.kind === 'bracket' ? support.bracket.embedment : null)),
  row('concrete-strength', 'times', 'strength', (spec) => (usesConcrete(spec) ? spec.concrete.strength : null)),
  row('concrete-weight', 'times', 'unitWeight', (spec) =>
    usesConcrete(spec) ? tableProperties(spec).weighing(places(spec, 'concrete') ? 'concrete' : 'dry-mix').moist : null,
  ),
  row('wood-gravity', 'times', 'ratio', (spec) => tableProperties(spec).gravity),
]

/** Inputs that this pier has, in order. */
export const inputsOf = (spec: PierSpec): readonly Input[] => inputs.filter((input) => input.figure(spec) !== null)

/** One draw of every input. */
export type Draw = Record<InputId, number>

const unchanged = Object.fromEntries(inputs.map((input) => [input.id, input.as === 'times' ? 1 : 0])) as Draw

/** The draw that leaves a pier as it was entered, for the caller to change. */
export const asEntered = (): Draw => ({ ...unchanged })
