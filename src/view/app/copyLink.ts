import { notify } from '../../state/actions/notices.ts'
import type { PierStore } from '../../state/store.ts'
import { seenDocument } from '../../state/derived.ts'
import { linkTo } from '../../state/storage/address.ts'

/** Puts the link to this pier on the clipboard, and says what is in it. */
export const copyLink = async (store: PierStore): Promise<void> => {
  try {
    await navigator.clipboard.writeText(linkTo(seenDocument(store.getState()), location.href))
    notify(store, { code: 'link-copied' })
  } catch {
    notify(store, { code: 'copy-refused' })
  }
}
