import type { Notice, NoticeCode } from '../appState.ts'

type Noted = Readonly<{ notices: readonly Notice[] }>
/** Any store that keeps notices. */
type NoticeStore = Readonly<{ getState: () => Noted; setState: (change: (state: Noted) => Noted) => void }>

/** Says one thing; a newer notice of the same code takes the place of the older. */
export const notify = (store: NoticeStore, notice: Notice): void =>
  store.setState((state) => ({ notices: [...state.notices.filter((other) => other.code !== notice.code), notice] }))

export const dismiss = (store: NoticeStore, code: NoticeCode): void => {
  if (store.getState().notices.some((notice) => notice.code === code)) {
    store.setState((state) => ({ notices: state.notices.filter((notice) => notice.code !== code) }))
  }
}
