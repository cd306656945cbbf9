import { describe, expect, it } from 'vitest'
import { referenceLife } from '../../../../src/core/engineering/life/referenceLife.ts'
import { sources } from '../../../../src/core/engineering/sources.ts'
import { claims, dryMixTrialRow } from '../../../../src/core/engineering/tables/claims.ts'
import { dryMixTrial } from '../../../../src/core/engineering/tables/dryMixTrial.ts'
import {
  aboveGroundEvidence,
  commonPracticeLife,
  contactEvidence,
  failureCauses,
  lifeEvidence,
  notFound,
  treatedEvidence,
  untreatedEvidence,
} from '../../../../src/core/engineering/tables/lifeEvidence.ts'
import { inspectionIntervals } from '../../../../src/core/engineering/tables/decayZones.ts'
import { bracketReplacementTime, costHorizon } from '../../../../src/core/engineering/tables/costDefaults.ts'
import { standingsInOrder } from '../../../../src/core/model/worked.ts'

const row = (id: string) => {
  const found = lifeEvidence.find((one) => one.id === id)
  if (!found) throw new Error(`no row ${id}`)
  return found
}

describe('rows of evidence', () => {
  it('each has its own id, a site, a source, a standing no better than the source, and limits where it is treated', () => {
    expect(new Set(lifeEvidence.map(({ id }) => id)).size).toBe(lifeEvidence.length)
    for (const { id, site, wood, source, standing, finding } of lifeEvidence) {
      for (const key of [id, site, wood, finding]) expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
      expect(standingsInOrder.indexOf(standing)).toBeGreaterThanOrEqual(standingsInOrder.indexOf(sources[source].standing))
    }
    for (const { id, limits } of treatedEvidence) expect(limits.length, id).toBeGreaterThan(0)
  })
  it.each([
    ['stakes-panama', 1, 1],
    ['stakes-gulf', 1.8, 3.6],
    ['stakes-wisconsin', 6, 6],
    ['posts-mississippi-untreated', 2, 2],
    ['posts-oregon-fir', 7, 7],
    ['posts-oregon-osage', 45, null],
    ['posts-southwest-oak', 30, 40],
    ['posts-creosote-low', 54, 54],
    ['posts-penta-60', 60, null],
    ['posts-copper-naphthenate', 65, 65],
    ['lumber-copper-naphthenate', 27, 30],
    ['posts-aca-low', 60, 60],
    ['common-practice-ten-years', 10, 10],
  ])('%s: %s to %s years as printed', (id, low, high) => {
    expect(row(id).life?.low.printed).toBe(low)
    expect(row(id).life?.high?.printed ?? null).toBe(high)
    expect(referenceLife(row(id))?.low).toBe(row(id).life?.low.value)
  })
  it.each([
    ['posts-cca-50', 125, 0, 50, null],
    ['posts-penta-50', 75, 0, 50, null],
    ['posts-aca-50', 25, 3, 50, 96],
    ['posts-creosote-50', 25, 5, 50, 78],
    ['posts-oregon-juniper', 25, 9, 55, null],
  ])('%s: %s watched, %s failed by %s years', (id, count, failed, years, median) => {
    expect(row(id).sample).toEqual({ count, failed })
    expect(row(id).watched?.printed).toBe(years)
    expect(row(id).median?.printed ?? null).toBe(median)
  })
  it('a row without a life is no reference life: none failed is not "for ever"', () => {
    expect(referenceLife(row('posts-cca-50'))).toBeNull()
    expect(referenceLife(row('posts-aca-50'))?.low).toBe(row('posts-aca-50').median?.value)
  })
})

