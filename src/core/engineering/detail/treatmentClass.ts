import type { UseClass } from '../../model/spec.ts'
import type { SourceId } from '../sources.ts'
import { useClasses } from '../tables/useClasses.ts'

type Inputs = Readonly<{ useClass: UseClass; contact: 'ground' | 'concrete-in-ground' | 'above-ground'; buildingPost: boolean }>
export type TreatmentVerdict = Readonly<{ least: UseClass; reached: boolean; sources: readonly SourceId[] }>

/**
 * Least use class for where a post stands.
 * @param useClass of the post [1]
 * @param contact what the wood touches [1]
 * @param buildingPost true when the post holds up a building [1]
 * @returns least class and whether it is reached [1]
 * Formula: building post in earth, or in concrete that touches earth: UC4B; other ground contact: UC4A; above ground, wet: UC3B
 * Valid: sawn and round posts. Outside: sea water and above-ground posts that count as ground contact need the standard itself.
 * Source: ibc-1807-3-1, irc-r317-1, awpa-u1
 * Checked by: tests/external/awpa-u1/check.test.ts
 */
export function treatmentClass({ useClass, contact, buildingPost }: Inputs): TreatmentVerdict {
  const buried = contact !== 'above-ground'
  const least: UseClass = buried ? (buildingPost ? 'UC4B' : 'UC4A') : 'UC3B'
  const rule: readonly SourceId[] = buried ? (buildingPost ? ['ibc-1807-3-1'] : ['irc-r317-1']) : ['irc-r317-1-4']
  return { least, reached: useClasses[useClass].rank >= useClasses[least].rank, sources: [...rule, 'awpa-u1'] }
}
