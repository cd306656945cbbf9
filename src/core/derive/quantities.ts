import { bagCount } from '../engineering/concrete/bagCount.ts'
import { bags } from '../engineering/tables/bags.ts'
import { swellRange, swellRangeUnknown } from '../engineering/tables/swell.ts'
import { waterUnitWeight } from '../engineering/tables/materials.ts'
import { buoyantWeight } from '../engineering/soil/buoyantWeight.ts'
import { weakest } from '../engineering/showing.ts'
import type { SourceId } from '../engineering/sources.ts'
import { holeCorners } from '../geometry/holeProfile.ts'
import { sweptVolume } from '../geometry/measure.ts'
import { postBetween } from '../geometry/leaningPost.ts'
import { type ConvexSolid, middleOf } from '../geometry/placed.ts'
import { level, type Surface } from '../geometry/surface.ts'
import { placedVolumeBelow, volumeBelow } from '../geometry/volumeBelow.ts'
import { fillKind } from '../kinds/index.ts'
import type { Supply } from '../model/kind.ts'
import type { Order, PierResult, QuantityLine } from '../model/result.ts'
import type { PierSpec } from '../model/spec.ts'
import { castRoles, nativeRoles, type Role } from '../model/solid.ts'
import type { Zone } from '../model/zone.ts'
import { type CubicMetres, cubicMetres, type Newtons, newtons, type UnitWeight } from '../units/quantity.ts'
import { bagMass } from './mix/bagMass.ts'
import type { PierFrame } from './pierFrame.ts'
import { weighing } from './unitWeights.ts'

/** Volume, weight and order of everything placed: each zone net of the bars, bolts and plates inside it. */
export function quantities(frame: PierFrame, zones: readonly Zone[]): QuantityLine[] {
  const { spec } = frame
  return zones
    .filter((zone) => !nativeRoles.has(zone.role))
    .map((zone) => {
      const displaced = displacedFrom(zone, zones, frame)
      const volume = cubicMetres(zone.volume.value - displaced.all)
      const wet = volume > 0 ? (volume / zone.volume.value) * wetVolume(zone, spec) : 0
      const weight = weighing(zone.role, spec)
      const parts = { dry: weight.moist as UnitWeight, saturated: weight.saturated as UnitWeight, water: waterUnitWeight.value }
      const order = orders(zone, volume, newtons(weight.moist * volume), frame)
      return {
        id: zone.id,
        zones: [zone.id],
        role: zone.role,
        volume: { value: volume, method: leaningTakes(frame, zone) ? 'integrated' : zone.volume.method },
        inHole: cubicMetres(castRoles.has(zone.role) ? zone.inHole - displaced.inHole : zone.inHole),
        weight: newtons(weight.moist * volume),
        buoyantWeight: buoyantWeight({ ...parts, above: cubicMetres(volume - wet), below: cubicMetres(wet) }),
        orders: order.list,
        sources: [weight.source, ...order.sources],
        standing: weakest(weight.standing),
      }
    })
}

/** What stands in a zone takes of its volume, and of its part in the hole [m3]. Steel takes nothing of mix that is placed by the bag. */
function displacedFrom(zone: Zone, zones: readonly Zone[], { spec, grade }: PierFrame): Readonly<{ all: number; inHole: number }> {
  const isCounted = zone.role === 'dry-mix' && 'bags' in spec.fill
  let [all, inHole] = [0, 0]
  for (const other of zones) {
    if (other.build !== 'placed' || (isCounted && other.role !== 'wood')) continue
    const taken = other.displaces[zone.id] ?? 0
    all += taken
    const below = other.leaning ? postBetween(other.leaning, null, grade) : belowGrade(other.solids, grade)
    inHole += Math.min(taken, Math.max(0, below - takenUnder(zone.id, other.displaces)))
  }
  return { all, inHole }
}

