import { referenceLife } from '../../engineering/life/referenceLife.ts'
import { lifeEvidence, notFound } from '../../engineering/tables/lifeEvidence.ts'
import type { Band, LifeResult } from '../../model/timeResult.ts'
import type { Standing } from '../../model/worked.ts'
import { seconds, type Seconds } from '../../units/quantity.ts'

/** A row of evidence as a bar over the years. `isOpen`: it was watched so long and goes on. Null where it gives no time. */
export type ShownRow = Readonly<{ id: string; standing: Standing; span: (Band<Seconds> & Readonly<{ isOpen: boolean }>) | null }>

/** Rows by their ids, in the order of the table. */
export const shownRows = (ids: readonly string[]): readonly ShownRow[] =>
  lifeEvidence
    .filter((row) => ids.includes(row.id))
    .map((row) => {
      const { id, standing, watched } = row
      const life = referenceLife(row)
      if (life) return { id, standing, span: { low: life.low, high: life.high ?? life.low, isOpen: life.high === null } }
      return { id, standing, span: watched ? { low: seconds(0), high: watched.value, isOpen: true } : null }
    })

/** Rows in which none failed: how many of how many could fail and such a sample might still show none. */
export const zeroFailureRows = ({ worked }: LifeResult): readonly Readonly<{ id: string; failed: number; sample: number }>[] =>
  lifeEvidence.flatMap(({ id, sample }) => {
    const bound = worked.find((one) => one.id === `zero-failure-bound-${id}`)
    return bound && sample ? [{ id, failed: Math.round(bound.value * sample.count), sample: sample.count }] : []
  })

/** What was looked for and not found, by keys into the text table. */
export const lookedFor: readonly string[] = notFound
