import type { Locator } from '@playwright/test'
import type { Stretch } from '../../src/state/appState.ts'
import { build } from '../../src/words/en/build.ts'
import { headlines as firstAnswers } from '../../src/words/en/headlines.ts'
import { fills } from '../../src/words/en/fills.ts'
import { time as words } from '../../src/words/en/time.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import { type App, expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'

const strip = (app: App): Locator => app.page.getByRole('region', { name: words.title, exact: true })
const rule = (app: App, stretch: Stretch): Locator => app.page.getByRole('slider', { name: words.stretches[stretch], exact: true })
/** What is read out of the moment. */
const told = (app: App): Locator => strip(app).getByRole('status')
const about = (app: App): Locator => strip(app).getByRole('region', { name: words.about, exact: true })
const opener = (app: App): Locator => app.page.getByRole('button', { name: entrances.time.open, exact: true })

const choose = async (app: App, stretch: Stretch): Promise<void> => {
  await strip(app).getByRole('button', { name: words.stretches[stretch], exact: true }).click()
  await rule(app, stretch).focus()
}
const openTime = async (app: App, stretch: Stretch): Promise<void> => {
  await opener(app).click()
  await choose(app, stretch)
}
const moment = async (app: App) => (await app.read('timeState'))?.time
const press = async (app: App, ...keys: string[]): Promise<void> => {
  for (const key of keys) await app.page.keyboard.press(key)
}

test.use({ viewport: { width: 900, height: 600 } })

test('[W1] building is stepped by the keyboard, told in words, and what is not there yet is not drawn', async ({ app }) => {
  await app.open()
  const spec = await app.spec()
  const whole = await app.read('shownParts')
  expect(whole).toContain('concrete')
  await openTime(app, 'build')
  await expect(told(app)).toHaveText(/^Step 1 of \d+: \S/)
  await expect(about(app).getByText(words.build.danger, { exact: true })).toBeVisible()
  await expect.poll(() => app.read('shownParts')).toEqual(['topsoil', 'soil'])
  const empty = await app.picture()
  // A clicker sends page keys or Space; whatever it sends, each is one step.
  await press(app, 'PageDown', ' ', 'ArrowRight', 'PageUp', 'PageDown')
  expect(await moment(app)).toEqual({ stretch: 'build', step: 3 })
  await expect.poll(() => app.read('shownParts')).toContain('post')
  expect(await app.read('shownParts')).not.toContain('concrete')
  // A clicker's dark key shows nothing at all, and then the same moment again.
  const dark = app.page.getByRole('button', { name: words.dark, exact: true })
  await press(app, 'b')
  await expect(dark).toHaveCSS('background-color', 'rgb(0, 0, 0)')
  expect(await dark.boundingBox()).toEqual({ x: 0, y: 0, width: 900, height: 600 })
  await press(app, 'PageDown', '.')
  await expect(dark).toHaveCount(0)
  expect(await moment(app)).toEqual({ stretch: 'build', step: 3 })
  await press(app, 'End')
  await expect.poll(() => app.read('shownParts')).toEqual(whole)
  expect(await app.isSamePicture(await app.picture(), empty)).toBe(false)
  // Looking at a moment changes no pier; Escape leaves it, and the keyboard is where it was.
  await press(app, 'Escape')
  await expect(strip(app)).toBeHidden()
  await expect(opener(app)).toBeFocused()
  expect(await app.spec()).toEqual(spec)
})

test('[W2] a mistake changes picture and numbers, and is put right', async ({ app }) => {
  await app.page.setViewportSize({ width: 1280, height: 560 })
  await app.open()
  const right = { spec: await app.spec(), hole: await app.holeVolume() }
  await openTime(app, 'build')
  const narrow = about(app).getByRole('checkbox', { name: build.mistakes['undersized-hole'].name, exact: true })
  await narrow.check()
  await expect.poll(() => app.holeVolume()).toBeLessThan(right.hole * 0.9)
  // Each number that it changes stands beside what it would be.
  await expect(about(app).getByRole('rowheader', { name: firstAnswers['hole-volume'].label, exact: true })).toBeVisible()
  expect(await app.spec()).toEqual(right.spec)
  await press(app, 'PageDown')
  await about(app).getByRole('button', { name: words.build.allRight, exact: true }).click()
  await expect.poll(() => app.holeVolume()).toBe(right.hole)
  await choose(app, 'build')
  await press(app, 'Home', 'PageDown', 'PageDown', 'PageDown')
  await about(app).getByRole('checkbox', { name: build.mistakes['bar-missed'].name, exact: true }).check()
  await press(app, 'End')
  await expect.poll(() => app.read('shownParts')).not.toContain('bars')
  await press(app, 'Home', 'Escape')
})

