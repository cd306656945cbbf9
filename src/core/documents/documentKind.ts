import type { Result } from '../model/issue.ts'

/** What every document has, whatever it is of: words of its own, which stay on this machine and in its file. */
export type AnyDocument = Readonly<{ name: string; note: string }>

/** A drawing the size of a stamp, as numbers: a window and bodies in whole millimeters, right and down. No markup, so nothing in it can act. */
export type SmallDrawing = Readonly<{
  box: readonly [x: number, y: number, width: number, height: number]
  bodies: readonly (readonly [role: string, points: readonly number[]])[]
}>

/**
 * One kind of document: all that a note, the shelf, a file, a link, undo and migration ask of it. A new kind is one such record, and a
 * line in the list of kinds. What an open page needs at once stands here; what reads is fetched when something is there to be read.
 */
export type DocumentKind<D extends AnyDocument = AnyDocument> = Readonly<{
  /** Kept in every record. Never another one once it was released. */
  id: string
  /** Key of the version number in a file: by it a file is told to be of this kind. */
  fileMark: string
  /** Version that `write` writes. Raise it with a migration from the version before and a fixture of that version. */
  schemaVersion: number
  /** What a new one starts from. */
  empty: D
  /** A file of it. It spells out every value, so what of it a person typed is kept beside it. */
  write(document: D): string
  /** Paths whose text a person typed. */
  typed(document: D): readonly string[]
  /** The same document, with the texts of these paths alone. */
  onlyTyped(document: D, typed: readonly string[]): D
  /** Null for a kind that no link carries. */
  link: Readonly<{
    /** What stands before the `=` of a link, one letter. */
    letter: string
    /** All of the document but its words and its id, as a short text. */
    content(document: D): string
  }> | null
  reader(): Promise<DocumentReader<D>>
}>

/** The part of a kind that reads. */
export type DocumentReader<D extends AnyDocument = AnyDocument> = Readonly<{
  /** Reads a file of any released version. Anything may be handed in; what can't be read is refused with every reason. */
  parse(text: string): Result<D>
  /** Reads the content of a link of any released version. */
  fromLink?(content: string, version?: number): Result<D>
  thumbnail?(document: D): SmallDrawing
}>

/** A kind with its reader at hand. */
export type ReadyKind<D extends AnyDocument = AnyDocument> = DocumentKind<D> & DocumentReader<D>

export const ready = async <D extends AnyDocument>(kind: DocumentKind<D>): Promise<ReadyKind<D>> => ({ ...kind, ...(await kind.reader()) })
