import type { ReasonId } from '../model/saidIds.ts'
import type { Counting } from '../model/kind.ts'

/**
 * What a standard lets one count, said once for all kinds that share a reason. `why` is a key into the text table;
 * "not counted" means that it can't be verified, never that it is nothing.
 */
const counted = (why: ReasonId, sources: Counting['sources']): Counting => ({ counted: 'counted', why, sources })
const judged = (why: ReasonId, sources: Counting['sources']): Counting => ({ counted: "engineer's judgement", why, sources })
const notCounted = (why: ReasonId, sources: Counting['sources']): Counting => ({ counted: 'not counted', why, sources })

export const counting = {
  concreteWeight: counted('weight-of-mixed-concrete', ['ibc-1605-3']),
  dryMixWeight: notCounted('weight-of-dry-mix', ['aci-318-19-26-5-2', 'bohnhoff-2003']),
  fillWeight: notCounted('weight-of-fill-not-tied', ['ibc-1807-3-3']),

  concreteFriction: counted('friction-on-undisturbed-ground', ['ibc-1810-3-3-1-5']),
  dryMixFriction: notCounted('friction-of-dry-mix', ['aci-318-19-26-5-2', 'bohnhoff-2003']),
  backfillFriction: notCounted('friction-of-loose-backfill', ['ibc-1807-3-3']),
  granularFriction: notCounted('friction-of-granular-fill', ['ibc-1807-3-3']),
  flowableFriction: judged('friction-of-flowable-fill', ['ibc-1807-3-3']),

  barInConcrete: judged('bar-in-concrete', ['nds-2018-12-3-1']),
  barInDryMix: notCounted('bar-in-dry-mix', ['aci-318-19-26-5-2', 'bohnhoff-2003']),
  barInSoil: notCounted('bar-in-soil', ['nds-2018-12-3-1']),
  barInFlowableFill: notCounted('bar-in-flowable-fill', ['nds-2018-12-3-1']),
  bracketBolts: counted('bolts-in-bracket', ['nds-2018-12-3-1']),

  mixedStrength: counted('strength-of-mixed-concrete', ['aci-318-19-19-2']),
  dryMixStrength: notCounted('strength-of-dry-mix', ['aci-318-19-26-5-2', 'bohnhoff-2003']),
  flowableStrength: judged('strength-of-flowable-fill', ['ibc-1807-3-3']),
  concreteSideways: counted('concrete-presses-sideways', ['ibc-1807-3-3']),
  soilSideways: notCounted('soil-does-not-press-sideways', ['ibc-1807-3-3']),
  dryMixSideways: notCounted('dry-mix-does-not-press-sideways', ['ibc-1807-3-3', 'aci-318-19-26-5-2']),
  granularSideways: judged('granular-presses-sideways', ['ibc-1807-3-3']),
  flowableSideways: counted('flowable-fill-presses-sideways', ['ibc-1807-3-3']),

  coredMix: judged('cores-not-below-limits', ['aci-318-19-26-12-6', 'bohnhoff-2003']),

  padStrength: counted('strength-of-pad', ['aci-318-19-19-2']),
} as const satisfies Readonly<Record<string, Counting>>
