import { type Corner, corner } from '../geometry/corner.ts'
import { surfaceOf } from '../geometry/fillStack.ts'
import { turnPoints } from '../geometry/quadrature.ts'
import { cornerAngles, type Radial, radiusAlong } from '../geometry/radial.ts'
import { crossings } from '../geometry/volumeBelow.ts'
import type { Contact } from '../model/kind.ts'
import type { ExposureLine } from '../model/result.ts'
import type { Role } from '../model/solid.ts'
import type { BaseMaterial } from '../model/spec.ts'
import { metres, type SquareMetres, squareMetres } from '../units/quantity.ts'
import { footOnWood, heightOnWood, woodPerHeight } from './onWood.ts'
import type { PierFrame } from './pierFrame.ts'

const contactOf: Readonly<Partial<Record<Role, Contact>>> = {
  gravel: 'gravel',
  concrete: 'concrete',
  'dry-mix': 'dry-mix',
  backfill: 'backfill',
  granular: 'granular',
  'flowable-fill': 'flowable-fill',
}

const contactOfBase: Readonly<Record<BaseMaterial, Contact>> = { gravel: 'gravel', concrete: 'concrete', 'loose-soil': 'backfill' }

export type ContactBand = Readonly<{ contact: Contact; from: number; to: number }>

/** What touches the wood at radius r in the direction (cos, sin), from its foot up to grade, and on into concrete above grade. Metres, signed. */
export function bandsAt(frame: PierFrame, r: number, cos: number, sin: number): readonly ContactBand[] {
  const grade = heightOnWood(frame, frame.grade, r, cos, sin)
  const foot = footOnWood(frame, r, cos, sin)
  const bands: ContactBand[] = []
  let from = frame.profile.bottom
  const add = (contact: Contact, to: number) => {
    const low = Math.max(from, foot)
    if (to > low) bands.push({ contact, from: low, to })
    from = Math.max(from, to)
  }
  if (frame.spec.hole.base) add(contactOfBase[frame.spec.hole.base.material], frame.fillBottom)
  for (const lift of frame.lifts)
    add(contactOf[lift.role] ?? 'backfill', heightOnWood(frame, surfaceOf(frame.profile, lift.to), r, cos, sin))
  add('air', grade)
  return bands
}

const sides = [
  ['uphill', Math.PI],
  ['axis', null],
  ['downhill', 0],
] as const

/**
 * Wood below grade, measured at the post's own faces (at its corner when it stands turned to the slope) on the uphill and
 * downhill side, and at grade on the axis. With a bracket there is none unless its seat lies below grade.
 */
export function exposureLines(frame: PierFrame): ExposureLine[] {
  return sides.map(([side, turn]) => {
    const angle = frame.spec.site.downhill + (turn ?? 0)
    const cos = Math.cos(angle)
    const sin = Math.sin(angle)
    const r = turn === null ? 0 : radiusAlong(frame.postOutline, cos, sin)
    const grade = heightOnWood(frame, frame.grade, r, cos, sin)
    const bands = bandsAt(frame, r, cos, sin)
    const by: Partial<Record<Contact, number>> = {}
    let buried = 0
    let inConcrete = 0
    for (const band of bands) {
      const length = (Math.min(band.to, grade) - band.from) * woodPerHeight(frame)
      if (length > 0) {
        by[band.contact] = (by[band.contact] ?? 0) + length
        buried += length
      }
      if (band.contact === 'concrete' || band.contact === 'dry-mix')
        inConcrete += Math.max(0, band.to - Math.max(band.from, grade)) * woodPerHeight(frame)
    }
    return { side, belowGrade: metres(buried), by: by as ExposureLine['by'], inConcreteAboveGrade: metres(inConcrete) }
  })
}

/** Side and foot area of wood below grade by what touches it [m2]. */
export function exposureArea(frame: PierFrame): Readonly<{ area: Partial<Record<Contact, SquareMetres>>; total: SquareMetres }> {
  const edges: Corner[] = frame.lifts.map((lift) => {
    const { a, m, gx, gz } = surfaceOf(frame.profile, lift.to)
    return corner(frame.postOutline, { a, m, gx, gz }, 'upright')
  })
  const breaks = [...cornerAngles(frame.postOutline), ...crossings(edges, frame.grade)]
  const area: Partial<Record<Contact, SquareMetres>> = {}
  let total = 0
  for (const { cos, sin, weight } of turnPoints(breaks)) {
    const r = radiusAlong(frame.postOutline, cos, sin)
    const grade = heightOnWood(frame, frame.grade, r, cos, sin)
    const strip = weight * perimeterRate(frame.postOutline, r, cos, sin) * woodPerHeight(frame)
    for (const band of bandsAt(frame, r, cos, sin)) {
      const share = strip * Math.max(0, Math.min(band.to, grade) - band.from)
      if (share > 0) area[band.contact] = squareMetres((area[band.contact] ?? 0) + share)
      total += share
    }
  }
  const foot = footContact(frame)
  if (foot) {
    area[foot.contact] = squareMetres((area[foot.contact] ?? 0) + foot.area)
    total += foot.area
  }
  return { area, total: squareMetres(total) }
}

/** Length of outline passed per radian of plan angle [m/rad]. */
export function perimeterRate(outline: Radial, r: number, cos: number, sin: number): number {
  if (outline.kind !== 'rectangle') return r
  const onX = Math.abs(cos) * outline.hz > Math.abs(sin) * outline.hx
  return (r * r) / (onX ? outline.hx : outline.hz)
}

/** What the post's end grain stands on; null when the foot is above grade. */
export function footContact(frame: PierFrame): Readonly<{ contact: Contact; area: number }> | null {
  if (!frame.standing) return null
  const { postOutline: outline, foot, fillBottom } = frame
  const area = outline.kind === 'rectangle' ? 4 * outline.hx * outline.hz : Math.PI * radiusAlong(outline, 1, 0) ** 2
  const clear = 1e-9
  if (foot <= frame.profile.bottom + clear) return { contact: 'native-soil', area }
  if (frame.spec.hole.base && foot <= fillBottom + clear) return { contact: contactOfBase[frame.spec.hole.base.material], area }
  const under = frame.lifts.find((lift) => lift.to.kind !== 'level' || foot <= lift.to.y + clear)
  return under ? { contact: contactOf[under.role] ?? 'backfill', area } : null
}
