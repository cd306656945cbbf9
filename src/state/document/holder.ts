import type { AnyDocument, DocumentKind } from '../../core/documents/documentKind.ts'
import type { Notice, NoticeCode } from '../appState.ts'
import { type Kept, newLineage, type Opened } from './opened.ts'

/** A store that holds an open document, with all that notes, the shelf and links have to do with it, whatever its kind. */
export type Holder = Readonly<{
  kind: DocumentKind
  state: () => Opened
  subscribe: (listener: (state: Opened, before: Opened) => void) => () => void
  /** A document of this kind takes the place of the open one, as one undo step. */
  open: (document: AnyDocument, kept: Kept) => void
  /** The first document of a session is no undo step. */
  begin: (document: AnyDocument, kept: Kept) => void
  /** Other words for the open document. */
  setWords: (name: string, note: string) => void
  /** What of an opening is kept elsewhere from now on. */
  markKept: (lineage: number, kept: Kept) => void
  /** What is half dragged is entered. */
  settle: () => void
  notify: (notice: Notice) => void
  dismiss: (code: NoticeCode) => void
}>

/** The part of a store that a holder is made over. */
type DocumentStore<D extends AnyDocument> = Readonly<{
  getState: () => Opened<D>
  setState: (change: (state: Opened<D>) => Partial<Opened<D>>) => void
  subscribe: (listener: (state: Opened<D>, before: Opened<D>) => void) => () => void
  temporal: Readonly<{ getState: () => Readonly<{ clear: () => void }> }>
}>

/**
 * @param page what a page of this kind does on its own account when another document is opened, and how it speaks
 */
export const holderOf = <D extends AnyDocument>(
  kind: DocumentKind<D>,
  store: DocumentStore<D>,
  page: Pick<Holder, 'settle' | 'notify' | 'dismiss'> & Readonly<{ open: (document: D, kept: Kept<D>) => void }>,
): Holder => {
  // Whoever brings a document has it from this kind's own reader.
  const own = (document: AnyDocument): D => document as D
  const ownKept = (kept: Kept): Kept<D> => ({ ...kept, document: kept.document && own(kept.document) })
  return {
    ...page,
    kind,
    state: store.getState,
    subscribe: store.subscribe,
    open: (document, kept) => page.open(own(document), ownKept(kept)),
    begin: (document, kept) => {
      const lineage = newLineage()
      store.setState((state) => ({ document: own(document), lineage, kept: { ...state.kept, [lineage]: ownKept(kept) } }))
      store.temporal.getState().clear()
    },
    setWords: (name, note) => store.setState(({ document }) => ({ document: Object.freeze({ ...document, name, note }) })),
    markKept: (lineage, kept) => store.setState((state) => ({ kept: { ...state.kept, [lineage]: ownKept(kept) } })),
  }
}
