import type { Manifold } from 'manifold-3d'
import { postSections } from '../../src/core/engineering/tables/postSections.ts'
import type { ConvexSolid } from '../../src/core/geometry/placed.ts'
import { bracketKind, fillKind, liftsOf } from '../../src/core/kinds/index.ts'
import type { PierSpec } from '../../src/core/model/spec.ts'
import type { Zone } from '../../src/core/model/zone.ts'
import { metres } from '../../src/core/units/quantity.ts'
import type { Kit } from './bodies.ts'

/**
 * The same pier from the same document, made by Booleans of a general solid library and by none of the project's geometry:
 * only the order of the lifts is asked of the kind. Bodies by zone id; metres, y up.
 */
type Bodies = Map<string, Manifold>
type Block = Readonly<{ half: number; bottom: number }>

/** Profile of the hole, bottom to top, [n][2] (r, y); its last stretch goes on upward past any grade. */
const holeProfile = ({ hole, site }: PierSpec): [number, number][] => {
  const shaft = hole.diameter / 2
  const profile: [number, number][] = [[0, -hole.depth]]
  if (hole.bell) profile.push([hole.bell.diameter / 2, -hole.depth], [shaft, -hole.depth + hole.bell.height])
  else profile.push([shaft, -hole.depth])
  if (hole.flare) {
    const widening = (hole.flare.diameter / 2 - shaft) / hole.flare.depth
    const mouth = hole.flare.diameter / 2 / (1 - widening * site.slope)
    const top = site.slope * mouth + 0.05
    profile.push([shaft, -hole.flare.depth], [hole.flare.diameter / 2 + widening * top, top])
  } else profile.push([shaft, shaft * site.slope + 0.05])
  return [...profile, [0, profile[profile.length - 1]?.[1] ?? 0]]
}

/** Level [m] up to which `volume` [m3] fills the hole round the post from `bottom`: by bisection on the sum of frusta. */
const levelFor = (spec: PierSpec, postArea: number, foot: number, bottom: number, volume: number): number => {
  const profile = holeProfile(spec)
  const filled = (level: number): number => {
    let sum = -postArea * Math.max(0, level - Math.max(foot, bottom))
    for (let i = 1; i < profile.length; i++) {
      const [r0, y0] = profile[i - 1] ?? [0, 0]
      const [r1, y1] = profile[i] ?? [0, 0]
      const low = Math.max(y0, bottom)
      const high = Math.min(y1, level)
      if (high <= low) continue
      const radius = (y: number): number => r0 + ((r1 - r0) * (y - y0)) / (y1 - y0)
      const [a, b] = [radius(low), radius(high)]
      sum += (Math.PI * (high - low) * (a * a + a * b + b * b)) / 3
    }
    return sum
  }
  let [low, high] = [bottom, 0]
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2
    if (filled(middle) < volume) low = middle
    else high = middle
  }
  return (low + high) / 2
}

type Top = Readonly<{ rim: number; m: number; apex: number; flatWithin: number; inner: number }>

/** The finished top as a cone y = apex + m max(r, flatWithin) on a level rim above grade's uphill edge. */
const finishedTop = (spec: PierSpec): Top => {
  const { width, depth } = postSections[spec.post.section]
  const shaft = spec.hole.diameter / 2
  const site = { landing: metres(0), standOff: metres(0), postWidth: width, postDepth: depth }
  const { support } = spec
  const inner =
    support.kind === 'bracket' ? bracketKind(support.bracket.kind).landingRadius(support.bracket, site) : Math.min(width, depth) / 2
  const rim = shaft * spec.site.slope + spec.top.rim
  const sign = { flat: 0, crowned: 1, dished: -1 }[spec.top.shape]
  const m = inner < shaft ? (-sign * spec.top.rise) / (shaft - inner) : 0
  return { rim, m, apex: rim - m * shaft, flatWithin: support.kind === 'bracket' ? Math.min(inner, shaft) : 0, inner }
}

/** Plane angle's slope of grade along x and z. */
const gradeSlopes = ({ slope, downhill }: PierSpec['site']): readonly [number, number] => [
  -slope * Math.cos(downhill),
  -slope * Math.sin(downhill),
]

/** Soil and mulch lie at one up in one and a half out. */
const heapFall = 2 / 3

