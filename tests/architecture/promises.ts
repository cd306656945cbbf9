import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { filesUnder, root } from './sourceFile.ts'

export type Clause = Readonly<{ number: string; says: string; keptIn: string }>

const row = /^\| ([A-Z]\d+) \| (.*) \| `(.*)` \|$/gm
export const inTable = (text: string): Clause[] =>
  [...text.matchAll(row)].map((m) => ({ number: m[1] ?? '', says: m[2] ?? '', keptIn: m[3] ?? '' }))

const title = /(?:describe|it|test)(?:\.\w+)?\(\s*[`'"]\[([A-Z]\d+)\]\s*([^`'"\n]*)/g
export const inTitles = (path: string, text: string): Clause[] =>
  [...text.matchAll(title)].map((m) => ({ number: m[1] ?? '', says: m[2] ?? '', keptIn: path.replace(/\.(test|spec)\.tsx?$/, '') }))

export const readTests = (): Clause[] =>
  filesUnder('tests', ['.test.ts', '.test.tsx', '.spec.ts']).flatMap((path) => inTitles(path, readFileSync(join(root, path), 'utf8')))

/** By letter, then by number. */
export const inOrder = (a: Clause, b: Clause): number =>
  a.number.charCodeAt(0) - b.number.charCodeAt(0) || Number(a.number.slice(1)) - Number(b.number.slice(1))

/** The rows a table should have: the words of a row that is there, else those of the first test that names the number. */
export const merged = (listed: readonly Clause[], kept: readonly Clause[]): Clause[] => {
  const rows = new Map<string, Clause>()
  for (const promise of kept) {
    if (rows.has(promise.number)) continue
    const told = listed.find(({ number }) => number === promise.number)
    const says = promise.says.charAt(0).toUpperCase() + promise.says.slice(1)
    rows.set(promise.number, told ? { ...told } : { ...promise, says })
  }
  return [...rows.values()].sort(inOrder)
}
