import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))

export type Import = Readonly<{ from: string; typeOnly: boolean; dynamic: boolean }>

/** One TypeScript file as the rules see it. `path` is relative to the project, with forward slashes. */
export type SourceFile = Readonly<{
  path: string
  text: string
  lines: number
  /** Comments blanked, strings kept. */
  statements: string
  /** Comments and the insides of strings blanked. */
  code: string
  imports: readonly Import[]
}>

const blank = (found: string): string => found.replace(/[^\n]/g, ' ')
const commentOrString = /\/\/[^\n]*|\/\*[\s\S]*?\*\/|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`/g
const isComment = (found: string): boolean => found.startsWith('//') || found.startsWith('/*')

const staticImport = /\b(?:import|export)\s+(type\s+)?(?:[\w$*{][^'";]*?\sfrom\s*)?'([^']+)'/g
const dynamicImport = /\bimport\s*\(\s*'([^']+)'/g
/** `import { type A, type B } from` leaves no import behind either, but the short form is asked for, so it counts as a value import. */
const importsOf = (statements: string): Import[] => [
  ...[...statements.matchAll(staticImport)].map((m) => ({ from: m[2] ?? '', typeOnly: m[1] !== undefined, dynamic: false })),
  ...[...statements.matchAll(dynamicImport)].map((m) => ({ from: m[1] ?? '', typeOnly: false, dynamic: true })),
]

export const sourceFile = (path: string, text: string): SourceFile => {
  const statements = text.replace(commentOrString, (found) => (isComment(found) ? blank(found) : found))
  const code = text.replace(commentOrString, blank)
  return { path, text, lines: text.trimEnd().split('\n').length, statements, code, imports: importsOf(statements) }
}

/** All files under `folder` whose names end in one of `endings`, sorted. */
export const filesUnder = (folder: string, endings: readonly string[]): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort()

export const readSources = (folder: string): SourceFile[] =>
  filesUnder(folder, ['.ts', '.tsx']).map((path) => sourceFile(path, readFileSync(join(root, path), 'utf8')))

/** The project path that a relative import points at, or null for a package. */
export const target = (file: SourceFile, wanted: Import): string | null => {
  if (!wanted.from.startsWith('.')) return null
  const parts = file.path.split('/').slice(0, -1)
  for (const step of wanted.from.replace(/\?.*$/, '').split('/')) {
    if (step === '..') parts.pop()
    else if (step !== '.') parts.push(step)
  }
  return parts.join('/')
}
