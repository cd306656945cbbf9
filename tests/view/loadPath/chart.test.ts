import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import type { Fact } from '../../../src/core/model/fact.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { soundDocument } from '../../soundPier.ts'
import { setChoice, setField, setJudgement, setPart } from '../../../src/core/spec/edit.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { pullPath, holdsOf, isNeeded, linksOf } from '../../../src/core/derive/report/pullPath.ts'
import { report } from '../../../src/core/derive/report/report.ts'
import { chartScale, isBroken, shareOf } from '../../../src/view/panels/loadPath/chartScale.ts'
import { linkOfPart } from '../../../src/view/panels/loadPath/linkOfPart.ts'
import { close } from '../../close.ts'

type Edit = (document: PierDocument) => ReturnType<typeof setChoice>
const edited = (...edits: readonly Edit[]): PierDocument =>
  edits.reduce<PierDocument>((now, edit) => {
    const next = edit(now)
    if (!next.ok) throw new Error(JSON.stringify(next.issues))
    return next.value
  }, soundDocument)
const chainIn = (document: PierDocument) => pullPath(report(derivePier(document.spec)))
const view = (...edits: readonly Edit[]) => chainIn(edited(...edits))
const placesOf = (links: readonly Fact[]) => links.map(({ link }) => link?.place ?? 'nowhere')
const bell: Edit = (d) => setPart(d, 'hole.bell', true)
const loads: Edit = (d) => {
  const on = setPart(d, 'loads.entered', true)
  return on.ok ? setField(on.value, 'loads.entered.uplift', '800 lb', 'us') : on
}
const boring: Edit = (d) => setField(d, 'site.blows', '15', 'us')
const shallowFrost: Edit = (d) => setField(d, 'site.frostDepth', '12 in', 'us')

const pounds = (value: number) => toSI(value, 'lb')

describe('[P3] the load path as the chart shows it', () => {
  it('goes down from the post to the ground, one needed link of the ground, least of what is not used first', () => {
    const { groups } = view(bell, boring, shallowFrost)
    expect(groups.map(({ group }) => group)).toEqual(['uplift-post', 'uplift-connection', 'uplift-concrete', 'uplift-soil'])
    const ground = groups.at(-1)?.links ?? []
    expect(ground.filter(isNeeded)).toHaveLength(1)
    expect(ground.length).toBeGreaterThanOrEqual(5)
    expect(placesOf(ground)).toEqual(placesOf(ground).sort((a, b) => order(a) - order(b)))
    const spare = ground.filter(({ link }) => link?.place === 'spare').map((link) => holdsOf(link) ?? Number.NaN)
    expect(spare).toEqual([...spare].sort((a, b) => a - b))
    expect(ground.at(-1)?.link).toEqual({ place: 'bound', governs: false })
  })

  it('marks the one link that governs, which holds no more than any other', () => {
    const chain = view(loads)
    const needed = linksOf(chain).filter(isNeeded)
    const governing = needed.filter(({ link }) => link?.governs)
    expect(governing).toHaveLength(1)
    const least = governing[0] ? holdsOf(governing[0]) : null
    for (const link of needed) expect(holdsOf(link) ?? Number.NaN).toBeGreaterThanOrEqual(least ?? Number.NaN)
    expect(chain.holds).toBe(least)
    expect(chain.whole.restsOn).toEqual(governing.map(({ id }) => id))
  })

  it('says which links fall short of the load, and only those', () => {
    const heavy = view(loads, (d) => setField(d, 'loads.entered.uplift', '5000 lb', 'us'))
    const links = linksOf(heavy)
    const short = links.filter(isShort)
    expect(short.length).toBeGreaterThan(0)
    for (const link of links) expect(isShort(link)).toBe(isNeeded(link) && (holdsOf(link) ?? Number.POSITIVE_INFINITY) < pounds(5000))
    expect(linksOf(view(loads)).some(isShort)).toBe(false)
  })

  it.each(fillKinds.filter((kind) => kind.counting.connection.counted === 'not counted').map((kind) => kind.id))(
    '%s: no capacity and no ratio; what holds less than is asked falls short all the same',
    (id) => {
      const chain = view(
        (d) => setChoice(d, 'fill.kind', id),
        loads,
        (d) => setField(d, 'loads.entered.uplift', '40000 lb', 'us'),
      )
      expect(chain).toMatchObject({ holds: null, whole: { value: null, ratio: null } })
      const links = linksOf(chain)
      expect(links.some(({ link }) => link?.governs)).toBe(false)
      for (const link of links) expect(isShort(link)).toBe(isNeeded(link) && (holdsOf(link) ?? Number.POSITIVE_INFINITY) < pounds(40000))
      for (const link of links) expect(holdsOf(link) === null).toBe(link.counted === 'not counted')
      expect(chain.whole.restsOn.length).toBeGreaterThan(0)
      for (const id of chain.whole.restsOn) expect(links.find((link) => link.id === id)?.counted).toBe('not counted')
    },
  )

  it('shows a judgement in the place of the least', () => {
    const document = edited(bell)
    const judged = setJudgement(document, 'cone-over-ledge', 'The county engineer saw the boring')
    if (!judged.ok) throw new Error('refused')
    const ground = chainIn(judged.value).groups.at(-1)?.links ?? []
    expect(ground[0]).toMatchObject({ id: 'cone-over-ledge', link: { place: 'needed' } })
    expect(ground.find((link) => link.id === 'friction-and-weight')?.link?.place).toBe('spare')
  })
})

