import { fillKind, bracketKind } from '../kinds/index.ts'
import type { PierResult, QuantityLine } from '../model/result.ts'
import type { PierSpec } from '../model/spec.ts'
import type { Worked } from '../model/worked.ts'
import type { SourceId } from '../engineering/sources.ts'
import { depthChecks, mostBuried, standOff } from './depthChecks.ts'
import { depths as depthsOf } from './depths.ts'
import { exposureArea, exposureLines } from './exposure.ts'
import { pierFrame, type PierFrame } from './pierFrame.ts'
import { pierSheets, pierZones } from './pierZones.ts'
import { workedPierWeight } from './uplift/pierWeight.ts'
import { holeAndSpoil, quantities } from './quantities.ts'
import { governingUplift } from './uplift/governing.ts'
import { barShearCheck } from './uplift/barShear.ts'
import { upliftByConnection } from './uplift/connection.ts'
import { upliftByConcrete } from './uplift/concrete.ts'
import { upliftByPost } from './uplift/post.ts'
import { upliftBySoil } from './uplift/soil.ts'

/**
 * Everything that is shown of a pier, from its document alone. Pure: the same spec gives the same result everywhere.
 * @param spec a valid spec; validation has answered for what can't be built, and its warnings are added by the caller
 */
export function derivePier(spec: PierSpec): PierResult {
  const frame = pierFrame(spec)
  const zones = pierZones(frame)
  const hole = holeAndSpoil(frame, zones)
  const lines = quantities(frame, zones)
  const depths = depthsOf(frame)
  const stand = standOff(frame)
  const checks = [
    ...upliftByPost(frame),
    upliftByConnection(frame),
    ...[barShearCheck(frame)].filter((check) => check !== null),
    ...upliftByConcrete(frame, zones),
    ...upliftBySoil(frame, lines),
    ...depthChecks(frame, depths),
    ...(stand?.checks ?? []),
  ]
  const exposed = exposureLines(frame)
  const area = exposureArea(frame)
  const headlines = headlineNumbers(frame, lines, hole, mostBuried(exposed))
  return {
    spec,
    zones,
    sheets: pierSheets(frame),
    depths,
    hole,
    quantities: lines,
    checks,
    uplift: governingUplift(checks, spec.judgement?.mechanism ?? null),
    exposure: { lines: exposed, area: area.area, areaBelowGrade: area.total, standOff: stand },
    headlines,
    issues: [],
    cautions: cautionsOf(spec),
    sources: sourcesOf(checks, lines, headlines),
  }
}

function headlineNumbers(frame: PierFrame, lines: readonly QuantityLine[], hole: PierResult['hole'], buried: number): Worked[] {
  const mix = lines.filter((line) => line.role === 'concrete' || line.role === 'dry-mix' || line.role === 'flowable-fill')
  const geometry = (id: string, value: number, quantity: Worked['quantity'], formula: string, method?: Worked['method']): Worked => ({
    id,
    value,
    quantity,
    formula,
    inputs: [],
    sources: ['definition'],
    standing: 'definition',
    ...(method ? { method } : {}),
  })
  return [
    geometry('hole-volume', hole.volume.value, 'volume', String.raw`V = \oint \tfrac{r^2}{2}\,dy\,d\theta`, hole.volume.method),
    geometry(
      'mix-volume',
      mix.reduce((sum, line) => sum + line.volume.value, 0),
      'volume',
      String.raw`V = V_{zone} - \sum V_{steel}`,
    ),
    workedPierWeight(frame, lines).weight,
    geometry('wood-below-grade', buried, 'length', 'l = y_{grade} - y_{foot}'),
  ]
}

function cautionsOf(spec: PierSpec): string[] {
  const own = fillKind(spec.fill.kind).cautions
  const bracket = spec.support.kind === 'bracket' ? bracketKind(spec.support.bracket.kind).cautions : []
  return [...new Set([...own, ...bracket])]
}

function sourcesOf(checks: PierResult['checks'], lines: readonly QuantityLine[], headlines: readonly Worked[]): SourceId[] {
  return [...new Set([...checks, ...lines, ...headlines].flatMap((one) => one.sources))].sort()
}
