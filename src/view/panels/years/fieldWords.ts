import { text } from '../../../text/index.ts'

/** Help of an input, and what its empty box means. */
export const fieldWords = (path: string): Readonly<{ help: string; none: string }> => {
  const { help = '', none = '' } = (text.fields as Readonly<Record<string, Readonly<{ help: string; none?: string }>>>)[path] ?? {}
  return { help, none }
}
