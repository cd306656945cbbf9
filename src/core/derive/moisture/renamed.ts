import { retold } from '../../engineering/showing.ts'
import type { Worked } from '../../model/worked.ts'

/** The same number with inputs under names that say what they are here. */
export const renamed = (worked: Worked, names: Readonly<Record<string, string>>): Worked =>
  retold(worked, worked.id, { inputs: worked.inputs.map((term) => ({ ...term, name: names[term.name] ?? term.name })) })
