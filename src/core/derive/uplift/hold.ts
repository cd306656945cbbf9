import type { Check } from '../../model/worked.ts'

/** One link of the chain as a bare number: what a check states, without its work. Null where it may not be counted. */
export type Hold = Readonly<{
  id: string
  group: Check['group']
  counted: Check['counted']
  allowable: number | null
}>

export const holdOf = ({ id, group, counted, allowable }: Check): Hold => ({ id, group, counted, allowable: allowable?.value ?? null })

/** As a check states it: nothing where it is not counted, whatever the number. */
export const hold = (id: string, group: Check['group'], counted: Check['counted'], allowable: number | null): Hold => ({
  id,
  group,
  counted,
  allowable: counted === 'not counted' ? null : allowable,
})
