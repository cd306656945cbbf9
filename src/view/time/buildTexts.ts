import { wordsOf } from '../../words/index.ts'

const own = (table: Readonly<Record<string, string>>, id: string): string => table[id] ?? id

/** What is done in a step of building. */
export const stepText = (id: string): string => own(wordsOf('steps'), id)
/** What is checked at it. */
export const checkText = (id: string): string => own(wordsOf('build').checks, id)
/** What goes wrong at it. */
export const wrongText = (id: string): string => own(wordsOf('build').wrong, id)
