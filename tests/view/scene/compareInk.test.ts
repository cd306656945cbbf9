// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { cutMeshes } from '../../../src/core/geometry/cutMeshes.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { radians } from '../../../src/core/units/quantity.ts'
import { scene as words } from '../../../src/words/en/scene.ts'
import { pierExtent } from '../../../src/view/scene/camera/pierExtent.ts'
import { CompareInk, type InkedPier } from '../../../src/view/scene/compare/CompareInk.ts'

const cut = { open: radians(Math.PI), facing: radians(defaultSpec.site.downhill + Math.PI / 2) }
const inked = (kind: string): InkedPier => {
  const result = derivePier(withChoice(defaultSpec, 'fill.kind', kind))
  const meshes = cutMeshes(result.zones, cut, { segments: 24, cutPost: false })
  return { result, extent: pierExtent(result, (id) => meshes.get(id) ?? null) }
}
const pose = { azimuth: cut.facing, pitch: 0.3, distance: 9, target: [0, -0.5, 0], shift: [0, 0], perspective: 1 } as const
const frame = { pose, viewport: { width: 300, height: 420 } }

const holder = document.createElement('div')
const ink = new CompareInk(holder)
const columns = () => [...holder.querySelectorAll('svg')]
const path = (at: number, style: string) => columns()[at]?.querySelector(`.ink-${style}:not(.casing)`)?.getAttribute('d') ?? ''
const saidIn = (at: number) => columns()[at]?.textContent ?? ''

afterEach(() => ink.clear())

describe('[W10] ink over the columns of the comparison', () => {
  const bag = inked('dry-bag-at-foot')
  const mixed = inked('mixed-full-height')
  const bracket = inked('mixed-bracket-pier')

  it('draws in each where rain ends, and says it', () => {
    ink.draw([bag, mixed], frame, cut, 'paper', false)
    expect(columns()).toHaveLength(2)
    expect(path(0, 'rain')).not.toBe('')
    expect(path(0, 'rain')).not.toBe(path(1, 'rain'))
    // Words may be broken in two lines, so that they are read without their spaces.
    const close = (text: string) => text.replaceAll(' ', '')
    expect(close(saidIn(0))).toContain(close(words.marks.rain.post))
    expect(close(saidIn(1))).toContain(close(words.marks.rain.ground))
  })

  it('marks the zone to watch at wood in the ground, and none over a bracket', () => {
    ink.draw([mixed, bracket], frame, cut, 'paper', false)
    expect(path(0, 'zone')).not.toBe('')
    expect(path(1, 'zone')).toBe('')
    expect(path(1, 'rain')).not.toBe('')
  })

  it('leaves a column without a pier bare, follows the number of columns, and goes', () => {
    ink.draw([mixed, null, bag], frame, cut, 'paper', false)
    expect(columns().map(({ style }) => style.visibility)).toEqual(['', 'hidden', ''])
    ink.draw([mixed], frame, cut, 'paper', false)
    expect(columns()).toHaveLength(1)
    ink.clear()
    expect(columns()).toHaveLength(0)
  })

  it('keeps words in their places while the picture moves', () => {
    ink.draw([bag], frame, cut, 'paper', false)
    const placed = saidIn(0)
    ink.draw([bag], { ...frame, pose: { ...pose, azimuth: pose.azimuth + 0.02 } }, cut, 'paper', true)
    expect(saidIn(0)).toBe(placed)
  })

  it('draws nothing over a pier that is not cut open', () => {
    ink.draw([mixed], frame, { ...cut, open: radians(0) }, 'paper', false)
    expect(columns()[0]?.style.visibility).toBe('hidden')
  })
})
