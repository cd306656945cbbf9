import { app as words } from '../../src/words/en/app.ts'
import { drawing as texts } from '../../src/words/en/drawing.ts'
import { fields } from '../../src/words/en/fields.ts'
import { groups } from '../../src/words/en/groups.ts'
import { expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'
import { parts } from './names.ts'

// What is checked stands beside the picture.
test.use({ graphics: false })

for (const size of [
  { width: 1440, height: 900 },
  { width: 820, height: 1180 },
] as const) {
  test(`[D9] a drawing is entered, the pier falls short, and is put right, at ${size.width} px`, async ({ app }) => {
    await app.page.setViewportSize(size)
    await app.open()
    const { answers, field, undo } = parts(app.page)
    const isNarrow = size.width < 1240
    const toAnswers = async () => {
      if (isNarrow) await app.page.getByRole('button', { name: words.panels.answersShort, exact: true }).click()
    }
    const toInputs = async () => {
      if (isNarrow) await app.page.getByRole('button', { name: words.panels.inputsShort, exact: true }).click()
    }
    await toAnswers()
    await answers.getByRole('button', { name: texts.enter }).click()
    await expect(app.page.getByText(groups.drawing.label, { exact: true })).toBeVisible()
    await app.enter(field('callout.diameter'), '22 in')
    await app.page.getByLabel(fields['callout.mixed'].label, { exact: true }).selectOption('yes')
    await toAnswers()
    await expect(answers.getByText(texts.overall['not as drawn'], { exact: true })).toBeVisible()
    await expect(answers.getByText(texts.checked(2))).toBeVisible()
    // (20/22)^2 - 1 = -17.4 %.
    await expect(answers.getByText('−17.4%')).toBeVisible()
    await expect(answers.getByText(texts.why['hole-narrower'])).toBeVisible()
    const item = answers.getByRole('button', { name: new RegExp(`^${texts.items.diameter}`) })
    await item.focus()
    const lit = await app.page.evaluate(() => document.querySelector('.drawn .fact[data-lit]')?.getAttribute('data-verdict'))
    expect(lit).toBe('falls short')
    await toInputs()
    await app.enter(field('hole.diameter'), '22 in')
    await toAnswers()
    await expect(answers.getByText(texts.overall['as drawn'], { exact: true })).toBeVisible()
    await expect(answers.getByText(/not an inspection/)).toBeVisible()
    await undo.click()
    await expect(answers.getByText(texts.overall['not as drawn'], { exact: true })).toBeVisible()
    expect(await seriousFindings(app.page)).toEqual([])
  })
}
