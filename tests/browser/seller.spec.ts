import { readFileSync } from 'node:fs'
import { answers } from '../../src/words/en/answers.ts'
import { app as words } from '../../src/words/en/app.ts'
import { compare } from '../../src/words/en/compare.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import { drawing } from '../../src/words/en/drawing.ts'
import { fields } from '../../src/words/en/fields.ts'
import { loadPath } from '../../src/words/en/loadPath.ts'
import { looking } from '../../src/words/en/looking.ts'
import { scene } from '../../src/words/en/scene.ts'
import { expect, test } from './app.ts'
import { parts } from './names.ts'
import { calc, close, openSheet, scanned, wordsOf } from './onPaper.ts'

test.use({ viewport: { width: 1280, height: 560 } })

test('a seller shows a bag in the hole, four methods, the check and the cut, and the sheet leads home to the same pier', async ({
  app,
}) => {
  await app.open()
  const { page } = app
  const { answers: panel, field, fill } = parts(page)

  // What the permit drawing says.
  await panel.getByRole('button', { name: drawing.enter }).click()
  await app.enter(field('callout.diameter'), '22 in')
  await page.getByLabel(fields['callout.mixed'].label, { exact: true }).selectOption('yes')
  await expect(panel.getByText(drawing.overall['not as drawn'], { exact: true })).toBeVisible()

  // What the neighbour did.
  await fill('dry-bag-at-foot').check({ force: true })
  await expect(parts(page).headlines).toContainText(words.verdicts.unverified)

  // Four methods at one site under one drawing.
  await page.getByRole('button', { name: entrances.compare.open, exact: true }).click()
  await expect(page.getByRole('columnheader')).toHaveCount(5)
  const holds = page.getByRole('table').locator('[data-row="holds-down"]')
  await expect(holds.getByText(words.verdicts.unverified, { exact: true }).first()).toBeVisible()
  await page.getByRole('button', { name: compare.close, exact: true }).click()

  // The method that is counted, one of its checks, and the cut turned to show it.
  await fill('mixed-full-height').check({ force: true })
  const link = page.getByRole('list', { name: loadPath.chart }).getByRole('button', { name: answers['bar-through-post'].label })
  await link.click()
  await expect(page.locator('.pad')).toContainText(loadPath.pad.least)
  const cut = await app.read('cutState')
  await page.getByRole('combobox', { name: scene.bar.look, exact: true }).selectOption({ label: scene.viewpoints['three-quarter'] })
  await page.getByRole('slider', { name: scene.handles.turn, exact: true }).press('ArrowRight')
  await expect.poll(async () => (await app.read('cutState')).facing).not.toBeCloseTo(cut.facing, 3)

  // The sheet, against the command line on the pier's own file.
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: words.actions.save, exact: true }).click()
  const job = readFileSync(await (await saving).path(), 'utf8')
  const { spec } = await app.read('document')
  await openSheet(app)
  const printed = await page.pdf({ preferCSSPageSize: true })
  const all = close((await wordsOf(printed)).map(({ text }) => text).join(' '))
  const numbers = calc(job)
  expect(numbers.length).toBeGreaterThan(20)
  for (const number of numbers) expect(all).toContain(close(number))
  expect(all).toContain(close(drawing.overall['not as drawn']))

  // Scanned at home: every size of the pier and its drawing, on a page that knows nothing of the first.
  const address = (await scanned(printed)) ?? ''
  expect(address).toMatch(/#p=/)
  await page.evaluate(() => localStorage.clear())
  await page.goto('about:blank')
  // It opens as at home, in full: a low picture is enough.
  await page.setViewportSize({ width: 1280, height: 360 })
  await page.goto(address)
  await app.ready()
  expect(await app.spec()).toEqual(spec)
  // At first it is only looked at.
  await expect(page.getByText(looking.title)).toBeVisible()
  await expect(field('hole.depth')).toHaveJSProperty('readOnly', true)
  await expect(panel.getByText(drawing.overall['not as drawn'], { exact: true })).toBeVisible()
})
