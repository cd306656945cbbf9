import { type BuildCard, buildCards } from '../../text/en/buildCards.ts'
import { steps } from '../../text/en/practice.ts'

/** What is done in a step of building. */
export const stepText = (id: string): string => (steps as Readonly<Record<string, string>>)[id] ?? id

/** What there is to say of a step. */
export const cardOf = (id: string): BuildCard | undefined => (buildCards as Readonly<Record<string, BuildCard>>)[id]
