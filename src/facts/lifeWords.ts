import type { ApartWhy, LifeResult, TreatmentBand } from '../core/model/timeResult.ts'
import { wordsOf } from '../words/index.ts'

const own = (table: Readonly<Record<string, string>>, id: string): string => table[id] ?? id
const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** A row of evidence in words: what was watched, where, for how long, and what it leaves out. */
export const evidenceText = (id: string): string => own(wordsOf('life').evidence, id)
/** What can be seen of a post, or can't. */
export const inspectionText = (id: string): string => upper(own(wordsOf('life').inspection, id))
/** What the rows leave open. */
export const lackText = (id: string): string => own(wordsOf('life').lacks, id)
/** What of termites was seen where the rows stood. */
export const termiteText = (id: string): string => own(wordsOf('life').termites, id)
/** Why a row is no part of a band. */
export const whyApartText = (why: ApartWhy): string => wordsOf('life').apart[why]
/** A row that is told apart, with the reason. */
export const apartText = ({ row, why }: LifeResult['apart'][number]): string => `${evidenceText(row)} ${whyApartText(why)}`
/** What a band is of, and the decay zone in which it was found. */
export const bandText = ({ wood, zone, isOneSided }: TreatmentBand): string => {
  const words = wordsOf('life')
  const name = own(words.woods, wood)
  return zone === null ? name : `${name}, ${isOneSided ? words.fromHarsher(String(zone)) : words.inZone(String(zone))}`
}
