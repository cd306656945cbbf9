import { workedHydrationWater } from '../../engineering/mix/hydrationWater.ts'
import { localWaterCement, spaceRatio, workedSpaceRatio } from '../../engineering/mix/localWaterCement.ts'
import { placedStrengthRatio } from '../../engineering/mix/gelSpace.ts'
import { workedVoidShare, workedVoidWater } from '../../engineering/mix/voidShare.ts'
import { workedWettingDepth, wettingBand, wettingRanges } from '../../engineering/moisture/wettingDepth.ts'
import { bags, dryMixPerVolume } from '../../engineering/tables/bags.ts'
import { dryMixTrial } from '../../engineering/tables/dryMixTrial.ts'
import { cementPerVolume, gelSpaceExponent, hydrationWaterShares, looseMix, referenceMix } from '../../engineering/tables/hydration.ts'
import { waterUnitWeight } from '../../engineering/tables/materials.ts'
import { weakest } from '../../engineering/showing.ts'
import { surfaceOf } from '../../geometry/fillStack.ts'
import { fillKind } from '../../kinds/index.ts'
import type { BagMass, Band, DryMix } from '../../model/timeResult.ts'
import type { Worked } from '../../model/worked.ts'
import { cubicMetres, metres, newtons, squareMetres } from '../../units/quantity.ts'
import type { PierFrame } from '../pierFrame.ts'
import { pierZones } from '../pierZones.ts'
import { quantities } from '../quantities.ts'
import { bagMass } from './bagMass.ts'

/** Share of the cement that has hydrated where water is no limit: as far as the mix it is held against, and all of it. Assumed here. */
const hydration = { low: referenceMix.hydration.value, high: 1 } as const
const water = waterUnitWeight.value
/** Cement in dry mix by weight, as mixed concrete of the same kind has it. Source: cement-content, bag-yields. */
const cementShare = cementPerVolume.usual.value / dryMixPerVolume.value

/** Mix that was placed dry, by balance of water and the gel-space law. Null where none was, or where it has no room for water. */
export function dryMix(frame: PierFrame): DryMix | null {
  const { spec } = frame
  const index = frame.lifts.findIndex((lift) => lift.role === 'dry-mix')
  const lift = frame.lifts[index]
  const line = lift && quantities(frame, pierZones(frame)).find((one) => one.id === lift.id)
  if (lift === undefined || line === undefined) return null
  const below = index > 0 ? frame.lifts[index - 1] : undefined
  const from = below ? surfaceOf(frame.profile, below.to).a : frame.fillBottom
  const to = surfaceOf(frame.profile, lift.to).a
  const height = metres(to - from)
  const bulk = spec.placing.looseWeight
  const use = { standings: ['assumed here' as const] }
  const voids = workedVoidShare({ bulk, solidsGravity: looseMix.solidsGravity.value, water }, use)
  const space = spaceRatio({ bulk, solidsGravity: looseMix.solidsGravity.value, cementShare, water })
  if (voids === null || space === null || !(height > 0)) return null
  const volume = line.volume.value
  const mass = bagMass(spec, line.weight)
  const pack = { voids: voids.value, bulk, cementShare, water }
  const wetted = fillKind(spec.fill.kind).wetting ?? 'by-the-ground'
  const poured = wetted === 'from-the-top' ? spec.placing.poured : cubicMetres(0)
  const wetting = wettingOf({ poured, area: squareMetres(volume / height), voids: voids.value, height })
  const spaceWorked = workedSpaceRatio({ bulk, solidsGravity: looseMix.solidsGravity.value, cementShare, water }, use)
  const needs = [...waterNeeds(mass), workedVoidWater({ volume: cubicMetres(volume), voids: voids.value }, use)]
  const strength = strengthIn(space)
  return {
    as: 'dry',
    wetted,
    needs,
    mass,
    poured,
    height,
    from: metres(from),
    to: metres(to),
    wetting,
    layers: layersOf({ from, to, wetting, pack, strength, isSoaked: wetted === 'by-the-ground' }),
    trial: dryMixTrial,
    worked: [voids, ...(spaceWorked ? [spaceWorked] : []), ...needs, ...(wetting ? [wetting.shortest, wetting.longest] : [])],
  }
}

