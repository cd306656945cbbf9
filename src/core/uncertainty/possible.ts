import { soilValues } from '../derive/uplift/soilValues.ts'
import type { PierSpec } from '../model/spec.ts'
import { buildable } from '../spec/validate.ts'
import { asEntered, type Draw, type InputId } from './inputs.ts'
import { drawnSpec } from './upliftSample.ts'

/** Inputs that move sizes: what decides whether a pier can be built as drawn. */
const sizes: readonly InputId[] = [
  'hole-diameter',
  'bell-diameter',
  'hole-depth',
  'fill-height',
  'bar-height',
  'bar-off-middle',
  'bracket-embedment',
]

const isBuildable = (spec: PierSpec): boolean => buildable(spec).every((issue) => issue.severity !== 'error')

/** Could there be such a pier in such a ground? A hole no wider than its post is none; nor is a soil that slides off by itself. */
export function isPossible(spec: PierSpec, draw: Readonly<Draw>): boolean {
  return hasGround(spec, draw['friction-angle']) && isBuildable(drawnSpec(spec, draw))
}

function hasGround({ site }: PierSpec, shift: number): boolean {
  const soils = site.lower ? [site.soil, site.lower.soil] : [site.soil]
  return soils.every((soil) => {
    const { frictionAngle } = soilValues(soil)
    if (frictionAngle === null || frictionAngle === 0) return true
    return frictionAngle + shift > 0 && frictionAngle + shift < Math.PI / 2
  })
}

/**
 * Is every draw between these ends possible? Rules compare sums of lengths, so that what holds at all corners holds between them;
 * then no single draw has to be looked at.
 */
export function isAlwaysPossible(spec: PierSpec, ends: ReadonlyMap<InputId, readonly [low: number, high: number]>): boolean {
  const moved = sizes.filter((id) => ends.has(id))
  const angle = ends.get('friction-angle') ?? [0, 0]
  if (!angle.every((shift) => hasGround(spec, shift))) return false
  for (let corner = 0; corner < 2 ** moved.length; corner++) {
    const draw = asEntered()
    moved.forEach((id, bit) => {
      draw[id] = ends.get(id)?.[(corner >> bit) & 1] ?? draw[id]
    })
    if (!isBuildable(drawnSpec(spec, draw))) return false
  }
  return true
}
