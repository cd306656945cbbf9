import { english } from './en/index.ts'
import type { GeneratedId, Language, Words } from './language.ts'

/** What is handed into a sentence stands between these while the sentence is made, so that it is told from the sentence's own words. */
const [open, shut] = ['\ue000', '\ue001']
const handedIn = new RegExp(`${open}([^${shut}]*)${shut}`)
const marks = new RegExp(`[${open}${shut}]`, 'g')

type Change = (own: string) => string

const crossed: Change = (own) => own.replace(/\p{L}/gu, 'X')
const doubled: Change = (own) => {
  const [, before = '', said = '', after = ''] = /^(\s*)(.*?)(\s*)$/su.exec(own) ?? []
  return /\p{L}/u.test(said) ? `${before}${said} ${said}${after}` : own
}

const marked = (given: unknown): unknown => {
  if (typeof given === 'string') return `${open}${given}${shut}`
  if (typeof given !== 'object' || given === null) return given
  return Object.fromEntries(Object.entries(given).map(([key, value]) => [key, marked(value)]))
}

/** What is told: every second part of the split was handed in and stays as it is. */
const told = (text: string, change: Change): string =>
  text
    .split(handedIn)
    .map((part, i) => (i % 2 === 0 ? change(part.replace(marks, '')) : part))
    .join('')

/** The same table with all its strings changed, those too that its functions give. Ids are no words. */
function otherwise<T>(table: T, change: Change): T {
  const made = (value: unknown, key = ''): unknown => {
    if (typeof value === 'string') return key === 'id' ? value : told(value, change)
    if (typeof value === 'function') return (...given: unknown[]) => made(value(...given.map(marked)))
    if (Array.isArray(value)) return value.map((one) => made(one))
    if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, made(v, k)]))
    return value
  }
  return made(table) as T
}

const changes: Readonly<Record<GeneratedId, Change>> = { double: doubled, x: crossed }

const made = (id: GeneratedId): Language => {
  const late = Object.entries(english.late).map(([subject, load]) => [
    subject,
    async () => otherwise<Words[keyof typeof english.late]>(await load(), changes[id]),
  ])
  return { ...english, id, first: otherwise(english.first, changes[id]), late: Object.fromEntries(late) as Language['late'] }
}

/**
 * A language made from English to test the page with: `double`, every string twice as long, shows what overflows; `x`, every letter an X,
 * shows what was never a word of a table. Null for any other id.
 */
export const generatedLanguage = (id: string): Language | null => (Object.hasOwn(changes, id) ? made(id as GeneratedId) : null)
