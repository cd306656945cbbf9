import type { Field } from '../model/field.ts'
import type { Bracket, Fill } from '../model/spec.ts'
import { metres } from '../units/quantity.ts'

// Stand-in until core/kinds lands: the records' ids, supports, own fields and defaults only.
const inch = 0.0254
const length = (path: string, group: Field['group'], min: number, max: number, step: number): Field => ({
  path,
  group,
  type: 'number',
  quantity: 'length',
  min: (min * 127) / 5000,
  max: (max * 127) / 5000,
  step: { us: step * inch, metric: step >= 1 ? 0.01 : 0.001 },
})
type FillStub = Readonly<{
  id: Fill['kind']
  support: 'embedded' | 'bracket'
  fields: readonly Field[]
  defaults: Fill
  hasTop: boolean
  supply: Readonly<Record<string, string>>
}>
export const fillKinds: readonly FillStub[] = [
  {
    id: 'dry-bag-at-foot',
    support: 'embedded',
    hasTop: false,
    supply: { 'dry-mix': 'bags', backfill: 'none' },
    defaults: { kind: 'dry-bag-at-foot', bags: 1, bagSize: 80 },
    fields: [
      { path: 'fill.bags', group: 'fill', type: 'number', quantity: 'count', min: 1, max: 20, step: { us: 1, metric: 1 } },
      { path: 'fill.bagSize', group: 'fill', type: 'choice', choices: [50, 60, 80] },
    ],
  },
  {
    id: 'dry-full-height',
    support: 'embedded',
    hasTop: true,
    supply: { 'dry-mix': 'bags' },
    defaults: { kind: 'dry-full-height' },
    fields: [],
  },
  {
    id: 'mixed-full-height',
    support: 'embedded',
    hasTop: true,
    supply: { concrete: 'ready-mix' },
    defaults: { kind: 'mixed-full-height' },
    fields: [],
  },
  {
    id: 'mixed-collar',
    support: 'embedded',
    hasTop: false,
    supply: { concrete: 'ready-mix', backfill: 'none' },
    defaults: { kind: 'mixed-collar', height: metres(18 * inch) },
    fields: [length('fill.height', 'fill', 4, 96, 1)],
  },
  {
    id: 'mixed-bracket-pier',
    support: 'bracket',
    hasTop: true,
    supply: { concrete: 'ready-mix' },
    defaults: { kind: 'mixed-bracket-pier' },
    fields: [],
  },
  {
    id: 'granular-on-pad',
    support: 'embedded',
    hasTop: false,
    supply: { concrete: 'ready-mix', granular: 'loose' },
    defaults: { kind: 'granular-on-pad', pad: metres(6 * inch) },
    fields: [length('fill.pad', 'fill', 4, 24, 1)],
  },
  {
    id: 'flowable-fill',
    support: 'embedded',
    hasTop: false,
    supply: { 'flowable-fill': 'ready-mix' },
    defaults: { kind: 'flowable-fill' },
    fields: [],
  },
]
const steel = (minBolts: number, maxBolts: number): readonly Field[] => [
  length('support.bracket.plateThickness', 'steel', 0.125, 0.75, 1 / 16),
  length('support.bracket.boltDiameter', 'steel', 0.5, 1, 1 / 8),
  {
    path: 'support.bracket.boltCount',
    group: 'steel',
    type: 'number',
    quantity: 'count',
    min: minBolts,
    max: maxBolts,
    step: { us: 1, metric: 1 },
  },
  length('support.bracket.embedment', 'steel', 4, 48, 1),
]
const bracket = (kind: Bracket['kind']): Bracket => ({
  kind,
  plateThickness: metres(0.25 * inch),
  boltDiameter: metres(0.625 * inch),
  boltCount: 2,
  embedment: metres(12 * inch),
})
export const bracketKinds: readonly Readonly<{ id: Bracket['kind']; fields: readonly Field[]; defaults: Bracket }>[] = [
  { id: 'side-plates', fields: steel(1, 4), defaults: bracket('side-plates') },
  { id: 'knife-plate', fields: steel(1, 4), defaults: bracket('knife-plate') },
  { id: 'base-plate', fields: steel(2, 4), defaults: bracket('base-plate') },
]