describe('what may not be said', () => {
  it('[trap 1] [trap 2] concrete is shown neither to rot nor to save posts: findings go every way', () => {
    const findings = contactEvidence.filter(({ source }) => source === 'nicholas-2019').map(({ id }) => id)
    for (const way of ['better', 'worse', 'no-effect', 'no-change'])
      expect(
        findings.some((id) => id.includes(way)),
        way,
      ).toBe(true)
    for (const { life, median, sample } of contactEvidence) expect([life, median, sample]).toEqual([null, null, null])
    expect(notFound).toContain('posts-in-concrete-against-soil-under-load')
  })
  it('[trap 3] the trial of dry mix says that it could match mixed concrete, and what it does not cover; no number is made up', () => {
    expect(dryMixTrial).toMatchObject({ source: 'bohnhoff-2003', standing: 'abstract only', finding: 'dry-mix-could-match-mixed' })
    expect(dryMixTrial.ages.map(({ printed }) => printed)).toEqual([28, 84, 168])
    expect(dryMixTrial.missing).toContain('strength-values-not-read')
    expect(dryMixTrial.missing).toContain('not-clay')
    expect(JSON.stringify(dryMixTrial)).not.toMatch(/psi|MPa|strength":/)
  })
  it('[trap 11] long lives are those of older treatments; of today’s copper, ten and twelve years were watched', () => {
    const copper = treatedEvidence.filter(({ limits }) => limits.includes('ten-years-only'))
    expect(copper.map(({ watched }) => watched?.printed)).toEqual([10, 10, 12])
    for (const { life, median } of copper) expect([life, median]).toEqual([null, null])
    for (const { limits, watched, life, wood } of treatedEvidence) {
      if ((watched?.printed ?? 0) >= 35 || (life?.low.printed ?? 0) >= 60) {
        expect(
          limits.some((limit) => limit === 'not-todays-treatment' || limit === 'low-retention'),
          wood,
        ).toBe(true)
      }
    }
    expect(row('lumber-copper-naphthenate').limits).toContain('higher-retention-than-the-posts')
  })
  it('the rule of ten years is common practice and says so', () => {
    expect(commonPracticeLife).toMatchObject({ standing: 'common practice', kind: 'common-practice', limits: ['no-source'] })
    expect(untreatedEvidence.length + treatedEvidence.length + contactEvidence.length + aboveGroundEvidence.length + 1).toBe(
      lifeEvidence.length,
    )
  })
})

describe('claims of the trade', () => {
  const known = new Set<string>([...lifeEvidence.map(({ id }) => id), dryMixTrialRow])
  it.each(claims.map((claim) => [claim.id, claim] as const))(
    '%s lists rows that exist and what was not found',
    (_, { inFavour, against, missing }) => {
      for (const id of [...inFavour, ...against]) expect(known.has(id), id).toBe(true)
      for (const id of missing) expect(notFound as readonly string[]).toContain(id)
      expect(missing.length).toBeGreaterThan(0)
      for (const id of inFavour) expect(against).not.toContain(id)
    },
  )
  it('a claim and its opposite take the same rows the other way round', () => {
    const claim = (id: string) => claims.find((one) => one.id === id)
    expect(claim('dry-mix-never-hydrates')?.against).toEqual(claim('dry-mix-is-as-good-as-mixed')?.inFavour)
    expect(new Set(claims.map(({ id }) => id)).size).toBe(claims.length)
  })
})

describe('beside them', () => {
  it('causes of failure add up to nearly all', () => {
    const sum = Object.values(failureCauses).reduce((total, { printed }) => total + printed, 0)
    expect(sum).toBe(99)
  })
  it('inspections come sooner where decay is faster', () => {
    const first = (['1', '2-3', '4-5'] as const).map((zone) => inspectionIntervals[zone])
    expect(first.map(({ first: { low, high }, later }) => [low.printed, high.printed, later.printed])).toEqual([
      [12, 15, 12],
      [10, 12, 10],
      [8, 10, 8],
    ])
  })
  it('what the trade says of time is marked so', () => {
    expect(bracketReplacementTime).toMatchObject({ printed: 2, standing: 'common practice' })
    expect(costHorizon.standing).toBe('assumed here')
  })
})
