import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { formatText } from '../../../src/core/units/format.ts'
import { metres, slope } from '../../../src/core/units/quantity.ts'
import { drawSection } from '../../../src/view/section/drawSection.ts'
import { overlaps } from '../../../src/view/section/ink.ts'
import { pierDimensions } from '../../../src/view/section/pierDimensions.ts'
import { typeSize } from '../../../src/view/section/typeSize.ts'
import { anyPier } from '../../anyPier.ts'
import { close } from '../../close.ts'

const layers = { soil: true, labels: true, dimensions: true, water: true, frost: true, wetness: false }
const say = { length: (value: number) => formatText(value, 'length', 'us'), slope: (value: number) => formatText(value, 'slope', 'us') }
const draw = (spec: PierSpec, size = { width: 800, height: 760 }, facing = Math.PI / 2) =>
  drawSection({
    result: derivePier(spec),
    facing,
    cutPost: false,
    layers,
    drawWet: null,
    say,
    type: typeSize('paper', size.width < 560),
    size,
  })
const words = (drawing: ReturnType<typeof draw>) => drawing.ink.plates.map(({ lines }) => lines.join(' '))

describe('[V12] the drawn section', () => {
  it('has no words over words, none out of the picture and no broken path, whatever the pier', () => {
    fc.assert(
      fc.property(
        anyPier,
        fc.double({ min: 0, max: 6.28, noNaN: true }),
        fc.constantFrom({ width: 800, height: 760 }, { width: 390, height: 388 }),
        (spec, facing, size) => {
          const { bodies, lines, ink } = draw(spec, size, facing)
          const paths = [
            ...bodies.flatMap(({ path, outline }) => [path, outline]),
            ...lines.map(({ path }) => path),
            ...Object.values(ink.paths),
          ]
          for (const path of paths) expect(path).not.toMatch(/NaN|Infinity|undefined/)
          ink.plates.forEach((a, i) => {
            for (const b of ink.plates.slice(i + 1)) expect(overlaps(a, b), `${a.lines} over ${b.lines}`).toBe(false)
            expect(a.x).toBeGreaterThanOrEqual(0)
            expect(a.x + a.width).toBeLessThanOrEqual(size.width)
          })
        },
      ),
      { numRuns: 150 },
    )
  })

  it('says the hole, its depth and the wood below grade', () => {
    const told = words(draw(defaultSpec))
    expect(told).toContain('20 in Ø')
    expect(told).toContain('48 in depth at axis')
    expect(told).toContain('42 in wood below grade')
    expect(told).toContain('8% downhill')
    expect(told).toContain('Frost depth 42 in')
  })

  it('says one depth on level ground, and no slope', () => {
    const told = words(draw({ ...defaultSpec, site: { ...defaultSpec.site, slope: slope(0) } }))
    expect(told).toContain('48 in hole depth')
    expect(told.join(' ')).not.toMatch(/downhill|uphill/)
  })

  it('leaves out layers that are switched off', () => {
    const off = drawSection({
      result: derivePier(defaultSpec),
      facing: Math.PI / 2,
      cutPost: false,
      layers: { soil: false, labels: false, dimensions: false, water: false, frost: false, wetness: false },
      drawWet: null,
      say,
      type: typeSize('paper', false),
      size: { width: 800, height: 760 },
    })
    expect(off.ink.plates).toEqual([])
    expect(off.bodies.map(({ role }) => role)).not.toContain('soil')
  })
})

describe('[V13] what is dimensioned', () => {
  const right = 0
  const all = (spec: PierSpec) => new Map(pierDimensions(derivePier(spec), right).map((one) => [one.id, one]))

  it('measures both edges of a hole on a slope', () => {
    const found = all(defaultSpec)
    const edge = (defaultSpec.hole.diameter / 2) * defaultSpec.site.slope
    close(found.get('depth-right')?.value ?? Number.NaN, defaultSpec.hole.depth - edge, { abs: 1e-12, rel: 0 })
    close(found.get('depth-left')?.value ?? Number.NaN, defaultSpec.hole.depth + edge, { abs: 1e-12, rel: 0 })
    close(found.get('depth')?.value ?? Number.NaN, defaultSpec.hole.depth, { abs: 0, rel: 0 })
  })

  it('measures the crown where the document does', () => {
    close(all(defaultSpec).get('crown')?.value ?? Number.NaN, defaultSpec.top.rise, { abs: 1e-9, rel: 0 })
    const belled = { ...defaultSpec, hole: { ...defaultSpec.hole, bell: { diameter: metres(0.8), height: metres(0.3) } } }
    close(all(belled).get('crown')?.value ?? Number.NaN, defaultSpec.top.rise, { abs: 1e-9, rel: 0 })
    expect(all({ ...defaultSpec, top: { ...defaultSpec.top, shape: 'flat' } }).has('crown')).toBe(false)
  })

  it('gives each dimension the length between its ends, but for depths told at an edge', () => {
    fc.assert(
      fc.property(anyPier, (spec) => {
        for (const { id, from, to, side, value } of pierDimensions(derivePier(spec), right))
          close(side === 'below' ? to.u - from.u : from.y - to.y, value * Math.sign(from.y - to.y || 1), { abs: 1e-9, rel: 0 }, id)
      }),
      { numRuns: 200 },
    )
  })
})
