import type { Notice, NoticeCode } from '../appState.ts'
import type { PierStore } from '../store.ts'

/** Says one thing; a newer notice of the same code takes the place of the older. */
export const notify = (store: PierStore, notice: Notice): void =>
  store.setState((state) => ({ notices: [...state.notices.filter((other) => other.code !== notice.code), notice] }))

export const dismiss = (store: PierStore, code: NoticeCode): void => {
  if (store.getState().notices.some((notice) => notice.code === code)) {
    store.setState((state) => ({ notices: state.notices.filter((notice) => notice.code !== code) }))
  }
}
