import { build } from '../../text/en/build.ts'
import { goesWrong } from '../../text/en/goesWrong.ts'
import { steps } from '../../text/en/practice.ts'

const own = (table: Readonly<Record<string, string>>, id: string): string => table[id] ?? id

/** What is done in a step of building. */
export const stepText = (id: string): string => own(steps, id)
/** What is checked at it. */
export const checkText = (id: string): string => own(build.checks, id)
/** What goes wrong at it. */
export const wrongText = (id: string): string => own(goesWrong, id)
