import { describe, expect, it } from 'vitest'
import {
  coneRule,
  soilCone,
  soilConeRectangular,
  soilConeWithin,
  workedConeSoilWeight,
  workedSoilCone,
  workedSoilConeWithin,
} from '../../../src/core/engineering/soil/soilCone.ts'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import type { CubicMetres, Metres, Radians, UnitWeight } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, has, published, readCases, si } from '../cases.ts'

describe('cone beside a neighbour', () => {
  // W4.9's pad: radius 1 ft, 4 ft deep, 30 degrees, 3.309 ft wide at grade.
  const cone = { radius: at<Metres>(1, 'ft'), height: at<Metres>(4, 'ft'), angle: at<Radians>(30, 'deg') }
  it('2 ft of reach: a cone up to 1.732 ft, a cylinder over it; 12.697 + 28.500 ft3 by hand', () => {
    const rise = 1 / Math.tan(Math.PI / 6)
    const byHand = ((Math.PI * rise) / 3) * (1 + 2 + 4) + Math.PI * 4 * (4 - rise)
    close(byHand, 12.697 + 28.5, { abs: 0.001, rel: 0 })
    const volume = soilConeWithin({ ...cone, reach: at<Metres>(2, 'ft') })
    close(volume, at(byHand, 'ft3'), { abs: 0, rel: 1e-12 })
    expect(workedSoilConeWithin({ ...cone, reach: at<Metres>(2, 'ft') }).value).toBe(volume)
  })
  it('far neighbours leave the cone whole, near ones never give more', () => {
    close(soilConeWithin({ ...cone, reach: at<Metres>(4, 'ft') }), soilCone(cone).volume, { abs: 0, rel: 1e-12 })
    const reaches = [0.5, 1, 1.5, 2, 2.5, 3, 3.3, 3.5].map((feet) => soilConeWithin({ ...cone, reach: at<Metres>(feet, 'ft') }))
    expect(reaches).toEqual([...reaches].sort((a, b) => a - b))
  })
})

describe('cone over a round ledge', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const cone = {
      radius: si<Metres>(row, 'R1_ft', 'ft'),
      height: si<Metres>(row, 'h_ft', 'ft'),
      angle: si<Radians>(row, 'theta_deg', 'deg'),
    }
    const { topRadius, volume } = soilCone(cone)
    published(topRadius, row, '=R2_ft', 'ft')
    published(volume, row, '=V_ft3', 'ft3')
    const shaft = (has(row, 'out_ft3') ? si(row, 'out_ft3', 'ft3') : 0) as CubicMetres
    published(workedConeSoilWeight({ cone: volume, shaft, soil: si(row, 'g_pcf', 'pcf') }).value, row, '=W_lb', 'lb')
    expect(workedSoilCone(cone).value).toBe(volume)
  })
  it('W4.13: the concrete under the cone weighs 1,281 lb', () => {
    close(Math.PI * at<number>(9, 'in') ** 2 * at<number>(5, 'ft') * coneRule.concrete.value, at(1281, 'lb'), {
      abs: at(0.5, 'lb'),
      rel: 0,
    })
  })
  it('W4.9: a 6x6 post takes 0.840 ft3 out of 4 ft', () => {
    const { width, depth } = postSections['6x6']
    close(width * depth * at<number>(4, 'ft'), at(0.84, 'ft3'), { abs: at(0.0005, 'ft3'), rel: 0 })
  })
  it('becomes a cylinder as the angle goes', () => {
    close(soilCone({ radius: 1 as Metres, height: 2 as Metres, angle: 1e-9 as Radians }).volume, 2 * Math.PI, { abs: 0, rel: 1e-8 })
  })
  it('the rule: 30 degrees, earth up to 90 pcf, concrete up to 145 pcf, read in the order itself', () => {
    expect([coneRule.angle.printed, coneRule.earth.printed, coneRule.concrete.printed]).toEqual([30, 90, 145])
    expect(coneRule.angle.standing).toBe('read')
  })
})

describe('cone over a rectangular ledge', () => {
  it.each(readCases(import.meta.url, 'rectangles.csv').map((row) => [row.id, row] as const))('%s', (_, row) => {
    const [a, b, height] = [si<Metres>(row, 'a_in', 'in'), si<Metres>(row, 'b_in', 'in'), si<Metres>(row, 'h_ft', 'ft')]
    const angle = si<Radians>(row, 'theta_deg', 'deg')
    const soil = si<UnitWeight>(row, 'g_pcf', 'pcf')
    const volume = soilConeRectangular({ a, b, height, angle })
    published(volume, row, '=V_ft3', 'ft3')
    const shaft = (has(row, 'out_ft3') ? si(row, 'out_ft3', 'ft3') : 0) as CubicMetres
    published(workedConeSoilWeight({ cone: volume, shaft, soil }).value, row, '=W_lb', 'lb')
    const wide = 2 * height * Math.tan(angle)
    const top = (a + wide) * (b + wide)
    const mitred = (height / 3) * (a * b + top + Math.sqrt(a * b * top))
    published(mitred, row, '=mitred_ft3', 'ft3')
    // 81.39 x 90 = 7,325.1; the worked figure took one more digit of the volume.
    published(mitred * soil, row, '=mitred_lb', 'lb', 1)
    if (has(row, '=mitred_ft3')) expect(volume).toBeLessThan(mitred)
  })
})
