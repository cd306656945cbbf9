import { deriveTime } from '../../core/derive/deriveTime.ts'
import { report } from '../../core/derive/report/report.ts'
import { type SourceId, sources as sourceTable } from '../../core/engineering/sources.ts'
import type { Fact } from '../../core/model/fact.ts'
import type { Issue } from '../../core/model/issue.ts'
import type { Exposure, Order, PierResult, QuantityLine } from '../../core/model/result.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import type { Check } from '../../core/model/worked.ts'
import type { Zone } from '../../core/model/zone.ts'
import { wordIn } from '../../facts/firstWords.ts'
import { statusLine, statusParts } from '../../facts/statusWords.ts'
import { answerWords } from '../../facts/answerWords.ts'
import { wordsOf } from '../../words/index.ts'
import { calloutJson } from './calloutJson.ts'
import { demandJson } from './demandJson.ts'
import { issueMessage } from './issueLine.ts'
import { inWords, named, withUnits } from './named.ts'
import { timeJson, timeSources } from './timeJson.ts'
import { workedJson } from './workedJson.ts'

const zone = (one: Zone) => ({
  id: one.id,
  role: one.role,
  label: wordsOf('zones')[one.label],
  build: one.build,
  ...named('volume', one.volume.value, 'volume'),
  method: one.volume.method,
  ...(one.build === 'swept' ? named('inHole', one.inHole, 'volume') : { displaces_m3: one.displaces }),
  ...named('surface', one.surface.value, 'area'),
  text: inWords(one.volume.value, 'volume'),
})

const order = (one: Order) =>
  one.as === 'bags'
    ? { as: one.as, bagSize_lb: one.bagSize, each: one.each, job: one.job, extra: one.extra }
    : { as: one.as, each_m3: one.each, job_m3: one.job, extra: one.extra, text: inWords(one.job, 'volume') }

const quantityLine = (line: QuantityLine) => ({
  id: line.id,
  zones: line.zones,
  role: line.role,
  ...named('volume', line.volume.value, 'volume'),
  method: line.volume.method,
  ...named('inHole', line.inHole, 'volume'),
  ...named('weight', line.weight, 'weight'),
  ...named('buoyantWeight', line.buoyantWeight, 'weight'),
  text: { volume: inWords(line.volume.value, 'volume'), weight: inWords(line.weight, 'weight') },
  orders: line.orders.map(order),
  sources: line.sources,
  standing: line.standing,
})

const check = (one: Check) => ({
  id: one.id,
  label: answerWords(one.id).label,
  group: one.group,
  where: one.where,
  counted: one.counted,
  ...(one.why === undefined ? {} : { why: wordsOf('reasons')[one.why] }),
  allowable: one.allowable === null ? null : workedJson(one.allowable),
  ...(one.demand === undefined ? {} : { demand: workedJson(one.demand) }),
  ...(one.ratio === undefined ? {} : { ratio: one.ratio }),
  ...(one.choice === undefined ? {} : { choice: one.choice }),
  worked: one.worked.map(workedJson),
  sources: one.sources,
  standing: one.standing,
})

const exposure = ({ lines, area, areaBelowGrade, standOff }: Exposure) => ({
  lines: lines.map((line) => ({
    side: line.side,
    ...named('belowGrade', line.belowGrade, 'length'),
    by_m: line.by,
    ...named('inConcreteAboveGrade', line.inConcreteAboveGrade, 'length'),
    text: inWords(line.belowGrade, 'length'),
  })),
  area_m2: area,
  ...named('areaBelowGrade', areaBelowGrade, 'area'),
  standOff:
    standOff === null
      ? null
      : {
          ...named('aboveConcrete', standOff.aboveConcrete, 'length'),
          ...named('aboveGrade', standOff.aboveGrade, 'length'),
          checks: standOff.checks.map(check),
        },
})

const issue = (one: Issue) => ({ ...one, message: issueMessage(one) })

const standKeys = { short: 'fallShort', unverified: 'cannotBeVerified', meets: 'meet', unneeded: 'notAsked' } as const

/** How all checks stand: the line that stands over the answers, then the names behind its counts. */
const status = (facts: readonly Fact[]) => ({
  line: statusLine(facts),
  ...Object.fromEntries(statusParts(facts).map(({ stand, names }) => [standKeys[stand], names])),
})

/** Every source that the result or a warning names, with its full record. */
const sourceRecords = (ids: readonly SourceId[]) => Object.fromEntries([...new Set(ids)].sort().map((id) => [id, sourceTable[id]]))

/**
 * The whole result of a job as plain data: numbers in SI under keys that name the unit, with texts in both systems. No meshes.
 *
 * @param warnings what was said of the pier as it was read; the result's own issues follow
 */
export function resultJson(document: PierDocument, result: PierResult, warnings: readonly Issue[]): unknown {
  const isChange = ({ severity }: Issue): boolean => severity === 'changed'
  const issues = [...warnings.filter((one) => !isChange(one)), ...result.issues]
  const { hole, depths, uplift } = result
  const time = deriveTime(result.spec)
  const facts = report(result)
  return {
    status: status(facts),
    name: document.name,
    note: document.note,
    cautions: {
      always: wordsOf('cautions').standing.map((caution) => caution.long),
      here: result.cautions.map((key) => wordsOf('cautions').ofPiers[key]),
    },
    /** What has moved since the version of the file, and why. */
    changed: warnings.filter(isChange).map(({ code }) => wordIn(wordsOf('moved'), code)),
    issues: issues.map(issue),
    headlines: result.headlines.map(workedJson),
    spec: withUnits(result.spec),
    written: document.written,
    depths: Object.fromEntries(Object.entries(depths).map(([key, value]) => [`${key}_m`, value])),
    hole: {
      ...named('volume', hole.volume.value, 'volume'),
      method: hole.volume.method,
      ...named('void', hole.void, 'volume'),
      ...named('spoilBank', hole.spoilBank, 'volume'),
      spoilLoose_m3: hole.spoilLoose,
      text: { volume: inWords(hole.volume.value, 'volume'), spoilBank: inWords(hole.spoilBank, 'volume') },
    },
    zones: result.zones.map(zone),
    quantities: result.quantities.map(quantityLine),
    demand: demandJson(result.demand),
    checks: result.checks.map(check),
    uplift: {
      soil: uplift.soil,
      governing: uplift.governing,
      allowable_N: uplift.allowable,
      ratio: uplift.ratio,
      text: uplift.allowable === null ? null : inWords(uplift.allowable, 'force'),
      standing: uplift.standing,
      uncounted: uplift.uncounted,
    },
    exposure: exposure(result.exposure),
    callout: calloutJson(facts),
    time: timeJson(time),
    sources: sourceRecords([
      ...result.sources,
      ...timeSources(time),
      ...(result.callout?.items ?? []).flatMap((one) => one.sources),
      ...issues.flatMap((one) => one.sources ?? []),
    ]),
  }
}
