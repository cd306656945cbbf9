import { type Governing, governingLoads, type LoadsByKind, netUplift, workedCombinedLoad } from '../../engineering/loads/combine.ts'
import { type Combination, loadCombinations } from '../../engineering/tables/loadCombinations.ts'
import { weakest } from '../../engineering/showing.ts'
import type { Demand, LoadCase } from '../../model/result.ts'
import type { LoadEstimate } from '../../model/spec.ts'
import type { Worked } from '../../model/worked.ts'
import { newtons } from '../../units/quantity.ts'
import { enclosedRoofWind } from './enclosedRoofWind.ts'
import { freeRoofWind } from './freeRoofWind.ts'
import { casesOf } from './loadCases.ts'
import { estimateNotes, isOnFigure } from './estimateNotes.ts'
import { roofLoads } from './roofLoads.ts'
import type { RoofWind } from './roofWind.ts'
import { sidewaysDemand } from './sidewaysDemand.ts'
import { velocity } from './velocity.ts'

type Winds = (estimate: LoadEstimate, pressure: Worked) => readonly RoofWind[]
const windsOf: Readonly<Record<LoadEstimate['roof'], Winds>> = {
  'free-monoslope': (estimate, pressure) => freeRoofWind(estimate, 'monoslope', pressure),
  'free-pitched': (estimate, pressure) => freeRoofWind(estimate, 'pitched', pressure),
  'free-troughed': (estimate, pressure) => freeRoofWind(estimate, 'troughed', pressure),
  enclosed: (estimate, pressure) => enclosedRoofWind(estimate, 'enclosed', pressure),
  'partially-enclosed': (estimate, pressure) => enclosedRoofWind(estimate, 'partially-enclosed', pressure),
}

/** LoadsByKind at one post worked out from a roof, its wind and its snow: always an estimate, whatever its digits. */
export function estimatedDemand(estimate: LoadEstimate): Demand {
  const isFree = estimate.roof.startsWith('free')
  const { pressure, worked } = velocity(estimate)
  const winds = isOnFigure(estimate) ? windsOf[estimate.roof](estimate, pressure) : []
  const roof = roofLoads(estimate)
  const steady: LoadsByKind = {
    dead: newtons(roof.dead.value),
    roofLive: newtons(roof.roofLive.value),
    snow: newtons(roof.snow.value),
  }
  const cases = winds.flatMap((wind) => casesOf(estimate, wind, steady))
  const sideways = isFree && winds.length > 0 ? sidewaysDemand(estimate, winds) : null
  const up = most(cases, (one) => one.uplift.load)
  const still = governingLoads(estimate.edition, 'ASD', steady).down
  const down = most(cases, (one) => one.gravity.load)
  const pressed = down && down.gravity.load > still.load ? down : null
  return {
    kind: 'estimated',
    isEstimate: true,
    uplift: up && uplift(up, roof.dead),
    gravity: gravity(estimate, steady, pressed, still, roof),
    lateral: sideways?.lateral ?? null,
    lateralHeight: sideways ? estimate.roofHeight : null,
    cases,
    governing: {
      uplift: up && { case: up.id, combination: up.uplift.combination },
      gravity: pressed ? { case: pressed.id, combination: pressed.gravity.combination } : { case: null, combination: still.combination.id },
    },
    worked: [...worked, ...roof.worked, ...(sideways?.worked ?? [])],
    notes: estimateNotes(estimate, { hasWind: cases.length > 0, hasSideways: sideways !== null }),
  }
}

const most = (cases: readonly LoadCase[], of: (one: LoadCase) => number): LoadCase | null =>
  cases.reduce<LoadCase | null>((best, one) => (best && of(best) >= of(one) ? best : one), null)

const share = 0.6

/** Net uplift of the governing case; nothing where dead load outweighs every wind. */
function uplift(governing: LoadCase, dead: Worked): Worked {
  const wind = newtons(Math.max(governing.byArea, governing.byStatics))
  const net = netUplift({ wind, dead: newtons(dead.value), windFactor: share, deadFactor: share })
  const steps = governing.worked.map((one) => one.standing)
  return {
    id: 'demand-uplift',
    value: Math.max(0, net),
    quantity: 'force',
    formula: String.raw`U = \max(0,\ f_W W - f_D D)`,
    inputs: [
      { symbol: 'f_W', name: 'windFactor', value: share, quantity: 'ratio' },
      { symbol: 'W', name: 'wind', value: wind, quantity: 'force' },
      { symbol: 'f_D', name: 'deadFactor', value: share, quantity: 'ratio' },
      { symbol: 'D', name: 'dead', value: dead.value, quantity: 'force' },
    ],
    sources: [...new Set([...governing.worked.flatMap((one) => one.sources), 'asce-7-16-2' as const, 'ibc-1605-3' as const])],
    standing: weakest(...steps, 'secondary'),
  }
}

type Roof = ReturnType<typeof roofLoads>

/** The greatest push down: a combination with the governing wind, or one without wind. */
function gravity(estimate: LoadEstimate, steady: LoadsByKind, pressed: LoadCase | null, still: Governing, roof: Roof): Worked {
  const combination = pressed ? combinationOf(estimate, pressed.gravity.combination) : still.combination
  const all: LoadsByKind = pressed ? { ...steady, wind: newtons(-Math.min(pressed.byArea, pressed.byStatics)) } : steady
  const used: LoadsByKind = Object.fromEntries(Object.entries(all).filter(([kind]) => kind in combination.factors))
  const edition = estimate.edition === '7-22' ? (['asce-7-22-2'] as const) : []
  return workedCombinedLoad(
    { ...used, combination },
    {
      id: 'demand-gravity',
      standings: [...(pressed?.worked ?? []), roof.dead, roof.snow, roof.roofLive].map((one) => one.standing),
      sources: [...roof.snow.sources, ...(pressed?.worked ?? []).flatMap((one) => one.sources), ...edition],
    },
  )
}

const combinationOf = ({ edition }: LoadEstimate, id: string): Combination =>
  loadCombinations[edition].ASD.find((one) => one.id === id) ?? { id, factors: {} }