/** Water for the mix in one hole: to hydrate its cement, and what so many bags ask to be mixed with. */
function waterNeeds({ bagSize, placed: dry }: BagMass): Worked[] {
  const cement = newtons(cementShare * dry)
  const { boundAndGel } = hydrationWaterShares
  const hydrate = workedHydrationWater(
    { cement, share: boundAndGel.value, water },
    { standings: [boundAndGel.standing, cementPerVolume.usual.standing], sources: ['cement-content'] },
  )
  const bag = bags[bagSize]
  const count = dry / bag.weight.value
  const label = bag.water
    ? ([bag.water.low, bag.water.high] as const).map(
        (each, index): Worked => ({
          id: index === 0 ? 'label-water-least' : 'label-water-most',
          value: count * each.value,
          quantity: 'volume',
          formula: String.raw`V = \frac{W}{W_{bag}}\,v_{bag}`,
          inputs: [
            { symbol: 'W', name: 'dryMix', value: dry, quantity: 'weight' },
            { symbol: 'W_{bag}', name: 'bag', value: bag.weight.value, quantity: 'weight' },
            { symbol: 'v_{bag}', name: 'bagWater', value: each.value, quantity: 'volume' },
          ],
          sources: [each.source],
          standing: weakest(each.standing, 'assumed here'),
        }),
      )
    : []
  return [hydrate, ...label]
}

type Poured = Readonly<{
  poured: ReturnType<typeof cubicMetres>
  area: ReturnType<typeof squareMetres>
  voids: number
  height: DryMix['height']
}>

/** Least and most that poured water wets; null where none is poured. */
function wettingOf(site: Poured): DryMix['wetting'] {
  const { saturation, loss } = wettingRanges
  const range = { low: saturation.low.value, high: saturation.high.value }
  const lost = { low: loss.low.value, high: loss.high.value }
  const band = site.poured > 0 ? wettingBand({ ...site, loss: lost, saturation: range }) : null
  if (band === null) return null
  const use = (id: string) => ({ id, standings: ['assumed here' as const] })
  const shortest = workedWettingDepth({ ...site, loss: lost.high, saturation: range.high }, use('wetting-shortest'))
  const longest = workedWettingDepth({ ...site, loss: lost.low, saturation: range.low }, use('wetting-longest'))
  if (shortest === null || longest === null) return null
  const reachesFoot = band.shortest.reachesFoot ? 'yes' : band.longest.reachesFoot ? 'can not be told' : 'no'
  return { shortest, longest, reachesFoot }
}

/** Strength over that of mixed concrete where the water-cement ratio lies in a range: least and most that the law gives. */
const strengthIn =
  (space: number) =>
  (ratio: Band): Band | null => {
    const reference = { hydration: referenceMix.hydration.value, space: referenceMix.space.value }
    const at = (one: number, curing: 'sealed' | 'outsideWater', share: number, exponent: number) =>
      placedStrengthRatio({ ratio: one, space, curing, hydration: share, reference, exponent })
    const low = at(ratio.low, 'sealed', hydration.low, gelSpaceExponent.high.value)
    const high = at(ratio.high, 'outsideWater', hydration.high, gelSpaceExponent.low.value)
    return low === null || high === null ? null : { low: Math.min(low, high), high: Math.max(low, high) }
  }

type Layers = Readonly<{
  from: number
  to: number
  wetting: DryMix['wetting']
  pack: Omit<Parameters<typeof localWaterCement>[0], 'saturation'>
  strength: (ratio: Band) => Band | null
  isSoaked: boolean
}>

/** From the top: surely wetted, perhaps wetted, not wetted by what was poured. Ground water may come to any of it later. */
function layersOf({ from, to, wetting, pack, strength, isSoaked }: Layers): DryMix['layers'] {
  const { low, high } = wettingRanges.saturation
  const wet = { low: localWaterCement({ ...pack, saturation: low.value }), high: localWaterCement({ ...pack, saturation: high.value }) }
  const maybe = { low: 0, high: wet.high }
  const layer = (top: number, bottom: number, ratio: Band, force: Band | null) =>
    top - bottom > 1e-9 ? [{ from: metres(bottom), to: metres(top), ratio, strength: force }] : []
  if (isSoaked) return layer(to, from, maybe, strength(maybe))
  const sure = to - (wetting?.shortest.value ?? 0)
  const most = to - (wetting?.longest.value ?? 0)
  return [
    ...layer(to, sure, wet, strength(wet)),
    ...layer(sure, most, maybe, strength(maybe)),
    ...layer(most, from, { low: 0, high: 0 }, null),
  ]
}
