import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { soundPier } from '../soundPier.ts'
import { startingAssumptions } from '../../src/core/uncertainty/assumptions.ts'
import { simulate } from '../../src/core/uncertainty/simulate.ts'
import type { SureNews, SureOrder } from '../../src/state/sureMessages.ts'
import {
  createSureStore,
  isSameQuestion,
  questionOf,
  restoreAssumptions,
  runStudy,
  setSamples,
  setSeed,
  setSpread,
  setVaries,
  stopStudy,
  type SureStore,
} from '../../src/state/sure.ts'
import { eitherEngine, idleEngine, type SureEngine, type SureWorker, workerEngine } from '../../src/state/sureEngine.ts'
import { studyInSteps } from '../../src/state/sureMessages.ts'

const soon = (go: () => void) => void setTimeout(go)
const study = { samples: 1600, seed: 9, demand: 4000 }
const order = { spec: soundPier, assumptions: startingAssumptions, study }
const ignore = () => undefined

/** A worker by the same messages, on this thread. `breaks`: it dies at its first order. */
const fakeWorker = (breaks = false) => {
  const heard: SureOrder[] = []
  const hearers = new Map<string, (event: { data: SureNews }) => void>()
  const stopped = new Set<number>()
  const say = (data: SureNews) => soon(() => hearers.get('message')?.({ data }))
  const worker: SureWorker = {
    addEventListener: (type: string, listener: (event: { data: SureNews }) => void) => void hearers.set(type, listener),
    terminate: vi.fn(),
    postMessage: (asked) => {
      heard.push(structuredClone(asked))
      if (breaks) return soon(() => hearers.get('error')?.({ data: { kind: 'failed', run: 0, why: '' } }))
      if (asked.kind === 'stop') return void stopped.add(asked.run)
      const { run } = asked
      void studyInSteps(structuredClone(asked), {
        breathe: () => new Promise((go) => soon(go as () => void)),
        isStopped: () => stopped.has(run),
        onProgress: (done) => say({ kind: 'progress', run, done }),
      }).then((result) => result && say({ kind: 'done', run, result: structuredClone(result) }))
    },
  }
  return { worker, heard }
}

const engines: readonly (readonly [string, () => SureEngine])[] = [
  ['a worker', () => workerEngine(() => fakeWorker().worker)],
  ['idle time', () => idleEngine(soon)],
  [
    'idle time after a worker that breaks',
    () =>
      eitherEngine(
        workerEngine(() => fakeWorker(true).worker),
        idleEngine(soon),
      ),
  ],
  [
    'idle time where no worker can be started',
    () =>
      eitherEngine(
        workerEngine(() => {
          throw new Error('refused')
        }),
        idleEngine(soon),
      ),
  ],
]

describe('[N8] a study', () => {
  it.each(engines)('in %s gives the answer of the core, with its progress', async (_, engine) => {
    const told: number[] = []
    const result = await engine()(order, (done) => told.push(done)).result
    expect(result).toEqual(simulate(soundPier, startingAssumptions, study))
    expect(told).toEqual([500, 1000, 1500])
  })

  it.each(engines)('in %s can be stopped, and the next one runs', async (_, engine) => {
    const start = engine()
    const first = start(order, ignore)
    first.stop()
    expect(await first.result).toBeNull()
    expect(await start(order, ignore).result).toEqual(simulate(soundPier, startingAssumptions, study))
  })

  it('starts one worker and keeps it for the next study', async () => {
    const starts = vi.fn(() => fakeWorker().worker)
    const engine = workerEngine(starts)
    await engine(order, ignore).result
    await engine(order, ignore).result
    expect(starts).toHaveBeenCalledTimes(1)
  })

  it('asks a broken worker for nothing more', async () => {
    const { worker, heard } = fakeWorker(true)
    const engine = eitherEngine(
      workerEngine(() => worker),
      idleEngine(soon),
    )
    await engine(order, ignore).result
    await engine(order, ignore).result
    expect(heard).toHaveLength(1)
    expect(worker.terminate).toHaveBeenCalledTimes(1)
  })
})

const settled = async (store: SureStore): Promise<void> => {
  await vi.runAllTimersAsync()
  expect(store.getState().run.kind).not.toBe('running')
}
const fresh = (): SureStore => {
  const store = createSureStore(idleEngine(soon))
  setSamples(store, 1600)
  return store
}

describe('[N9] what is asked and answered', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  it('the same seed gives the same answer, another seed another', async () => {
    const store = fresh()
    const answers: unknown[] = []
    for (const seed of [5, 6, 5]) {
      setSeed(store, seed)
      runStudy(store, soundPier, null)
      await settled(store)
      answers.push(store.getState().last?.result)
    }
    expect(answers[0]).toEqual(answers[2])
    expect(answers[0]).not.toEqual(answers[1])
  })

  it('stopping keeps the last answer and says that it was stopped', async () => {
    const store = fresh()
    runStudy(store, soundPier, null)
    await settled(store)
    const { last } = store.getState()
    runStudy(store, soundPier, 4000)
    expect(store.getState().run.kind).toBe('running')
    stopStudy(store)
    expect(store.getState().run.kind).toBe('stopped')
    await vi.runAllTimersAsync()
    expect(store.getState()).toMatchObject({ run: { kind: 'stopped' }, last })
  })

  it('a new question takes the place of one under way', async () => {
    const store = fresh()
    runStudy(store, soundPier, 1)
    runStudy(store, soundPier, 2)
    await settled(store)
    expect(store.getState().last?.question.demand).toBe(2)
  })

  it('a study that breaks says so', async () => {
    const store = createSureStore(() => ({ result: Promise.reject(new Error('broke')), stop: ignore }))
    runStudy(store, soundPier, null)
    await settled(store)
    expect(store.getState().run.kind).toBe('failed')
  })

  it('an answer is out of date once anything it came from is another', () => {
    const store = fresh()
    const before = questionOf(store.getState(), soundPier, null)
    expect(isSameQuestion(before, questionOf(store.getState(), soundPier, null))).toBe(true)
    expect(isSameQuestion(before, questionOf(store.getState(), { ...soundPier }, null))).toBe(false)
    expect(isSameQuestion(before, questionOf(store.getState(), soundPier, 1))).toBe(false)
    setVaries(store, 'hole-depth', false)
    expect(isSameQuestion(before, questionOf(store.getState(), soundPier, null))).toBe(false)
  })

  it('ranges are changed one at a time and put back together', () => {
    const store = fresh()
    setSpread(store, 'hole-depth', { kind: 'uniform', low: -1, high: 1 })
    setVaries(store, 'bar-height', false)
    const changed = store.getState().assumptions.filter((one, i) => one !== startingAssumptions[i])
    expect(changed.map(({ id }) => id)).toEqual(['hole-depth', 'bar-height'])
    restoreAssumptions(store)
    expect(store.getState().assumptions).toBe(startingAssumptions)
  })

  it.each([-1, 1.5, Number.NaN, 2 ** 32])('%d is no seed', (seed) => {
    const store = fresh()
    expect(setSeed(store, seed)).toBe(false)
    expect(store.getState().seed).toBe(1)
  })

  it.each([0, 99, 200_001, Number.NaN])('%d is no number of tries', (samples) => {
    const store = fresh()
    expect(setSamples(store, samples)).toBe(false)
    expect(store.getState().samples).toBe(1600)
  })
})
