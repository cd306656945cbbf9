import type { AnyDocument, DocumentKind } from '../../core/documents/documentKind.ts'
import { pierKind } from '../../core/documents/pier.ts'
import type { Issue } from '../../core/model/issue.ts'
import type { PierDocument, PierSpec } from '../../core/model/spec.ts'
import { seenDocument } from '../derived.ts'
import type { PierStore } from '../store.ts'
import { encodeLink, linkCode, longest, percentDecoded } from './link.ts'

/** The part of the page that the address needs. */
export type AddressPage = Readonly<{
  location: Pick<Location, 'hash' | 'href'>
  history: Pick<History, 'replaceState'>
}>

/** Browsers refuse an address that changes too often [ms]. */
const atMostEvery = 400

export type LinkFound<D extends AnyDocument = PierDocument> =
  | Readonly<{ kind: 'none' }>
  /** `issues`: what has moved since the version that wrote it. */
  | Readonly<{ kind: 'document'; document: D; issues: readonly Issue[] }>
  /** Without an issue: nothing tells what it was meant to be. */
  | Readonly<{ kind: 'damaged'; issues: readonly Issue[] }>

const markOf = <D extends AnyDocument>({ link }: DocumentKind<D>): string => `#${link?.letter ?? ''}=`

/**
 * The document that an address holds. The page has no other use for what stands behind `#`: anything there that is no link is one that
 * was damaged on the way, and is never passed over. What reads links is fetched with the first one.
 */
export const documentIn = async <D extends AnyDocument>(kind: DocumentKind<D>, hash: string): Promise<LinkFound<D>> => {
  if (hash === '' || hash === '#') return { kind: 'none' }
  const address = percentDecoded(hash.slice(0, 4 * longest))
  const mark = markOf(kind)
  if (!address.startsWith(mark)) return { kind: 'damaged', issues: [] }
  const [{ readLinkCode }, { fromLink }] = await Promise.all([import('./readLink.ts'), kind.reader()])
  if (!fromLink) return { kind: 'damaged', issues: [] }
  const read = readLinkCode(address.slice(mark.length), fromLink)
  return read.ok ? { kind: 'document', document: read.value, issues: read.issues } : { kind: 'damaged', issues: read.issues }
}
export const linkIn = (hash: string): Promise<LinkFound> => documentIn(pierKind, hash)

/** The address that opens this document anywhere. Its words and its id are not in it. */
export const addressOf = <D extends AnyDocument>(kind: DocumentKind<D>, document: D, href: string): string => {
  const url = new URL(href)
  url.search = ''
  url.hash = `${markOf(kind)}${linkCode(kind, document)}`
  return url.href
}
export const linkTo = (document: PierDocument, href: string): string => addressOf(pierKind, document, href)

const bare = (spec: PierSpec): PierDocument => ({ ...pierKind.empty, spec })

/** Two specs are the same pier when their links are, however their values were typed. */
export const isSamePier = (a: PierSpec, b: PierSpec): boolean => a === b || encodeLink(bare(a)) === encodeLink(bare(b))

/** Keeps the address at the pier on the page from now on: the last change is written within half a second. */
export const keepAddress = (store: PierStore, page: AddressPage): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | null = null
  const write = (): void => {
    timer = null
    page.history.replaceState(null, '', `${markOf(pierKind)}${encodeLink(seenDocument(store.getState()))}`)
  }
  const later = (): void => {
    timer ??= setTimeout(write, atMostEvery)
  }
  if (seenDocument(store.getState()).spec !== pierKind.empty.spec) write()
  const stop = store.subscribe((state, before) => {
    if (seenDocument(state).spec !== seenDocument(before).spec) later()
  })
  return () => {
    stop()
    if (timer !== null) clearTimeout(timer)
  }
}
