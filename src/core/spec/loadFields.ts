import { choiceField, numberField, partField } from '../model/fieldMakers.ts'
import type { Field } from '../model/field.ts'
import type { EnteredLoads, LoadEstimate, PierSpec } from '../model/spec.ts'
import { toSI, type UnitId } from '../units/factors.ts'
import { metres, newtons, pascals, radians } from '../units/quantity.ts'

const feet = (value: number) => metres(toSI(value, 'ft'))
const psf = (value: number) => pascals(toSI(value, 'psf'))

/** Where a load from the drawing starts: an invented open shed, to be typed over. */
export const firstEntered: EnteredLoads = {
  uplift: newtons(toSI(800, 'lb')),
  gravity: newtons(toSI(4000, 'lb')),
  lateral: newtons(toSI(400, 'lb')),
  lateralHeight: feet(8),
}
/** Where an estimate starts: an invented open shed of 24 ft span. */
export const firstEstimate: LoadEstimate = {
  roof: 'free-pitched',
  flow: 'clear',
  span: feet(24),
  bay: feet(12),
  overhang: feet(0),
  roofAngle: radians(toSI(18.43, 'deg')),
  roofHeight: feet(12),
  edition: '7-16',
  speed: toSI(115, 'mph') as LoadEstimate['speed'],
  exposure: 'C',
  elevation: feet(0),
  topographic: 1,
  deadLoad: psf(5),
  roofLive: psf(20),
  groundSnow: psf(30),
}

const entered = { shown: (spec: PierSpec) => spec.loads.entered !== null }
const estimated = { shown: (spec: PierSpec) => spec.loads.estimate !== null }
const freeRoof = { shown: (spec: PierSpec) => spec.loads.estimate?.roof.startsWith('free') ?? false }

const force = (path: string, to: number) =>
  numberField(path, 'loads', 'force', { from: 0, to, in: 'lb', step: 50, metric: 0.2, metricUnit: 'kN' }, entered)
/** Lengths of buildings are told in feet or in metres. */
const told = { us: 'ft', metric: 'm' } as const
const height = (path: string, from: number, to: number, shown: typeof entered, step = 0.5, metric = 0.1) =>
  numberField(path, 'loads', 'length', { from, to, in: 'ft', step, metric, metricUnit: 'm' }, { ...shown, unit: told })
const pressure = (path: string, to: number) =>
  numberField(path, 'loads', 'pressure', { from: 0, to, in: 'psf', step: 1, metric: 0.1, metricUnit: 'kPa' }, estimated)
const number = (
  path: string,
  quantity: 'speed' | 'angle',
  from: number,
  to: number,
  unit: UnitId,
  step: number,
  metric: number,
  metricUnit: UnitId,
) => numberField(path, 'loads', quantity, { from, to, in: unit, step, metric, metricUnit }, estimated)

/** Loads from the drawing, then what an estimate is made from. Bounds are those of the tool, set here; no source. */
export const loadFields: readonly Field[] = [
  partField('loads.entered', 'loads', firstEntered),
  force('loads.entered.uplift', 40_000),
  force('loads.entered.gravity', 100_000),
  force('loads.entered.lateral', 20_000),
  height('loads.entered.lateralHeight', 0, 40, entered),
  partField('loads.estimate', 'loads', firstEstimate),
  choiceField(
    'loads.estimate.roof',
    'loads',
    ['free-monoslope', 'free-pitched', 'free-troughed', 'enclosed', 'partially-enclosed'],
    estimated,
  ),
  choiceField('loads.estimate.flow', 'loads', ['clear', 'obstructed'], freeRoof),
  height('loads.estimate.span', 6, 100, estimated),
  height('loads.estimate.bay', 4, 30, estimated),
  height('loads.estimate.overhang', 0, 6, estimated),
  number('loads.estimate.roofAngle', 'angle', 0, 45, 'deg', 1, 1, 'deg'),
  height('loads.estimate.roofHeight', 6, 30, estimated),
  choiceField('loads.estimate.edition', 'loads', ['7-16', '7-22'], estimated),
  number('loads.estimate.speed', 'speed', 60, 220, 'mph', 5, 2, 'm/s'),
  choiceField('loads.estimate.exposure', 'loads', ['B', 'C', 'D'], estimated),
  height('loads.estimate.elevation', 0, 12_000, estimated, 100, 50),
  numberField(
    'loads.estimate.topographic',
    'loads',
    'ratio',
    { from: 1, to: 3, in: '1', step: 0.05, metric: 0.05, metricUnit: '1' },
    { ...estimated, unit: { us: '1', metric: '1' } },
  ),
  pressure('loads.estimate.deadLoad', 50),
  pressure('loads.estimate.roofLive', 30),
  pressure('loads.estimate.groundSnow', 150),
]
