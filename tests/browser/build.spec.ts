import { readdirSync, readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import { app } from '../../src/words/en/app.ts'
import { takeAlong } from '../../src/words/en/takeAlong.ts'

const dist = fileURLToPath(new URL('../../dist', import.meta.url))
const files = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name))
const html = readFileSync(join(dist, 'index.html'), 'utf8')

test('[S1] the built page carries a strict content policy and nothing that it forbids', () => {
  const policy = (/http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? '').replaceAll('&#39;', "'")
  for (const rule of ["default-src 'self'", "script-src 'self'", "object-src 'none'", "base-uri 'none'", "form-action 'none'"]) {
    expect(policy).toContain(rule)
  }
  expect(policy).not.toMatch(/unsafe|https?:|\*/)
  expect(html).not.toMatch(/<script(?![^>]*\bsrc=)[^>]*>|<style|\sstyle=|\son\w+=/)
})

test('[S2] no file of the build calls code out of text', () => {
  const scripts = files.filter((file) => file.endsWith('.js'))
  expect(scripts.length).toBeGreaterThan(1)
  const evaluating = scripts.filter((file) => /\beval\(|new Function\(/.test(readFileSync(file, 'utf8')))
  expect(evaluating).toEqual([])
})

test('[S3] a file that is not there is not there', async ({ request }) => {
  const answer = await request.get('assets/nothing-1234.js')
  expect(answer.status()).toBe(404)
})

test('[S4] the picture is loaded after the page, not with it', () => {
  const withThree = files.filter((file) => file.endsWith('.js') && /WebGLRenderer/.test(readFileSync(file, 'utf8')))
  expect(withThree.length).toBeGreaterThan(0)
  const early = withThree.map((file) => file.split('/').pop() ?? '').filter((name) => html.includes(name))
  expect(early).toEqual([])
})

test('[S10] the built files carry the licenses of what they contain, and the page shows them under credits', async ({ page }) => {
  const text = readFileSync(join(dist, 'licenses.txt'), 'utf8')
  const { dependencies } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
    dependencies: Record<string, string>
  }
  // Every package that the page is built on, and those that came with them.
  for (const [name, version] of Object.entries(dependencies)) expect(text).toContain(`\n${name} ${version}, `)
  for (const name of ['scheduler', 'vite']) expect(text).toMatch(new RegExp(`\\n${name} [\\d.]+, MIT\\n`))
  expect(text).toContain('SIL OPEN FONT LICENSE')
  expect(text).toContain('Apache License')
  expect(text).not.toMatch(/^\S+ \S+, .*(?:GPL|SEE LICENSE|none)/m)
  await page.setViewportSize({ width: 1280, height: 800 })
  await page.goto('./?quality=light')
  await page.locator('summary').filter({ hasText: app.answers.sections.credits.title }).click()
  await expect(page.locator('.credits')).toHaveText(text.trim(), { useInnerText: false })
})

test('[S11] the headers file keeps the page from being framed, allows what the page allows, and the page works under it', async ({
  browser,
}) => {
  const lines = readFileSync(join(dist, '_headers'), 'utf8').split('\n')
  const headers = Object.fromEntries(
    lines
      .filter((line) => /^ {2}\S/.test(line))
      .map((line) =>
        line
          .trim()
          .split(/: (.*)/)
          .slice(0, 2),
      ),
  )
  const { 'Content-Security-Policy': policy = '' } = headers as Record<string, string>
  const inPage = (/http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? '').replaceAll('&#39;', "'")
  expect(policy.replace(" 'wasm-unsafe-eval'", '')).toBe(`${inPage}; frame-ancestors 'none'`)
  expect(headers).toMatchObject({ 'X-Frame-Options': 'DENY', 'X-Content-Type-Options': 'nosniff' })

  const types: Readonly<Record<string, string>> = {
    html: 'text/html',
    js: 'text/javascript',
    css: 'text/css',
    svg: 'image/svg+xml',
    wasm: 'application/wasm',
  }
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '', 'http://host').pathname
    const file = join(dist, path === '/' ? 'index.html' : path)
    if (path === '/framing') return response.writeHead(200, { 'content-type': 'text/html' }).end('<iframe src="/" name="framed"></iframe>')
    if (!files.includes(file)) return response.writeHead(404).end()
    const type = types[file.split('.').at(-1) ?? ''] ?? 'application/octet-stream'
    return response.writeHead(200, { ...headers, 'content-type': type }).end(readFileSync(file))
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = server.address()
  const origin = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}`
  const opened = await browser.newPage({ viewport: { width: 1280, height: 800 } })
  const complaints: string[] = []
  opened.on('console', (message) => message.type() === 'error' && complaints.push(message.text()))
  await opened.goto(`${origin}/?quality=light`)
  await opened.waitForFunction(() => window.pierglass?.ready() === true)
  await opened.getByRole('button', { name: takeAlong.title, exact: true }).first().click()
  const waiting = opened.waitForEvent('download')
  await opened.getByRole('button', { name: `${takeAlong.files.stl.action} ${takeAlong.files.stl.kind}`, exact: true }).click()
  expect(readFileSync(await (await waiting).path()).length).toBeGreaterThan(10_000)
  expect(complaints).toEqual([])

  await opened.goto(`${origin}/framing`)
  await expect.poll(() => complaints.join(' ')).toMatch(/frame/i)
  expect(
    await opened
      .frame('framed')
      ?.evaluate(() => 'pierglass' in window)
      .catch(() => false),
  ).toBe(false)
  await opened.close()
  server.close()
})
