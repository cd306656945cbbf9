import { steps } from '../../text/en/practice.ts'

/** What is done in a step of building. */
export const stepText = (id: string): string => (steps as Readonly<Record<string, string>>)[id] ?? id
