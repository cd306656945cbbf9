import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { pullPath, isNeeded } from '../../../src/core/derive/report/pullPath.ts'
import { factsOf, report, sayTheSame } from '../../../src/core/derive/report/report.ts'
import { markOf } from '../../../src/core/derive/report/verdict.ts'
import { chainGroups, type Fact, otherGroups } from '../../../src/core/model/fact.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import { slope } from '../../../src/core/units/quantity.ts'
import { soundPier } from '../../soundPier.ts'
import { ofEach } from './manyPiers.ts'
import { checkOf, entered, plainPier, pound } from './pierOf.ts'

const judged = [...chainGroups, ...otherGroups, 'stand-off'] as const

const known = new Map<number, PierResult>()
/** Asks something of the report of every pier; each is worked out once. */
const ofEachReport = (ask: (result: PierResult, facts: readonly Fact[]) => void): void =>
  ofEach((spec, i) => {
    const result = known.get(i) ?? derivePier(spec)
    known.set(i, result)
    ask(result, report(result))
  })

const factOf = (result: PierResult, id: string) => report(result).find((one) => one.id === id) ?? expect.fail(`no fact "${id}"`)

describe('[C19] a report says every thing of a pier once', () => {
  it('each check, quantity, headline and item of the drawing in its group, and no two by one name', () => {
    ofEachReport((result, facts) => {
      const names = facts.map(({ group, id }) => `${group} ${id}`)
      expect(new Set(names).size).toBe(names.length)
      const ids = (...groups: Parameters<typeof factsOf>[1][]) => factsOf(facts, ...groups).map(({ id }) => id)
      expect(ids(...judged).sort()).toEqual(result.checks.map(({ id }) => id).sort())
      expect(ids('quantity')).toEqual(result.quantities.map(({ id }) => id))
      expect(ids('headline')).toEqual(result.headlines.map(({ id }) => id))
      expect(ids('drawing-item')).toEqual(result.callout?.items.map(({ id }) => id) ?? [])
    })
  })

  it('a check that a pier did not have stands in its group, and is told from its own figures', () => {
    const result = derivePier(plainPier)
    const extra = { ...checkOf(result, 'least-depth'), id: 'pier-spacing' as const, ratio: 1.2 }
    const more = factOf({ ...result, checks: [...result.checks, extra] }, 'pier-spacing')
    expect(more).toMatchObject({ group: 'frost', ratio: 1.2, verdict: 'falls short', drawn: extra.where, reason: extra.why })
  })
})

describe('[C20] a verdict says no more than the check does', () => {
  const { support, bars, verticalBars } = soundPier
  const pulled = derivePier({
    ...plainPier,
    support,
    bars,
    verticalBars,
    site: { ...plainPier.site, blows: 12 },
    loads: entered({ uplift: pound(1e6) }),
  })

  it('states no value of what may not be counted, and nothing of the whole while a needed link is not', () => {
    ofEachReport((result, facts) => {
      for (const one of factsOf(facts, ...judged)) {
        if (one.counted !== 'not counted') continue
        expect(one.value === null || one.value.as === 'choice').toBe(true)
        expect(markOf(one.verdict)).toBe('unverified')
      }
      const [whole] = factsOf(facts, 'uplift')
      if (result.uplift.uncounted.length > 0) expect(whole).toMatchObject({ value: null, ratio: null, verdict: "can't be verified" })
      for (const id of whole?.restsOn ?? []) expect(factsOf(facts, ...chainGroups).some((one) => one.id === id)).toBe(true)
    })
  })

  it('a link that holds less than is asked falls short; one that the pull does not pass never does', () => {
    const links = factsOf(report(pulled), ...chainGroups)
    expect(links.some(({ link }) => link?.place === 'spare')).toBe(true)
    for (const { link, verdict } of links) expect(verdict === 'falls short', `${link?.place}`).toBe(link?.place === 'needed')
    expect(factOf(pulled, 'uplift').verdict).toBe('falls short')
    for (const { links: own } of pullPath(report(pulled)).groups)
      expect(own.map(isNeeded)).toEqual(own.map(isNeeded).sort((a, b) => Number(b) - Number(a)))
  })
})

describe('sayTheSame', () => {
  const sides = (steep: number) => {
    const result = derivePier({ ...plainPier, site: { ...plainPier.site, slope: slope(steep) } })
    return ['depth', 'exposure'].map((group) => sayTheSame(report(result).filter((one) => one.group === group && one.id !== 'axis')))
  }

  it('holds of both sides on level ground, and of none on a slope', () => {
    expect(sides(0)).toEqual([true, true])
    expect(sides(0.2)).toEqual([false, false])
  })
})
