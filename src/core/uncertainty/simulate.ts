import type { Properties } from '../derive/properties.ts'
import type { PierSpec } from '../model/spec.ts'
import type { Assumption } from './assumptions.ts'
import { spreadProblem, valueAtShare } from './distributions.ts'
import { asEntered, type Draw, type InputId, inputsOf } from './inputs.ts'
import { isAlwaysPossible, isPossible } from './possible.ts'
import { randomNumbers } from './randomNumbers.ts'
import { countBelow, histogram, quantile, tallies } from './summary.ts'
import type { SpreadOfUplift, Study, SureResult, Swing } from './sureResult.ts'
import { keptProperties, upliftSample } from './upliftSample.ts'

/** Tries between two looks at whether to go on. */
export const chunk = 500
const bins = 48

type Varied = Readonly<{ id: InputId; draws: boolean; valueAt: (share: number) => number; ends: readonly [number, number] }>

/**
 * Allowable uplift of a pier whose figures come out a little differently each time: every figure is drawn from what is assumed about it, by
 * itself, and the chain is worked out anew. Not the chance of anything: a study of what the ranges that were put in do to the number.
 * Assumptions about figures that this pier does not have are left aside; so are those that vary by themselves with a spread that can't be
 * drawn from. Every listed assumption takes its numbers whether it varies or not, so that switching one off leaves the others' tries alike.
 *
 * Goes on by `chunk` tries at each call of `next`, and yields how many are done.
 */
export function* simulation(spec: PierSpec, assumptions: readonly Assumption[], study: Study): Generator<number, SureResult, void> {
  const properties = keptProperties(spec)
  const nominal = upliftSample(spec, asEntered(), properties)
  if (!nominal.governing?.allowable)
    return { kind: 'unverified', links: nominal.links.filter((link) => link.allowable === null).map((link) => link.id) }

  const varied = variedInputs(spec, assumptions)
  const mustLook = !isAlwaysPossible(spec, new Map(varied.filter(({ draws }) => draws).map(({ id, ends }) => [id, ends])))
  const random = randomNumbers(study.seed)
  const allowable = new Float64Array(study.samples)
  const governing = new Map<string, number>()
  const without = new Map<string, number>()
  const count = (tally: Map<string, number>, id: string) => tally.set(id, (tally.get(id) ?? 0) + 1)
  const draw = asEntered()
  let counted = 0
  for (let done = 0; done < study.samples; done++) {
    if (done % chunk === 0 && done > 0) yield done
    for (const { id, draws, valueAt } of varied) {
      const share = random()
      if (draws) draw[id] = valueAt(share)
    }
    if (mustLook && !isPossible(spec, draw)) {
      count(without, 'not-possible')
      continue
    }
    const { governing: least, links } = upliftSample(spec, draw, properties)
    if (least?.allowable) {
      allowable[counted++] = least.allowable.value
      count(governing, least.id)
    } else count(without, links.find((link) => link.allowable === null)?.id ?? '')
  }
  const sorted = allowable.slice(0, counted).sort()
  const hasAny = counted > 0
  const result: SpreadOfUplift = {
    kind: 'spread',
    study,
    asEntered: nominal.governing.allowable.value,
    allowable: sorted,
    quantiles: hasAny ? { low: quantile(sorted, 0.05), middle: quantile(sorted, 0.5), high: quantile(sorted, 0.95) } : null,
    histogram: hasAny ? histogram(sorted, bins) : null,
    governing: tallies(governing),
    without: tallies(without),
    below: study.demand == null ? null : countBelow(sorted, study.demand),
    swings: swings(spec, varied, properties),
  }
  return result
}

/** The whole study at once. `onProgress` is told how many tries are done; null when `isCancelled` says so at one of its looks. */
export function simulate(
  spec: PierSpec,
  assumptions: readonly Assumption[],
  study: Study,
  onProgress: (done: number) => void = () => undefined,
  isCancelled: () => boolean = () => false,
): SureResult | null {
  const steps = simulation(spec, assumptions, study)
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value
    onProgress(step.value)
    if (isCancelled()) return null
  }
}

function variedInputs(spec: PierSpec, assumptions: readonly Assumption[]): readonly Varied[] {
  const here = new Set<InputId>(inputsOf(spec).map((input) => input.id))
  return assumptions
    .filter(({ id, spread }) => here.has(id) && spreadProblem(spread) === null)
    .map(({ id, varies, spread }) => ({ id, draws: varies, valueAt: valueAtShare(spread), ends: [spread.low, spread.high] }))
}

/** Each input moved alone, widest swing first; one that leaves no allowable comes before all others. */
function swings(spec: PierSpec, varied: readonly Varied[], properties: Properties): readonly Swing[] {
  const allowableAt = (draw: Draw) =>
    isPossible(spec, draw) ? (upliftSample(spec, draw, properties).governing?.allowable?.value ?? null) : null
  const width = ({ allowable: [low, high] }: Swing) => (low === null || high === null ? Number.POSITIVE_INFINITY : Math.abs(high - low))
  return varied
    .filter(({ draws }) => draws)
    .map(({ id, valueAt }): Swing => {
      const at = [valueAt(0.1), valueAt(0.9)] as const
      return { id, at, allowable: [allowableAt({ ...asEntered(), [id]: at[0] }), allowableAt({ ...asEntered(), [id]: at[1] })] }
    })
    .sort((a, b) => (width(b) === width(a) ? 0 : width(b) - width(a)))
}
