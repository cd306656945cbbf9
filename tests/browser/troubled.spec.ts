import { createServer } from 'node:http'
import { existsSync, readFileSync } from 'node:fs'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { app as words } from '../../src/words/en/app.ts'
import { compare } from '../../src/words/en/compare.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import { shelf } from '../../src/words/en/shelf.ts'
import { sheet } from '../../src/words/en/sheet.ts'
import { takeAlong } from '../../src/words/en/takeAlong.ts'
import type { Locator } from '@playwright/test'
import { expect, test } from './app.ts'
import { parts } from './names.ts'

test.describe('when the picture cannot be loaded', () => {
  test.use({ allowed: ['Failed to load resource', 'ERR_FAILED', 'dynamically imported module'] })
  test('[R9] the drawn section takes its place', async ({ app }) => {
    await app.page.route(/picture-.*\.js$/, (route) => route.abort())
    await app.open()
    await expect(app.page.getByText(words.notices['scene-failed'])).toBeVisible()
    await expect(app.page.getByRole('img', { name: /section/i }).first()).toBeVisible()
    await app.enter(parts(app.page).field('hole.diameter'), '26 in')
    await expect.poll(async () => (await app.spec()).hole.diameter).toBeCloseTo(26 * 0.0254, 12)
  })
})

test('[R10] a browser that keeps nothing says so and works', async ({ app }) => {
  await app.page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError')
      },
    })
  })
  await app.open()
  await expect(app.page.getByText(words.notices['storage-blocked'])).toBeVisible()
  await app.enter(parts(app.page).field('hole.diameter'), '26 in')
  await expect.poll(async () => (await app.spec()).hole.diameter).toBeCloseTo(26 * 0.0254, 12)
})

test('[R11] nothing runs out of the page at any size', async ({ app }) => {
  await app.open()
  for (const size of [
    { width: 360, height: 740 },
    { width: 480, height: 320 },
    { width: 820, height: 1180 },
    { width: 1280, height: 800 },
    { width: 1920, height: 1080 },
  ]) {
    await app.page.setViewportSize(size)
    await app.stillness(150)
    const over = await app.page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
    expect(over, `${size.width} x ${size.height}`).toBeLessThanOrEqual(0)
  }
})

// 1280 by 1024 at four times its size. Source: W3C, WCAG 2.2, success criterion 1.4.10 (Reflow), 320 CSS pixels.
test.describe('on a screen at four times its size', () => {
  test.use({ viewport: { width: 320, height: 256 } })
  test('[R11] all fits 320 pixels, and the picture keeps its height', async ({ app }) => {
    const { page } = app
    const fits = async (where: string): Promise<void> => {
      const wide = await page.evaluate(() =>
        [...document.querySelectorAll('html, .view-bar, .cmp, .paperwork, dialog')]
          .filter(({ scrollWidth }) => scrollWidth > 320)
          .map(({ tagName }) => tagName),
      )
      expect(wide, where).toEqual([])
    }
    const isWhole = async (picture: Locator): Promise<void> => {
      const box = await picture.boundingBox()
      expect(box).toMatchObject({ x: 0, width: 320 })
      // The bar of views, 44 high, lies over its foot.
      expect(box?.height).toBeGreaterThanOrEqual(160 + 44)
    }
    await app.open()
    await fits(words.panels.picture)
    await isWhole(page.getByRole('main', { name: words.panels.picture }))
    const groups = page.locator('.view-bar :is(select, .view-cuts, .view-time, .view-show-button):visible')
    const edges = await groups.evaluateAll((all) =>
      all.map((one) => [
        one.getBoundingClientRect().left,
        Math.max(...[one, ...one.children].map((part) => part.getBoundingClientRect().right)),
      ]),
    )
    expect(edges.flat()).toEqual(edges.flat().sort((a, b) => a - b))
    const picture = await page.getByRole('main', { name: words.panels.picture }).boundingBox()
    await page.locator('.view-show-button').click()
    const panel = await page.locator('.view-panel').boundingBox()
    expect(panel?.y, 'panel over the bar').toBeGreaterThanOrEqual(picture?.y ?? Number.NaN)
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: words.panels.answersShort, exact: true }).click()
    await expect(parts(page).answers).toBeVisible()
    await fits(words.panels.answers)
    await page.getByRole('button', { name: entrances.compare.open, exact: true }).click()
    await isWhole(page.getByRole('region', { name: compare.picture }))
    await fits(entrances.compare.open)
    await page.keyboard.press('Escape')
    for (const [name, head, way] of [
      [
        entrances.sheet.open,
        page.getByRole('heading', { name: sheet.title, exact: true }),
        page.getByRole('button', { name: sheet.close }),
      ],
      [words.actions.shelf, page.getByRole('dialog', { name: shelf.title }), page.getByRole('button', { name: shelf.close, exact: true })],
      [
        entrances.takeAlong,
        page.getByRole('dialog', { name: entrances.takeAlong }),
        page.getByRole('button', { name: takeAlong.close, exact: true }),
      ],
    ] as const) {
      await page.locator('.head .menu').evaluate((menu) => menu.setAttribute('open', ''))
      await page
        .locator('.head .menu')
        .getByRole('button', { name: new RegExp(`^${name}`) })
        .click()
      await expect(head).toBeVisible()
      await fits(name)
      await way.first().click()
      await expect(head).toBeHidden()
    }
  })
})

test('[S5] the built files work from any folder of any host', async ({ page }) => {
  const dist = fileURLToPath(new URL('../../dist', import.meta.url))
  const types: Readonly<Record<string, string>> = {
    '.html': 'text/html',
    '.js': 'text/javascript',
    '.css': 'text/css',
    '.svg': 'image/svg+xml',
    '.woff2': 'font/woff2',
  }
  const server = createServer((request, response) => {
    const path = (request.url ?? '').split('?')[0]?.replace(/^\/some\/folder\//, '') ?? ''
    const file = join(dist, path === '' ? 'index.html' : path)
    if (!request.url?.startsWith('/some/folder/') || !existsSync(file)) return response.writeHead(404).end()
    return response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(readFileSync(file))
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  const port = typeof address === 'object' && address ? address.port : 0
  const missing: string[] = []
  page.on('response', (response) => {
    if (response.status() >= 400) missing.push(response.url())
  })
  await page.goto(`http://127.0.0.1:${port}/some/folder/?quality=light`)
  await page.waitForFunction(() => window.pierglass?.ready() === true)
  expect(missing).toEqual([])
  await page.close()
  server.close()
})
