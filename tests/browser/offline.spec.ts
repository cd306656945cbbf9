import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { exampleFiles } from '../../src/state/exampleFiles.ts'
import { app as words } from '../../src/words/en/app.ts'
import { compare } from '../../src/words/en/compare.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import { examples } from '../../src/words/en/examples.ts'
import { takeAlong as exporting } from '../../src/words/en/takeAlong.ts'
import { parts } from './names.ts'

const dist = fileURLToPath(new URL('../../dist', import.meta.url))
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
}
const keeper = readFileSync(join(dist, 'pageKeeper.js'), 'utf8')

/** As another build would have them: its files lie under addresses of their own, and the keeper has another mark. */
const asBuild = (path: string, body: Buffer, mark: string): Buffer | string => {
  if (!/\.(?:html|js|css)$/.test(path)) return body
  const text = body.toString().replaceAll('assets/', `assets-${mark}/`)
  return path === 'pageKeeper.js' ? text.replace(/builtMark = '\w+'/, `builtMark = '${mark}'`) : text
}

/** A host of the built files in a folder; `mark` makes the build that it serves another one. */
const host = async (port: number, mark: string | null = null): Promise<Server> => {
  const server = createServer((request, response) => {
    const path = (request.url ?? '').split('?')[0]?.replace(/^\/a\/folder\//, '') ?? ''
    const name = path === '' ? 'index.html' : path
    const file = join(dist, mark === null ? name : name.replace(`assets-${mark}/`, 'assets/'))
    const isOther = mark !== null && name.startsWith('assets/')
    if (!request.url?.startsWith('/a/folder/') || isOther || !existsSync(file)) return response.writeHead(404).end()
    const body = mark === null ? readFileSync(file) : asBuild(name, readFileSync(file), mark)
    return response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(body)
  })
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve))
  return server
}
const portOf = (server: Server): number => {
  const address = server.address()
  return typeof address === 'object' && address ? address.port : 0
}
const stop = (server: Server): Promise<void> =>
  new Promise((resolve) => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
const ready = (page: Page) => page.waitForFunction(() => window.pierglass?.ready() === true)
const depth = (page: Page): Promise<number> => page.evaluate(() => (window.pierglass?.document().spec.hole.depth ?? 0) / 0.0254)

test('[S6] every built file is kept', () => {
  const files = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(dist.length + 1))
    // The keeper itself is kept by the browser; the other is read by the host alone.
    .filter((file) => file !== 'pageKeeper.js' && file !== '_headers')
  const kept = JSON.parse(/builtFiles = (\[[^\]]*\])/.exec(keeper)?.[1] ?? '[]') as string[]
  expect(files.length).toBeGreaterThan(50)
  expect(files.filter((file) => file.startsWith('examples/'))).toHaveLength(exampleFiles.length)
  expect(files.filter((file) => /readme|\.png$/.test(file))).toEqual([])
  expect(new Set(kept)).toEqual(new Set(files.map((file) => (file === 'index.html' ? './' : file))))
})

