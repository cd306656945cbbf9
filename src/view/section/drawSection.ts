import { heightAlong } from '../../core/geometry/corner.ts'
import { sectionPolygons } from '../../core/geometry/section.ts'
import { plane } from '../../core/geometry/surface.ts'
import type { PierResult } from '../../core/model/result.ts'
import type { Role, SectionPolygon } from '../../core/model/solid.ts'
import type { Layer } from '../../state/appState.ts'
import type { Gone } from '../../state/goneBy.ts'
import { withoutZones } from '../../state/shown.ts'
import { annotate, type Say, type Sight } from './annotate.ts'
import { type Hatch, hatchOfGround, hatchOfRole } from './hatch.ts'
import type { Box, Ink, Pixel } from './ink.ts'
import type { Side } from './labelColumns.ts'
import { mostNames, namedZones, widestName, wishFor } from './nameWishes.ts'
import { sectionAnchors } from './sectionAnchors.ts'
import type { TypeSize } from './typeSize.ts'
import type { DrawWet } from './wetInk.ts'

type Size = Readonly<{ width: number; height: number }>
export type SectionInput = Readonly<{
  result: PierResult
  /** Plan angle that looks at the reader [rad]. */
  facing: number
  cutPost: boolean
  layers: Readonly<Record<Layer, boolean>>
  /** What draws wet wood where its layer is on; null before it has been fetched. */
  drawWet: DrawWet | null
  say: Say
  type: TypeSize
  size: Size
  /** Zones that are not there yet: the drawing keeps its scale and leaves them out. */
  hidden?: ReadonlySet<string>
  /** Years are looked at. */
  isInYears?: boolean
  /** Share of such posts that is no longer sound at the year on show; left out while no year is. */
  gone?: Readonly<Gone> | null
  /** What stands over the drawing from elsewhere, which no words may cover [px]. */
  over?: readonly Box[]
  /** Pixels to a metre that a drawing may have, as on paper: the largest that fits is taken. Left out: whatever fills the room. */
  scales?: readonly number[]
}>

export type SectionBody = Readonly<{ key: string; zone: string; role: Role; hatch: Hatch; cut: boolean; path: string; outline: string }>
export type SectionDrawing = Readonly<{
  bodies: readonly SectionBody[]
  lines: readonly Readonly<{ style: 'ground' | 'water' | 'frost' | 'break'; path: string }>[]
  ink: Ink
  frame: SectionFrame
}>

/** Where the section lies in its drawing: a point `u` metres from the axis and `y` above grade stands at (axis + u perMetre, grade - y perMetre). */
export type SectionFrame = Readonly<{
  perMetre: number
  axis: number
  grade: number
  /** Half the width of the ground shown, its lower edge and the top of what is shown [m]. */
  half: number
  bottom: number
  top: number
}>

const narrow = 560
const none: ReadonlySet<string> = new Set()
const isNative = (role: Role): boolean => role === 'topsoil' || role === 'soil' || role === 'soil-lower'

