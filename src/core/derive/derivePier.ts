import { bearingChecks } from './bearing/bearingChecks.ts'
import { calloutCheck } from './callout/callout.ts'
import { demandOf } from './demand/demandOf.ts'
import { depthChecks, mostBuried, standOff } from './depthChecks.ts'
import { detailChecks } from './detail/detailChecks.ts'
import { exposureArea, exposureLines } from './exposure.ts'
import { frostJacking } from './frost/frostJacking.ts'
import { lengthTerm } from './given.ts'
import { lateralChecks } from './lateral/lateralChecks.ts'
import { takeOff } from './takeOff.ts'
import { linksToConcrete, upliftBySoil } from './uplift/chain.ts'
import { checkOf } from './uplift/chainLink.ts'
import { upperBound } from './uplift/frictionAndWeight.ts'
import { againstDemand, chainOf, governingUplift } from './uplift/governing.ts'
import { pierWeight } from './uplift/pierWeight.ts'
import { withPullBelow } from './uplift/pullBelow.ts'
import { soilContext } from './uplift/soilContext.ts'
import type { SourceId } from '../engineering/sources.ts'
import { bracketKind, fillKind } from '../kinds/index.ts'
import type { Demand, PierResult, QuantityLine } from '../model/result.ts'
import type { CautionId } from '../model/saidIds.ts'
import { castRoles } from '../model/solid.ts'
import type { PierSpec } from '../model/spec.ts'
import type { Worked } from '../model/worked.ts'

/**
 * Everything that is shown of a pier, from its document alone. Pure: the same spec gives the same result everywhere.
 * @param spec a valid spec; validation has answered for what can't be built, and its warnings are added by the caller
 */
export function derivePier(spec: PierSpec): PierResult {
  const { frame, ...placed } = takeOff(spec)
  const { zones, hole, quantities: lines, depths } = placed
  const stand = standOff(frame)
  const demand = demandOf(spec)
  const weight = pierWeight(frame, lines)
  const ground = soilContext(frame, weight)
  const { column } = ground
  const links = [...linksToConcrete(frame, () => zones), ...upliftBySoil(ground)]
  const own = [
    ...links.map(checkOf),
    ...[upperBound(ground)].filter((check) => check !== null),
    ...bearingChecks(frame, column, { lines, zones, depths, demand }),
    ...lateralChecks(frame, column, demand),
    ...depthChecks(frame, depths),
    ...[frostJacking(frame, column, weight)].filter((check) => check !== null),
    ...detailChecks(frame, depths),
    ...(stand?.checks ?? []),
  ]
  const uplift = governingUplift(chainOf(links, spec.judgement?.mechanism ?? null), own, demand.uplift)
  const checks = againstDemand(withPullBelow(own, ground, uplift.soil), uplift, demand.uplift)
  const exposed = exposureLines(frame)
  const area = exposureArea(frame)
  const headlines = headlineNumbers(spec, lines, hole, weight, exposed)
  return {
    spec,
    ...placed,
    demand,
    checks,
    uplift,
    exposure: { lines: exposed, area: area.area, areaBelowGrade: area.total, standOff: stand },
    callout: calloutCheck(frame, { depths, uplift, checks, quantities: lines, zones }),
    headlines,
    issues: [],
    cautions: [...cautionsOf(spec), ...demandCautions(demand)],
    sources: sourcesOf(checks, lines, headlines, demand),
  }
}

/** Volume of the hole as its straight shaft, and what a bell and a wide mouth add to it. */
function holeWork({ diameter, depth, bell, flare }: PierSpec['hole'], volume: number): Pick<Worked, 'formula' | 'inputs'> {
  const more = bell || flare ? volume - (Math.PI / 4) * diameter ** 2 * depth : null
  return {
    formula: String.raw`V = \tfrac{\pi}{4} D^2 d${more === null ? '' : ' + V_+'}`,
    inputs: [
      lengthTerm('D', 'diameter', diameter),
      lengthTerm('d', 'depthAtAxis', depth),
      ...(more === null ? [] : [{ symbol: 'V_+', name: 'widened', value: more, quantity: 'volume' as const }]),
    ],
  }
}

/** Less than this stands above grade by rounding alone [m3]. */
const leastAbove = 1e-9

/** All that is cast in one pier: what of it fills the hole, and what stands above grade. */
function mixVolume(mix: readonly QuantityLine[]): Worked {
  const all = mix.reduce((sum, line) => sum + line.volume.value, 0)
  const inHole = mix.reduce((sum, line) => sum + line.inHole, 0)
  const parts = [
    { symbol: 'V_h', name: 'mix-in-hole', value: inHole },
    ...(all - inHole > leastAbove ? [{ symbol: 'V_g', name: 'mix-above-grade', value: all - inHole }] : []),
  ]
  return {
    id: 'mix-volume',
    value: all,
    quantity: 'volume',
    formula: `V = ${parts.map(({ symbol }) => symbol).join(' + ')}`,
    inputs: parts.map((one) => ({ ...one, quantity: 'volume' })),
    sources: ['definition'],
    standing: 'definition',
  }
}

function headlineNumbers(
  spec: PierSpec,
  lines: readonly QuantityLine[],
  hole: PierResult['hole'],
  weight: Worked,
  exposed: PierResult['exposure']['lines'],
): Worked[] {
  const shaft = holeWork(spec.hole, hole.volume.value)
  const mix = lines.filter((line) => castRoles.has(line.role))
  const geometry = (
    id: string,
    value: number,
    quantity: Worked['quantity'],
    formula: string,
    inputs: Worked['inputs'],
    method?: Worked['method'],
  ): Worked => ({
    id,
    value,
    quantity,
    formula,
    inputs,
    sources: ['definition'],
    standing: 'definition',
    ...(method ? { method } : {}),
  })
  return [
    geometry('hole-volume', hole.volume.value, 'volume', shaft.formula, shaft.inputs, hole.volume.method),
    mixVolume(mix),
    weight,
    geometry(
      'wood-below-grade',
      mostBuried(exposed),
      'length',
      String.raw`l = \max(${exposed.map((_, i) => `l_{${i + 1}}`).join(', ')})`,
      exposed.map((line, i) => ({ symbol: `l_{${i + 1}}`, name: `buried-${line.side}`, value: line.belowGrade, quantity: 'length' })),
    ),
  ]
}

function cautionsOf(spec: PierSpec): CautionId[] {
  const own = fillKind(spec.fill.kind).cautions
  const bracket = spec.support.kind === 'bracket' ? bracketKind(spec.support.bracket.kind).cautions : []
  return [...new Set([...own, ...bracket])]
}

/** Earthquake is in none of these numbers; an estimate stands in for no drawing. */
const demandCautions = ({ kind, isEstimate }: Demand): CautionId[] => [
  ...(kind === null ? [] : (['earthquake-not-covered'] as const)),
  ...(isEstimate ? (['loads-are-estimated'] as const) : []),
]

function sourcesOf(
  checks: PierResult['checks'],
  lines: readonly QuantityLine[],
  headlines: readonly Worked[],
  { uplift, gravity, lateral, worked, cases }: Demand,
): SourceId[] {
  const loads = [uplift, gravity, lateral, ...worked, ...cases.flatMap((one) => one.worked)].filter((one) => one !== null)
  const named = new Set<SourceId>()
  for (const one of [...checks, ...lines, ...headlines, ...loads]) for (const id of one.sources) named.add(id)
  return [...named].sort()
}
