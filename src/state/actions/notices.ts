import type { Issue } from '../../core/model/issue.ts'
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

/** Says what has moved in a pier since the version that wrote it; of one without, nothing that was said of another stays. */
export const tellChanges = (
  { notify: say, dismiss: unsay }: Readonly<{ notify: (notice: Notice) => void; dismiss: (code: NoticeCode) => void }>,
  issues: readonly Issue[],
): void => {
  const changes = issues.filter(({ severity }) => severity === 'changed')
  if (changes.length > 0) say({ code: 'numbers-moved', issues: changes })
  else unsay('numbers-moved')
}
