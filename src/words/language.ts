import type { LanguageId } from '../state/appState.ts'
import type { english } from './en/index.ts'

/** A table of another language has the same keys and the same functions; its strings are its own. */
type SameKeys<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Said
    ? (...given: Given) => SameKeys<Said>
    : T extends object
      ? { readonly [Key in keyof T]: SameKeys<T[Key]> }
      : T

type First = typeof english.first
type Late = { [S in keyof typeof english.late]: Awaited<ReturnType<(typeof english.late)[S]>> }
type Tables = First & Late

/** Every table by its subject, as English has it. */
export type Words = { [S in keyof Tables]: SameKeys<Tables[S]> }
export type Subject = keyof Words
/** Tags of languages by the standard for such tags; each language adds its own. */
export type Locale = 'en-US'

/** Languages made from English to test the page with; see `generated.ts`. */
export type GeneratedId = 'double' | 'x'

/** One language: the subjects that the page opens with, and a way to fetch each of the others. */
export type Language = Readonly<{
  id: LanguageId | GeneratedId
  /** For numbers, dates and lists. */
  locale: Locale
  first: Pick<Words, keyof First>
  late: { readonly [S in keyof Late]: () => Promise<Words[S]> }
}>
