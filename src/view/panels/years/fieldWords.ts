import { wordsOf } from '../../../words/index.ts'

/** Help of an input, and what its empty box means. */
export const fieldWords = (path: string): Readonly<{ help: string; none: string }> => {
  const { help = '', none = '' } = (wordsOf('fields') as Readonly<Record<string, Readonly<{ help: string; none?: string }>>>)[path] ?? {}
  return { help, none }
}
