import type { Page } from '@playwright/test'
import { answers } from '../../src/words/en/answers.ts'
import { app as appWords } from '../../src/words/en/app.ts'
import { loadPath as words } from '../../src/words/en/loadPath.ts'
import { groups } from '../../src/words/en/groups.ts'
import { zones } from '../../src/words/en/zones.ts'
import { expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'
import { parts } from './names.ts'

const chart = (page: Page) => page.getByRole('list', { name: words.chart })
const link = (page: Page, id: keyof typeof answers) => chart(page).getByRole('button', { name: answers[id].label })
const plate = (page: Page) => page.locator('.part-plate')
/** The slider of the pull, moved as its keys move it. */
const pullTo = async (page: Page, key: 'Home' | 'End') => {
  await page.getByRole('slider', { name: words.raise.slider }).focus()
  await page.keyboard.press(key)
}

test.use({ viewport: { width: 1280, height: 560 } })

test.describe('[B8] the load path in the page', () => {
  test.describe('its list, without a 3D picture', () => {
    test.use({ graphics: false })

    test('lists every link from the post down, and the load once it is entered', async ({ app }) => {
      await app.open()
      const { page } = app
      await expect(link(page, 'post-net-tension')).toBeVisible()
      await expect(chart(page)).toContainText(appWords.answers.governs)
      await expect(parts(page).answers).toContainText(words.noDemand)
      await page.getByRole('button', { name: words.enterLoads }).click()
      await page.getByRole('switch', { name: 'Loads from the drawing' }).check()
      await expect(parts(page).answers).toContainText(words.noDemand)
      await app.enter(parts(page).field('loads.entered.uplift'), '800')
      await expect(parts(page).answers).toContainText('800 lb asked')
      await expect(parts(page).headlines).toContainText(appWords.answers.notBelow.entered)
      await app.enter(parts(page).field('loads.entered.uplift'), '1350')
      await expect(parts(page).headlines).toContainText(appWords.answers.below.entered)
      await expect(parts(page).answers).toContainText('1.4 times what it holds')
    })
  })

  test('a link turns the picture to its part and lights it, and shows its work', async ({ app }) => {
    await app.open()
    const { page } = app
    const before = await app.picture()
    await link(page, 'bar-through-post').click()
    await expect(link(page, 'bar-through-post')).toHaveAttribute('aria-expanded', 'true')
    await expect(plate(page)).toContainText(zones.bars)
    expect(await app.isSamePicture(await app.picture(), before)).toBe(false)
    const pad = page.locator('.pad')
    for (const mode of ['yield-mode-Im', 'yield-mode-Is', 'yield-mode-IIIs', 'yield-mode-IV'] as const)
      await expect(pad).toContainText(answers[mode].label)
    await expect(pad.locator('.katex').first()).toBeVisible()
    await expect(pad).toContainText(words.pad.least)
  })

  test('a part picked in the picture opens its link, with the mouse and with the keyboard', async ({ app }) => {
    await app.page.setViewportSize({ width: 1280, height: 800 })
    await app.open()
    const { page } = app
    const box = (await parts(page).canvas.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 }
    const spot = { x: box.x + box.width / 2, y: box.y + box.height * 0.12 }
    await page.mouse.move(spot.x, spot.y)
    await expect(plate(page)).toContainText(zones.post)
    await page.mouse.down()
    await page.mouse.up()
    await expect(link(page, 'post-tear-out')).toHaveAttribute('aria-expanded', 'true')
    // A press that turns the picture picks nothing.
    await page.mouse.move(box.x + 20, box.y + box.height - 80)
    await page.mouse.down()
    await page.mouse.move(box.x + 90, box.y + box.height - 80, { steps: 4 })
    await page.mouse.up()
    await expect(link(page, 'post-tear-out')).toHaveAttribute('aria-expanded', 'true')
    await page.getByRole('button', { name: zones.bars, exact: true }).press('Enter')
    await expect(link(page, 'bar-through-post')).toHaveAttribute('aria-expanded', 'true')
  })

  test.describe('what has no ratio, without a 3D picture', () => {
    test.use({ graphics: false })

    test('a path with a link that can not be verified has no ratio and no pull', async ({ app }) => {
      await app.open()
      const { page } = app
      // The method first: where a group opens, what is under it moves.
      await parts(page).fill('dry-bag-at-foot').check({ force: true })
      await page.locator('#inputs-loads > summary').click()
      await page.getByRole('switch', { name: 'Loads from the drawing' }).check()
      await expect(parts(page).headlines).toContainText(appWords.verdicts.unverified)
      await expect(parts(page).answers).toContainText(words.verifiable)
      await expect(parts(page).answers).not.toContainText('what it holds')
      await expect(page.getByRole('slider', { name: words.raise.slider })).toHaveCount(0)
      await expect(parts(page).answers).toContainText(words.changes.nothing)
    })
  })
})

test('[H1] axe finds nothing serious with a link, a reason and a pull open, on paper and on dark', async ({ app }) => {
  await app.page.setViewportSize({ width: 1280, height: 800 })
  await app.open()
  const { page } = app
  await page.getByRole('switch', { name: 'Bell at the bottom' }).check()
  await page.locator('#inputs-loads > summary').click()
  await page.getByRole('switch', { name: 'Estimate from the roof' }).check()
  await page.getByRole('radio', { name: answers['cone-over-ledge'].label }).check()
  await pullTo(page, 'End')
  await link(page, 'bar-through-post').click()
  await expect(page.locator('.pad .katex').first()).toBeVisible()
  for (const theme of ['paper', 'dark'] as const) {
    await page.getByRole('radio', { name: appWords.themes[theme], exact: true }).check({ force: true })
    await app.stillness()
    expect(await seriousFindings(page), theme).toEqual([])
  }
})

test.describe('changes and ground, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[B9] a change that is tried does what was said, and undo takes it back', async ({ app }) => {
    await app.open()
    const { page } = app
    const was = await app.spec()
    const now = (await app.read('result')).uplift.allowable ?? Number.NaN
    const row = page.locator('.change').first()
    const gained = Number(((await row.locator('.number').textContent()) ?? '').replace(/[^\d.]/g, ''))
    await page.getByRole('button', { name: words.changes.tryThis(words.tries['next-auger']) }).click()
    await expect.poll(async () => (await app.spec()).hole.diameter).toBeGreaterThan(was.hole.diameter)
    const after = (await app.read('result')).uplift.allowable ?? Number.NaN
    expect((after - now) / 4.4482216152605).toBeCloseTo(gained, -1)
    await parts(page).undo.click()
    await expect.poll(() => app.spec()).toEqual(was)
  })

  test('[B10] another way to count the ground needs a typed reason', async ({ app }) => {
    await app.open()
    const { page } = app
    await page.getByRole('switch', { name: 'Bell at the bottom' }).check()
    const before = await app.spec()
    await page.getByRole('radio', { name: answers['cone-over-ledge'].label }).check()
    const reason = page.getByRole('textbox', { name: words.soil.reason })
    await page.getByRole('button', { name: words.soil.use }).click()
    await expect(reason).toHaveAttribute('aria-invalid', 'true')
    expect(await app.spec()).toEqual(before)
    await reason.fill('Boring B-2 was read by the county engineer')
    await page.getByRole('button', { name: words.soil.use }).click()
    await expect.poll(async () => (await app.spec()).judgement?.mechanism).toBe('cone-over-ledge')
    await expect(parts(page).answers).toContainText('Boring B-2 was read by the county engineer')
    await expect(parts(page).answers).toContainText(words.soil.stays)
    expect(new URL(page.url()).hash).not.toContain('Boring')
    await parts(page).undo.click()
    await expect.poll(async () => (await app.spec()).judgement).toBeNull()
  })
})

