import type { SureNews, SureOrder } from './sureMessages.ts'
import { studyInSteps } from './sureMessages.ts'

/** A worker's own scope, as far as it is used here. */
type Scope = Readonly<{
  postMessage: (news: SureNews, moved?: Transferable[]) => void
  addEventListener: (type: 'message', listener: (event: MessageEvent<SureOrder>) => void) => void
}>
const scope = self as unknown as Scope

/** A turn of the message queue: a stop that waits there is heard. Timers would wait four milliseconds each time. */
const channel = new MessageChannel()
const waiting: (() => void)[] = []
channel.port1.onmessage = () => waiting.shift()?.()
const breathe = (): Promise<void> =>
  new Promise((resolve) => {
    waiting.push(resolve)
    channel.port2.postMessage(null)
  })

const stopped = new Set<number>()

scope.addEventListener('message', ({ data: order }) => {
  const { run } = order
  if (order.kind === 'stop') {
    stopped.add(run)
    return
  }
  studyInSteps(order, {
    breathe,
    isStopped: () => stopped.has(run),
    onProgress: (done) => scope.postMessage({ kind: 'progress', run, done }),
  })
    .then((result) => {
      if (result === null) return
      const moved = result.kind === 'spread' ? [result.allowable.buffer, ...(result.histogram ? [result.histogram.counts.buffer] : [])] : []
      scope.postMessage({ kind: 'done', run, result }, moved)
    })
    .catch((error: unknown) => scope.postMessage({ kind: 'failed', run, why: String(error) }))
    .finally(() => stopped.delete(run))
})