/** The section as path data, in pixels of a drawing of the given size. */
export function drawSection({
  result,
  facing,
  cutPost,
  layers,
  drawWet,
  say,
  type,
  size,
  scales = [],
  hidden = none,
  gone = null,
  isInYears = false,
  over = [],
}: SectionInput): SectionDrawing {
  const rightAngle = facing - Math.PI / 2
  const isNarrow = size.width < narrow
  const all = sectionPolygons(result.zones, rightAngle, { cutPost })
  const polygons = all.filter(({ zone, role }) => (layers.soil || !isNative(role)) && !hidden.has(zone))
  const shown = withoutZones(result, hidden)
  const ground = extentOf(all.filter(({ role }) => isNative(role)))
  const pier = extentOf(all.filter(({ role }) => !isNative(role) && role !== 'wood'))
  const depth = result.spec.hole.depth
  const top = Math.min(result.spec.post.heightAboveGrade, Math.max(ground.top, pier.top) + 0.3 * depth)
  const named = namedZones(
    shown.zones.filter(({ role }) => layers.soil || !isNative(role)),
    mostNames(isNarrow, isInYears),
  )
  const column = layers.labels ? widestName(named, type.name) + 30 : 16
  // A narrow drawing has its names on the left, its figures or the words for water on the right.
  const hasRight = layers.dimensions || (layers.labels && layers.wetness)
  const beside = isNarrow ? (hasRight ? 132 : 28) : column + 12
  const room = { left: column + 12, right: size.width - beside, top: 12, bottom: size.height - 12 }
  const reach = isNarrow ? Math.max(result.spec.hole.diameter, result.spec.hole.bell?.diameter ?? 0) * 0.58 : ground.half
  const largest = Math.min((room.right - room.left) / (2 * reach), (room.bottom - room.top) / (top - ground.bottom))
  const scale = Math.max(...scales.filter((one) => one <= largest), 0) || largest
  const middle = (room.left + room.right) / 2
  const zero = (room.top + room.bottom) / 2 + (scale * (top + ground.bottom)) / 2
  const place = (u: number, y: number): Pixel => [middle + u * scale, zero - Math.min(y, top) * scale]
  const pathOf = (points: readonly Pixel[], closed: boolean): string =>
    points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('') + (closed ? 'Z' : '')
  const bodies = polygons.map((polygon, i): SectionBody => {
    const points = polygon.points.map(([u, y]) => place(u, y))
    return {
      key: `${polygon.zone}-${i}`,
      zone: polygon.zone,
      role: polygon.role,
      hatch: hatchFor(polygon, result),
      cut: polygon.cut,
      path: pathOf(points, true),
      outline: isNative(polygon.role)
        ? innerEdges(polygon, ground, place, pathOf)
        : polygon.role === 'wood'
          ? openTop(polygon, top, place, pathOf)
          : pathOf(points, true),
    }
  })
  const sight: Sight = {
    point: (theta, r, y) => place(r * Math.cos(theta - rightAngle), y),
    isShown: () => true,
    faces: { left: rightAngle + Math.PI, right: rightAngle },
    isFlat: true,
    half: ground.half,
    perMetre: scale,
    pier: [...pierBoxes(all, place, top), ...over],
  }
  const wishes = named.map((zone) => {
    const anchors: Partial<Record<Side, Pixel>> = {}
    for (const side of ['left', 'right'] as const) {
      if (isNarrow && side === 'right') continue
      const best = sectionAnchors(
        zone,
        side === 'left' ? rightAngle + Math.PI : rightAngle,
        ground.bottom,
        isNarrow ? (middle - column + 2) / scale : undefined,
      )[0]
      if (best) anchors[side] = sight.point(...best)
    }
    return wishFor(zone, anchors, type.name)
  })
  const edge = isNarrow ? 0 : ground.half * scale
  const columns = {
    left: isNarrow ? column - 18 : middle - edge - 26,
    right: middle + edge + 26,
    top: room.top,
    bottom: room.bottom,
    taken: { left: over.map(({ y, height }) => [y, y + height] as const), right: [] },
  }
  const { ink } = annotate({
    result: shown,
    sight,
    layers,
    drawWet,
    say,
    size: type,
    isNarrow,
    wishes,
    columns,
    sides: new Map(),
    gone,
    isInYears,
    bounds: { x: 4, y: 4, width: size.width - 8, height: size.height - 8 },
  })
  const frame = { perMetre: scale, axis: middle, grade: zero, half: ground.half, bottom: ground.bottom, top }
  return { bodies, lines: groundLines({ result, rightAngle, layers, ground, top, place, pathOf }), ink, frame }
}

type Extent = Readonly<{ half: number; bottom: number; top: number }>
const extentOf = (polygons: readonly SectionPolygon[]): Extent => {
  const points = polygons.flatMap((polygon) => polygon.points)
  return {
    half: Math.max(...points.map(([u]) => Math.abs(u)), 0.1),
    bottom: Math.min(...points.map(([, y]) => y), 0),
    top: Math.max(...points.map(([, y]) => y), 0),
  }
}

/** Boxes round post and fill, which no figure may cover. */
function pierBoxes(polygons: readonly SectionPolygon[], place: PlaceAt, top: number): Box[] {
  return polygons.flatMap(({ role, points }): Box[] => {
    if (isNative(role) || role === 'bar') return []
    const pixels = points.map(([u, y]) => place(u, Math.min(y, top)))
    const x = Math.min(...pixels.map((p) => p[0]))
    const y = Math.min(...pixels.map((p) => p[1]))
    return [{ x, y, width: Math.max(...pixels.map((p) => p[0])) - x, height: Math.max(...pixels.map((p) => p[1])) - y }]
  })
}

