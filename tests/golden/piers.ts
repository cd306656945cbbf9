import type { PierDocument } from '../../src/core/model/spec.ts'
import { parseJob, writeJob } from '../../src/core/spec/jobFile.ts'
import { costFields } from '../../src/core/spec/pier/life.ts'
import { loadFields } from '../../src/core/spec/pier/loads.ts'
import { toSI } from '../../src/core/units/factors.ts'
import { newtons } from '../../src/core/units/quantity.ts'
import { decodeLink } from '../../src/state/storage/readLink.ts'
import { soundDocument } from '../soundPier.ts'
import links from './calc/links.txt?raw'

const files = import.meta.glob<string>('../../public/examples/*.json', { query: '?raw', import: 'default', eager: true })
export type NamedJob = readonly [name: string, job: string]

/** The job files of the examples as they are written. */
export const exampleJobs: readonly NamedJob[] = Object.entries(files)
  .map(([path, text]): NamedJob => [path.replace(/^.*\/|\.json$/g, ''), text])
  .sort(([a], [b]) => (a < b ? -1 : 1))

/** The pier of a link that was once given out. */
export const ofLink = (code: string): PierDocument => {
  const read = decodeLink(code)
  if (!read.ok) throw new Error(`${code} does not open: ${JSON.stringify(read.issues)}`)
  return read.value
}

/** Piers that random edits once led to, kept as links, so that they stay the same piers wherever random edits lead later. */
export const strayJobs = (): readonly NamedJob[] =>
  links
    .trim()
    .split('\n')
    .map((code, i): NamedJob => [`stray ${i + 1}`, writeJob(ofLink(code))])

/** A pier of which every link counts, under a load. */
export const soundJob: NamedJob = [
  'sound',
  writeJob({
    ...soundDocument,
    spec: {
      ...soundDocument.spec,
      loads: { entered: { ...loadFields.fields.entered.first, uplift: newtons(toSI(800, 'lb')) }, estimate: null },
    },
  }),
]

/** The examples, read. */
export const exampleDocuments: readonly (readonly [name: string, document: PierDocument])[] = exampleJobs.map(([name, job]) => {
  const read = parseJob(job)
  if (!read.ok) throw new Error(`${name} is not a job`)
  return [name, read.value]
})

/** An example with prices and years of its user's own: no rows of evidence give a cost. */
export const pricedJob = (): NamedJob => {
  const [, document] = exampleDocuments.find(([name]) => name === 'boat-shelter-mixed') ?? []
  if (document === undefined) throw new Error('no example to price')
  const prices = { ...costFields.first.prices, 'mixed-full-height': { first: 100, replacement: 600 } }
  const { spec } = document
  return [
    'priced',
    writeJob({ ...document, spec: { ...spec, life: { ...spec.life, reference: 'own' }, costs: { ...costFields.first, prices } } }),
  ]
}
