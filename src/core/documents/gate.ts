import type { Issue, Result } from '../model/issue.ts'
import { parseText } from '../spec/jobFile.ts'
import { migrated, type Migration } from '../spec/migrate.ts'
import type { AnyDocument, DocumentKind } from './documentKind.ts'

/**
 * The gate that files of a kind go through: size, nesting and doubled keys first, then every migration from its version to the newest,
 * then its own reader.
 * @param migrations `migrations[n]` turns data of version n into data of version n + 1
 * @param read reads data of the newest version; `early` are issues found before, and with any of them the file is refused
 */
export const gate =
  <D extends AnyDocument>(
    { fileMark, schemaVersion }: Pick<DocumentKind<D>, 'fileMark' | 'schemaVersion'>,
    migrations: Readonly<Record<number, Migration>>,
    read: (data: unknown, early: readonly Issue[]) => Result<D>,
  ) =>
  (text: string): Result<D> =>
    parseText(text, (data, early) => {
      const current = migrated(data, migrations, schemaVersion, fileMark)
      return current.ok ? read(current.data, early) : { ok: false, issues: [...early, current.issue] }
    })
