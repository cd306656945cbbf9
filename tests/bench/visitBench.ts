import { chromium } from '@playwright/test'
import { findBrowser } from '../browser/findBrowser.ts'
import { before, builtFolder, type Fetched, firstVisit, weight } from '../browser/firstVisit.ts'
import { browserFlags, environmentFor } from '../browser/launch.ts'

/** What a first visit fetches, file by file, over a slow line: `vite build` first. `npm run bench:visit [folder of another build]`. */
const line = { bytesPerSecond: 200_000, delay: 150 } as const

const found = await findBrowser()
const browser = await chromium.launch({ executablePath: found.executablePath, args: [...browserFlags], env: environmentFor(found) })
const visit = await firstVisit(browser, process.argv[2] ?? builtFolder, line)
await browser.close()

const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1).padStart(7)
const list = (title: string, files: readonly Fetched[]): void => {
  console.log(`\n${title}`)
  for (const { file, bytes, at } of files) console.log(`${kilobytes(bytes)} kB  ${at.toFixed(0).padStart(6)} ms  ${file}`)
}
const told = (title: string, mark: number): void => {
  const files = before(visit, mark)
  console.log(`${title.padEnd(48)} ${kilobytes(weight(files))} kB in ${files.length} files, ${(mark / 1000).toFixed(1)} s`)
}

list('before drawn section, main numbers and cautions stand', before(visit, visit.numbers))
list(
  'before the 3D picture stands',
  before(visit, visit.picture).filter(({ at }) => at >= visit.numbers),
)
const later = visit.fetched.filter(({ at }) => at >= visit.picture)
console.log(`\nlater: ${kilobytes(weight(later))} kB in ${later.length} files, kept offline among them`)
told('drawn section, main numbers and cautions stand', visit.numbers)
told('the 3D picture stands', visit.picture)