/** What it takes of the zones under one, which are listed first [m3]. */
function takenUnder(id: string, displaces: Readonly<Record<string, number>>): number {
  const ids = Object.keys(displaces)
  return ids.slice(0, Math.max(0, ids.indexOf(id))).reduce((sum, under) => sum + (displaces[under] ?? 0), 0)
}

/** Volume of placed parts below grade [m3], read for each part at its middle: exact for upright and level rods. */
const belowGrade = (solids: readonly ConvexSolid[], grade: Surface): number =>
  solids.reduce((sum, solid) => {
    const [x, , z] = middleOf(solid)
    return sum + placedVolumeBelow([solid], grade.a + grade.gx * x + grade.gz * z)
  }, 0)

/** What a leaning post takes off a lift is integrated. */
const leaningTakes = ({ leaning }: PierFrame, { build, id }: Zone): boolean => leaning !== null && build === 'swept' && id !== 'post'

function wetVolume(zone: Zone, { site }: PierSpec): number {
  if (site.waterTable === null) return 0
  return zone.build === 'placed'
    ? placedVolumeBelow(zone.solids, -site.waterTable)
    : volumeBelow(zone.corners, level(-site.waterTable), zone.breaks)
}

type Ordered = Readonly<{ list: readonly Order[]; sources: readonly SourceId[] }>

const baseSupply: Readonly<Partial<Record<Role, Supply>>> = { gravel: 'loose', concrete: 'ready-mix' }

/** How a zone is bought: the kind says so for its lifts; a base of gravel is bought loose, one of concrete as ready-mix. */
function orders(zone: Zone, volume: number, weight: Newtons, { spec, lifts }: PierFrame): Ordered {
  const isLift = lifts.some((lift) => lift.id === zone.id)
  const supply = isLift ? fillKind(spec.fill.kind).supply[zone.role] : zone.id === 'base' ? (baseSupply[zone.role] ?? 'none') : 'none'
  const extra = spec.concrete.waste
  const each = cubicMetres(volume * (1 + extra))
  const job = cubicMetres(each * spec.piers)
  if (supply === 'loose') return { list: [{ as: 'loose', each, job, extra }], sources: [] }
  if (supply === 'ready-mix' && zone.role !== 'concrete') return { list: [{ as: 'ready-mix', each, job, extra }], sources: [] }
  if (supply === 'ready-mix')
    return { list: [{ as: 'ready-mix', each, job, extra }, inBags(each, job, spec.concrete)], sources: ['bag-yields'] }
  if (supply === 'bags') {
    const mass = bagMass(spec, weight)
    return {
      list: [{ as: 'bags', bagSize: mass.bagSize, each: mass.each, job: mass.job, extra: mass.extra > 0 ? extra : 0 }],
      sources: ['bag-yields'],
    }
  }
  return { list: [], sources: [] }
}

/** Bags by the yield of mixed concrete on the label. */
function inBags(each: CubicMetres, job: CubicMetres, { bagSize, waste: extra }: PierSpec['concrete']): Order {
  const perBag = bags[bagSize].yield.value
  return { as: 'bags', bagSize, each: bagCount({ volume: each, yield: perBag }), job: bagCount({ volume: job, yield: perBag }), extra }
}

/** Below this share of the hole a difference of volumes is rounding, not a void. */
const roundingShare = 1e-9

/** The hole below grade, what is left empty in it, and the spoil from it: in the bank, and loose as a range for the soil class. */
export function holeAndSpoil({ spec, profile }: PierFrame, zones: readonly Zone[]): PierResult['hole'] {
  const volume = sweptVolume(holeCorners(profile))
  const filled = zones.reduce((sum, zone) => sum + zone.inHole, 0)
  const left = volume.value - filled
  const { soil } = spec.site
  const swell = soil.kind === 'presumptive' ? swellRange[soil.class] : swellRangeUnknown
  return {
    volume,
    void: cubicMetres(Math.abs(left) < roundingShare * volume.value ? 0 : left),
    spoilBank: volume.value,
    spoilLoose: { low: cubicMetres(volume.value * swell.low.value), high: cubicMetres(volume.value * swell.high.value) },
  }
}