/** Native ground carries its class's own marks. */
function hatchFor({ role, cut }: SectionPolygon, { spec }: PierResult): Hatch {
  if (role === 'soil') return hatchOfGround(spec.site.soil)
  if (role === 'soil-lower') return hatchOfGround((spec.site.lower ?? spec.site).soil)
  return cut || role === 'wood' ? hatchOfRole(role) : 'none'
}

type PathOf = (points: readonly Pixel[], closed: boolean) => string
type PlaceAt = (u: number, y: number) => Pixel

/** Edges of native ground, without those where the block only ends because the drawing does. */
function innerEdges({ points }: SectionPolygon, ground: Extent, place: PlaceAt, pathOf: PathOf): string {
  const ends = ([u, y]: readonly [number, number]): boolean =>
    Math.abs(Math.abs(u) - ground.half) < 1e-6 || Math.abs(y - ground.bottom) < 1e-6
  return points
    .map((from, i) => {
      const to = points[(i + 1) % points.length] ?? from
      const outer = ends(from) && ends(to) && (Math.abs(from[0] - to[0]) < 1e-6 || Math.abs(from[1] - to[1]) < 1e-6)
      return outer ? '' : pathOf([place(...from), place(...to)], false)
    })
    .join('')
}

/** The post's outline, broken off freehand where it leaves the drawing. */
function openTop({ points }: SectionPolygon, top: number, place: PlaceAt, pathOf: PathOf): string {
  const us = points.map(([u]) => u)
  const low = Math.min(...points.map(([, y]) => y))
  const high = Math.max(...points.map(([, y]) => y))
  const [left, right] = [Math.min(...us), Math.max(...us)]
  if (high <= top)
    return pathOf(
      points.map(([u, y]) => place(u, y)),
      true,
    )
  const [lx, ly] = place(left, top)
  const [rx] = place(right, top)
  const w = rx - lx
  const wave = `M${lx} ${ly}c${w * 0.2} ${-w * 0.14} ${w * 0.35} ${-w * 0.1} ${w * 0.5} 0s${w * 0.3} ${w * 0.12} ${w * 0.5} 0`
  return pathOf([place(left, top), place(left, low), place(right, low), place(right, top)], false) + wave
}

type LinesInput = Readonly<{
  result: PierResult
  rightAngle: number
  layers: SectionInput['layers']
  ground: Extent
  top: number
  place: PlaceAt
  pathOf: PathOf
}>

function groundLines({ result, rightAngle, layers, ground, place, pathOf }: LinesInput): SectionDrawing['lines'] {
  const { spec, sheets } = result
  const { slope, downhill, waterTable, frostDepth } = spec.site
  const grade = plane(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill))
  const gradeAt = (u: number): number =>
    heightAlong(grade, Math.abs(u), Math.cos(rightAngle) * Math.sign(u), Math.sin(rightAngle) * Math.sign(u))
  const mouth = Math.max(spec.hole.diameter, spec.hole.flare?.diameter ?? 0) / 2
  const both = (y: (u: number) => number): string =>
    [-1, 1].map((side) => pathOf([place(side * mouth, y(side * mouth)), place(side * ground.half, y(side * ground.half))], false)).join('')
  const lines: { style: 'ground' | 'water' | 'frost' | 'break'; path: string }[] = []
  if (layers.soil) {
    lines.push({
      style: 'break',
      path: [-1, 1]
        .map((side) => breakLine(place(side * ground.half, gradeAt(side * ground.half)), place(side * ground.half, ground.bottom)))
        .join(''),
    })
    lines.push({ style: 'ground', path: both(gradeAt) })
  }
  if (layers.water && waterTable !== null && sheets.some(({ id }) => id === 'water-table'))
    lines.push({ style: 'water', path: both(() => -waterTable) })
  if (layers.frost && sheets.some(({ id }) => id === 'frost-line'))
    lines.push({ style: 'frost', path: both((u) => gradeAt(u) - frostDepth) })
  return lines
}

/** Long break: a straight thin line with zigzags. */
function breakLine([x, y1]: Pixel, [, y2]: Pixel): string {
  const over = 10
  const zig = (y: number): string => `L${x} ${y - 8}L${x - 6} ${y - 3}L${x + 6} ${y + 3}L${x} ${y + 8}`
  return `M${x} ${y1 - over}${zig(y1 + (y2 - y1) / 3)}${zig(y1 + (2 * (y2 - y1)) / 3)}L${x} ${y2 + over}`
}
