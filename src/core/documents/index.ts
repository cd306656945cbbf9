import type { DocumentKind } from './documentKind.ts'
import { pierKind } from './pier.ts'

/** Every kind of document that can be kept, opened, taken along and linked. */
export const documentKinds: readonly DocumentKind[] = [pierKind]

/** The kind of an id; a record from before there were kinds has none, and is a pier. Undefined for one of a later version. */
export const documentKind = (id: unknown, kinds: readonly DocumentKind[] = documentKinds): DocumentKind | undefined =>
  kinds.find((kind) => kind.id === (id ?? pierKind.id))
