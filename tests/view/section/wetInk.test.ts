import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import { metres } from '../../../src/core/units/quantity.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { scene as words } from '../../../src/text/en/scene.ts'
import { drawSection, type SectionDrawing } from '../../../src/view/section/drawSection.ts'
import { overlaps } from '../../../src/view/section/ink.ts'
import { typeSize } from '../../../src/view/section/typeSize.ts'
import { anyPier } from '../../anyPier.ts'

const layers = { soil: true, labels: true, dimensions: false, water: true, frost: true, wetness: true }
const say = { length: (value: number) => String(value), slope: (value: number) => String(value) }
const draw = (spec: PierSpec): SectionDrawing =>
  drawSection({
    result: derivePier(spec),
    facing: Math.PI / 2,
    cutPost: false,
    layers,
    say,
    type: typeSize('paper', false),
    size: { width: 800, height: 760 },
  })
const built = (kind: string): PierSpec => withChoice(defaultSpec, 'fill.kind', kind)
const told = ({ ink }: SectionDrawing) => ink.plates.flatMap(({ lines }) => lines)
const inch = (value: number) => metres(toSI(value, 'in'))
/** Last point of the way of rain [px]. */
const endOf = ({ ink, frame }: SectionDrawing) => {
  const numbers = (ink.paths.rain.match(/-?\d+(\.\d+)?/g) ?? []).map(Number)
  const [x = Number.NaN, y = Number.NaN] = numbers.slice(-2)
  return { u: (x - frame.axis) / frame.perMetre, y: (frame.grade - y) / frame.perMetre }
}

describe('what wets the wood, drawn', () => {
  it('ends the way of rain on the ground downhill under a good crown', () => {
    const drawing = draw(defaultSpec)
    expect(told(drawing)).toContain(words.marks.rain.ground)
    expect(endOf(drawing).u).toBeGreaterThan(defaultSpec.hole.diameter / 2)
  })

  it('ends it at the post once the rim lies below uphill grade', () => {
    const drawing = draw({ ...defaultSpec, top: { ...defaultSpec.top, rim: inch(-4) } })
    expect(told(drawing)).toContain(words.marks.rain.post)
    expect(Math.abs(Math.abs(endOf(drawing).u) - inch(5.5) / 2)).toBeLessThan(0.01)
  })

  it('draws each of the four ways to build otherwise, by shape alone', () => {
    const shapes = ['dry-bag-at-foot', 'dry-full-height', 'mixed-full-height', 'mixed-bracket-pier'].map((kind) => {
      const { paths } = draw(built(kind)).ink
      return ['wet', 'damp', 'joint', 'zone', 'powder'].map((style) => paths[style as keyof typeof paths] !== '').join()
    })
    expect(new Set(shapes).size).toBe(4)
    expect(draw(built('mixed-bracket-pier')).ink.paths.wet).toBe('')
  })

  it('marks the top of the soil, or of the concrete, and nothing under a bracket', () => {
    expect(told(draw(built('dry-bag-at-foot')))).toContain(words.marks.groundline.grade)
    expect(told(draw(defaultSpec))).toContain(words.marks.groundline['top-of-concrete'])
    expect(draw(built('mixed-bracket-pier')).ink.paths.zone).toBe('')
  })

  it('draws the water of a dish, and none on a crown', () => {
    expect(draw({ ...defaultSpec, top: { ...defaultSpec.top, shape: 'dished' } }).ink.paths.pond).not.toBe('')
    expect(draw(defaultSpec).ink.paths.pond).toBe('')
  })

  it('draws another dry pour for another number, and says that it is no forecast', () => {
    const spec = built('dry-full-height')
    const other = { ...spec, placing: { ...spec.placing, pattern: 2 } }
    expect(draw(spec).ink.paths.powder).not.toBe(draw(other).ink.paths.powder)
    expect(told(draw(spec))).toContain(words.marks.scatter)
    expect(draw(defaultSpec).ink.paths.powder).toBe('')
  })

  it('is silent while the layer is off', () => {
    const result = derivePier(defaultSpec)
    const plain = drawSection({
      result,
      facing: Math.PI / 2,
      cutPost: false,
      layers: { ...layers, wetness: false },
      say,
      type: typeSize('paper', false),
      size: { width: 800, height: 760 },
    })
    for (const style of ['wet', 'damp', 'joint', 'zone', 'rain', 'drop', 'pond', 'powder'] as const) expect(plain.ink.paths[style]).toBe('')
  })

  it('has no broken path and no words over words, whatever the pier', () => {
    expect(fillKinds.length).toBe(7)
    fc.assert(
      fc.property(anyPier, (spec) => {
        const { ink } = draw(spec)
        for (const path of Object.values(ink.paths)) expect(path).not.toMatch(/NaN|Infinity|undefined/)
        ink.plates.forEach((a, i) => {
          for (const b of ink.plates.slice(i + 1)) expect(overlaps(a, b), `${a.lines} over ${b.lines}`).toBe(false)
        })
      }),
      { numRuns: 80 },
    )
  })
})
