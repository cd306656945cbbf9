import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from '@playwright/test'

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

type Finding = Readonly<{ id: string; impact: string | null; nodes: readonly Readonly<{ html: string }>[] }>
type Axe = Readonly<{ run(within: Document | Element, options: object): Promise<{ violations: Finding[] }> }>

/** Of what axe calls moderate only this: how a page is heard from heading to heading, and where its landmarks are. */
const alsoHeld = /^(?:heading-order|page-has-heading-one|region|landmark-.*)$/

/**
 * What axe calls serious or critical on the page, or in the part of it that `within` selects, and what it says of headings and
 * landmarks: each rule with the markup that breaks it. All rules run; only what passes is not written down, which takes half of the time.
 */
export const seriousFindings = async (page: Page, within?: string): Promise<string[]> => {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source)
  const found = await page.evaluate((selector) => {
    const { axe } = window as unknown as { axe: Axe }
    const part = selector === undefined ? document : document.querySelector(selector)
    if (!part) throw new Error(`nothing on the page is ${selector}`)
    return axe.run(part, { resultTypes: ['violations'], selectors: false }).then(({ violations }) => violations)
  }, within)
  return found
    .filter(({ id, impact }) => impact === 'serious' || impact === 'critical' || alsoHeld.test(id))
    .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`)
}
