import type { DocumentKind } from '../../../src/core/documents/documentKind.ts'
import { gate } from '../../../src/core/documents/gate.ts'
import { pierKind } from '../../../src/core/documents/pier.ts'
import { dismiss, notify } from '../../../src/state/actions/notices.ts'
import type { Notice } from '../../../src/state/appState.ts'
import { createDocumentStore } from '../../../src/state/store.ts'
import { type Holder, holderOf } from '../../../src/state/document/holder.ts'
import { type Kept, keptAsIs, newLineage } from '../../../src/state/document/opened.ts'

/** A second kind of document, planted: a row of posts. All of it is this one record; nothing else in the house knows it. */
export type PostRow = Readonly<{ posts: number; marks: readonly string[]; name: string; note: string }>

const mark = 'plantedRow'
const isWhole = (value: unknown): value is PostRow & Readonly<Record<typeof mark, number>> =>
  typeof value === 'object' &&
  value !== null &&
  'posts' in value &&
  Number.isSafeInteger(value.posts) &&
  'marks' in value &&
  Array.isArray(value.marks) &&
  'name' in value &&
  typeof value.name === 'string' &&
  'note' in value &&
  typeof value.note === 'string'

export const rowKind: DocumentKind<PostRow> = {
  id: 'planted-row',
  fileMark: mark,
  schemaVersion: 2,
  empty: { posts: 2, marks: [], name: '', note: '' },
  write: ({ posts, marks, name, note }) => `${JSON.stringify({ [mark]: 2, name, note, posts, marks }, null, 2)}\n`,
  typed: ({ marks }) => marks,
  onlyTyped: (row, typed) => ({ ...row, marks: row.marks.filter((one) => typed.includes(one)) }),
  link: { letter: 'r', content: ({ posts }) => JSON.stringify(posts) },
  reader: async () => ({
    // Its first version called the posts "count".
    parse: gate(
      { fileMark: mark, schemaVersion: 2 },
      { 1: (old) => ({ ...(old as object), posts: (old as { count: unknown }).count }) },
      (data, early) => {
        if (early.length > 0 || !isWhole(data))
          return { ok: false, issues: [...early, { code: 'not-a-job', severity: 'error', path: mark }] }
        const { posts, marks, name, note } = data
        return { ok: true, value: { posts, marks, name, note }, issues: [] }
      },
    ),
    fromLink: (content) => ({ ok: true, value: { ...rowKind.empty, posts: Number(content) }, issues: [] }),
    thumbnail: ({ posts }) => ({ box: [0, 0, 10 * posts, 10], bodies: [['wood', [0, 0, 10 * posts, 0, 10 * posts, 10]]] }),
  }),
}

/** Both kinds, as a page that knows both lists them. */
export const bothKinds: readonly DocumentKind[] = [pierKind, rowKind]

/** A store of a row, and its holder; with undo and notices, as every page has them. */
export const freshRow = (row: PostRow = rowKind.empty) => {
  const store = createDocumentStore(row, { notices: [] as readonly Notice[] })
  const holder: Holder = holderOf(rowKind, store, {
    open: (document, kept: Kept<PostRow> = keptAsIs(document)) => {
      const lineage = newLineage()
      store.setState((state) => ({ document, lineage, kept: { ...state.kept, [lineage]: kept } }))
    },
    settle: () => undefined,
    notify: (notice) => notify(store, notice),
    dismiss: (code) => dismiss(store, code),
  })
  return { store, holder, setPosts: (posts: number) => store.setState(({ document }) => ({ document: { ...document, posts } })) }
}
