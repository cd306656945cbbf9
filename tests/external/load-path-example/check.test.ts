import { describe, expect, it } from 'vitest'
import { allowableFromNominal, anchorReduction, roundPierBreakout } from '../../../src/core/engineering/concrete/breakout.ts'
import { barShear } from '../../../src/core/engineering/concrete/barSteel.ts'
import { barGrades, bars, boltBendingYield } from '../../../src/core/engineering/tables/bars.ts'
import { cover } from '../../../src/core/engineering/tables/concrete.ts'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import { species } from '../../../src/core/engineering/tables/species.ts'
import { barBearingLength, barDowelValue } from '../../../src/core/engineering/wood/barDowel.ts'
import { sidePlateProblem } from '../../../src/core/engineering/wood/boltedPlates.ts'
import { adjustedDowelValue, loadDuration, temperature, wetService } from '../../../src/core/engineering/wood/connectionFactors.ts'
import { dowelDistances, geometryFactor } from '../../../src/core/engineering/wood/dowelSpacing.ts'
import { groupAction } from '../../../src/core/engineering/wood/groupAction.ts'
import { netArea, netTension } from '../../../src/core/engineering/wood/netTension.ts'
import { rowTearOut } from '../../../src/core/engineering/wood/tearOut.ts'
import { yieldValue } from '../../../src/core/engineering/wood/yieldEquations.ts'
import type { BarSize } from '../../../src/core/model/spec.ts'
import type { Metres, Newtons, Pascals, SquareMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

const pine = species['southern-pine'].timber['No.2']
const gravity = species['southern-pine'].gravity.value
const post = postSections['6x6']
const cd = loadDuration.wind.value
const plain = { temperature: temperature.wet['100F'].value, group: 1, endGrain: 1 }
const geometry = (size: BarSize, end: number) => {
  const { full, floor } = dowelDistances.endInTension
  return geometryFactor({ actual: end as Metres, diameter: bars[size].diameter.value, full: full.value, floor: floor.value }) ?? Number.NaN
}
const dowel = (size: BarSize, ls: number) =>
  barDowelValue({
    diameter: bars[size].diameter.value,
    postWidth: post.width,
    bearingLength: ls as Metres,
    gravity,
    bendingYield: barGrades['60'].dowelYield.value,
  })?.value ?? (Number.NaN as Newtons)

describe('link by link', () => {
  const end = at<number>(4, 'in')
  const ls =
    barBearingLength({ pierDiameter: at(18, 'in'), postWidth: post.width, cover: cover.castAgainstEarth.value, barLength: at(12, 'in') }) ??
    Number.NaN
  const screening = allowableFromNominal({
    nominal: roundPierBreakout({ diameter: at(18, 'in'), strength: at(2500, 'psi'), embedment: at(12, 'in') }).nominal,
    reduction: anchorReduction.breakout.value,
    share: 0.6,
  })
  const links: Readonly<Record<string, number>> = {
    'net-tension': netTension({
      tension: pine.tension.value,
      duration: cd,
      wet: pine.wet.tension.value,
      area: netArea({ area: (post.width * post.depth) as SquareMetres, hole: at(0.625, 'in'), length: post.depth, count: 1 }),
    }),
    'row-tear-out': rowTearOut({ shear: (pine.shear.value * cd) as Pascals, thickness: post.width, critical: end as Metres, count: 1 }),
    dowel: adjustedDowelValue({
      ...plain,
      reference: dowel('#5', ls),
      count: 1,
      duration: cd,
      wet: wetService.wet.value,
      geometry: geometry('#5', end),
    }),
    'bar-shear': barShear({ area: bars['#5'].area.value, yield: barGrades['60'].yield.value, planes: 2 }),
    'concrete-screening': screening,
  }
  const demand = at<number>(2525, 'lb')
  it('a 12 in bar leaves 3.25 in each side', () => close(ls, at(3.25, 'in'), { abs: 1e-12, rel: 0 }))
  it.each(readCases(import.meta.url).map((row) => [row.id ?? '', row] as const))('%s', (id, row) => {
    const link = links[id] ?? Number.NaN
    // The dowel comes to 2,906.51, listed as 2,906 here and as 2,906.5 where it is worked out.
    published(link, row, '=lb', 'lb', id === 'dowel' ? 0.02 : 0)
    published(demand / link, row, '=ratio')
  })
  it('the dowel is the weakest', () => {
    expect(Object.entries(links).reduce((least, one) => (one[1] < least[1] ? one : least))[0]).toBe('dowel')
  })
})

describe('variants', () => {
  it.each(readCases(import.meta.url, 'variants.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const size = row.bar as BarSize
    const reference = dowel(size, si(row, 'ls_in', 'in'))
    published(reference, row, '=Z_lb', 'lb')
    const delta = geometry(size, si(row, 'end_in', 'in'))
    published(delta, row, '=Cdelta')
    const adjusted = adjustedDowelValue({ ...plain, reference, count: 1, duration: cd, wet: wetService.wet.value, geometry: delta })
    published(adjusted, row, '=lb', 'lb')
    if (has(row, '=ratio')) published(at<number>(2525, 'lb') / adjusted, row, '=ratio')
  })
  it.each(readCases(import.meta.url, 'bracket.csv').map((row) => [row.id, row] as const))('bracket, %s', (_, row) => {
    const diameter = si<Metres>(row, 'D_in', 'in')
    const problem = sidePlateProblem({
      diameter,
      postWidth: post.width,
      plate: at(0.25, 'in'),
      gravity,
      bendingYield: boltBendingYield.value,
    })
    const reference = (problem && yieldValue(problem)?.value) ?? (Number.NaN as Newtons)
    published(reference, row, '=Z_lb', 'lb')
    const { cg } = groupAction({
      diameter,
      spacing: (4 * diameter) as Metres,
      count: 2,
      main: { elasticity: pine.elasticity.value, area: (post.width * post.depth) as SquareMetres },
      side: { elasticity: at(30e6, 'psi'), area: at(1.5, 'in2') },
      joint: 'wood-metal',
    })
    close(cg, 0.999, { abs: 0.001, rel: 0 })
    // The listed pounds leave out Cg of 0.999: it is 1 here.
    const total = (wet: number) => adjustedDowelValue({ ...plain, reference, count: 2, duration: cd, wet, geometry: 1 })
    // 5,501 is 5,500.5 and 3,850 is 3,850.3; both list the half upward.
    published(total(1), row, '=dry_lb', 'lb')
    published(total(wetService.wet.value), row, '=wet_lb', 'lb')
  })
  it.each(readCases(import.meta.url, 'factors.csv').map((row) => [row.id, row] as const))('%s of the code', (_, row) => {
    const reference = dowel('#4', at<number>(4, 'in'))
    const asd = (wet: number) => adjustedDowelValue({ ...plain, reference, count: 1, duration: cd, wet, geometry: 1 })
    published(asd(1), row, '=asd_dry_lb', 'lb')
    published(asd(wetService.wet.value), row, '=asd_wet_lb', 'lb')
    published(cd * wetService.wet.value, row, '=asd_multiplier')
  })
  it.each([
    ['#4', 3.5, 1.75],
    ['#5', 4.375, 2.19],
    ['#6', 5.25, 2.63],
  ] as const)('end distance of %s: full at %s in, floor %s in', (size, full, floor) => {
    close(geometry(size, at(full, 'in')), 1, { abs: 1e-12, rel: 0 })
    close(3.5 * bars[size].diameter.value, at(floor, 'in'), { abs: at(0.00501, 'in'), rel: 0 })
    expect(geometry(size, at<number>(floor, 'in') * 0.97)).toBeNaN()
  })
  it.each([
    ['#4', 15.4],
    ['#5', 16.4],
    ['#6', 17.3],
  ] as const)('%s bends both ways from about %s in of pier on', (size, inches) => {
    const governs = (pier: number) => {
      const ls = barBearingLength({
        pierDiameter: at(pier, 'in'),
        postWidth: post.width,
        cover: cover.castAgainstEarth.value,
        barLength: at(99, 'in'),
      })
      return (
        ls &&
        barDowelValue({
          diameter: bars[size].diameter.value,
          postWidth: post.width,
          bearingLength: ls,
          gravity,
          bendingYield: barGrades['60'].dowelYield.value,
        })?.governing
      )
    }
    expect(governs(inches)).toBe('IV')
    expect(governs(inches - 0.1)).toBe('IIIs')
  })
})
