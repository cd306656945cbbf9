/** Reads what a store may hold, which may be anything: an older version of this page, or another program, may have put it there. */
export const valueIn = (raw: unknown, key: string): unknown =>
  typeof raw === 'object' && raw !== null ? (raw as Readonly<Record<string, unknown>>)[key] : undefined

export const textAt = (raw: unknown, key: string): string => {
  const value = valueIn(raw, key)
  return typeof value === 'string' ? value : ''
}

/** NaN for anything that is no number. */
export const numberAt = (raw: unknown, key: string): number => {
  const value = valueIn(raw, key)
  return typeof value === 'number' && Number.isFinite(value) ? value : Number.NaN
}

export const isTexts = (value: unknown): value is readonly string[] => Array.isArray(value) && value.every((one) => typeof one === 'string')
export const isId = (value: unknown): value is string => typeof value === 'string' && value !== '' && value.length <= 64

/** The end of the year 9999 [ms since 1970]: no pier is saved later, and a date far beyond it can't even be shown. */
const latestTime = 253_402_300_799_999
export const isTime = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0 && value <= latestTime

/** All that was found, as text to take along: what JSON can't write is written as it reads. */
export const rawText = (raw: unknown): string => {
  try {
    const text = JSON.stringify(raw, (_, value: unknown) => (typeof value === 'bigint' ? String(value) : value), 2)
    return text === undefined ? String(raw) : text
  } catch {
    return String(raw)
  }
}

/** What a stored text holds; null for one that is no JSON. */
export const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
