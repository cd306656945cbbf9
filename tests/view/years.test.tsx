// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { fillKinds } from '../../src/core/kinds/index.ts'
import { visibleFields } from '../../src/core/spec/fields.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { editField, pickChoice, switchPart } from '../../src/state/actions/edit.ts'
import { shownSpec } from '../../src/state/derived.ts'
import { pierStore } from '../../src/state/store.ts'
import { lifeOf } from '../../src/state/timeDerived.ts'
import { life } from '../../src/words/en/life.ts'
import { time } from '../../src/words/en/time.ts'
import { years } from '../../src/words/en/years.ts'
import { CostPanel } from '../../src/view/panels/years/CostPanel.tsx'
import { LifePanel } from '../../src/view/panels/years/LifePanel.tsx'
import { MixPanel } from '../../src/view/panels/years/MixPanel.tsx'
import { InputsPanel } from '../../src/view/panels/inputs/InputsPanel.tsx'
import { draw } from './page.ts'

let view: Awaited<ReturnType<typeof draw>> | null = null
const shown = async (node: React.ReactNode): Promise<string> => {
  await view?.end()
  view = await draw(node)
  return document.body.textContent ?? ''
}
beforeEach(() => openDocument(pierStore, defaultDocument))
afterEach(async () => {
  await view?.end()
  view = null
})

describe('[P2] mix, years and cost in the answers', () => {
  it.each(fillKinds.map(({ id }) => id))('%s: a day is the day of a share, and dry mix has ranges and no chance', async (kind) => {
    pickChoice(pierStore, 'fill.kind', kind)
    const page = await shown(<MixPanel />)
    expect(page).not.toMatch(/probab|likely|chance of/i)
    if (page.includes(years.mix.curve)) expect(page).toContain(time.month.call)
    else if (page !== time.month.none && page.includes(years.mix.mass)) {
      expect(page).toContain(years.mix.picture)
      expect(page).toContain(life.traps['trap-dry-mix-never-hydrates'])
      expect(page).toContain(life.traps['trap-more-water-fixes-dry-mix'])
      expect(page).toContain(life.traps['trap-gel-strength-is-no-constant'])
    }
  })

  it('shows each row of evidence with its limits, the rule of thumb beside them, and what none failed can not rule out', async () => {
    const page = await shown(<LifePanel />)
    const { rows, apart, termites } = lifeOf(shownSpec(pierStore.getState()))
    for (const id of [...rows, ...apart.map(({ row }) => row)]) expect(page).toContain(life.evidence[id as keyof typeof life.evidence])
    for (const { row, why } of apart) expect(page).toContain(`${life.evidence[row as keyof typeof life.evidence]} ${life.apart[why]}`)
    for (const id of termites) expect(page).toContain(life.termites[id as keyof typeof life.termites])
    // 0 of 125 leaves at most 2.37 in 100, 5 of 25 at most 40.7 (Clopper and Pearson).
    expect(page).toContain('CCA, decay zone 50 to 10 to 20 to 3')
    expect(page).toContain(time.years.by('50', '0', '41'))
    expect(page).not.toMatch(/life of the post/i)
    expect(page).toContain(time.years.thumbText('10'))
    // 0 of 125 leaves 3 of 125 open at 95 % (rule of three): moisture reference, section 2.
    expect(page).toContain(life.zero('3', '125'))
    expect(page).toContain(life.hazard.buried)
    expect(page).toContain(life.traps['trap-treated-posts-last-sixty-years'])
  })

  it('says of a post on a bracket that no row speaks of it', async () => {
    pickChoice(pierStore, 'fill.kind', 'mixed-bracket-pier')
    const page = await shown(<LifePanel />)
    expect(page).toContain(life.lacks['no-post-on-bracket'])
    expect(page).toContain(life.evidence['above-decks-cca'])
    expect(page).not.toContain(life.evidence['above-decks-untreated'])
    expect(page).not.toContain(life.hazard.buried)
  })

  it('takes prices of every method in one table, and tells none entered from none that can be counted', async () => {
    switchPart(pierStore, 'costs', true)
    expect(await shown(<CostPanel />)).toContain(years.cost.noPrice)
    expect(document.querySelectorAll('.years-method input.box')).toHaveLength(2 * fillKinds.length)
    for (const [kind, first] of [
      ['mixed-full-height', '100'],
      ['mixed-bracket-pier', '250'],
    ]) {
      await view?.act(async () => {
        editField(pierStore, `costs.prices.${kind}.first`, first ?? '')
        editField(pierStore, `costs.prices.${kind}.replacement`, '600')
      })
    }
    const page = await shown(<CostPanel />)
    expect(page).toContain(years.cost.noLife)
    expect(page).not.toContain(years.cost.present)
    pickChoice(pierStore, 'life.reference', 'own')
    expect((await shown(<CostPanel />)).split(years.cost.present)).toHaveLength(3)
  })

  it('leaves prices out of the inputs, where they would be fourteen boxes', async () => {
    switchPart(pierStore, 'costs', true)
    await shown(<InputsPanel switches={null} />)
    const priced = visibleFields(shownSpec(pierStore.getState())).filter(({ path }) => path.startsWith('costs.prices.'))
    expect(priced).toHaveLength(14)
    expect(document.body.textContent).not.toContain('first cost')
  })
})
