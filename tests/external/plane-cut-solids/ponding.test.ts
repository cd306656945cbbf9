import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pondedVolume, workedPondedVolume } from '../../../src/core/engineering/moisture/pondedVolume.ts'
import { postSections } from '../../../src/core/engineering/tables/postSections.ts'
import { coneCrownLessRect, frustum } from '../../core/geometry/closedForms.ts'
import type { Metres } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at } from '../cases.ts'

const m = (value: number) => value as Metres
const none = Number.NaN
const length = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('water in a dished top', () => {
  it('round a sawn post is the cone that the shapes themselves have, to 1e-9', () => {
    fc.assert(
      fc.property(length(0.05, 0.15), length(0.05, 0.15), length(0.005, 0.1), length(1.02, 5), (width, depth, dish, times) => {
        const rimRadius = m((Math.hypot(width, depth) / 2) * times)
        const innerRadius = m(Math.min(width, depth) / 2)
        const found = pondedVolume({
          rimRadius,
          innerRadius,
          dish: m(dish),
          overRim: m(0),
          inside: { shape: 'rect', width: m(width), depth: m(depth) },
        })
        const apex = (dish * rimRadius) / (rimRadius - innerRadius)
        close(found ?? none, coneCrownLessRect(rimRadius, apex, width, depth), { abs: 1e-15, rel: 1e-9 })
      }),
    )
  })
  it('round a pole and over a landing it is a frustum upside down, less the pole', () => {
    fc.assert(
      fc.property(length(0.05, 0.2), length(0.005, 0.1), length(1.02, 5), (inner, dish, times) => {
        const rim = inner * times
        const given = { rimRadius: m(rim), innerRadius: m(inner), dish: m(dish), overRim: m(0) }
        const whole = frustum(rim, inner, dish).volume
        close(pondedVolume({ ...given, inside: { shape: 'landing' } }) ?? none, whole, { abs: 0, rel: 1e-12 })
        const round = pondedVolume({ ...given, inside: { shape: 'round', diameter: m(2 * inner) } }) ?? none
        close(round, whole - Math.PI * inner ** 2 * dish, { abs: 1e-14, rel: 1e-9 })
      }),
    )
  })
  it('agrees with adding up thin rings and slices, which know nothing of the closed forms', () => {
    const { width, depth } = postSections['6x8']
    const [R, a, h] = [at<number>(9, 'in'), Math.min(width, depth) / 2, at<number>(1, 'in')]
    const steps = 2000
    let sum = 0
    for (let i = 0; i < steps; i++) {
      // Slices across x, each integrated along z by Simpson's rule outside the post.
      const x = R * ((2 * i + 1) / steps - 1)
      const edge = Math.sqrt(R * R - x * x)
      const from = Math.abs(x) < width / 2 ? depth / 2 : 0
      const n = 400
      const step = (edge - from) / n
      let line = 0
      for (let j = 0; j <= n; j++) {
        const z = from + j * step
        line += (j === 0 || j === n ? 1 : j % 2 ? 4 : 2) * ((h * (R - Math.hypot(x, z))) / (R - a))
      }
      sum += ((2 * step * line) / 3) * ((2 * R) / steps)
    }
    const found = pondedVolume({ rimRadius: m(R), innerRadius: m(a), dish: m(h), overRim: m(0), inside: { shape: 'rect', width, depth } })
    // The post's sides fall between slices: two slices of the whole.
    close(found ?? none, sum, { abs: 0, rel: 2 / steps })
  })
  it('stands over the rim where the ground is higher, and has no closed form where the post passes the rim', () => {
    const { width, depth } = postSections['6x6']
    const given = {
      rimRadius: at<Metres>(9, 'in'),
      innerRadius: m(width / 2),
      dish: at<Metres>(1, 'in'),
      inside: { shape: 'rect', width, depth },
    } as const
    const level = pondedVolume({ ...given, overRim: m(0) }) ?? none
    const over = pondedVolume({ ...given, overRim: at(2, 'in') }) ?? none
    close(over - level, (Math.PI * given.rimRadius ** 2 - width * depth) * at<number>(2, 'in'), { abs: 1e-15, rel: 1e-12 })
    expect(pondedVolume({ ...given, rimRadius: at(3, 'in'), overRim: m(0) })).toBeNull()
    expect(workedPondedVolume({ ...given, overRim: m(0) })).toMatchObject({
      method: 'closed form',
      standing: 'computed here',
      value: level,
    })
  })
})
