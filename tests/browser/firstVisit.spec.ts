import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { before, builtFolder, firstVisit, type Visit, weight } from './firstVisit.ts'

/** Most that may have been asked for, as it goes over the wire [bytes]: by the drawn section with numbers and cautions, and by the 3D picture. */
const most = { numbers: 225_000, picture: 480_000 } as const
/** What opens over or beside the picture, and what stands in the panels: none of it is fetched before the picture. */
const late =
  /^assets\/(?:AnswersPanel|CompareView|DrawingEditor|PrintPage|SheetView|ShelfDialog|TakeAlongDialog|TimeBar|WaterPanel|useSheet)-/

const faults = (visit: Visit): string[] => {
  const early = before(visit, visit.picture)
  const sums = { numbers: weight(before(visit, visit.numbers)), picture: weight(early) }
  return [
    ...(['numbers', 'picture'] as const).flatMap((mark) => (sums[mark] <= most[mark] ? [] : [`${mark}: ${sums[mark]} bytes`])),
    ...early.flatMap(({ file }) => (late.test(file) ? [`too early: ${file}`] : [])),
  ]
}

test('[S12] a first visit fetches little before its numbers stand, and little more before the 3D picture', async ({ browser }) => {
  const visit = await firstVisit(browser, builtFolder)
  expect(visit.numbers).toBeLessThan(visit.picture)
  expect(faults(visit)).toEqual([])
  // All of it was seen: what is kept offline comes after the picture, and the panels with it.
  expect(visit.fetched.some(({ file, at }) => late.test(file) && at >= visit.picture)).toBe(true)
  expect(weight(visit.fetched)).toBeGreaterThan(1_000_000)
})

test('[S12] a file that is fetched too early, and one that is too large, are found', async ({ browser }) => {
  const folder = mkdtempSync(join(tmpdir(), 'first-visit-'))
  try {
    cpSync(builtFolder, folder, { recursive: true })
    const files = readdirSync(join(folder, 'assets'))
    const named = (name: RegExp): string => `./assets/${files.find((file) => name.test(file))}`
    const panel = named(/^AnswersPanel-.*\.js$/)
    const large = named(/\.wasm$/)
    const page = join(folder, 'index.html')
    const early = `<link rel="modulepreload" crossorigin href="${panel}"><link rel="preload" as="fetch" crossorigin href="${large}"></head>`
    writeFileSync(page, readFileSync(page, 'utf8').replace('</head>', early))
    const found = faults(await firstVisit(browser, folder)).join('\n')
    expect(found).toContain(`too early: ${panel.slice(2)}`)
    expect(found).toMatch(/numbers: \d+ bytes/)
    expect(found).toMatch(/picture: \d+ bytes/)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})
