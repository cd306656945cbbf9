import type { z } from 'zod'
import type { Field } from '../model/field.ts'
import type { Issue, Result } from '../model/issue.ts'
import type { OtherKind, PierDocument, PierSpec } from '../model/spec.ts'
import { parseQuantity } from '../units/parse.ts'
import { outOfBoundsAlone } from './bounds.ts'
import type { FieldNode } from '../fields/node.ts'
import { fieldBy, allFields, visibleFields } from './fields.ts'
import { jobIssues } from './jobIssues.ts'
import { textIssues, withoutForbidden } from './jobText.ts'
import { migrated } from './migrate.ts'
import { valueAt } from './path.ts'
import { jobSchema } from './schema.ts'
import { changesSince } from './methodChanges.ts'
import { pierFields } from './pier/pier.ts'
import { longestShown } from './issueCodes.ts'
import { makeDocument } from './validate.ts'
import { isText } from './writeJob.ts'

export { shortText, writeJob } from './writeJob.ts'

const refused = (issues: readonly Issue[]): Result<PierDocument> => ({ ok: false, issues })

/**
 * Reads a job file. Size, nesting and doubled keys are looked at before any parser sees the text; every issue of one stage is
 * collected; the document comes out frozen, with each quantity's text kept as it was typed.
 */
export const parseJob = (text: string): Result<PierDocument> => parseText(text, readJob)

/**
 * Reads the text of any file of ours.
 *
 * @param read reads its data, without keys that reach into prototypes; with any of the issues found before it has to refuse
 */
export function parseText<T>(text: string, read: (data: unknown, early: readonly Issue[]) => Result<T>): Result<T> {
  const before = textIssues(text)
  if (before.some((issue) => issue.path === '')) return { ok: false, issues: before }
  const parsed = parsedJson(text)
  if (!parsed.ok) return { ok: false, issues: [...before, parsed.issue] }
  const clean = withoutForbidden(parsed.data)
  return read(clean.data, [...before, ...clean.issues])
}

/**
 * Reads a job that is data already.
 *
 * @param data anything without keys that reach into prototypes
 * @param early issues found before; with any of them the job is refused
 */
export function readJob(data: unknown, early: readonly Issue[] = []): Result<PierDocument> {
  const version = valueAt(data, 'pierglass')
  const current = migrated(data)
  if (!current.ok) return refused([...early, current.issue])
  const read = jobSchema.safeParse(current.data, { reportInput: true })
  if (!read.success) return refused([...early, ...jobIssues(read.error.issues), ...outOfBoundsAlone(reader(current.data))])
  // The schema has the shape of a document but for the fields that a pier may not show.
  const { name, note, origins = {}, otherKinds = [] } = read.data
  const { spec, missing } = completed(read.data.pier as unknown as PierSpec)
  const others = otherKinds.map((other, i) => readOther(other, valueAt(current.data, `otherKinds.${i}.pier`)))
  const made = makeDocument({ spec, written: typedTexts(valueAt(current.data, 'pier')), origins, otherKinds: others, name, note })
  const issues = [
    ...early,
    ...missing,
    ...strangers(origins, 'origins'),
    ...others.flatMap((other, i) => strangers(other.origins, `otherKinds.${i}.origins`)),
  ]
  if (issues.length === 0) return made.ok ? { ...made, issues: [...made.issues, ...changesSince(version, made.value)] } : made
  return refused(made.ok ? issues : [...issues, ...made.issues])
}

/** Value of a number field of a job that may have any shape; undefined where it can't be read, which is another issue's matter. */
const reader = (job: unknown) => (field: Field) => {
  const written = valueAt(valueAt(job, 'pier'), field.path)
  if (field.type !== 'number' || (field.quantity === 'count' && Number.isFinite(written))) return written
  const reading = typeof written === 'string' ? parseQuantity(written, field.quantity) : undefined
  return reading?.ok ? reading.value : undefined
}

type Parsed = Readonly<{ ok: true; data: unknown }> | Readonly<{ ok: false; issue: Issue }>
function parsedJson(text: string): Parsed {
  try {
    return { ok: true, data: JSON.parse(text.replace(/^\ufeff/, '')) }
  } catch (error) {
    const told = /position (\d+)/.exec(String(error))?.[1]
    const at = told === undefined ? wordsEnd(text) : Number(told)
    const lines = text.slice(0, at).split('\n')
    return {
      ok: false,
      issue: { code: 'not-json', severity: 'error', path: '', got: `${lines.length}:${(lines.at(-1)?.length ?? 0) + 1}` },
    }
  }
}

const word = /[\s{}[\],:]+|"(?:[^"\\\n]|\\.)*"|-?\d[\d.eE+-]*|true|false|null/y

/** Where the text stops being made of JSON's words: its end, when only their order is wrong. */
function wordsEnd(text: string): number {
  let at = 0
  for (;;) {
    word.lastIndex = at
    if (!word.test(text)) return at
    at = word.lastIndex
  }
}

/** The spec with nothing left out; a field that this pier shows and the file does not have is an issue. */
function completed(partial: PierSpec): Readonly<{ spec: PierSpec; missing: readonly Issue[] }> {
  const left: string[] = []
  const spec = filled(pierFields, partial, '', left) as PierSpec
  const shown = new Set(visibleFields(spec).map((field) => field.path))
  return { spec, missing: left.filter((path) => shown.has(path)).map((path) => ({ code: 'missing', severity: 'error', path })) }
}

/** A value with what it lacks as in the first pier, its keys in the order of the tree; paths of what it lacks are put into `left`. */
function filled(node: FieldNode, value: unknown, path: string, left: string[]): unknown {
  if (value === undefined) left.push(path)
  if (value === undefined) return node.start
  const isHolder = node.type === 'group' || node.type === 'part'
  if (!isHolder || value === null) return value
  return Object.fromEntries(
    Object.entries(node.fields).map(([key, inner]) => [
      key,
      filled(inner, valueAt(value, key), path === '' ? key : `${path}.${key}`, left),
    ]),
  )
}

type ReadOther = NonNullable<z.infer<typeof jobSchema>['otherKinds']>[number]
/** What a kind that is not in use had, with its texts. */
const readOther = ({ of, pier, origins = {} }: ReadOther, written: unknown): OtherKind => ({
  of,
  pier: Object.fromEntries(
    Object.entries(pierFields.fields).flatMap(([key, node]) => (key in pier ? [[key, filled(node, valueAt(pier, key), key, [])]] : [])),
  ),
  written: typedTexts(written),
  origins,
})

/** Paths that are no input's. */
const strangers = (origins: PierDocument['origins'], at: string): readonly Issue[] =>
  Object.keys(origins).flatMap((path) =>
    fieldBy.has(path) ? [] : [{ code: 'unknown-key', severity: 'error', path: at, got: path.slice(0, longestShown) }],
  )

function typedTexts(pier: unknown): Record<string, string> {
  return Object.fromEntries(
    allFields.filter(isText).flatMap((field) => {
      const text = valueAt(pier, field.path)
      return typeof text === 'string' ? [[field.path, text] as const] : []
    }),
  )
}
