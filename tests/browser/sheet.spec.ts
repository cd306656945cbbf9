import { readFileSync } from 'node:fs'
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { comparedFirst } from '../../src/core/kinds/index.ts'
import { parseJob } from '../../src/core/spec/jobFile.ts'
import { formatText } from '../../src/core/units/format.ts'
import { encodeLink } from '../../src/state/storage/link.ts'
import { app as appWords } from '../../src/words/en/app.ts'
import { cautions } from '../../src/words/en/cautions.ts'
import { fields } from '../../src/words/en/fields.ts'
import { fills } from '../../src/words/en/fills.ts'
import { sheet as words } from '../../src/words/en/sheet.ts'
import { type App, expect, test } from './app.ts'
import { parts } from './names.ts'
import { calc, close, openSheet, pagesOf, underDrawing, wordsOf } from './onPaper.ts'

const job = underDrawing('mixed')

const linkOfJob = (): string => {
  const read = parseJob(job)
  if (!read.ok) throw new Error('the example is not valid')
  return `#p=${encodeLink(read.value)}`
}

test.use({ viewport: { width: 1280, height: 900 } })

const openJob = async (app: App, text: string): Promise<void> => {
  const { name } = JSON.parse(text) as { name: string }
  await app.page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name: 'pier.json', mimeType: 'application/json', buffer: Buffer.from(text) })
  await expect.poll(async () => (await app.read('document')).name).toBe(name)
}

/** Points of the smallest letter on paper. */
const least = 7

const fitsTwoPages = async (app: App, what: string): Promise<void> => {
  for (const paper of ['US Letter', 'A4']) {
    await app.page.getByLabel(paper).check()
    const pages = await pagesOf(app)
    expect(pages.length, `${what}, ${paper}`).toBeLessThanOrEqual(2)
    for (const { over, wide, width, height, letter } of pages) {
      expect(over, `${what}, ${paper}`).toBeLessThanOrEqual(1)
      expect(wide, `${what}, ${paper}`).toBeLessThanOrEqual(1)
      expect(letter, `${what}, ${paper}`).toBeGreaterThanOrEqual(least - 0.01)
      // What Letter and A4 both have room for.
      expect(width).toBeLessThanOrEqual(180.01)
      expect(height).toBeLessThanOrEqual(254)
    }
  }
}

for (const [paper, width, height] of [
  ['US Letter', 612, 792],
  ['A4', 595, 842],
] as const) {
  test(`goes to ${paper} at full size, printed or saved, with the numbers of the command line`, async ({ app }) => {
    await app.open(linkOfJob())
    await openSheet(app)
    await app.page.getByLabel(paper).check()
    const printed = await app.page.pdf({ preferCSSPageSize: true })
    const waiting = app.page.waitForEvent('download')
    await app.page.getByRole('button', { name: words.pdf, exact: true }).click()
    const download = await waiting
    expect(download.suggestedFilename()).toBe('pier-sheet.pdf')
    await expect(app.page.getByText(words.pdfMade('pier-sheet.pdf'))).toBeVisible()
    // The keyboard is still in the sheet.
    expect(await app.page.evaluate(() => document.activeElement?.closest('.paperwork') !== null)).toBe(true)
    const count = await app.page.locator('.paper').count()
    const numbers = calc(job)
    expect(numbers.length).toBeGreaterThan(20)
    for (const bytes of [printed, readFileSync(await download.path())]) {
      const pages = await wordsOf(bytes)
      expect(pages.length).toBe(count)
      expect(count).toBeLessThanOrEqual(2)
      for (const page of pages) {
        expect(Math.abs(page.width - width)).toBeLessThan(1.5)
        expect(Math.abs(page.height - height)).toBeLessThan(1.5)
        expect(page.text).toContain('Preliminary, not for construction')
      }
      const all = close(pages.map(({ text }) => text).join(' '))
      for (const number of numbers) expect(all).toContain(close(number))
      expect(all).toContain(close('26" Ø'))
      // Nothing of the app behind is on paper.
      expect(all).not.toContain(close('Take it along'))
    }
    // Saved, the pages are words and lines: the one picture is the view of the pier.
    const pdf = await getDocument({ data: new Uint8Array(readFileSync(await download.path())), useSystemFonts: false }).promise
    const pictures = await Promise.all(
      Array.from({ length: pdf.numPages }, async (_, i) => {
        const { fnArray } = await (await pdf.getPage(i + 1)).getOperatorList()
        return fnArray.filter((operation) => operation === OPS.paintImageXObject).length
      }),
    )
    expect(pictures.reduce((sum, one) => sum + one, 0)).toBe(1)
  })
}

