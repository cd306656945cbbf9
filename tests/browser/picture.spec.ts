import type { Locator } from '@playwright/test'
import { scene as words } from '../../src/words/en/scene.ts'
import { type App, expect, test } from './app.ts'
import { parts } from './names.ts'

const handle = (app: App, which: 'left' | 'right' | 'turn'): Locator =>
  app.page.getByRole('slider', { name: words.handles[which], exact: true })

const centreOf = async (item: Locator): Promise<{ x: number; y: number }> => {
  const box = await item.boundingBox()
  if (!box) throw new Error('it is not on the page')
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

test.use({ viewport: { width: 640, height: 480 } })

test('[B8] the cut follows the hand', async ({ app }) => {
  await app.page.setViewportSize({ width: 900, height: 600 })
  await app.open()
  const before = { cut: await app.read('cutState'), picture: await app.picture() }
  const start = await centreOf(handle(app, 'turn'))
  await app.page.mouse.move(start.x, start.y)
  await app.page.mouse.down()
  for (let i = 1; i <= 8; i++) await app.page.mouse.move(start.x + 8 * i, start.y)
  await app.page.mouse.up()
  await expect.poll(async () => (await app.read('cutState')).facing).not.toBeCloseTo(before.cut.facing, 3)
  expect((await app.read('cutState')).open).toBeCloseTo(before.cut.open, 9)
  expect(await app.isSamePicture(await app.picture(), before.picture)).toBe(false)
})

test('[B8] the cut follows the keys and stays within its limits', async ({ app }) => {
  await app.open()
  const before = { cut: await app.read('cutState'), picture: await app.picture() }
  await handle(app, 'left').focus()
  for (let i = 0; i < 4; i++) await app.page.keyboard.press('ArrowRight')
  await expect.poll(async () => (await app.read('cutState')).open).not.toBeCloseTo(before.cut.open, 3)
  expect(await app.isSamePicture(await app.picture(), before.picture)).toBe(false)
  await app.page.keyboard.press('End')
  await expect.poll(async () => (await app.read('cutState')).open).toBeCloseTo((300 * Math.PI) / 180, 6)
  await app.page.keyboard.press('Home')
  await expect.poll(async () => (await app.read('cutState')).open).toBeCloseTo(0, 6)
  // Looking round is no change of the pier.
  await expect(parts(app.page).undo).toBeDisabled()
})

test('[B9] each viewpoint shows another picture, and the pier stays the same', async ({ app }) => {
  await app.open()
  const spec = await app.spec()
  const look = app.page.getByRole('combobox', { name: words.bar.look, exact: true })
  const seen = new Set<string>()
  for (const name of Object.values(words.viewpoints)) {
    await look.selectOption({ label: name })
    seen.add((await app.picture()).toString('base64'))
  }
  expect(seen.size).toBe(Object.keys(words.viewpoints).length)
  expect(await app.spec()).toEqual(spec)
})

test('[B10] layers, the cut post and lifted parts change the picture and go back', async ({ app }) => {
  await app.open()
  const show = app.page.getByRole('button', { name: words.bar.show, exact: true })
  /** The panel lies over the picture, so it is closed before the picture is taken. */
  const after = async (change: () => Promise<void>): Promise<Buffer> => {
    await show.click()
    await change()
    await show.click()
    await show.blur()
    return app.picture()
  }
  const start = await after(async () => undefined)
  const atFirst = [
    [words.layers.soil, true],
    [words.bar.cutPost, false],
  ] as const
  for (const [name, was] of atFirst) {
    const box = app.page.getByRole('checkbox', { name, exact: true })
    expect(await app.isSamePicture(await after(() => box.setChecked(!was)), start), name).toBe(false)
    expect(await app.isSamePicture(await after(() => box.setChecked(was)), start), name).toBe(true)
  }
  const apart = app.page.getByRole('slider', { name: words.bar.apart, exact: true })
  expect(await app.isSamePicture(await after(() => apart.press('End')), start)).toBe(false)
  expect(await app.isSamePicture(await after(() => apart.press('Home')), start)).toBe(true)
})

test('[B11] a part in focus is named with its volume and lights up in the numbers', async ({ app }) => {
  await app.page.setViewportSize({ width: 1280, height: 560 })
  await app.open()
  const lit = app.page.locator('[data-lit="true"]')
  await expect(lit).toHaveCount(0)
  const list = app.page.getByRole('list', { name: words.parts })
  const concrete = list.getByRole('button', { name: /concrete/i }).first()
  await list.getByRole('button').first().focus()
  for (let i = 0; i < 12 && !(await concrete.evaluate((node) => node === document.activeElement)); i++)
    await app.page.keyboard.press('ArrowDown')
  await expect(concrete).toBeFocused()
  await expect(lit.first()).toBeVisible()
  await expect(
    app.page
      .getByRole('status')
      .filter({ hasText: /ft³|yd³/ })
      .first(),
  ).toBeVisible()
})
