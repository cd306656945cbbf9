import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type CDPSession, chromium, type Page } from '@playwright/test'
import { build, preview } from 'vite'
import { findBrowser } from '../browser/findBrowser.ts'
import { browserFlags, environmentFor } from '../browser/launch.ts'

/** What playing the years costs: scripting in each frame, and whether geometry and heap stay where they are. `--seconds` tells how long. */

const root = fileURLToPath(new URL('../..', import.meta.url))
const outDir = join(root, 'node_modules', '.bench', 'page')
const asked = process.argv.indexOf('--seconds')
/** Played before anything is read, so that every year has been on show [s]; and in how many rounds the heap is read. */
const warming = 20
const rounds = 4
const seconds = asked > 0 ? Number(process.argv[asked + 1]) : 60

/** Put before the page's own scripts: adds up what all callbacks of one frame take. */
const countFrames = (): void => {
  const costs: number[] = []
  const real = window.requestAnimationFrame.bind(window)
  let frame = -1
  Object.assign(window, { frameCosts: costs })
  window.requestAnimationFrame = (callback) =>
    real((now) => {
      const start = performance.now()
      callback(now)
      const spent = performance.now() - start
      if (now === frame) costs[costs.length - 1] = (costs.at(-1) ?? 0) + spent
      else costs.push(spent)
      frame = now
    })
}

const heapOf = async (session: CDPSession): Promise<number> => {
  for (let i = 0; i < 3; i++) await session.send('HeapProfiler.collectGarbage')
  return (await session.send('Runtime.getHeapUsage')).usedSize
}
const geometries = (page: Page): Promise<number> => page.evaluate(() => window.pierglass?.rendererInfo()?.geometries ?? -1)
const quantile = (sorted: readonly number[], share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN

/** Within the page, so that nothing is asked from outside while it plays. */
const play = (page: Page, span: number): Promise<void> =>
  page.evaluate(
    (length) =>
      new Promise<void>((resolve) => {
        const again = setInterval(() => document.querySelector<HTMLButtonElement>('button[aria-label="Play"]')?.click(), 500)
        setTimeout(() => {
          clearInterval(again)
          resolve()
        }, length)
      }),
    span * 1000,
  )

await build({ root, logLevel: 'error', build: { outDir, emptyOutDir: true } })
const server = await preview({ root, logLevel: 'error', build: { outDir }, preview: { port: 0, strictPort: false } })
const address = server.resolvedUrls?.local[0]
if (!address) throw new Error('bench: the page is not served')
const found = await findBrowser()
const browser = await chromium.launch({ executablePath: found.executablePath, args: [...browserFlags], env: environmentFor(found) })
console.log(`Playing the years for ${seconds} s, software drawing\n`)
for (const quality of ['light', 'full'] as const) {
  const page = await browser.newPage({ viewport: { width: 800, height: 600 }, serviceWorkers: 'block' })
  await page.addInitScript(countFrames)
  await page.goto(`${address}?quality=${quality}`)
  await page.waitForFunction(() => window.pierglass?.ready() === true)
  await page.getByRole('button', { name: 'Over time', exact: true }).click()
  await page.getByRole('button', { name: 'Years', exact: true }).click()
  await play(page, warming)
  const session = await page.context().newCDPSession(page)
  const before = { heap: await heapOf(session), geometries: await geometries(page) }
  await page.evaluate(() => {
    ;(window as unknown as { frameCosts: number[] }).frameCosts.length = 0
  })
  const heaps = [before.heap]
  for (let round = 0; round < rounds; round++) {
    await play(page, seconds / rounds)
    heaps.push(await heapOf(session))
  }
  if (!(await page.evaluate(() => window.pierglass?.timeState()?.playing))) throw new Error('bench: the years do not play')
  const costs = await page.evaluate(() => (window as unknown as { frameCosts: number[] }).frameCosts.slice())
  const after = { geometries: await geometries(page) }
  costs.sort((a, b) => a - b)
  const say = (share: number): string => quantile(costs, share).toFixed(2)
  console.log(
    `${quality}: ${costs.length} frames, scripting a frame median ${say(0.5)} ms (10 % ${say(0.1)}, 90 % ${say(0.9)})   aim: median under 4 ms`,
  )
  console.log(`  geometries ${before.geometries} before, ${after.geometries} after`)
  const steps = heaps.slice(1).map((heap, i) => `${((heap - (heaps[i] ?? heap)) / 1e6).toFixed(3)}`)
  console.log(`  heap ${(before.heap / 1e6).toFixed(2)} MB before, then in each of ${rounds} rounds by ${steps.join(', ')} MB\n`)
  await page.close()
}
await browser.close()
await server.close()
