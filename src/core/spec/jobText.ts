import type { Issue } from '../model/issue.ts'

/** Most text that is read at all [characters], and most levels of nesting. A job file has six levels and about 2 kB. */
export const largestText = 256 * 1024
export const deepestNesting = 32

type Open = { readonly kind: 'object' | 'array'; readonly keys: Set<string>; key: string }

const decoded = (quoted: string): string => {
  try {
    return String(JSON.parse(quoted))
  } catch {
    return quoted
  }
}

const issue = (code: string, path: string, facts: Partial<Issue> = {}): Issue => ({ code, severity: 'error', path, ...facts })

const [quote, backslash, colon] = ['"', '\\', ':'].map((sign) => sign.charCodeAt(0))
const [openObject, closeObject, openArray, closeArray] = ['{', '}', '[', ']'].map((sign) => sign.charCodeAt(0))
/** What JSON may have between two words: tab, line feed, carriage return, space. */
const isBlank = (sign: number): boolean => sign === 32 || (sign >= 9 && sign <= 13)

/** Where a quoted text ends: after its closing quote, or with the whole text where it has none. */
function quotedEnd(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    const sign = text.charCodeAt(at)
    if (sign === quote) return at + 1
    if (sign === backslash) at++
  }
  return text.length
}

/**
 * Looks at a text before any parser does: its size, its nesting, and keys that stand twice in one object (a parser would keep the
 * last and say nothing). No character is looked at more than twice, whatever the text. Whether it is JSON at all is the parser's matter.
 */
export function textIssues(text: string): readonly Issue[] {
  if (text.length > largestText) return [issue('file-too-large', '', { got: text.length, limit: largestText })]
  const found: Issue[] = []
  const open: Open[] = []
  let at = 0
  while (at < text.length) {
    const sign = text.charCodeAt(at)
    const start = at++
    if (sign === openObject || sign === openArray) {
      open.push({ kind: sign === openObject ? 'object' : 'array', keys: new Set(), key: '' })
      if (open.length > deepestNesting) return [issue('file-too-deep', '', { got: `> ${deepestNesting}`, limit: deepestNesting })]
    } else if (sign === closeObject || sign === closeArray) open.pop()
    else if (sign === quote) {
      const end = quotedEnd(text, start)
      for (at = end; isBlank(text.charCodeAt(at)); ) at++
      if (text.charCodeAt(at) === colon) noteKey(text.slice(start, end), open, found)
    }
  }
  return found
}

function noteKey(quoted: string, open: Open[], found: Issue[]): void {
  const here = open[open.length - 1]
  if (here?.kind !== 'object') return
  here.key = decoded(quoted)
  if (here.keys.has(here.key)) found.push(issue('duplicate-key', pathOf(open), { got: here.key }))
  here.keys.add(here.key)
}

/** Path into the spec of the key that was read last; 'pier' itself is left out. */
const pathOf = (open: readonly Open[]): string =>
  open
    .map((level) => level.key)
    .filter((key, i) => !(i === 0 && key === 'pier' && open.length > 1))
    .join('.')

const forbidden = ['__proto__', 'constructor', 'prototype']

/** The same data without keys that reach into prototypes, and an issue for each. Depth is bounded by `deepestNesting`. */
export function withoutForbidden(data: unknown, path: readonly string[] = []): Readonly<{ data: unknown; issues: readonly Issue[] }> {
  if (typeof data !== 'object' || data === null) return { data, issues: [] }
  const issues: Issue[] = []
  const clean = (value: unknown, key: string) => {
    const inner = withoutForbidden(value, [...path, key])
    issues.push(...inner.issues)
    return inner.data
  }
  if (Array.isArray(data)) return { data: data.map((value, i) => clean(value, String(i))), issues }
  const kept: [string, unknown][] = []
  for (const [key, value] of Object.entries(data)) {
    if (forbidden.includes(key))
      issues.push(issue('forbidden-key', [...path, key].filter((k, i) => i > 0 || k !== 'pier').join('.'), { got: key }))
    else kept.push([key, clean(value, key)])
  }
  return { data: Object.fromEntries(kept), issues }
}