test.describe('[B11] raise the uplift', () => {
  test('fills the bars, says how it would let go, moves the picture and nothing of the pier', async ({ app }) => {
    await app.open()
    const { page } = app
    const spec = await app.spec()
    const before = await app.picture()
    await pullTo(page, 'End')
    await expect(parts(page).answers).toContainText(words.lettingGo['pier-slides'])
    await expect(parts(page).answers).toContainText(/Illustrative/)
    // What moves and what stays, read off the picture itself: the pier comes out whole and the ground stands.
    await expect
      .poll(() => page.evaluate(() => window.pierglass?.pullState()))
      .toMatchObject({
        kind: 'letting-go',
        how: 'pier-slides',
        isMoving: false,
        displaced: ['concrete', 'post', 'bars', 'vertical-bars'],
        parted: [],
        bent: [],
      })
    expect(await app.isSamePicture(await app.picture(), before)).toBe(false)
    expect(await app.spec()).toEqual(spec)
    await page.getByRole('button', { name: words.raise.off }).click()
    await expect.poll(() => page.evaluate(() => window.pierglass?.pullState()?.displaced)).toEqual([])
    expect(await app.isSamePicture(await app.picture(), before)).toBe(true)
  })

  test.describe('without a 3D picture', () => {
    test.use({ graphics: false })

    test('runs by itself and can be paused', async ({ app }) => {
      await app.openWithClock()
      const { clock } = app.page
      const told = app.page.locator('.raise output')
      const press = (name: string) => app.page.getByRole('button', { name, exact: true }).click()
      await press(words.raise.play)
      await clock.runFor(2000)
      await press(words.raise.pause)
      const paused = await told.textContent()
      expect(Number(paused?.replace(/[^\d.]/g, ''))).toBeGreaterThan(20)
      await clock.runFor(2000)
      expect(await told.textContent()).toBe(paused)
      await press(words.raise.play)
      await clock.runFor(10_000)
      await expect(parts(app.page).answers).toContainText(words.lettingGo['pier-slides'])
    })

    test('stands still where motion is not wanted', async ({ app }) => {
      await app.page.emulateMedia({ reducedMotion: 'reduce' })
      await app.open()
      const { page } = app
      await expect(page.getByRole('button', { name: words.raise.play })).toHaveCount(0)
      await page.getByRole('button', { name: words.raise.end }).click()
      await expect(parts(page).answers).toContainText(words.lettingGo['pier-slides'])
    })
  })
})

test.describe('loads, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[B12] loads are told in the units of the trade', async ({ app }) => {
    await app.open()
    const { page } = app
    await page.locator('#inputs-loads > summary').click()
    await expect(page.locator('#inputs-loads')).toContainText(groups.loads.label)
    await page.getByRole('switch', { name: 'Estimate from the roof' }).check()
    await expect(parts(page).field('loads.estimate.span')).toHaveValue('24 ft')
    await app.enter(parts(page).field('loads.estimate.span'), '30')
    await expect.poll(async () => (await app.spec()).loads.estimate?.span).toBeCloseTo(30 * 0.3048, 12)
    await expect(page.locator('.group-note')).toContainText(appWords.loads.mark)
    await expect(parts(page).headlines).toContainText('estimated')
  })
})