const isShort = ({ verdict }: Fact): boolean => verdict === 'falls short'
const order = (place: string): number => ['needed', 'spare', 'bound'].indexOf(place)

describe('[P3] one scale for every bar', () => {
  it.each([
    [[900, 3000, 8000], null],
    [[900, 3000, 8000], 1200],
    [[900], null],
    [[40, 41, 42], 5000],
    [[0.3, 5], null],
    [[], 800],
    [[], null],
    [[0, 700], null],
  ] as const)('%j lb against %j lb', (holds, load) => {
    for (const system of ['us', 'metric'] as const) {
      const scale = chartScale(holds.map(pounds), load === null ? null : pounds(load), system)
      const unit = system === 'us' ? 'lb' : 'kN'
      const ticks = scale.ticks.map((tick) => fromSI(tick, unit))
      expect(ticks.length).toBeGreaterThanOrEqual(3)
      expect(ticks.length).toBeLessThanOrEqual(5)
      expect(ticks[0]).toBe(0)
      close(ticks.at(-1) ?? 0, fromSI(scale.end, unit), { abs: 1e-9, rel: 1e-12 }, 'end')
      const step = ticks[1] ?? 0
      const digits = step / 10 ** Math.floor(Math.log10(step) + 1e-9)
      expect([1, 2, 2.5, 5].some((round) => Math.abs(digits - round) < 1e-9)).toBe(true)
      const least = Math.min(...holds.filter((one) => one > 0).map(pounds))
      if (Number.isFinite(least)) expect(isBroken(scale, least)).toBe(false)
      if (load !== null) expect(shareOf(scale, pounds(load))).toBeLessThan(0.95)
    }
  })

  it('places a force as its share, and holds what is past the end at the end', () => {
    const scale = chartScale([pounds(1000)], null, 'us')
    expect(shareOf(scale, 0)).toBe(0)
    close(shareOf(scale, scale.end / 4), 0.25, { abs: 1e-12, rel: 0 }, 'quarter')
    expect(shareOf(scale, 10 * scale.end)).toBe(1)
    expect(isBroken(scale, 10 * scale.end)).toBe(true)
    expect(isBroken(scale, scale.end)).toBe(false)
  })
})

describe('[P3] the link of a part that is picked', () => {
  const at = (part: string, ...edits: readonly Edit[]) => linkOfPart(derivePier(edited(...edits).spec), part)
  const bracket: Edit = (d) => setChoice(d, 'fill.kind', 'mixed-bracket-pier')
  const collar: Edit = (d) => setChoice(d, 'fill.kind', 'mixed-collar')
  const dryBag: Edit = (d) => setChoice(d, 'fill.kind', 'dry-bag-at-foot')

  it.each([
    ['soil', [], 'friction-and-weight'],
    ['topsoil', [], 'friction-and-weight'],
    ['concrete', [], 'concrete-breakout'],
    ['bars', [], 'bar-through-post'],
    ['post', [], 'post-tear-out'],
    ['backfill', [collar], 'friction-and-weight'],
    ['bolts', [bracket], 'bracket-bolts'],
    ['bracket-plates', [bracket], 'bracket-bolts'],
    ['bracket-seat', [bracket], 'bracket-bolts'],
    ['dry-mix', [dryBag], 'friction-and-weight'],
    ['moon', [], null],
  ] as const)('%s', (part, edits, link) => expect(at(part, ...edits)).toBe(link))

  it('has a link for every part of every kind', () => {
    for (const kind of fillKinds) {
      const result = derivePier(edited((d) => setChoice(d, 'fill.kind', kind.id)).spec)
      for (const zone of result.zones) expect(linkOfPart(result, zone.id), `${kind.id}: ${zone.id}`).not.toBeNull()
    }
  })
})
