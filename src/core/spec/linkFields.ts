import type { Result } from '../model/issue.ts'
import type { PierDocument } from '../model/spec.ts'
import { fillKinds } from '../kinds/index.ts'
import { deepFreeze } from './freeze.ts'
import { readJob } from './jobFile.ts'
import { fieldBy, type Word } from './linkContent.ts'
import { linkTable } from './linkTable.ts'
import { schemaVersion } from './migrate.ts'

/** The pier that a link's content says, through the same gate as a job file. Refused as 'link-content' when it is not one of ours. */
export function documentFromContent(content: string): Result<PierDocument> {
  const words = wordsOf(content)
  if (words === undefined) return refused
  const said = new Map(
    linkTable.map(([path, key, silent]) => [path, { word: words.has(key) ? (words.get(key) ?? null) : silent, isSaid: words.has(key) }]),
  )
  const isTyped = (path: string) => {
    const here = said.get(path)
    return here?.isSaid === true && typeof here.word === 'string' && !here.word.startsWith('=')
  }
  const known = new Set(linkTable.map(([, key]) => key))
  if ([...words.keys()].some((key) => !known.has(key))) return refused
  const word = (path: string): Word => said.get(path)?.word ?? null
  const pier: Record<string, unknown> = {}
  for (const [path] of linkTable) if (belongs(path, word)) place(pier, path.split('.'), jobValue(path, word(path)))
  const support = fillKinds.find((kind) => kind.id === word('fill.kind'))?.support
  place(pier, ['support', 'kind'], support)
  const read = readJob({ pierglass: schemaVersion, pier })
  if (!read.ok) return { ok: false, issues: [...refused.issues, ...read.issues] }
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

/** Does a field belong to a pier of these parts and kinds? A part that is off takes its own fields with it. */
function belongs(path: string, word: (path: string) => Word): boolean {
  const steps = path.split('.')
  const holders = steps.slice(1).map((_, i) => steps.slice(0, i + 1).join('.'))
  if (holders.some((holder) => fieldBy.get(holder)?.type === 'part' && word(holder) !== 1)) return false
  const kind = fillKinds.find((one) => one.id === word('fill.kind'))
  if (path.startsWith('fill.')) return path === 'fill.kind' || (kind?.fields.some((field) => field.path === path) ?? false)
  if (path.startsWith('support.')) return (path === 'support.foot') === (kind?.support === 'embedded')
  const soil = /^(site(?:\.lower)?\.soil)\.(\w+)$/.exec(path)
  if (soil === null || soil[2] === 'kind') return true
  return (soil[2] === 'class') === (word(`${soil[1]}.kind`) === 'presumptive')
}

const jobValue = (path: string, word: Word): unknown => {
  if (fieldBy.get(path)?.type === 'part') return word === 1 ? {} : null
  return typeof word === 'string' && word.startsWith('=') ? word.slice(1) : word
}

function place(into: Record<string, unknown>, steps: readonly string[], value: unknown): void {
  const [key, ...rest] = steps
  if (key === undefined) return
  if (rest.length === 0) {
    into[key] = value
    return
  }
  const inner = into[key]
  const holder: Record<string, unknown> = typeof inner === 'object' && inner !== null ? (inner as Record<string, unknown>) : {}
  into[key] = holder
  place(holder, rest, value)
}
