import { describe, it } from 'vitest'
import { materialWeights } from '../../../src/core/engineering/tables/materials.ts'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import { capCrown, coneCrownLessRect, cylinderUnderPlane, frustum } from '../../core/geometry/closedForms.ts'
import type { CubicMetres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

/** Area by Simpson's rule on a fine grid: knows nothing of the closed forms. */
const simpson = (f: (x: number) => number, from: number, to: number, n = 20_000): number => {
  const h = (to - from) / n
  let sum = f(from) + f(to)
  for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * f(from + i * h)
  return (sum * h) / 3
}

describe('cylinder under a sloping plane', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const [r, dc, s] = [si(row, 'r_ft', 'ft'), si(row, 'dc_ft', 'ft'), si(row, 's')]
    const { volume, side } = cylinderUnderPlane(r, dc, s)
    published(volume, row, '=V_ft3', 'ft3')
    published(side, row, '=side_ft2', 'ft2')
    published(Math.PI * r * r * Math.sqrt(1 + s * s), row, '=ellipse_ft2', 'ft2')
    const chord = (x: number) => 2 * Math.sqrt(Math.max(0, r * r - x * x))
    const start = Math.max(-r, -dc / s)
    published(simpson(chord, start, r), row, '=A_ft2', 'ft2')
    close(
      volume,
      simpson((x) => chord(x) * (dc + s * x), start, r),
      { abs: 0, rel: 1e-5 },
    )
  })
})

describe('frustum, crowns and what is left round a post', () => {
  it('W9.4: 24 to 36 in over 12 in', () => {
    const { volume, side, ledge } = frustum(at(18, 'in'), at(12, 'in'), at(12, 'in'))
    close(volume, at(4.974, 'ft3'), { abs: at(0.0005, 'ft3'), rel: 0 })
    close(side, at(8.781, 'ft2'), { abs: at(0.0005, 'ft2'), rel: 0 })
    close(ledge, at(3.927, 'ft2'), { abs: at(0.0005, 'ft2'), rel: 0 })
  })
  it('W9.5, T18: crown of 2 in over 12 in radius round a 5.5 in post', () => {
    const [a, h, w] = [at<number>(1, 'ft'), at<number>(2, 'in'), at<number>(5.5, 'in')]
    close(coneCrownLessRect(a, h, w, w), at(0.14566, 'ft3'), { abs: at(0.000005, 'ft3'), rel: 0 })
    close(coneCrownLessRect(a, h, w, w), at(0.1457, 'ft3'), { abs: at(0.00005, 'ft3'), rel: 0 })
    close((Math.PI * a * a * h) / 3, at(0.1745, 'ft3'), { abs: at(0.00005, 'ft3'), rel: 0 })
    close((Math.PI * a * a * h) / 3 - coneCrownLessRect(a, h, w, w), at(0.02887, 'ft3'), { abs: at(0.000005, 'ft3'), rel: 0 })
    const cap = capCrown(a, h).volume
    close(cap, at(0.2642, 'ft3'), { abs: at(0.00005, 'ft3'), rel: 0 })
    close(h * (w * w - w ** 4 / (6 * a * a)), at(0.03379, 'ft3'), { abs: at(0.000005, 'ft3'), rel: 0 })
    const sphere = (a * a + h * h) / (2 * h)
    const over = (x: number, y: number) => Math.sqrt(sphere * sphere - x * x - y * y) - (sphere - h)
    const removed = simpson((x) => simpson((y) => over(x, y), -w / 2, w / 2, 200), -w / 2, w / 2, 200)
    close(removed, at(0.03382, 'ft3'), { abs: at(0.000005, 'ft3'), rel: 0 })
    close(cap - removed, at(0.2304, 'ft3'), { abs: at(0.00005, 'ft3'), rel: 0 })
  })
  it('W9.6: 24 in x 6 ft hole, 6x6 post 5.5 ft in: 17.69 ft3, 0.655 yd3, 2,566 lb', () => {
    const { width, depth } = postSections['6x6']
    const hole = (Math.PI * at<number>(1, 'ft') ** 2 * at<number>(6, 'ft')) as CubicMetres
    const concrete = hole - width * depth * at<number>(5.5, 'ft')
    close(hole, at(18.85, 'ft3'), { abs: at(0.005, 'ft3'), rel: 0 })
    close(hole - concrete, at(1.155, 'ft3'), { abs: at(0.0005, 'ft3'), rel: 0 })
    close(concrete, at(17.69, 'ft3'), { abs: at(0.005, 'ft3'), rel: 0 })
    close(concrete, at(0.655, 'yd3'), { abs: at(0.0005, 'yd3'), rel: 0 })
    // 17.695 ft3 x 145; the worked figure rounds up at the half.
    close(concrete * materialWeights['concrete-plain'].unitWeight.value, at(2566, 'lb'), { abs: at(0.6, 'lb'), rel: 0 })
  })
})
