import type { Issue } from '../model/issue.ts'

/** Most text that is read at all [characters], and most levels of nesting. A job file has six levels and about 2 kB. */
export const largestText = 256 * 1024
export const deepestNesting = 32

type Open = { readonly kind: 'object' | 'array'; readonly keys: Set<string>; key: string }

const tokens = /"(?:[^"\\]|\\.)*"|[{}[\]]/g

const decoded = (quoted: string): string => {
  try {
    return String(JSON.parse(quoted))
  } catch {
    return quoted
  }
}

const issue = (code: string, path: string, facts: Partial<Issue> = {}): Issue => ({ code, severity: 'error', path, ...facts })

/**
 * Looks at a text before any parser does: its size, its nesting, and keys that stand twice in one object (a parser would keep the
 * last and say nothing). One pass, no recursion. Whether it is JSON at all is the parser's matter.
 */
export function textIssues(text: string): readonly Issue[] {
  if (text.length > largestText) return [issue('file-too-large', '', { got: text.length, limit: largestText })]
  const found: Issue[] = []
  const open: Open[] = []
  for (const token of text.matchAll(tokens)) {
    const [word] = token
    if (word === '{' || word === '[') {
      open.push({ kind: word === '{' ? 'object' : 'array', keys: new Set(), key: '' })
      if (open.length > deepestNesting) return [issue('file-too-deep', '', { got: `> ${deepestNesting}`, limit: deepestNesting })]
    } else if (word === '}' || word === ']') open.pop()
    else noteKey(text, token.index + word.length, word, open, found)
  }
  return found
}

function noteKey(text: string, after: number, quoted: string, open: Open[], found: Issue[]): void {
  const here = open[open.length - 1]
  if (here?.kind !== 'object' || !/^\s*:/.test(text.slice(after, after + 40))) return
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