test.describe('after one visit', () => {
  test.use({ serviceWorkers: 'allow' })
  test('[S7] the page opens and works without its host, and a newer one waits until it is asked for', async ({ page }) => {
    // The drawn section stands sooner than the 3D picture, whose files the list above holds.
    await page.context().addInitScript(() => {
      const real = HTMLCanvasElement.prototype.getContext
      HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return /webgl/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
      } as typeof real
    })
    let server = await host(0)
    const port = portOf(server)
    await page.goto(`http://127.0.0.1:${port}/a/folder/?quality=light`)
    await ready(page)
    await page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready
      if (active?.state !== 'activated') await new Promise((resolve) => active?.addEventListener('statechange', resolve))
    })
    await stop(server)

    await page.reload()
    await ready(page)
    await expect(parts(page).headlines).toContainText(/\d/)
    await page.getByRole('button', { name: entrances.compare.open, exact: true }).click()
    await expect(page.getByRole('table')).toContainText(compare.rows['holds-down'].label)
    await page.getByRole('button', { name: compare.close, exact: true }).click()
    await page.getByText(words.actions.more, { exact: true }).click()
    await page.getByRole('button', { name: exporting.title, exact: true }).click()
    const waiting = page.waitForEvent('download')
    await page.getByRole('button', { name: new RegExp(exporting.files.csv.action) }).click()
    expect(readFileSync(await (await waiting).path(), 'utf8')).toContain('uplift')
    await page.keyboard.press('Escape')
    const { 'boat-shelter-collar': collar } = examples.names
    await page.getByRole('button', { name: words.actions.shelf }).click()
    await page.getByRole('dialog').getByRole('button', { name: collar, exact: true }).click()
    await expect(page.getByText(words.notices['file-opened'])).toContainText(collar)
    expect(await page.evaluate(() => window.pierglass?.document().spec.fill.kind)).toBe('mixed-collar')

    server = await host(port, 'another')
    await parts(page).field('hole.depth').fill('50 in')
    await parts(page).field('hole.depth').press('Enter')
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
    const newer = page.getByRole('button', { name: words.actions.useNewer, exact: true })
    await expect(newer).toBeVisible()
    expect(await depth(page)).toBeCloseTo(50, 9)
    const other = await page.context().newPage()
    await other.goto(`http://127.0.0.1:${port}/a/folder/?quality=light`)
    await ready(other)
    await other.evaluate(() => Object.assign(window, { isSamePage: true }))
    await Promise.all([page.waitForEvent('load'), newer.click()])
    await ready(page)
    expect(await depth(page)).toBeCloseTo(50, 9)
    await expect(newer).toBeHidden()
    // The other tab was not opened again, and still gets parts that it had not needed before.
    expect(await other.evaluate(() => 'isSamePage' in window)).toBe(true)
    await other.getByRole('button', { name: entrances.compare.open, exact: true }).click()
    await expect(other.getByRole('table')).toContainText(compare.rows['holds-down'].label)
    await stop(server)
  })

  test('[S9] an open tab keeps the files of its build, however many builds come after it; those that no tab runs go', async ({ page }) => {
    await page.context().addInitScript(() => {
      const real = HTMLCanvasElement.prototype.getContext
      HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return /webgl/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
      } as typeof real
    })
    let server = await host(0, 'one')
    const port = portOf(server)
    const open = async (): Promise<Page> => {
      const tab = await page.context().newPage()
      await tab.goto(`http://127.0.0.1:${port}/a/folder/?quality=light`)
      await ready(tab)
      return tab
    }
    /** The builds whose files are kept, by their marks. */
    const kept = (tab: Page): Promise<string[]> =>
      tab.evaluate(async () => (await caches.keys()).map((name) => name.replace('pierglass.page.', '')).sort())
    const publish = async (mark: string, tab: Page): Promise<void> => {
      await stop(server)
      server = await host(port, mark)
      await tab.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
      const newer = tab.getByRole('button', { name: words.actions.useNewer, exact: true })
      await expect(newer).toBeVisible()
      await Promise.all([tab.waitForEvent('load'), newer.click()])
      await ready(tab)
    }
    const first = await open()
    await first.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready
      if (active?.state !== 'activated') await new Promise((resolve) => active?.addEventListener('statechange', resolve))
    })
    const second = await open()
    await publish('two', second)
    await publish('three', second)
    await publish('four', second)
    await expect.poll(() => kept(second)).toEqual(['four', 'one', 'three'])
    // A part of the first build that the first tab had not needed before; no host has it any more.
    await first.getByRole('button', { name: entrances.compare.open, exact: true }).click()
    await expect(first.getByRole('table')).toContainText(compare.rows['holds-down'].label)
    await first.close()
    await publish('five', second)
    await expect.poll(() => kept(second)).toEqual(['five', 'four'])
    await stop(server)
  })
})
