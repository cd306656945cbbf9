import { app as words } from '../../src/words/en/app.ts'
import { expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'
import { parts } from './names.ts'

const sizes = [
  { width: 480, height: 320 },
  { width: 1280, height: 800 },
] as const

for (const size of sizes) {
  test(`[H1] axe finds nothing serious at ${size.width} x ${size.height} on paper and on dark`, async ({ app }) => {
    await app.page.setViewportSize(size)
    await app.open()
    for (const theme of ['paper', 'dark'] as const) {
      await app.page.getByRole('radio', { name: words.themes[theme], exact: true }).check({ force: true })
      await app.stillness()
      expect(await seriousFindings(app.page), theme).toEqual([])
    }
  })
}

test('[H2] the keyboard alone reaches everything', async ({ app }) => {
  await app.page.setViewportSize({ width: 1280, height: 800 })
  await app.open()
  const reachable = 'a[href], button, input, select, textarea, summary, [tabindex]'
  const wanted = await app.page.evaluate((selector) => {
    const shown = [...document.querySelectorAll<HTMLElement>(selector)].filter(
      (node) => node.tabIndex >= 0 && !node.matches(':disabled') && node.checkVisibility({ visibilityProperty: true }),
    )
    // Of radio buttons of one name the keyboard stops at one; arrows reach the others.
    const groups = new Set<string>()
    return shown.filter((node) => {
      if (!(node instanceof HTMLInputElement) || node.type !== 'radio') return true
      if (groups.has(node.name)) return false
      groups.add(node.name)
      return true
    }).length
  }, reachable)
  const seen = await app.page.evaluate(() => {
    const seenNodes = new Set<Element>()
    Object.assign(window, { seenNodes })
    document.addEventListener('focusin', (event) => event.target instanceof Element && seenNodes.add(event.target))
    return seenNodes.size
  })
  expect(seen).toBe(0)
  await app.page.evaluate(() => (document.activeElement instanceof HTMLElement ? document.activeElement.blur() : undefined))
  for (let i = 0; i < wanted + 5; i++) await app.page.keyboard.press('Tab')
  const reached = await app.page.evaluate(() => (window as unknown as { seenNodes: Set<Element> }).seenNodes.size)
  expect(wanted).toBeGreaterThan(15)
  expect(reached).toBeGreaterThanOrEqual(wanted)
})

test.describe('without a 3D picture', () => {
  test.use({ graphics: false })

  test('[H3] units and page colours change at a switch', async ({ app }) => {
    await app.page.setViewportSize({ width: 1280, height: 800 })
    await app.open()
    const { field, headlines } = parts(app.page)
    const spec = await app.spec()
    await expect(field('hole.diameter')).toHaveValue(/in|'|"/)
    const us = await headlines.innerText()
    await app.page.getByRole('radio', { name: words.units.metric, exact: true }).check({ force: true })
    await expect(field('hole.diameter')).toHaveValue(/m/)
    expect(await headlines.innerText()).not.toBe(us)
    expect(await app.spec()).toEqual(spec)
    const paper = await app.page.evaluate(() => getComputedStyle(document.body).backgroundColor)
    await app.page.getByRole('radio', { name: words.themes.dark, exact: true }).check({ force: true })
    await expect.poll(() => app.page.evaluate(() => getComputedStyle(document.body).backgroundColor)).not.toBe(paper)
  })
})
