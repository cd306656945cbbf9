import type { Issue } from '../core/model/issue.ts'
import type { PierDocument, PierSpec } from '../core/model/spec.ts'
import { defaultDocument, defaultSpec } from '../core/spec/defaults.ts'
import { seenDocument } from './derived.ts'
import { encodeLink } from './link.ts'
import type { PierStore } from './store.ts'

/** The part of the page that the address needs. */
export type AddressPage = Readonly<{
  location: Pick<Location, 'hash' | 'href'>
  history: Pick<History, 'replaceState'>
}>

const mark = '#p='
/** Browsers refuse an address that changes too often [ms]. */
const atMostEvery = 400

export type LinkFound =
  | Readonly<{ kind: 'none' }>
  | Readonly<{ kind: 'pier'; document: PierDocument }>
  | Readonly<{ kind: 'damaged'; issues: readonly Issue[] }>

/** The pier that the address holds. Another kind of anchor is no link. What reads links is fetched with the first one. */
export const linkIn = async (hash: string): Promise<LinkFound> => {
  if (!hash.startsWith(mark)) return { kind: 'none' }
  const { decodeLink } = await import('./readLink.ts')
  const read = decodeLink(hash.slice(mark.length))
  return read.ok ? { kind: 'pier', document: read.value } : { kind: 'damaged', issues: read.issues }
}

/** The address that opens this pier anywhere. The name and the note are not in it. */
export const linkTo = (document: PierDocument, href: string): string => {
  const url = new URL(href)
  url.search = ''
  url.hash = `${mark.slice(1)}${encodeLink(document)}`
  return url.href
}

const bare = (spec: PierSpec): PierDocument => ({ ...defaultDocument, spec })

/** Two specs are the same pier when their links are, however their values were typed. */
export const isSamePier = (a: PierSpec, b: PierSpec): boolean => a === b || encodeLink(bare(a)) === encodeLink(bare(b))

/** Keeps the address at the pier on the page from now on: the last change is written within half a second. */
export const keepAddress = (store: PierStore, page: AddressPage): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | null = null
  const write = (): void => {
    timer = null
    page.history.replaceState(null, '', `${mark}${encodeLink(seenDocument(store.getState()))}`)
  }
  const later = (): void => {
    timer ??= setTimeout(write, atMostEvery)
  }
  if (seenDocument(store.getState()).spec !== defaultSpec) write()
  const stop = store.subscribe((state, before) => {
    if (seenDocument(state).spec !== seenDocument(before).spec) later()
  })
  return () => {
    stop()
    if (timer !== null) clearTimeout(timer)
  }
}
