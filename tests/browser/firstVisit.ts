import { readdirSync, readFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { extname, join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import type { Browser } from '@playwright/test'

/** One file of a visit: its weight as it went over the wire, and when it was asked for, on the clock of the page [ms]. */
export type Fetched = Readonly<{ file: string; bytes: number; at: number }>
/** When the drawn section stood with the main numbers and the cautions, and when the 3D picture did [ms]; and all that was fetched, in order. */
export type Visit = Readonly<{ numbers: number; picture: number; end: number; fetched: readonly Fetched[] }>

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.txt': 'text/plain',
  '.woff2': 'font/woff2',
}
/** What hosts pack: letters are packed already. */
const packed = new Set(['.html', '.js', '.css', '.svg', '.json', '.txt'])

export const builtFolder = fileURLToPath(new URL('../../dist', import.meta.url))

/** Every built file as a host sends it: text packed with gzip, all else as it is. */
const wireFiles = (folder: string): ReadonlyMap<string, Buffer> =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => {
        const path = join(entry.parentPath, entry.name)
        const body = readFileSync(path)
        return [relative(folder, path).split(sep).join('/'), packed.has(extname(path)) ? gzipSync(body) : body]
      }),
  )

type Host = Readonly<{ origin: string; asked: readonly Fetched[]; stop: () => Promise<void> }>

const portOf = (server: Server): number => {
  const address = server.address()
  return typeof address === 'object' && address ? address.port : 0
}

const serve = async (folder: string): Promise<Host> => {
  const files = wireFiles(folder)
  const asked: Fetched[] = []
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '', 'http://host').pathname.slice(1)
    const file = path === '' ? 'index.html' : path
    const body = files.get(file)
    if (!body) return response.writeHead(404).end()
    asked.push({ file, bytes: body.length, at: Date.now() })
    const coded = packed.has(extname(file)) ? { 'content-encoding': 'gzip' } : {}
    return response
      .writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream', 'content-length': body.length, ...coded })
      .end(body)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    origin: `http://127.0.0.1:${portOf(server)}`,
    asked,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

/** Runs in the page before anything else: notes when what is told first stands in the page. */
const watchNumbers = (): void => {
  const stands = (): boolean => {
    const strip = document.querySelector('.strip')?.textContent ?? ''
    const title = document.querySelector('.title')?.textContent ?? ''
    return document.querySelector('.section svg path') !== null && /\d/.test(title) && strip !== ''
  }
  const watch = new MutationObserver(() => {
    if (!stands()) return
    performance.mark('numbers')
    watch.disconnect()
  })
  watch.observe(document, { childList: true, subtree: true })
}

type Line = Readonly<{ bytesPerSecond: number; delay: number }>

/**
 * A first visit by the network log: a browser that has nothing of the page, a host that packs, and everything that is fetched counts,
 * letters too. What was asked for before a mark counts before it, whole, so that the sum is the same on any machine.
 * @param line how quick the network is made; left out: as quick as it is
 */
export async function firstVisit(browser: Browser, folder: string, line?: Line): Promise<Visit> {
  const host = await serve(folder)
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'allow' })
  try {
    const page = await context.newPage()
    // The bundler of the command line names functions by a helper that the page does not have.
    await page.addInitScript('globalThis.__name = (it) => it')
    await page.addInitScript(watchNumbers)
    if (line) {
      const session = await context.newCDPSession(page)
      await session.send('Network.enable')
      await session.send('Network.emulateNetworkConditions', {
        offline: false,
        latency: line.delay,
        downloadThroughput: line.bytesPerSecond,
        uploadThroughput: line.bytesPerSecond,
      })
    }
    await page.goto(`${host.origin}/?quality=light`)
    await page.waitForFunction(() => performance.getEntriesByName('picture').length > 0, undefined, { timeout: 240_000 })
    await page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready
      if (active?.state !== 'activated') await new Promise((resolve) => active?.addEventListener('statechange', resolve))
    })
    const seen = await page.evaluate(() => ({
      origin: performance.timeOrigin,
      now: performance.now(),
      numbers: performance.getEntriesByName('numbers')[0]?.startTime ?? Number.NaN,
      picture: performance.getEntriesByName('picture')[0]?.startTime ?? Number.NaN,
      started: performance.getEntriesByType('resource').map(({ name, startTime }) => [new URL(name).pathname.slice(1), startTime] as const),
    }))
    // The page says when it asked; of what it did not ask for itself, the host says when it was asked.
    const started = new Map<string, number>([['index.html', 0]])
    for (const [file, at] of seen.started) if (!started.has(file)) started.set(file, at)
    const fetched = host.asked
      .map(({ file, bytes, at }, i) => {
        const isFirst = host.asked.findIndex((one) => one.file === file) === i
        return { file, bytes, at: (isFirst ? started.get(file) : undefined) ?? at - seen.origin }
      })
      .sort((a, b) => a.at - b.at)
    return { numbers: seen.numbers, picture: seen.picture, end: seen.now, fetched }
  } finally {
    await context.close()
    await host.stop()
  }
}

export const before = ({ fetched }: Visit, mark: number): readonly Fetched[] => fetched.filter(({ at }) => at < mark)
export const weight = (fetched: readonly Fetched[]): number => fetched.reduce((sum, { bytes }) => sum + bytes, 0)
