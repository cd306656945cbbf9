import { createStore, type StoreApi } from 'zustand/vanilla'
import type { PierSpec } from '../core/model/spec.ts'
import { type Assumption, startingAssumptions } from '../core/uncertainty/assumptions.ts'
import type { Spread } from '../core/uncertainty/distributions.ts'
import type { InputId } from '../core/uncertainty/inputs.ts'
import { greatestSeed } from '../core/uncertainty/randomNumbers.ts'
import { fewestSamples, mostSamples, type SureResult } from '../core/uncertainty/sureResult.ts'
import { pageEngine, type Running, type SureEngine } from './sureEngine.ts'

/** What a result was worked out from: it is out of date once one of these is another. */
export type Question = Readonly<{
  spec: PierSpec
  /** Pull to hold the answer against [N]; null for none. */
  demand: number | null
  assumptions: readonly Assumption[]
  seed: number
  samples: number
}>

export type SureRun =
  | Readonly<{ kind: 'none' | 'stopped' | 'failed' }>
  | Readonly<{ kind: 'running'; question: Question; done: number }>
  | Readonly<{ kind: 'done'; question: Question; result: SureResult }>

/** Ranges and answers of this session. Never part of undo, never saved with the pier. */
export type SureState = Readonly<{
  assumptions: readonly Assumption[]
  seed: number
  samples: number
  run: SureRun
  /** The last result, kept on show while another is worked out. */
  last: Readonly<{ question: Question; result: SureResult }> | null
}>

const first = { assumptions: startingAssumptions, seed: 1, samples: 20_000 }

export type SureStore = StoreApi<SureState> & Readonly<{ engine: SureEngine; running: { current: Running | null } }>

export const createSureStore = (engine: SureEngine): SureStore =>
  Object.assign(
    createStore<SureState>()(() => ({ ...first, run: { kind: 'none' }, last: null })),
    { engine, running: { current: null } },
  )

/** The one store of the running page. */
export const sureStore: SureStore = createSureStore(pageEngine())

export const questionOf = ({ assumptions, seed, samples }: SureState, spec: PierSpec, demand: number | null): Question => ({
  spec,
  demand,
  assumptions,
  seed,
  samples,
})

/** Is it the same question, part by part? */
export const isSameQuestion = (a: Question, b: Question): boolean =>
  a.spec === b.spec && a.demand === b.demand && a.assumptions === b.assumptions && a.seed === b.seed && a.samples === b.samples

/** Works out the spread anew; a study under way is stopped first. */
export function runStudy(store: SureStore, spec: PierSpec, demand: number | null): void {
  store.running.current?.stop()
  const question = questionOf(store.getState(), spec, demand)
  store.setState({ run: { kind: 'running', question, done: 0 } })
  const { assumptions, seed, samples } = question
  const order = { spec, assumptions, study: { seed, samples, demand } }
  const running = store.engine(order, (done) => {
    if (store.running.current === running) store.setState({ run: { kind: 'running', question, done } })
  })
  store.running.current = running
  running.result.then(
    (result) => {
      if (store.running.current !== running) return
      store.running.current = null
      if (result === null) store.setState({ run: { kind: 'stopped' } })
      else store.setState({ run: { kind: 'done', question, result }, last: { question, result } })
    },
    () => {
      if (store.running.current !== running) return
      store.running.current = null
      store.setState({ run: { kind: 'failed' } })
    },
  )
}

/** Gives up the study under way; the last result stays. */
export function stopStudy(store: SureStore): void {
  store.running.current?.stop()
  store.running.current = null
  if (store.getState().run.kind === 'running') store.setState({ run: { kind: 'stopped' } })
}

const change = (store: SureStore, id: InputId, changed: (one: Assumption) => Assumption): void =>
  store.setState(({ assumptions }) => ({ assumptions: assumptions.map((one) => (one.id === id ? changed(one) : one)) }))

export const setSpread = (store: SureStore, id: InputId, spread: Spread): void => change(store, id, (one) => ({ ...one, spread }))
export const setVaries = (store: SureStore, id: InputId, varies: boolean): void => change(store, id, (one) => ({ ...one, varies }))
export const restoreAssumptions = (store: SureStore): void => store.setState({ assumptions: startingAssumptions })

const isWhole = (value: number, least: number, most: number): boolean => Number.isInteger(value) && value >= least && value <= most

/** False, and nothing changes, for what is no seed. */
export function setSeed(store: SureStore, seed: number): boolean {
  if (!isWhole(seed, 0, greatestSeed)) return false
  store.setState({ seed })
  return true
}

/** False, and nothing changes, for a number of tries that is too small or too great. */
export function setSamples(store: SureStore, samples: number): boolean {
  if (!isWhole(samples, fewestSamples, mostSamples)) return false
  store.setState({ samples })
  return true
}
