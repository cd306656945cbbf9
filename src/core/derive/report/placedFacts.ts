import type { Fact, FactFigure } from '../../model/fact.ts'
import type { Contact } from '../../model/kind.ts'
import type { PierResult } from '../../model/result.ts'
import { fact, figure, figureOf } from './fact.ts'

/** Headline numbers in order of display. */
export const headlineFacts = ({ headlines }: PierResult): Fact[] =>
  headlines.map((worked) =>
    fact({
      id: worked.id,
      group: 'headline',
      value: figureOf(worked),
      figures:
        worked.id === 'mix-volume' ? worked.inputs.map(({ name, value, quantity }) => ({ id: name, value: figure(value, quantity) })) : [],
      standing: worked.standing,
      sources: worked.sources,
      work: { steps: [], value: worked, limit: null },
    }),
  )

/** What lies in the hole: volume, with its weights and the ways to buy it. */
export const quantityFacts = ({ quantities }: PierResult): Fact[] =>
  quantities.map((line) =>
    fact({
      id: line.id,
      group: 'quantity',
      value: figure(line.volume.value, 'volume'),
      standing: line.standing,
      sources: line.sources,
      drawn: line.zones,
      role: line.role,
      orders: line.orders,
      figures: [
        { id: 'weight', value: figure(line.weight, 'weight') },
        { id: 'weight-in-water', value: figure(line.buoyantWeight, 'weight') },
      ],
    }),
  )

/** Below this a volume left empty is none [m3]. */
const leastVoid = 1e-6

/** The hole, what is dug out of it, in the bank and loose, and what is left empty in it, if anything is. */
export function holeFacts({ hole }: PierResult): Fact[] {
  const { spoilLoose } = hole
  const of = (id: string, value: Fact['value']): Fact => fact({ id, group: 'hole', value })
  return [
    of('hole-volume', figure(hole.volume.value, 'volume')),
    of('spoil-bank', figure(hole.spoilBank, 'volume')),
    of('spoil-loose', { as: 'range', ...spoilLoose, quantity: 'volume' }),
    ...(hole.void > leastVoid ? [of('void', figure(hole.void, 'volume'))] : []),
  ]
}

/** Depth of what bears [m], at the three places that rules measure from. */
export const depthFacts = ({ depths }: PierResult): Fact[] =>
  (
    [
      ['uphill', depths.bearingAtUphillEdge],
      ['axis', depths.bearingAtAxis],
      ['downhill', depths.bearingAtDownhillEdge],
    ] as const
  ).map(([id, depth]) => fact({ id, group: 'depth', value: figure(depth, 'length') }))

/** What may touch the wood, from the top down, as it mostly lies. */
const contacts: readonly Contact[] = ['air', 'native-soil', 'backfill', 'granular', 'flowable-fill', 'concrete', 'dry-mix', 'gravel']
/** Less than this touches nothing: [m], [m2]. */
const leastContact = { length: 1e-6, area: 1e-9 } as const

const touching = (by: Readonly<Partial<Record<Contact, number>>>, quantity: 'length' | 'area'): FactFigure[] =>
  contacts.flatMap((id) => ((by[id] ?? 0) > leastContact[quantity] ? [{ id, value: figure(by[id] ?? 0, quantity) }] : []))

/** What of a line of wood stands in concrete above grade. */
export const inConcreteAbove = 'in-concrete-above-grade'

/** Wood below grade by what touches it: down each side of the post, then by area. */
export function exposureFacts({ exposure }: PierResult): Fact[] {
  const lines = exposure.lines.map(({ side, belowGrade, by, inConcreteAboveGrade: above }) =>
    fact({
      id: side,
      group: 'exposure',
      value: figure(belowGrade, 'length'),
      figures: [
        ...touching(by, 'length'),
        ...(above > leastContact.length ? [{ id: inConcreteAbove, value: figure(above, 'length') }] : []),
      ],
      drawn: ['post'],
    }),
  )
  const area = figure(exposure.areaBelowGrade, 'area')
  return [
    ...lines,
    fact({ id: 'wood-area', group: 'exposure-area', value: area, figures: touching(exposure.area, 'area'), drawn: ['post'] }),
  ]
}
