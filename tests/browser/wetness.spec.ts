import type { Locator } from '@playwright/test'
import { compare } from '../../src/words/en/compare.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import { groups } from '../../src/words/en/groups.ts'
import { moisture } from '../../src/words/en/moisture.ts'
import { scene as words } from '../../src/words/en/scene.ts'
import { time } from '../../src/words/en/time.ts'
import { type App, expect, test } from './app.ts'
import { parts } from './names.ts'

test.use({ viewport: { width: 1280, height: 800 } })

const show = (app: App): Locator => app.page.getByRole('button', { name: words.bar.show, exact: true })
const layer = (app: App): Locator => app.page.getByRole('checkbox', { name: words.layers.wetness, exact: true })
const plate = (app: App, line: string): Locator => app.page.locator('.overlay .plate').filter({ hasText: line })

/** The panel lies over the picture, so it is closed before the picture is taken. */
const withLayer = async (app: App, isOn: boolean): Promise<Buffer> => {
  await show(app).click()
  await layer(app).setChecked(isOn)
  await show(app).click()
  await show(app).blur()
  return app.picture()
}

test('[W7] wet wood is shown when it is asked for, with its classes in words, and goes again', async ({ app }) => {
  await app.open()
  const before = await withLayer(app, false)
  expect(await app.isSamePicture(await withLayer(app, true), before)).toBe(false)
  await show(app).click()
  for (const word of Object.values(moisture.wetness))
    await expect(app.page.getByRole('list', { name: words.bar.legend })).toContainText(word)
  await show(app).click()
  expect(await app.isSamePicture(await withLayer(app, false), before)).toBe(true)
})

test('[W8] rain runs off a crown, and to the post once the rim lies below uphill grade', async ({ app }) => {
  await app.open()
  await withLayer(app, true)
  await expect(plate(app, words.marks.rain.ground)).toHaveCount(1)
  const before = await app.page.locator('.overlay .ink-rain:not(.casing)').getAttribute('d')
  const rim = parts(app.page).field('top.rim')
  if (!(await rim.isVisible())) await app.page.locator('.group > summary').filter({ hasText: groups.top.label }).first().click()
  await app.enter(rim, '-4')
  await app.stillness()
  await expect(plate(app, words.marks.rain.post)).toHaveCount(1)
  await expect(plate(app, words.marks.rain.ground)).toHaveCount(0)
  expect(await app.page.locator('.overlay .ink-rain:not(.casing)').getAttribute('d')).not.toBe(before)
})

test('[W9] sixty switches of wet wood leave what the picture holds where it was', async ({ app }) => {
  await app.page.setViewportSize({ width: 640, height: 480 })
  await app.open()
  await withLayer(app, true)
  await withLayer(app, false)
  const before = await app.renderer()
  await show(app).click()
  await layer(app).evaluate(async (box) => {
    const frame = () => new Promise((done) => requestAnimationFrame(done))
    for (let i = 0; i < 60; i++) {
      if (!(box instanceof HTMLInputElement)) throw new Error('no box')
      box.click()
      await frame()
      if (box.checked !== (i % 2 === 0)) throw new Error(`switch ${i} did not take`)
    }
  })
  await show(app).click()
  await app.stillness()
  const after = await app.renderer()
  expect(after.frames).toBeGreaterThan(before.frames + 20)
  expect(after.geometries).toBe(before.geometries)
  expect(after.textures).toBe(before.textures)
  expect(after.programs).toBe(before.programs)
})

test('[W10] side by side each pier shows where its rain ends, and the years what they leave open; off, nothing is left over the picture', async ({
  app,
}) => {
  await app.open()
  await app.page.getByRole('button', { name: entrances.compare.open, exact: true }).click()
  const years = app.page.getByRole('combobox', { name: compare.view.water, exact: true })
  const rain = app.page.locator('.cmp-canvas .ink-rain:not(.casing)')
  await expect(years).toHaveValue('-1')
  await expect(rain).toHaveCount(0)
  await years.selectOption('30')
  await expect(rain).toHaveCount(4)
  const ways = await rain.evaluateAll((paths) => paths.map((path) => path.getAttribute('d') ?? ''))
  expect(ways.every((way) => way.startsWith('M'))).toBe(true)
  await expect(app.page.getByText(time.years.tally.none, { exact: true })).toHaveCount(1)
  await expect(app.page.locator('.cmp-columns .tally svg')).toHaveCount(3)
  await expect(app.page.locator('.cmp-columns .tally-open')).toHaveCount(18)
  await years.selectOption('-1')
  await expect(rain).toHaveCount(0)
})
