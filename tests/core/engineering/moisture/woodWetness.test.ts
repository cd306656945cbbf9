import { describe, expect, it } from 'vitest'
import { soilWetnesses } from '../../../../src/core/engineering/moisture/soilWetness.ts'
import { wetter, woodWetness } from '../../../../src/core/engineering/moisture/woodWetness.ts'
import { contactWetness, type WoodTouch, woodWetnesses } from '../../../../src/core/engineering/tables/contactWetness.ts'
import { decayMoisture, decayTemperatures, groundlineBand } from '../../../../src/core/engineering/tables/decayThresholds.ts'
import { sources } from '../../../../src/core/engineering/sources.ts'

const touches = Object.keys(contactWetness) as WoodTouch[]
const order = (wetness: (typeof woodWetnesses)[number]) => woodWetnesses.indexOf(wetness)

describe('the contact table', () => {
  it.each(touches)('%s: every class is marked as reasoned, with a reason and sources that exist', (touch) => {
    const row = contactWetness[touch]
    expect(row.standing).toBe('assumed here')
    expect(row.sources).toContain('assumption')
    for (const id of row.sources) expect(id in sources).toBe(true)
    expect(row.reason).toMatch(/^[a-z]+(-[a-z]+)+$/)
    const classes = soilWetnesses.map((ground) => order(row.wetness[ground]))
    expect(classes).toEqual([...classes].sort())
  })
  it('claims no moisture content: classes alone, three of them', () => {
    expect(woodWetnesses).toHaveLength(3)
    const text = JSON.stringify(contactWetness)
    expect(text).not.toMatch(/%|percent|\d\.\d/)
  })
  it('[trap 15] gravel drains only where the ground below it does', () => {
    for (const touch of ['gravel', 'granular'] as const) {
      expect(woodWetness({ touch, ground: 'drains', fed: false }).wetness).toBe('wet-at-times')
      expect(woodWetness({ touch, ground: 'wet', fed: false })).toMatchObject({
        wetness: 'stays-wet',
        reason: 'gravel-drains-only-where-the-ground-does',
      })
    }
  })
  it('tells the four methods apart where decay sits: soil, joint of concrete, air above a bracket', () => {
    const soil = woodWetness({ touch: 'groundline', ground: 'damp', fed: false })
    const joint = woodWetness({ touch: 'joint', ground: 'damp', fed: false })
    const air = woodWetness({ touch: 'air', ground: 'damp', fed: false })
    expect([soil.wetness, joint.wetness, air.wetness]).toEqual(['stays-wet', 'wet-at-times', 'dries-out'])
    expect([soil.waterAndAir, joint.waterAndAir, air.waterAndAir]).toEqual([true, true, false])
  })
  it('a top that feeds the joint makes it stay wet, whatever the ground', () => {
    for (const ground of soilWetnesses) {
      expect(woodWetness({ touch: 'joint', ground, fed: true }).wetness).toBe('stays-wet')
      expect(woodWetness({ touch: 'concrete', ground, fed: true }).wetness).toBe(
        woodWetness({ touch: 'concrete', ground, fed: false }).wetness,
      )
    }
  })
  it('wet is not decaying: under water there is no air', () => {
    expect(woodWetness({ touch: 'below-water', ground: 'wet', fed: false })).toMatchObject({
      wetness: 'stays-wet',
      oxygen: 'little',
      waterAndAir: false,
    })
  })
  it('names the wetter of two', () => {
    expect(wetter('dries-out', 'stays-wet')).toBe('stays-wet')
    expect(wetter('wet-at-times', 'dries-out')).toBe('wet-at-times')
  })
})

describe('published limits of decay', () => {
  it('hold their printed figures', () => {
    expect(Object.values(decayMoisture).map(({ printed }) => printed)).toEqual([30, 25, 20, 16.3])
    expect(Object.values(decayTemperatures).map(({ printed }) => printed)).toEqual([50, 95, 35, 100])
    expect(Object.values(decayTemperatures).map(({ value }) => Math.round(value))).toEqual([10, 35, 2, 38])
    expect([groundlineBand.low.printed, groundlineBand.high.printed]).toEqual([6, 12])
  })
})