test('[E19] a name that runs both ways stands on the saved sheet where the page has it', async ({ app }) => {
  await app.open()
  await app.enter(parts(app.page).pierName, 'pier שלום עולם north')
  await openSheet(app)
  const paper = app.page.locator('.paper').first()
  // Where a word of the name begins, across the page, as the browser has set it [points].
  const wanted = await paper.evaluate((page) => {
    const range = document.createRange()
    const walk = document.createTreeWalker(page, NodeFilter.SHOW_TEXT)
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const name = node.textContent ?? ''
      const at = name.indexOf('north')
      if (at < 0 || !name.includes('שלום')) continue
      range.setStart(node, at)
      range.setEnd(node, at + 5)
      return (range.getBoundingClientRect().left - page.getBoundingClientRect().left) * 0.75
    }
    return Number.NaN
  })
  const waiting = app.page.waitForEvent('download')
  await app.page.getByRole('button', { name: words.pdf, exact: true }).click()
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(await (await waiting).path())), useSystemFonts: false }).promise
  const first = await pdf.getPage(1)
  const { items } = await first.getTextContent()
  const across = items.flatMap((item) => ('str' in item && item.str === 'north' ? [item.transform[4] as number] : []))
  const [, , width = 0] = first.view
  const paperWidth = await paper.evaluate((page) => page.getBoundingClientRect().width * 0.75)
  expect(across.some((x) => Math.abs(x - (width - paperWidth) / 2 - wanted) < 1)).toBe(true)
})

test('two pages hold any pier and any four, on either paper, with nothing cut off and no letter under 7 points', async ({ app }) => {
  await app.open()
  await openSheet(app)
  // Its controls are as large as a finger.
  const controls = await app.page
    .locator('.paperwork-head :is(button, label)')
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height))
  for (const height of controls) expect(height).toBeGreaterThanOrEqual(44)
  await fitsTwoPages(app, 'the first pier')
  await app.page.keyboard.press('Escape')
  // A collar misses its drawing at every turn; a dry pour can't be verified. The last one is compared too.
  for (const name of ['collar', 'dry-pour']) {
    await openJob(app, underDrawing(name))
    await openSheet(app)
    await fitsTwoPages(app, name)
    await app.page.keyboard.press('Escape')
  }
  await app.page.getByRole('button', { name: 'Side by side' }).click()
  await app.page.locator('.cmp-head').getByRole('button', { name: 'Sheet to print' }).click()
  await expect(app.page.locator('.paper').first()).toBeVisible()
  await fitsTwoPages(app, 'four beside a dry pour')
})

test("one pier, or every pier that is compared, goes to the browser's own print and to the sheet, and Escape leads back", async ({
  app,
}) => {
  await app.open(linkOfJob())
  const printed = async () => (await wordsOf(await app.page.pdf({ preferCSSPageSize: true }))).map((page) => close(page.text))
  // The page for the printer comes after all that is looked at.
  await expect.poll(async () => (await printed()).join('')).toContain(close(appWords.print.full))
  const one = await printed()
  expect(one).toHaveLength(1)
  for (const { short, long } of cautions.standing) for (const said of [short, long]) expect(one[0]).toContain(close(said))
  const { headlines } = await app.read('result')
  for (const { value, quantity } of headlines) expect(one[0]).toContain(close(formatText(value, quantity, 'us')))
  expect(one[0]).toContain(close(appWords.print.full))
  // What was made for the printer is gone again.
  await expect(app.page.locator('.print-page')).toHaveCount(0)

  // The keys that print a page open the sheet, and leave an open one to the browser.
  const isTaken = () =>
    app.page.evaluate(() => !window.dispatchEvent(new KeyboardEvent('keydown', { key: 'p', ctrlKey: true, cancelable: true })))
  expect(await isTaken()).toBe(true)
  await expect(app.page.locator('.paper').first()).toBeVisible()
  expect(await isTaken()).toBe(false)
  await app.page.keyboard.press('Escape')

  await app.page.getByRole('button', { name: 'Side by side' }).click()
  const heads = app.page.locator('.cmp').getByRole('columnheader')
  await expect(heads).toHaveCount(5)
  await expect.poll(async () => (await printed()).length).toBe(2)
  const several = (await printed()).join('')
  const { spec } = await app.read('document')
  const beside = comparedFirst.filter((id) => id !== spec.fill.kind).slice(0, 3)
  for (const id of [spec.fill.kind, ...beside]) expect(several).toContain(close(fills[id].label))
  for (const { long } of cautions.standing) expect(several).toContain(close(long))
  expect(several).not.toContain(close(appWords.print.full))
  await expect(app.page.locator('.paper')).toHaveCount(0)

  const button = app.page.locator('.cmp-head').getByRole('button', { name: 'Sheet to print' })
  await button.click()
  await expect(app.page.locator('.paper').first()).toBeVisible()
  await expect(app.page.locator('.paper .paper-beside figure')).toHaveCount(4)
  await expect(app.page.locator('.paper .paper-code')).toHaveCount(4)
  // Cut open as on the screen, each another picture, none of them blank paper.
  const seen = await app.page.locator('.paper-cutaways img').evaluateAll((images) => images.map((image) => image.getAttribute('src') ?? ''))
  expect(seen).toHaveLength(4)
  expect(new Set(seen).size).toBe(4)
  for (const address of seen) expect(address.length).toBeGreaterThan(2000)
  // What a method has no place for is told under that method's place in the order.
  const lacking = app.page
    .locator('.paper-compared tr')
    .filter({ has: app.page.getByRole('rowheader', { name: words.lacks, exact: true }) })
  await expect(lacking).toContainText(new RegExp(`2[^.]*${fields.bars.label}`))
  await app.page.keyboard.press('Escape')
  await expect(app.page.locator('.paperwork')).toHaveCount(0)
  await expect(button).toBeFocused()
})
