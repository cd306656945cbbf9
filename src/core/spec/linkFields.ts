import type { Result } from '../model/issue.ts'
import type { PierDocument } from '../model/spec.ts'
import type { FieldNode, Shape, Word } from '../fields/node.ts'
import { fillKinds } from '../kinds/index.ts'
import { deepFreeze } from './path.ts'
import { readJob } from './jobFile.ts'
import { linkedFields } from './linkContent.ts'
import { schemaVersion } from './schemaVersion.ts'
import { pierFields } from './pier/pier.ts'

/**
 * The pier that a link's content says, through the same gate as a job file. Refused as 'link-content' when it is not one of ours.
 * @param version of the job file that the link was written beside
 */
export function documentFromContent(content: string, version: number = schemaVersion): Result<PierDocument> {
  const words = wordsOf(content)
  if (words === undefined) return refused
  const known = new Map(linkedFields.map((field) => [field.link, field.path]))
  if ([...words.keys()].some((key) => !known.has(key))) return refused
  const said = new Map([...words].map(([key, word]) => [known.get(key) ?? '', word]))
  const read = readJob({ pierglass: version, pier: told(pierFields.fields, '', said) })
  if (!read.ok) return { ok: false, issues: [...refused.issues, ...read.issues] }
  const isTyped = (path: string): boolean => {
    const word = said.get(path)
    return typeof word === 'string' && !word.startsWith('=')
  }
  const written = Object.fromEntries(Object.entries(read.value.written).filter(([path]) => isTyped(path)))
  return { ...read, value: deepFreeze({ ...read.value, written }) }
}

const refused = { ok: false, issues: [{ code: 'link-content', severity: 'error', path: '' }] } as const satisfies Result<PierDocument>

/** Key to value; undefined when the content is not a flat list of both. */
function wordsOf(content: string): ReadonlyMap<string, Word> | undefined {
  let list: unknown
  try {
    list = JSON.parse(content)
  } catch {
    return undefined
  }
  if (!Array.isArray(list) || list.length % 2 !== 0) return undefined
  const isWord = (value: unknown): value is Word => value === null || typeof value === 'string' || typeof value === 'number'
  if (!list.every(isWord)) return undefined
  const words = new Map<string, Word>()
  for (let i = 0; i < list.length; i += 2) words.set(String(list[i]), list[i + 1] ?? null)
  return words.size * 2 === list.length ? words : undefined
}

/** Words by path; where a link is silent, its silent value. */
type Said = ReadonlyMap<string, Word>

/** What a job file of these words holds below a path. A part that is off, and a kind that is not chosen, take their own fields with them. */
const told = (shape: Shape, holder: string, said: Said): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(shape).flatMap(([key, node]) => {
      const value = toldAt(node, holder === '' ? key : `${holder}.${key}`, said)
      return value === undefined ? [] : [[key, value]]
    }),
  )

function toldAt(node: FieldNode, path: string, said: Said): unknown {
  const word = (at: string, silent: Word): Word => {
    const one = said.get(at)
    return one === undefined ? silent : one
  }
  if (node.type === 'group') return told(node.fields, path, said)
  if (node.type === 'either') {
    const chosen = node.isAsked ? word(`${path}.kind`, node.silent) : supportOf(word('fill.kind', pierFields.fields.fill.silent))
    return { kind: chosen, ...told(node.kinds.find(({ id }) => id === chosen)?.fields ?? {}, path, said) }
  }
  if (node.type === 'text' || node.link === undefined) return undefined
  const here = word(path, node.silent)
  if (node.type === 'part') return here === 1 ? told(node.fields, path, said) : null
  return typeof here === 'string' && here.startsWith('=') ? here.slice(1) : here
}

/** Where the post stands follows from the fill. */
const supportOf = (fill: Word): Word => fillKinds.find((kind) => kind.id === fill)?.support ?? null
