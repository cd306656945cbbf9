import type { PierDocument } from '../model/spec.ts'
import { openingDocument } from '../spec/openingPier.ts'
import { linkContent } from '../spec/linkContent.ts'
import { schemaVersion } from '../spec/schemaVersion.ts'
import { writeJob } from '../spec/writeJob.ts'
import type { DocumentKind } from './documentKind.ts'

/** One pier: what stands in one hole. Its file is the job file. */
export const pierKind: DocumentKind<PierDocument> = {
  id: 'pier',
  fileMark: 'pierglass',
  schemaVersion,
  empty: openingDocument,
  write: writeJob,
  typed: ({ written }) => Object.keys(written).sort(),
  onlyTyped: (document, typed) =>
    Object.freeze({
      ...document,
      written: Object.freeze(Object.fromEntries(Object.entries(document.written).filter(([path]) => typed.includes(path)))),
    }),
  link: { letter: 'p', content: linkContent },
  reader: async () => (await import('./readPier.ts')).pierReader,
}
