import type { PierSpec } from '../core/model/spec.ts'
import type { Assumption } from '../core/uncertainty/assumptions.ts'
import type { Study, SureResult } from '../core/uncertainty/sureResult.ts'
import type { SureNews, SureOrder } from './sureMessages.ts'
import { studyInSteps } from './sureMessages.ts'

export type StudyOrder = Readonly<{ spec: PierSpec; assumptions: readonly Assumption[]; study: Study }>
/** A study under way: `result` is null once it was stopped, and rejects when it broke. */
export type Running = Readonly<{ result: Promise<SureResult | null>; stop: () => void }>
/** Whatever can carry out a study. */
export type SureEngine = (order: StudyOrder, onProgress: (done: number) => void) => Running

/** A worker as far as it is used here. */
export type SureWorker = Readonly<{
  postMessage: (order: SureOrder) => void
  addEventListener: {
    (type: 'message', listener: (event: Readonly<{ data: SureNews }>) => void): void
    (type: 'error' | 'messageerror', listener: () => void): void
  }
  terminate: () => void
}>

type Waiting = Readonly<{
  onProgress: (done: number) => void
  resolve: (result: SureResult | null) => void
  reject: (error: Error) => void
}>

/** Studies in one worker, which is started with the first and kept warm for the next. */
export function workerEngine(start: () => SureWorker): SureEngine {
  let worker: SureWorker | null = null
  let last = 0
  const runs = new Map<number, Waiting>()
  const broke = () => {
    worker?.terminate()
    worker = null
    for (const { reject } of runs.values()) reject(new Error('the worker broke'))
    runs.clear()
  }
  const hear = ({ data: news }: Readonly<{ data: SureNews }>) => {
    const run = runs.get(news.run)
    if (!run) return
    if (news.kind === 'progress') {
      run.onProgress(news.done)
      return
    }
    runs.delete(news.run)
    if (news.kind === 'done') run.resolve(news.result)
    else run.reject(new Error(news.why))
  }
  const started = (): SureWorker => {
    const fresh = start()
    fresh.addEventListener('message', hear)
    fresh.addEventListener('error', broke)
    fresh.addEventListener('messageerror', broke)
    return fresh
  }
  return (order, onProgress) => {
    const run = ++last
    const result = new Promise<SureResult | null>((resolve, reject) => {
      runs.set(run, { onProgress, resolve, reject })
      try {
        worker ??= started()
        worker.postMessage({ kind: 'start', run, ...order })
      } catch {
        broke()
      }
    })
    const stop = () => {
      const waiting = runs.get(run)
      runs.delete(run)
      if (waiting) worker?.postMessage({ kind: 'stop', run })
      waiting?.resolve(null)
    }
    return { result, stop }
  }
}

/** Studies on the page's own thread, a step at a time when it has nothing else to do. */
export const idleEngine =
  (whenIdle: (go: () => void) => void = idle): SureEngine =>
  (order, onProgress) => {
    let isStopped = false
    const breathe = () => new Promise<void>((resolve) => whenIdle(resolve))
    const result = breathe().then(() => studyInSteps(order, { breathe, isStopped: () => isStopped, onProgress }))
    return {
      result,
      stop: () => {
        isStopped = true
      },
    }
  }

const idle = (go: () => void): void => {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(go, { timeout: 200 })
  else setTimeout(go)
}

/** The first engine, and the second for every study that the first one breaks at, from then on. */
export function eitherEngine(first: SureEngine, second: SureEngine): SureEngine {
  let isBroken = false
  return (order, onProgress) => {
    if (isBroken) return second(order, onProgress)
    let running = first(order, onProgress)
    let isStopped = false
    const result = running.result.catch(() => {
      isBroken = true
      if (isStopped) return null
      running = second(order, onProgress)
      return running.result
    })
    return {
      result,
      stop: () => {
        isStopped = true
        running.stop()
      },
    }
  }
}

/** The engine of the running page: a worker where the browser has one, else its idle time. */
export const pageEngine = (): SureEngine =>
  typeof Worker === 'undefined'
    ? idleEngine()
    : eitherEngine(
        workerEngine(() => new Worker(new URL('./sureWorker.ts', import.meta.url), { type: 'module', name: 'how-sure' })),
        idleEngine(),
      )
