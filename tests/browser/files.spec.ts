import { readFileSync } from 'node:fs'
import { app as words } from '../../src/words/en/app.ts'
import { examples } from '../../src/words/en/examples.ts'
import { shelf as shelfWords } from '../../src/words/en/shelf.ts'
import { expect, test } from './app.ts'
import { parts } from './names.ts'

const wide = { width: 1280, height: 480 }

test.use({ graphics: false })

test('[F1] a saved file opens again as the same pier, name and all', async ({ app }) => {
  await app.page.setViewportSize(wide)
  await app.open()
  await app.enter(parts(app.page).field('hole.depth'), '4\'-6"')
  await app.enter(parts(app.page).pierName, 'Boat shelter, north row')
  await expect.poll(async () => (await app.read('document')).name).toBe('Boat shelter, north row')
  const saved = await app.read('document')
  const waiting = app.page.waitForEvent('download')
  await app.page.getByRole('button', { name: words.actions.save, exact: true }).click()
  const path = await (await waiting).path()
  await app.page.getByRole('button', { name: words.actions.reset, exact: true }).click()
  await expect.poll(async () => (await app.spec()).hole.depth).not.toBeCloseTo(saved.spec.hole.depth, 6)
  await app.page.locator('input[type=file]').first().setInputFiles(path)
  await expect.poll(() => app.spec()).toEqual(saved.spec)
  expect((await app.read('document')).name).toBe(saved.name)
  // Written again it is the same file, byte for byte, as it was typed.
  const again = app.page.waitForEvent('download')
  await app.page.getByRole('button', { name: words.actions.save, exact: true }).click()
  const bytes = readFileSync(path, 'utf8')
  expect(readFileSync(await (await again).path(), 'utf8')).toBe(bytes)
  expect(bytes).toContain(JSON.stringify('4\'-6"'))
})

const bad: readonly (readonly [name: string, text: string])[] = [
  ['not JSON', '{ "schema": 1, '],
  ['no job', '[1, 2, 3]'],
  ['a bare number', '{"schema":1,"hole":{"depth":48}}'],
  ['a prototype', '{"schema":1,"__proto__":{"hole":1},"constructor":{"prototype":{"polluted":1}}}'],
  ['ten thousand levels', `${'['.repeat(10_000)}${']'.repeat(10_000)}`],
  ['markup', '{"schema":1,"<img src=x onerror=alert(1)>":1}'],
]

test('[F2] a bad file changes nothing and is told', async ({ app }) => {
  await app.page.setViewportSize(wide)
  await app.open()
  const before = await app.read('document')
  for (const [name, text] of bad) {
    await app.page
      .locator('input[type=file]')
      .first()
      .setInputFiles({ name: `${name}.json`, mimeType: 'application/json', buffer: Buffer.from(text) })
    await expect(app.page.getByText(words.notices['file-refused'])).toBeVisible()
    expect(await app.read('document')).toEqual(before)
  }
  expect(await app.page.evaluate(() => ({}) as Record<string, unknown>)).toEqual({})
  expect(await app.page.locator('img[src="x"]').count()).toBe(0)
})

test('[F3] a file of fifty megabytes is refused unread', async ({ app }) => {
  await app.page.setViewportSize(wide)
  await app.open()
  const before = await app.read('document')
  const read = await app.page.evaluate(async () => {
    const reads: string[] = []
    for (const way of ['text', 'arrayBuffer', 'stream', 'slice'] as const) {
      const real = Blob.prototype[way]
      Object.assign(Blob.prototype, {
        [way](this: Blob, ...rest: unknown[]) {
          reads.push(way)
          return Reflect.apply(real, this, rest)
        },
      })
    }
    const input = document.querySelector<HTMLInputElement>('input[type=file]')
    const files = new DataTransfer()
    files.items.add(new File([new Uint8Array(50_000_000).fill(32)], 'large.json', { type: 'application/json' }))
    if (input) input.files = files.files
    input?.dispatchEvent(new Event('change', { bubbles: true }))
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)))
    return reads
  })
  await expect(app.page.getByText(words.notices['file-refused'])).toBeVisible()
  expect(read).toEqual([])
  expect(await app.read('document')).toEqual(before)
})

test('[F4] a drag of a slider is one step back', async ({ app }) => {
  await app.page.setViewportSize(wide)
  await app.open()
  const slider = parts(app.page).slider('hole.diameter')
  const was = (await app.spec()).hole.diameter
  await slider.scrollIntoViewIfNeeded()
  const box = await slider.boundingBox()
  if (!box) throw new Error('the slider is not on the page')
  const y = box.y + box.height / 2
  await app.page.mouse.move(box.x + box.width * 0.3, y)
  await app.page.mouse.down()
  for (let i = 0; i <= 10; i++) await app.page.mouse.move(box.x + box.width * (0.3 + 0.04 * i), y)
  await app.page.mouse.up()
  await expect.poll(async () => (await app.spec()).hole.diameter).toBeGreaterThan(was)
  await parts(app.page).undo.click()
  await expect.poll(async () => (await app.spec()).hole.diameter).toBe(was)
  await expect(parts(app.page).undo).toBeDisabled()
})

test('[F5] an example takes the place of the open pier, which waits under the saved piers', async ({ app }) => {
  await app.page.setViewportSize(wide)
  await app.open()
  await app.enter(parts(app.page).pierName, 'Mine')
  await app.enter(parts(app.page).field('hole.depth'), '61 in')
  const mine = await app.spec()
  const shelf = app.page.getByRole('button', { name: words.actions.shelf })
  const dialog = app.page.getByRole('dialog', { name: shelfWords.title })
  await shelf.click()
  await dialog.getByRole('button', { name: examples.names['boat-shelter-collar'], exact: true }).click()
  await expect(app.page.getByText(words.notices['file-opened'])).toBeVisible()
  expect((await app.spec()).fill.kind).toBe('mixed-collar')
  await shelf.click()
  await expect(dialog.getByRole('region', { name: shelfWords.drafts.title }).getByRole('heading', { name: 'Mine' })).toBeVisible()
  await dialog.getByRole('button', { name: shelfWords.close, exact: true }).click()
  await parts(app.page).undo.click()
  expect(await app.spec()).toEqual(mine)
})
