import { wordsOf } from '../words/index.ts'

const own = (table: Readonly<Record<string, string>>, id: string): string => table[id] ?? id
const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** A row of evidence in words: what was watched, where, for how long, and what it leaves out. */
export const evidenceText = (id: string): string => own(wordsOf('life').evidence, id)
/** What can be seen of a post, or can't. */
export const inspectionText = (id: string): string => upper(own(wordsOf('life').inspection, id))
/** What the rows leave open. */
export const lackText = (id: string): string => own(wordsOf('life').lacks, id)
