import type { Page } from '@playwright/test'
import { fields } from '../../src/words/en/fields.ts'
import { groups } from '../../src/words/en/groups.ts'
import { sure as words } from '../../src/words/en/sure.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import type { App } from './app.ts'
import { expect, test } from './app.ts'
import { parts } from './names.ts'

// The study asks nothing of the picture.
test.use({ graphics: false })

const sureParts = (page: Page) => {
  const section = page.locator('details').filter({ has: page.getByRole('heading', { name: entrances.sure.title, exact: true }) })
  return {
    section,
    fold: section.locator('summary').first(),
    lead: section.getByText(/900 in 1,000 (tries )?hold/),
    chart: section.getByRole('img', { name: words.chart.name }),
    tries: section.getByRole('combobox', { name: words.run.tries }),
    seed: section.getByRole('textbox', { name: words.run.seed }),
    run: section.getByRole('button', { name: words.run.again, exact: true }),
    said: section.getByRole('status'),
    change: (label: string) => section.getByRole('button', { name: words.ranges.edit(label) }),
    vary: (label: string) => section.getByRole('switch', { name: words.ranges.vary(label) }),
    figure: (name: keyof typeof words.figures) => section.getByRole('textbox', { name: words.figures[name], exact: true }),
  }
}

/** Opens the section: a press that falls between two lines while letters arrive is pressed again, as a person would. */
const unfold = async ({ section, fold, lead }: ReturnType<typeof sureParts>): Promise<void> => {
  await expect(async () => {
    if ((await section.getAttribute('open')) === null) await fold.click()
    await expect(section).toHaveAttribute('open', { timeout: 1000 })
  }).toPass()
  await expect(lead).toBeVisible()
}

/** Opens the page and the section, and waits for the first answer. */
const opened = async (app: App) => {
  await app.page.setViewportSize({ width: 1280, height: 480 })
  await app.open()
  const found = sureParts(app.page)
  await unfold(found)
  await expect(found.run).toBeVisible()
  return found
}

/** Everything that the answer says, chart and all. */
const answer = async ({ section }: ReturnType<typeof sureParts>): Promise<string> => section.locator('.sure-answer').innerHTML()

/**
 * Presses the next button of this name as soon as it is on the page. A quick machine is through with a study before a click from
 * here arrives; the page hears of its own button before it hears from its worker.
 */
const clickAtOnce = (page: Page, name: string): Promise<void> =>
  page.evaluate((label) => {
    const press = (_: unknown, watch: MutationObserver): void => {
      const button = [...document.querySelectorAll('button')].find((one) => one.textContent === label)
      if (!button) return
      watch.disconnect()
      button.click()
    }
    new MutationObserver(press).observe(document.body, { childList: true, subtree: true, characterData: true })
  }, name)

test('[N10] the study runs in a worker and says where 900 in 1,000 tries lie', async ({ app }) => {
  const { chart, section } = await opened(app)
  expect(app.page.workers()).toHaveLength(1)
  await expect(chart).toBeVisible()
  await expect(section).toContainText(words.notChance)
  await expect(section).toContainText(words.links.title)
  await expect(section).toContainText(words.swings.title)
})

test('[N10] the same seed gives the same answer, another seed another', async ({ app }) => {
  const found = await opened(app)
  const first = await answer(found)
  await app.enter(found.seed, '77')
  await expect.poll(() => answer(found)).not.toBe(first)
  await expect(found.run).toBeVisible()
  const second = await answer(found)
  await app.enter(found.seed, '1')
  await expect.poll(() => answer(found)).toBe(first)
  await app.enter(found.seed, '77')
  await expect.poll(() => answer(found)).toBe(second)
  await found.run.click()
  await expect(found.run).toBeVisible()
  expect(await answer(found)).toBe(second)
})

test('[N10] a study can be stopped, and run again', async ({ app }) => {
  const found = await opened(app)
  const first = await answer(found)
  await clickAtOnce(app.page, words.run.stop)
  await found.tries.selectOption('100000')
  await expect(found.said).toHaveText(words.run.stopped)
  // What was worked out before stays, and nothing comes after a stop that the worker has heard.
  for (const worker of app.page.workers()) await worker.evaluate(() => new Promise((done) => setTimeout(done)))
  await expect(found.said).toHaveText(words.run.stopped)
  expect((await answer(found)).replace(' data-stale="true"', '')).toBe(first)
  await found.run.click()
  await expect(found.section).toContainText(words.tryMeans('100,000'))
  await expect(found.said).toBeEmpty()
})

test('[N10] ranges are changed in place, and a range that cannot be is refused', async ({ app }) => {
  const found = await opened(app)
  const first = await answer(found)
  const { label } = words.inputs['hole-depth']
  await found.change(label).click()
  await app.enter(found.figure('low'), '-12 in')
  await expect.poll(() => answer(found)).not.toBe(first)
  await app.enter(found.figure('low'), '30 in')
  await expect(found.section).toContainText(words.problems['ends-out-of-order'])
  await app.enter(found.figure('low'), 'a bit')
  await expect(found.figure('low')).toHaveAttribute('aria-invalid', 'true')
  await found.vary(label).uncheck({ force: true })
  await found.section.getByRole('button', { name: words.ranges.restore }).click()
  await expect.poll(() => answer(found)).toBe(first)
})

test('[N10] a pier that changes is answered anew, and one that cannot be verified has no range', async ({ app }) => {
  const found = await opened(app)
  const first = await answer(found)
  await app.enter(parts(app.page).field('hole.diameter'), '24 in')
  await expect.poll(() => answer(found)).not.toBe(first)
  await parts(app.page).fill('dry-full-height').check({ force: true })
  await expect(found.section).toContainText(words.unverified.title)
  await expect(found.section).not.toContainText(/in 1,000/)
})

test('[N10] a load from the drawing is held against the tries, as a count in a thousand', async ({ app }) => {
  await app.page.setViewportSize({ width: 1280, height: 480 })
  await app.open()
  await app.page.locator('.group > summary').filter({ hasText: groups.loads.label }).click()
  await app.page.getByRole('switch', { name: fields['loads.entered'].label, exact: true }).check({ force: true })
  await app.enter(parts(app.page).field('loads.entered.uplift'), '930 lb')
  const found = sureParts(app.page)
  await unfold(found)
  await expect(found.section).toContainText(/[1-9]\d* in 1,000 tries hold less than the load of 930.lb/)
  await expect(found.section).toContainText(words.chart.shortDots)
})

test.describe('without workers', () => {
  test.use({ allowed: ['worker-src'] })
  test('[N10] the page does the work itself when no worker can be had', async ({ app }) => {
    await app.page.addInitScript(() => {
      Object.defineProperty(window, 'Worker', {
        value: class {
          constructor() {
            throw new Error('no workers here')
          }
        },
      })
    })
    const { chart } = await opened(app)
    await expect(chart).toBeVisible()
    expect(app.page.workers()).toHaveLength(0)
  })
})
