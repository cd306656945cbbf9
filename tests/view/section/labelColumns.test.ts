import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { overlaps, type Pixel } from '../../../src/view/section/ink.ts'
import { linesCross, type LabelWish, placeLabels } from '../../../src/view/section/labelColumns.ts'

const columns = { left: 140, right: 640, top: 10, bottom: 620, taken: { left: [], right: [] } }
const anyWish = (i: number): fc.Arbitrary<LabelWish> =>
  fc
    .record({
      x: fc.double({ min: 180, max: 600, noNaN: true }),
      y: fc.double({ min: 20, max: 600, noNaN: true }),
      both: fc.boolean(),
      height: fc.constantFrom(26, 47),
    })
    .map(({ x, y, both, height }) => {
      const anchors: LabelWish['anchors'] = both ? { left: [x, y], right: [780 - x, y] } : x < 390 ? { left: [x, y] } : { right: [x, y] }
      return { id: `part-${i}`, lines: ['part'], width: 90, height, anchors }
    })
const anyWishes = fc.integer({ min: 1, max: 9 }).chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => anyWish(i))))

describe('[V10] names beside the picture', () => {
  it('never lie over each other, nor outside their column', () => {
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const placed = placeLabels(wishes, columns, new Map())
        expect(placed).toHaveLength(wishes.length)
        placed.forEach((a, i) => {
          for (const b of placed.slice(i + 1)) expect(overlaps(a.box, b.box)).toBe(false)
          expect(a.box.y).toBeGreaterThanOrEqual(columns.top - 1e-9)
          expect(a.box.y + a.box.height).toBeLessThanOrEqual(columns.bottom + 1e-9)
          if (a.side === 'left') expect(a.box.x + a.box.width).toBeLessThanOrEqual(columns.left)
          else expect(a.box.x).toBeGreaterThanOrEqual(columns.right)
        })
      }),
      { numRuns: 500 },
    )
  })

  it('stay in a column that is too low for all of them: the first of the list stand, whatever is taken', () => {
    const low = { ...columns, bottom: 210, taken: { left: [[10, 90] as const], right: [[120, 150] as const] } }
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const placed = placeLabels(wishes, low, new Map())
        for (const side of ['left', 'right'] as const) {
          const own = placed.filter((one) => one.side === side)
          if (own.length > 1) for (const { box } of own) expect(box.y + box.height).toBeLessThanOrEqual(low.bottom + 1e-6)
          // Nobody stands who comes later in the list than one of the same side who had to go.
          const onSide = wishes.filter(({ anchors }) => (side === 'left' ? anchors.left && !anchors.right : anchors.right && !anchors.left))
          const stands = onSide.map(({ id }) => own.some((one) => one.id === id))
          expect(stands).toEqual([...stands].sort((a, b) => Number(b) - Number(a)))
        }
      }),
      { numRuns: 300 },
    )
  })

  it('stand near their parts when there is room', () => {
    const wish: LabelWish = { id: 'post', lines: ['Post'], width: 60, height: 26, anchors: { left: [300, 200] } }
    const [label] = placeLabels([wish], columns, new Map())
    expect(label && label.box.y + label.box.height / 2).toBeCloseTo(200, 0)
  })

  it('are led to their parts without crossings, in most arrangements, and never with more than one a column', () => {
    let crossings = 0
    fc.assert(
      fc.property(anyWishes, (wishes) => {
        const placed = placeLabels(wishes, columns, new Map())
        placed.forEach((a, i) => {
          for (const b of placed.slice(i + 1)) if (a.side === b.side && linesCross(a.elbow, a.anchor, b.elbow, b.anchor)) crossings++
        })
      }),
      { numRuns: 500, seed: 7 },
    )
    expect(crossings).toBeLessThan(25)
  })

  it('keep the side they had', () => {
    const wish: LabelWish = { id: 'soil', lines: ['Soil'], width: 60, height: 26, anchors: { left: [300, 200], right: [480, 200] } }
    for (const side of ['left', 'right'] as const) expect(placeLabels([wish], columns, new Map([['soil', side]]))[0]?.side).toBe(side)
  })

  it('stay clear of what stands in their column', () => {
    const wish: LabelWish = { id: 'soil', lines: ['Soil'], width: 60, height: 26, anchors: { left: [300, 200] as Pixel } }
    const taken = { left: [[180, 224] as const], right: [] }
    const box = placeLabels([wish], { ...columns, taken }, new Map())[0]?.box
    expect(box && (box.y >= 224 || box.y + box.height <= 180)).toBe(true)
  })

  it('do not depend on the order in which parts come', () => {
    const wishes: LabelWish[] = [0, 1, 2].map((i) => ({
      id: `p${i}`,
      lines: ['x'],
      width: 60,
      height: 26,
      anchors: { left: [300, 200 + 5 * i] },
    }))
    const byId = (list: ReturnType<typeof placeLabels>) => [...list].sort((a, b) => (a.id < b.id ? -1 : 1))
    expect(byId(placeLabels([...wishes].reverse(), columns, new Map()))).toEqual(byId(placeLabels(wishes, columns, new Map())))
  })
})
