import { fills } from '../../src/words/en/fills.ts'
import { expect, test } from './app.ts'
import { parts } from './names.ts'

test('[B1] opens with a picture, its main numbers and the cautions', async ({ app }) => {
  await app.open()
  const { canvas, headlines, cautions } = parts(app.page)
  await expect(canvas).toHaveCount(1)
  await expect(headlines).toContainText(/\d/)
  await expect(cautions).toContainText(/engineer/)
  const { geometries, frames } = await app.renderer()
  expect(geometries).toBeGreaterThan(3)
  expect(frames).toBeGreaterThan(0)
})

test('[B2] a wider hole changes the volume and the picture', async ({ app }) => {
  await app.open()
  const before = { volume: await app.holeVolume(), picture: await app.picture(), told: await parts(app.page).headlines.innerText() }
  await app.enter(parts(app.page).field('hole.diameter'), '24 in')
  await expect.poll(() => app.holeVolume()).toBeGreaterThan(before.volume * 1.2)
  expect((await app.spec()).hole.diameter).toBeCloseTo(24 * 0.0254, 12)
  expect(await parts(app.page).headlines.innerText()).not.toBe(before.told)
  expect(await app.isSamePicture(await app.picture(), before.picture)).toBe(false)
})

test('[B3] the same picture is drawn twice the same', async ({ app }) => {
  await app.open()
  const first = await app.picture()
  await app.page.reload()
  await app.ready()
  expect(await app.isSamePicture(await app.picture(), first)).toBe(true)
})

test('[B4] every way to fill the hole can be chosen and is drawn', async ({ app }) => {
  await app.open()
  for (const id of Object.keys(fills) as (keyof typeof fills)[]) {
    await parts(app.page).fill(id).check({ force: true })
    await expect.poll(async () => (await app.spec()).fill.kind).toBe(id)
    await app.stillness(150)
    expect((await app.read('result')).zones.length).toBeGreaterThan(2)
  }
})

test.describe('without a 3D picture', () => {
  test.use({ graphics: false })

  test('[B5] one change is one step back, and can be done again', async ({ app }) => {
    await app.open()
    const { field, undo, redo } = parts(app.page)
    const was = (await app.spec()).hole.depth
    await app.enter(field('hole.depth'), '50 in')
    await expect.poll(async () => (await app.spec()).hole.depth).toBeCloseTo(50 * 0.0254, 12)
    await undo.click()
    await expect.poll(async () => (await app.spec()).hole.depth).toBe(was)
    await redo.click()
    await expect.poll(async () => (await app.spec()).hole.depth).toBeCloseTo(50 * 0.0254, 12)
    await expect(field('hole.depth')).toHaveValue(/50/)
  })

  test('[B6] the address reopens the same pier', async ({ app, browser, baseURL }) => {
    await app.open()
    await app.enter(parts(app.page).field('hole.diameter'), '22 in')
    await expect.poll(() => new URL(app.page.url()).hash.length).toBeGreaterThan(3)
    await expect.poll(async () => (await app.spec()).hole.diameter).toBeCloseTo(22 * 0.0254, 12)
    const spec = await app.spec()
    const hash = new URL(app.page.url()).hash
    // Another person's browser: nothing kept, only the link.
    const elsewhere = await browser.newContext()
    const page = await elsewhere.newPage()
    await page.goto(`${baseURL}?quality=light${hash}`)
    await page.waitForFunction(() => window.pierglass?.ready() === true)
    expect(await page.evaluate(() => window.pierglass?.document().spec)).toEqual(spec)
    await elsewhere.close()
  })
})

test('[B7] an entry that cannot be built says why and leaves the last good pier', async ({ app }) => {
  await app.open()
  const { field } = parts(app.page)
  const before = { spec: await app.spec(), picture: await app.picture() }
  await app.enter(field('hole.diameter'), '900 in')
  await expect(field('hole.diameter')).toHaveAttribute('aria-invalid', 'true')
  const reason = await field('hole.diameter').getAttribute('aria-describedby')
  expect(reason).not.toBeNull()
  const told = await Promise.all((reason ?? '').split(' ').map((id) => app.page.locator(`[id="${id}"]`).innerText()))
  expect(told.join(' ')).toMatch(/48/)
  expect(await app.spec()).toEqual(before.spec)
  expect(await app.isSamePicture(await app.picture(), before.picture)).toBe(true)
  await app.enter(field('hole.diameter'), 'a bucket')
  await expect(field('hole.diameter')).toHaveAttribute('aria-invalid', 'true')
  expect(await app.spec()).toEqual(before.spec)
})
