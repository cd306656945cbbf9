// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { fillKinds } from '../../src/core/kinds/index.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { setChoice, setNumber } from '../../src/core/spec/edit.ts'
import { derived } from '../../src/state/derived.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { rowsFor } from '../../src/state/compareRows.ts'
import { type ComparedPier, comparedPiers } from '../../src/state/compareSet.ts'
import { compare as words } from '../../src/words/en/compare.ts'
import { fills } from '../../src/words/en/fills.ts'
import { wordsOf } from '../../src/words/index.ts'
import { downToGrade, sectionsAtOneScale } from '../../src/view/compare/CompareSections.tsx'
import { CompareTable } from '../../src/view/compare/CompareTable.tsx'
import { columnTally } from '../../src/view/section/tallyRoom.ts'
import { pierTitle } from '../../src/view/cells/pierName.ts'
import { draw } from './page.ts'

const allMethods = fillKinds.map(({ id }) => {
  const changed = setChoice(defaultDocument, 'fill.kind', id)
  if (!changed.ok) throw new Error(id)
  return changed.value
})
const seven: readonly ComparedPier[] = comparedPiers(
  { picks: allMethods.map((_, i) => `brought:${i}` as const), brought: allMethods },
  defaultDocument,
)
const results = seven.flatMap(({ pier }) => pier?.result ?? [])

let page: Awaited<ReturnType<typeof draw>> | null = null
const table = async (piers: readonly ComparedPier[]) => {
  const shown = piers.map((compared, place) => ({ compared, place }))
  page = await draw(<CompareTable all={piers} shown={shown} rows={rowsFor(piers.flatMap(({ pier }) => pier?.result ?? []))} />)
}
const cellsOf = (row: string): HTMLTableCellElement[] => [...document.querySelectorAll<HTMLTableCellElement>(`[data-row="${row}"] td`)]

beforeEach(() => expect(seven).toHaveLength(7))
afterEach(async () => {
  await page?.end()
  page = null
})

describe('[Y5] the table of piers', () => {
  it('shows a number or that nobody can tell, never nought and never a failure', async () => {
    await table(seven)
    const cells = cellsOf('holds-down')
    expect(cells).toHaveLength(7)
    let untold = 0
    for (const [i, cell] of cells.entries()) {
      const isCounted = results[i]?.uplift.allowable != null
      expect(cell.textContent?.includes(wordsOf('app').verdicts.unverified), pierTitle(seven[i] as ComparedPier)).toBe(!isCounted)
      if (isCounted) expect(cell.textContent).toMatch(/\d lb/)
      else {
        untold++
        expect(cell.textContent).not.toMatch(/\d/)
        expect(cell.querySelector('.mark-short')).toBeNull()
        expect(cell.querySelector('.mark-unverified')).not.toBeNull()
      }
    }
    expect(untold).toBeGreaterThan(2)
  })

  it('names for every method a strength, a weakness and a source, and asks a question', async () => {
    await table(seven)
    for (const [i, cell] of cellsOf('sides').entries()) {
      const { strength, weakness } = fills[fillKinds[i]?.id ?? 'dry-bag-at-foot']
      expect(cell.textContent).toContain(strength)
      expect(cell.textContent).toContain(weakness)
      expect(cell.querySelectorAll('cite').length).toBeGreaterThan(0)
    }
    for (const cell of cellsOf('ask')) expect(cell.textContent).toMatch(/\?$/)
  })

  it('says of every row why it matters, and marks practice as practice', async () => {
    await table(seven)
    for (const { id } of rowsFor(results)) {
      const head = document.querySelector(`[data-row="${id}"] th`)
      expect(head?.textContent).toContain(words.rows[id].why)
    }
    for (const row of ['inspect', 'replace'])
      for (const cell of cellsOf(row)) expect(cell.textContent).toContain(wordsOf('standings')['common practice'].mark)
  })

  it('marks what is set differently with what it is set instead of', async () => {
    await table(seven.slice(0, 3))
    const inputs = document.querySelector('.cmp-inputs')
    expect(inputs?.querySelectorAll('.cmp-changed').length).toBeGreaterThan(2)
    expect(inputs?.textContent).toContain(words.table.instead(fills['dry-bag-at-foot'].label))
  })

  it('shows a method that cannot be built with the field to change', async () => {
    const own = comparedPiers({ picks: null, brought: [] }, defaultDocument)[0]
    if (!own) throw new Error('no pier')
    const refused: ComparedPier = {
      pick: 'method:mixed-collar',
      method: 'mixed-collar',
      pier: null,
      issues: [{ code: 'collar-too-high', severity: 'error', path: 'fill.height', got: 2, limit: 1, quantity: 'length' }],
    }
    await table([own, refused])
    expect(document.body.textContent).toContain(words.column.cannot)
    expect(document.body.textContent).toContain(wordsOf('fields')['fill.height'].label)
    expect(document.querySelector('.cmp-end')).toBeNull()
  })
})