test.describe('without a 3D picture', () => {
  test.use({ graphics: false })

  test('[W3] the first month says a range and whose call it is; a dry pour has no curve', async ({ app }) => {
    await app.page.setViewportSize({ width: 1280, height: 800 })
    await app.open()
    await openTime(app, 'month')
    await press(app, 'PageDown')
    expect(await moment(app)).toEqual({ stretch: 'month', day: 7 })
    await expect(told(app)).toHaveText(/^Day 7: \d+(–\d+)?% of the 28-day strength$/)
    await expect(about(app).getByRole('img', { name: words.month.curve, exact: true })).toBeVisible()
    await expect(about(app)).toContainText(words.month.call)
    await expect(about(app)).toContainText(words.month.band)
    await app.page.getByRole('radio', { name: fills['dry-full-height'].label }).check({ force: true })
    await expect(about(app)).toContainText(words.month.dry.picture)
    await expect(about(app)).toContainText(/2003/)
    await expect(about(app).getByRole('img')).toHaveCount(0)
    await expect(told(app)).not.toHaveText(/%/)
  })
})

test('[W4] the years are told as a range and never as one year, beside the rows that disagree', async ({ app }) => {
  await app.open()
  await openTime(app, 'years')
  await press(app, 'ArrowRight', 'PageDown', ' ', 'PageUp')
  expect(await moment(app)).toEqual({ stretch: 'years', year: 11 })
  await press(app, 'End')
  expect(await moment(app)).toEqual({ stretch: 'years', year: 60 })
  await press(app, 'Home', 'PageDown')
  await expect(told(app)).toHaveText(/^Year 10: \d+–\d+% of such posts still sound$/)
  await expect(about(app)).toContainText(`${words.years.by('50', '0', '41')} ${words.years.ends}`)
  await expect(about(app)).not.toContainText('Life of the post')
  await expect(about(app)).toContainText(words.years.illustration)
  await expect(about(app)).toContainText('Common practice, no source.')
  await expect(about(app)).toContainText('0 of 125 failed in 50 years')
  await expect(about(app)).toContainText(words.years.cannot)
  // What the range leaves open is counted out over the picture, and drawn in it.
  const tally = (counts: Readonly<Partial<Record<'sound' | 'open', number>>>): Locator =>
    app.page.getByRole('img', {
      name: Object.entries(counts)
        .map(([state, count]) => words.years.tally[state as 'sound' | 'open'](String(count)))
        .join(', '),
      exact: true,
    })
  await expect(tally({ sound: 18, open: 2 })).toBeVisible()
  const after10 = await app.picture()
  await press(app, 'PageDown', 'PageDown')
  await expect(tally({ sound: 14, open: 6 })).toBeVisible()
  expect(await app.isSamePicture(await app.picture(), after10)).toBe(false)
})

test('[W5] playing the years moves the moment and leaves geometry where it was; the hand stops it', async ({ app }) => {
  const { clock } = app.page
  await app.page.setViewportSize({ width: 480, height: 420 })
  await app.openWithClock()
  await openTime(app, 'years')
  await clock.runFor(2000)
  const before = (await app.renderer()).geometries
  await strip(app).getByRole('button', { name: words.play, exact: true }).click()
  await clock.runFor(1700)
  expect((await app.read('timeState'))?.place).toBeGreaterThan(6)
  expect((await app.renderer()).geometries).toBe(before)
  await rule(app, 'years').focus()
  await press(app, 'ArrowRight')
  expect((await app.read('timeState'))?.playing).toBe(false)
  await clock.runFor(2000)
  // A moment that stands still asks for no frame.
  const { frames } = await app.renderer()
  await clock.runFor(600)
  expect((await app.renderer()).frames).toBe(frames)
})

test('[W6] with less motion wished for, playing goes in steps', async ({ app }) => {
  await app.page.emulateMedia({ reducedMotion: 'reduce' })
  await app.openWithClock()
  await openTime(app, 'years')
  await strip(app).getByRole('button', { name: words.play, exact: true }).click()
  const seen: (number | undefined)[] = []
  for (let i = 0; i < 3; i++) {
    seen.push((await app.read('timeState'))?.place)
    await app.page.clock.runFor(1600)
  }
  expect(seen).toEqual([0, 5, 10])
})

for (const size of [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
]) {
  test(`[H1] axe finds nothing serious in the time strip at ${size.width} x ${size.height}`, async ({ app }) => {
    await app.page.setViewportSize(size)
    await app.open()
    await opener(app).click()
    for (const stretch of ['build', 'month', 'years'] as const) {
      await choose(app, stretch)
      await expect(about(app)).not.toBeEmpty()
      expect(await seriousFindings(app.page), stretch).toEqual([])
      const small = await strip(app).evaluate((section) =>
        [...section.querySelectorAll('button, input[type=range]')]
          .map((node) => node.getBoundingClientRect())
          .filter(({ width, height }) => width < 44 || height < 44)
          .map(({ width, height }) => `${width} x ${height}`),
      )
      expect(small).toEqual([])
    }
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(size.width)
  })
}
