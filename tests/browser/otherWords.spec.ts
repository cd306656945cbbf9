import type { Page } from '@playwright/test'
import { english } from '../../src/words/en/index.ts'
import { generatedLanguage } from '../../src/words/generated.ts'
import type { GeneratedId } from '../../src/words/language.ts'
import { type App, expect, test } from './app.ts'
import { type Fault, outOfBounds, untold } from './wordFaults.ts'

const widths = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const

const languageOf = (id: GeneratedId) => generatedLanguage(id) ?? english

/** Unfolds all that is folded, so that every word is on the page; licenses stay in the words of those who gave them. */
const unfold = async (page: Page): Promise<void> => {
  for (let round = 0; round < 4; round++) {
    const opened = await page.evaluate(() => {
      const folded = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open]):not(.menu):not(:has(.credits))')]
      for (const one of folded) one.open = true
      return folded.length
    })
    if (opened === 0) return
    await page.waitForLoadState('networkidle')
  }
}

type Stop = readonly [name: string, go: (app: App, words: ReturnType<typeof languageOf>) => Promise<void>]

const press = async ({ page }: App, name: string | RegExp): Promise<void> => {
  // Where there is no room the button lies in the menu.
  const button = page.getByRole('button', { name, exact: true }).filter({ visible: true })
  if ((await button.count()) === 0) await page.locator('details.menu > summary').click()
  await button.first().click()
}

/** The main pages, each from a page that has just been opened. */
const stops: readonly Stop[] = [
  ['the pier', async () => {}],
  [
    'the answers',
    async ({ page }, { first }) => {
      const tab = page.getByRole('button', { name: first.app.panels.answersShort, exact: true }).filter({ visible: true })
      if ((await tab.count()) > 0) await tab.first().click()
    },
  ],
  [
    'side by side',
    async (app, { first }) => {
      await press(app, first.entrances.compare.open)
      await expect(app.page.locator('.cmp-head')).toBeVisible()
    },
  ],
  [
    'the sheet',
    async (app, { first }) => {
      await press(app, first.entrances.sheet.open)
      await expect(app.page.locator('.paperwork').first()).toBeVisible()
    },
  ],
  [
    'the shelf',
    async (app, { first }) => {
      await press(app, new RegExp(`^${first.app.actions.shelf}`))
      await expect(app.page.getByRole('dialog')).toBeVisible()
    },
  ],
  [
    'files to take along',
    async (app, { first }) => {
      await press(app, first.entrances.takeAlong)
      await expect(app.page.getByRole('dialog')).toBeVisible()
    },
  ],
  ...(['build', 'month', 'years'] as const).map(
    (stretch): Stop => [
      `time, ${stretch}`,
      async (app, { late }) => {
        const { stretches } = await late.time()
        // What a notice covers on a narrow page is there again once it is read.
        for (const notice of await app.page.locator('.notices button').all()) await notice.click()
        await app.page.locator('#over-time').first().click()
        await app.page.locator('.time-stretches').getByText(stretches[stretch], { exact: true }).first().click()
      },
    ],
  ),
]

test.use({ graphics: false })

test.describe('[T4] every word is of the language that is spoken, and has room', () => {
  for (const id of ['double', 'x'] as const)
    for (const size of widths)
      test(`${id} at ${size.width}`, async ({ app }) => {
        const { page } = app
        await page.setViewportSize(size)
        const faults: Record<string, readonly Fault[]> = {}
        for (const [name, go] of stops) {
          await app.open('', `?quality=light&words=${id}`)
          await go(app, languageOf(id))
          await page.waitForLoadState('networkidle')
          await unfold(page)
          // A formula shows its source until it is set.
          await page.waitForFunction(() => document.querySelector('.formula:not(:has(.katex))') === null)
          const found = [...(await page.evaluate(outOfBounds)), ...(id === 'x' ? await page.evaluate(untold) : [])]
          if (found.length > 0) faults[name] = found
        }
        expect(faults).toEqual({})
      })

  test('planted faults are seen', async ({ app }) => {
    const { page } = app
    await app.open('', '?quality=light&words=x')
    await page.evaluate(() => {
      const box = document.createElement('div')
      box.style.cssText = 'position:fixed;left:0;top:0;width:40px;overflow:hidden;white-space:nowrap;background:#fff;z-index:9'
      box.textContent = 'Planted words without room'
      document.body.append(box)
    })
    expect(await page.evaluate(outOfBounds)).toEqual([expect.objectContaining({ text: expect.stringContaining('Planted') })])
    expect(await page.evaluate(untold)).toEqual([expect.objectContaining({ text: expect.stringContaining('Planted') })])
  })
})
