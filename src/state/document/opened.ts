import type { AnyDocument } from '../../core/documents/documentKind.ts'

/** Where on the shelf a document lies, under its id. */
export type ShelfPlace = Readonly<{
  /** As this tab last saw it. */
  revision: number
  /** False where the browser keeps nothing: it lies in this page's memory, and is gone with it. */
  lasts: boolean
}>

/** What of one opening of a document is kept elsewhere: on the shelf, in a file, in a link. */
export type Kept<D extends AnyDocument = AnyDocument> = Readonly<{
  /** Stays with the document: in its note, on the shelf, in a file of saved ones. Never in a link. */
  id: string
  /** The document as it is kept there; null for none of it. */
  document: D | null
  /** Null: it does not lie on the shelf. */
  place: ShelfPlace | null
}>

/** A document that is open, with what of it is kept elsewhere: the same for every kind. */
export type Opened<D extends AnyDocument = AnyDocument> = Readonly<{
  /** Last committed document; always valid. */
  document: D
  /** Which opening of a document this is: another number for each one that takes the place of another. Undo brings both back together. */
  lineage: number
  /** What of each opening is kept outside this page, and where. Not part of undo. */
  kept: Readonly<Record<number, Kept<D>>>
}>

let newest = 0
/** A number for one opening of a document. Undo brings document and lineage back together, so no two openings may share one. */
export const newLineage = (): number => ++newest

/** A fresh id. `randomUUID` is there on a secure address alone; the same is made by hand elsewhere (RFC 9562, version 4). */
export const newId = (): string => {
  const { randomUUID } = crypto as Readonly<{ randomUUID?: () => string }>
  if (randomUUID) return randomUUID.call(crypto)
  const bytes = crypto.getRandomValues(new Uint8Array(16))
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-')
}

/** Kept as it is now, but not on the shelf: a document that everybody starts from, or one that lies in a file or a link. */
export const keptAsIs = <D extends AnyDocument>(document: D): Kept<D> => ({ id: newId(), document, place: null })

const unknown = { id: '', document: null, place: null } as const
export const keptOf = <D extends AnyDocument>({ kept, lineage }: Pick<Opened<D>, 'kept' | 'lineage'>): Kept<D> => kept[lineage] ?? unknown

/** Is all of the open document kept elsewhere? Else it lives in the note of this tab alone. */
export const isKept = (state: Opened): boolean => keptOf(state).document === state.document
