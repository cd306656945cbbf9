import type { QuantityKind } from '../units/quantity.ts'
import type { SourceId } from '../engineering/sources.ts'

/** Something wrong with what was entered. Words are made from `code` in src/text; the core carries facts only. */
export type Issue = Readonly<{
  /** Key into the text table, kebab case: 'post-wider-than-hole'. */
  code: string
  /** `changed`: the pier is as it was, and what is worked out of it has moved since the version that wrote it. */
  severity: 'error' | 'warning' | 'changed'
  /** Path into the spec: 'hole.depth'. Empty for the document as a whole. */
  path: string
  got?: number | string
  limit?: number | string
  quantity?: QuantityKind
  sources?: readonly SourceId[]
}>

export type Result<T> = Readonly<{ ok: true; value: T; issues: readonly Issue[] }> | Readonly<{ ok: false; issues: readonly Issue[] }>
