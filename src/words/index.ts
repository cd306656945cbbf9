import type { LanguageId } from '../state/appState.ts'
import { english } from './en/index.ts'
import type { Language, Locale, Subject, Words } from './language.ts'

export type { Language, Subject, Words } from './language.ts'

let spoken: Language = english
/** Tables that are there, by language. */
const loaded = new Map<Language, Partial<Words>>()
/** Subjects that a part of the page has asked for; another language loads them before it is spoken. */
const wanted = new Set<Subject>()

const tablesOf = (language: Language): Partial<Words> => {
  const tables = loaded.get(language) ?? { ...language.first }
  loaded.set(language, tables)
  return tables
}

const isLate = (subject: Subject): subject is keyof Language['late'] => Object.hasOwn(english.late, subject)

async function load<S extends keyof Language['late']>(language: Language, subject: S): Promise<void> {
  const tables: Partial<Words> = tablesOf(language)
  tables[subject] ??= await language.late[subject]()
}

const loadAll = async (language: Language, subjects: Iterable<Subject>): Promise<void> => {
  await Promise.all([...subjects].filter(isLate).map((subject) => load(language, subject)))
}

/** The table of one subject in the language that is spoken. Asked for when it is read, never kept. Throws where it was not loaded. */
export function wordsOf<S extends Subject>(subject: S): Words[S] {
  const tables: Partial<Words> = tablesOf(spoken)
  const table = tables[subject]
  if (table === undefined)
    throw new Error(`The words of '${subject}' are not loaded in '${spoken.id}'. Name them where this part is loaded.`)
  return table
}

/** Loads subjects in the language that is spoken. */
export async function loadWords(subjects: Iterable<Subject>): Promise<void> {
  const list = [...subjects]
  for (const subject of list) wanted.add(subject)
  for (let language: Language | null = null; language !== spoken; ) {
    language = spoken
    await loadAll(language, list)
  }
}

/** What inputs are called and what is wrong with them: most parts say it, so it comes with whichever is fetched first. */
export const common: readonly Subject[] = ['brackets', 'choices', 'fields', 'fills', 'groups', 'issues']

/** A part of the program and the words that it says, loaded side by side; the common ones need not be named. `others`: for a part that says none of these. */
export async function withWords<T>(part: () => Promise<T>, subjects: readonly Subject[], others = common): Promise<T> {
  const [it] = await Promise.all([part(), loadWords([...others, ...subjects])])
  return it
}

/** Every subject there is. */
export const subjects: readonly Subject[] = [...Object.keys(english.first), ...Object.keys(english.late)] as Subject[]

const listeners = new Set<() => void>()

/** Speaks another language from now on, once all that is loaded is there in it; whoever listens draws the page again. */
export async function speak(language: Language): Promise<void> {
  await loadAll(language, wanted)
  spoken = language
  for (const listener of listeners) listener()
}

/** Hears of another language. Returns how to stop. */
export const onLanguage = (listener: () => void): (() => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** The language that is spoken, by its id. */
export const languageSpoken = (): Language['id'] => spoken.id

/** Languages to choose from; each but English is fetched when it is chosen. */
export const languages: Readonly<Record<LanguageId, () => Promise<Language>>> = { en: async () => english }

/** The tag by which a browser writes numbers, dates and lists of the language that is spoken. */
export const locale = (): Locale => spoken.locale
