import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { deriveMoisture } from '../../../src/core/derive/moisture/deriveMoisture.ts'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import { metres } from '../../../src/core/units/quantity.ts'
import { toSI } from '../../../src/core/units/factors.ts'
import { scene as words } from '../../../src/words/en/scene.ts'
import { drawSection, type SectionDrawing } from '../../../src/view/section/drawSection.ts'
import { overlaps } from '../../../src/view/section/ink.ts'
import { typeSize } from '../../../src/view/section/typeSize.ts'
import { drawWet } from '../../../src/view/section/wetInk.ts'
import { anyPier } from '../../anyPier.ts'

const layers = { soil: true, labels: true, dimensions: false, water: true, frost: true, wetness: true }
const say = { length: (value: number) => String(value), slope: (value: number) => String(value) }
const desk = { width: 800, height: 760 }
const phone = { width: 390, height: 330 }
const draw = (spec: PierSpec, gone: { least: number; most: number } | null = null, size = desk, isInYears = false): SectionDrawing =>
  drawSection({
    gone,
    isInYears,
    result: derivePier(spec),
    facing: Math.PI / 2,
    cutPost: false,
    layers,
    drawWet,
    say,
    type: typeSize('paper', size.width < 560),
    size,
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

describe('[W7] what wets the wood, drawn', () => {
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

  it('lays stripes over the zone to watch as the range of life opens, and none where no year is looked at', () => {
    const covered = (gone: { least: number; most: number } | null, style: 'open' | 'gone'): number => {
      const points = draw(built('dry-bag-at-foot'), gone).ink.paths[style].split('Z').filter(Boolean)
      return points.reduce((sum, path) => {
        const at = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
        const twice = at.reduce((area, [x, y], i) => {
          const [nx, ny] = at[(i + 1) % at.length] ?? [0, 0]
          return area + x * ny - nx * y
        }, 0)
        return sum + Math.abs(twice) / 2
      }, 0)
    }
    const whole = covered({ least: 0, most: 1 }, 'open')
    expect(whole).toBeGreaterThan(500)
    expect(covered({ least: 0.2, most: 0.5 }, 'open') / whole).toBeCloseTo(0.5, 1)
    expect(covered({ least: 0.2, most: 0.5 }, 'gone') / whole).toBeCloseTo(0.2, 1)
    expect([covered(null, 'open'), covered({ least: 0, most: 0 }, 'open'), covered({ least: 0, most: 0.5 }, 'gone')]).toEqual([0, 0, 0])
    expect(draw(built('mixed-bracket-pier'), { least: 0.5, most: 1 }).ink.paths.open).toBe('')
  })

  it('takes the water of a dish from the core: level with the rim, down to the bed at the post', () => {
    const spec: PierSpec = { ...defaultSpec, top: { ...defaultSpec.top, shape: 'dished', rim: inch(-6) } }
    const { ink, frame } = draw(spec)
    const ys = [...ink.paths.pond.matchAll(/-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => (frame.grade - Number(y)) / frame.perMetre)
    const { pond, path } = deriveMoisture(spec).top
    expect(path.overRim).toBeGreaterThan(0)
    expect(Math.max(...ys)).toBeCloseTo(pond?.level ?? Number.NaN, 3)
    expect(Math.min(...ys)).toBeGreaterThan((pond?.bed.at(-1)?.[1] ?? Number.NaN) - 1e-3)
  })

  it('draws the water of a dish, and none on a crown', () => {
    expect(draw({ ...defaultSpec, top: { ...defaultSpec.top, shape: 'dished' } }).ink.paths.pond).not.toBe('')
    expect(draw(defaultSpec).ink.paths.pond).toBe('')
  })

  it('draws another dry pour for another number, and says that it is no forecast', () => {
    const spec = built('dry-full-height')
    const other = { ...spec, placing: { ...spec.placing, pattern: 2 } }
    expect(draw(spec).ink.paths.powder).not.toBe(draw(other).ink.paths.powder)
    for (const line of words.marks.scatter) expect(told(draw(spec))).toContain(line)
    expect(draw(defaultSpec).ink.paths.powder).toBe('')
  })

  it('says on a phone too where to look, and where rain ends', () => {
    for (const kind of ['dry-bag-at-foot', 'mixed-full-height'] as const) {
      const { groundline, top } = deriveMoisture(built(kind))
      const lines = told(draw(built(kind), null, phone)).join(' ')
      expect(lines).toContain(words.marks.watch)
      expect(lines).toContain(words.marks.groundline[groundline.at as 'grade'])
      expect(lines).toContain(words.marks.rain[top.path.end])
    }
  })

  it('marks in years what an inspection sees of the post, and what it does not: nothing is hidden of one on a bracket', () => {
    const marks = (kind: string, isInYears: boolean) => draw(built(kind), null, desk, isInYears).ink.paths.disc.split('Z').length - 1
    expect(['dry-bag-at-foot', 'mixed-full-height', 'mixed-bracket-pier'].map((kind) => marks(kind, true))).toEqual([2, 2, 1])
    expect(marks('mixed-full-height', false)).toBe(0)
  })

  it('is silent while the layer is off', () => {
    const result = derivePier(defaultSpec)
    const plain = drawSection({
      result,
      facing: Math.PI / 2,
      cutPost: false,
      layers: { ...layers, wetness: false },
      drawWet,
      say,
      type: typeSize('paper', false),
      size: { width: 800, height: 760 },
    })
    for (const style of ['wet', 'damp', 'joint', 'zone', 'rain', 'drop', 'pond', 'powder'] as const) expect(plain.ink.paths[style]).toBe('')
  })

  it('says that the gap is drawn wider, and nothing of one that does not open', () => {
    for (const line of words.marks.joint) expect(told(draw(defaultSpec))).toContain(line)
    const swollen = { ...defaultSpec, water: { ...defaultSpec.water, atSetting: 0.12, inService: 0.19 } }
    expect(told(draw(swollen))).not.toContain(words.marks.joint[0])
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