export const solidPier = (kit: Kit, spec: PierSpec, block: Block): Bodies => {
  const bodies: Bodies = new Map()
  const { hole, site, post } = spec
  const [gx, gz] = gradeSlopes(site)
  const shaft = hole.diameter / 2
  const bottom = -hole.depth
  const high = post.heightAboveGrade + 1
  const reach = 3 * block.half

  const section = postSections[post.section]
  const isRound = section.shape === 'round'
  const top = finishedTop(spec)
  const hasTop = fillKind(spec.fill.kind).hasTop
  const foot =
    spec.support.kind === 'embedded'
      ? bottom + spec.support.foot
      : (hasTop ? top.apex + top.m * Math.max(top.inner, top.flatWithin) : 0) + spec.support.standOff
  const postBetween = (y0: number, y1: number): Manifold =>
    isRound
      ? kit.turned([
          [0, y0],
          [section.width / 2, y0],
          [section.width / 2, y1],
          [0, y1],
        ])
      : kit.box(section.width, section.depth, y0, y1)
  const wood = postBetween(foot, post.heightAboveGrade)
  bodies.set('post', wood)

  const open = kit.turned(holeProfile(spec))
  const dug = kit.underPlane(open, 0, gx, gz)
  const ground = kit.underPlane(kit.box(2 * block.half, 2 * block.half, block.bottom, site.slope * block.half * 2 + 0.1), 0, gx, gz)
  const native = kit.minus(ground, dug)
  const layers: [string, number][] = [
    ...(site.topsoil > 0 ? [['topsoil', site.topsoil] as [string, number]] : []),
    ['soil', site.lower ? site.lower.from : Number.POSITIVE_INFINITY],
    ...(site.lower ? [['soil-lower', Number.POSITIVE_INFINITY] as [string, number]] : []),
  ]
  let rest = native
  for (const [id, to] of layers) {
    if (to === Number.POSITIVE_INFINITY) bodies.set(id, rest)
    else {
      const below = kit.underPlane(rest, -to, gx, gz)
      bodies.set(id, kit.minus(rest, below))
      rest = below
    }
  }

  const slab = (y0: number, y1: number): Manifold => kit.box(2 * reach, 2 * reach, y0, y1)
  const fillBottom = bottom + (hole.base?.thickness ?? 0)
  if (hole.base) bodies.set('base', kit.minus(kit.and(dug, slab(bottom - 1, fillBottom)), wood))

  // A finished top stands on the shaft's own cylinder; a wide mouth is filled to grade around it.
  const column = (): Manifold => {
    const under = kit.underCone(top.apex, top.m, top.flatWithin, reach, bottom - 1)
    const riser = kit.turned([...holeProfile({ ...spec, hole: { ...hole, flare: null } }).slice(0, -2), [shaft, high], [0, high]])
    const pier = kit.and(riser, under)
    return hole.flare ? kit.add(pier, kit.minus(dug, riser)) : pier
  }
  const area = isRound ? (Math.PI / 4) * section.width ** 2 : section.width * section.depth
  const end = hasTop ? ({ kind: 'top', surface: { a: top.apex, m: top.m, gx: 0, gz: 0 } } as const) : ({ kind: 'grade' } as const)
  const lifts = liftsOf(spec.fill, {
    bottom: metres(fillBottom),
    end,
    looseWeight: spec.placing.looseWeight,
    levelFor: (volume) => metres(levelFor(spec, spec.support.kind === 'embedded' ? area : 0, foot, fillBottom, volume)),
  })
  let from = fillBottom
  for (const lift of lifts) {
    const upTo = lift.to.kind === 'top' ? column() : lift.to.kind === 'grade' ? dug : kit.and(dug, slab(bottom - 1, lift.to.y))
    bodies.set(lift.id, kit.minus(kit.minus(upTo, slab(bottom - 1, from)), wood))
    if (lift.to.kind === 'level') from = lift.to.y
  }

  if (hasTop && spec.top.heaped > 0) {
    const crest = top.apex + top.m * top.inner + spec.top.heaped
    const cone = kit.underCone(crest + heapFall * top.inner, -heapFall, top.inner, reach, bottom - 1)
    const overBlock = kit.and(cone, kit.box(2 * block.half, 2 * block.half, block.bottom, high))
    // A heap that ends on the top itself does not begin again on lower ground outside the rim.
    const heightAtRim = crest - heapFall * (shaft - top.inner)
    const onTop = kit.turned([
      [0, bottom],
      [shaft, bottom],
      [shaft, high],
      [0, high],
    ])
    const heap = heightAtRim > top.rim ? overBlock : kit.and(overBlock, onTop)
    const above = kit.minus(kit.minus(kit.minus(heap, native), column()), wood)
    bodies.set('heap', above)
  }
  return bodies
}

/** The parts that stand whole, as the project places them: straight rods and turned boxes. */
export const solidPart = (kit: Kit, solid: ConvexSolid): Manifold => {
  if (solid.kind === 'rod') return kit.rod(solid.from, solid.to, 2 * solid.radius)
  if (solid.kind === 'prism') return kit.keep(kit.wasm.Manifold.hull([...solid.from, ...solid.to].map(([px, py, pz]) => [px, py, pz])))
  const [x, y, z] = solid.centre
  const [hx, hy, hz] = solid.half
  const turned = kit.keep(kit.box(2 * hx, 2 * hz, -hy, hy).rotate([0, (-solid.turn * 180) / Math.PI, 0]))
  return kit.keep(turned.translate([x, y, z]))
}

/** Half width and underside of the block of ground that a result shows: a choice of the drawing, so it is read, not recomputed. */
export const blockOf = (zones: readonly Zone[]): Block => {
  for (const zone of [...zones].reverse()) {
    if (zone.build !== 'swept' || !zone.role.startsWith('soil')) continue
    for (const corner of zone.corners) {
      if ('at' in corner && corner.at.kind === 'rectangle') return { half: corner.at.hx, bottom: corner.y.a }
    }
  }
  throw new Error('blockOf: no block of ground among the zones')
}