describe('[Y5] sections side by side', () => {
  it('have one scale, at which the pier that needs most room fits, and grade at one height', () => {
    const deep = setNumber(defaultDocument, 'hole.depth', 2.4)
    if (!deep.ok) throw new Error('refused')
    const piers = [...results.slice(0, 3), derived(deep.value.spec)]
    const say = { length: String, slope: String }
    const view = { facing: 1, cutPost: false, layers: defaultView.layers, say }
    const cell = { width: 300, height: 400 }
    const scaleOf = (drawn: ReturnType<typeof sectionsAtOneScale>) => drawn.flatMap((one) => one?.frame.perMetre ?? [])
    const alone = piers.flatMap((pier) => scaleOf(sectionsAtOneScale([pier], cell, view)))
    const together = sectionsAtOneScale([...piers, null], cell, view)
    expect(together.at(-1)).toBeNull()
    expect(new Set(alone).size).toBeGreaterThan(1)
    const [scale = 0] = scaleOf(together)
    expect(scaleOf(together)).toEqual(piers.map(() => scale))
    expect(scale).toBeLessThanOrEqual(Math.min(...alone))
    expect(scale).toBeGreaterThan(0.8 * Math.min(...alone))
    const down = downToGrade(together)
    const frames = together.flatMap((one, i) => (one ? [{ ...one.frame, down: down[i] ?? Number.NaN }] : []))
    const grades = frames.map(({ grade, down: by }) => grade + by)
    expect(Math.max(...grades) - Math.min(...grades)).toBeLessThan(1e-6)
    for (const { grade, down: by, top, bottom } of frames) {
      expect(grade + by - top * scale).toBeGreaterThan(11)
      expect(grade + by - bottom * scale).toBeLessThan(389)
    }
  })

  it('[W10] tell the four methods apart by where the wood is wet and where rain ends, without a word', () => {
    const four = ['dry-bag-at-foot', 'dry-full-height', 'mixed-full-height', 'mixed-bracket-pier'].map((id) =>
      results.find(({ spec }) => spec.fill.kind === id),
    )
    const view = { facing: Math.PI / 2, cutPost: false, layers: defaultView.layers, say: { length: String, slope: String } }
    const at = (year: number | null) =>
      sectionsAtOneScale(
        four.map((one) => one ?? null),
        { width: 290, height: 400 },
        view,
        year,
      ).map((one) => {
        const { wet, damp, joint, zone, rain, open, powder } = one?.ink.paths ?? expect.fail('no drawing')
        return { wet, damp, joint, zone, rain, open, powder }
      })
    for (const year of [0, 10, 30]) expect(new Set(at(year).map((paths) => JSON.stringify(paths))).size).toBe(4)
    // The years are told apart too, by what they leave open of wood in the ground; nothing is told of a bracket's post.
    const stripes = [0, 10, 30].map((year) => at(year).map(({ open }) => open))
    for (const column of [0, 1, 2]) expect(new Set(stripes.map((year) => year[column])).size).toBe(3)
    expect(stripes.map((year) => year[3])).toEqual(['', '', ''])
    for (const paths of at(null)) expect(Object.values(paths).join('')).toBe('')
  })

  it('keep their words within the column, moved down to one grade as they are', () => {
    const cell = { width: 290, height: 400 }
    const view = { facing: Math.PI / 2, cutPost: false, layers: defaultView.layers, say: { length: String, slope: String } }
    const drawn = sectionsAtOneScale(results, cell, view, 10)
    const down = downToGrade(drawn)
    expect(Math.max(...down)).toBeGreaterThan(4)
    let words = 0
    for (const [i, one] of drawn.entries())
      for (const { y, height } of one?.ink.plates ?? []) {
        words++
        expect(y + height + (down[i] ?? 0)).toBeLessThanOrEqual(cell.height - columnTally)
      }
    expect(words).toBeGreaterThan(6)
  })
})
