import { ShelfTrouble } from './shelfPort.ts'

/** Nobody waits longer than this for a store before the page says so [ms]. */
export const patience = 3000

/** The answer, or trouble after `limit` milliseconds. The question itself goes on; `late` is told when it is answered after all. */
export const answered = <T>(asked: Promise<T>, late: (answer: T) => void = () => undefined, limit: number = patience): Promise<T> =>
  new Promise((resolve, reject) => {
    let isLate = false
    const timer = setTimeout(() => {
      isLate = true
      reject(new ShelfTrouble('hanging'))
    }, limit)
    asked.then(
      (answer) => {
        clearTimeout(timer)
        if (isLate) late(answer)
        else resolve(answer)
      },
      (error: unknown) => {
        clearTimeout(timer)
        reject(error)
      },
    )
  })
