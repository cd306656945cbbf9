import { radiusAlong } from '../../core/geometry/radial.ts'
import type { ScatterClass } from '../../core/engineering/mix/dryPourScatter.ts'
import type { MoistureResult, PostSide, WetStretch } from '../../core/model/moistureResult.ts'
import type { PierResult } from '../../core/model/result.ts'
import { moistureOf } from '../../state/moistureDerived.ts'
import { scene as words } from '../../text/en/scene.ts'
import type { AnnotationInput } from './annotate.ts'
import type { Box, InkPot, LineStyle, Pixel } from './ink.ts'
import { placesOn, putWords, type Marked } from './marksInk.ts'
import { dryPourOf } from '../../state/dryPourDerived.ts'

/** How far into the post a class is drawn, as a share of its half: the wetter, the further, so that it is told apart without colour. */
const reach: Readonly<Record<WetStretch['wetness'], number>> = { 'dries-out': 0, 'wet-at-times': 0.42, 'stays-wet': 1 }
const style: Readonly<Record<WetStretch['wetness'], LineStyle>> = { 'dries-out': 'damp', 'wet-at-times': 'damp', 'stays-wet': 'wet' }
/** The joint is a hair wide: it is drawn this much wider, and no wider than this [m]. */
const drawnWider = { times: 6, most: 0.016 } as const
/** A ribbon of classes that come and go is drawn in pieces of this length [m], with gaps half as long. */
const piece = 0.05

/** What wets the wood: classes down the post, the joint, the groundline zone, the way of rain and the water that a dish holds. */
export function drawWet(pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void {
  const { result, sight } = input
  const { faces } = sight
  if (!faces) return
  const moisture = moistureOf(result.spec)
  drawScatter(pot, input, taken, seats)
  for (const theta of [faces.left, faces.right]) {
    const side = sideOf(result, theta)
    const post = postRadius(result, theta)
    if (post === null) continue
    for (const stretch of moisture.profile) if (stretch.side === side) ribbon(pot, input, theta, post, stretch)
    drawJoint(pot, input, { theta, post, side, moisture })
    drawPond(pot, input, theta, post, moisture)
  }
  drawRain(pot, input, moisture)
  drawGroundline(pot, input, moisture, taken, seats)
}

/** The side of the post that a face shows: that which lies nearest. */
export function sideOf({ spec }: PierResult, theta: number): PostSide {
  const along = Math.cos(theta - spec.site.downhill)
  return along > 0.35 ? 'downhill' : along < -0.35 ? 'uphill' : 'axis'
}

/** From the axis to the post's face at a plan angle [m]; null without a post that is turned about the axis. */
function postRadius({ zones }: PierResult, theta: number): number | null {
  for (const zone of zones) {
    if (zone.role !== 'wood' || zone.build !== 'swept') continue
    const r = Math.max(0, ...zone.corners.map((one) => ('at' in one ? radiusAlong(one.at, Math.cos(theta), Math.sin(theta)) : 0)))
    if (r > 0) return r
  }
  return null
}

function ribbon(pot: InkPot, { sight }: AnnotationInput, theta: number, post: number, { from, to, wetness }: WetStretch): void {
  const inner = post * (1 - reach[wetness])
  if (inner >= post) return
  const band = (low: number, high: number) =>
    pot.shape(
      style[wetness],
      sight.point(theta, inner, low),
      sight.point(theta, post, low),
      sight.point(theta, post, high),
      sight.point(theta, inner, high),
    )
  if (wetness === 'stays-wet') band(from, to)
  else for (let top: number = to; top > from; top -= 1.5 * piece) band(Math.max(from, top - piece), top)
}

type JointAt = Readonly<{ theta: number; post: number; side: PostSide; moisture: MoistureResult }>
function drawJoint(pot: InkPot, { sight }: AnnotationInput, { theta, post, side, moisture: { joint } }: JointAt): void {
  if (!joint || !(joint.widest > 0)) return
  const wide = Math.min(drawnWider.times * joint.widest, drawnWider.most)
  const top = joint.top[side]
  pot.shape('joint', sight.point(theta, post, top), sight.point(theta, post + wide, top), sight.point(theta, post, top - joint.reach))
}

/** What a dish holds when full, level with its rim. */
function drawPond(pot: InkPot, { sight, result }: AnnotationInput, theta: number, post: number, { top }: MoistureResult): void {
  if (!(top.pondedVolume > 0)) return
  const { diameter } = result.spec.hole
  const rim = rimLevel(result)
  pot.shape(
    'pond',
    sight.point(theta, post, rim),
    sight.point(theta, diameter / 2, rim),
    sight.point(theta, post, rim - result.spec.top.rise),
  )
}

/** Level of the rim on the axis [m]: the rim is told over grade at the uphill edge. */
const rimLevel = ({ spec }: PierResult): number => spec.top.rim + spec.site.slope * (spec.hole.diameter / 2)

/** Places for words on the ground beside the pier, on the faces given and at the heights given [m]. */
const freePlaces = (input: AnnotationInput, thetas: readonly number[], heights: readonly number[]): Pixel[] =>
  thetas.flatMap((theta) => heights.flatMap((height) => placesOn(input, theta, [0.3, 0.5, 0.7, 0.9], () => height, input.size.figure)))

const arrow = 9

/** The way of rain along the fall line, with a head where it ends on the ground and a drop where it ends at the post. */
export function drawRain(pot: InkPot, { sight, result }: AnnotationInput, { top }: MoistureResult): void {
  const { downhill } = result.spec.site
  const at = ([r, y]: readonly [number, number]): Pixel => sight.point(r < 0 ? downhill + Math.PI : downhill, Math.abs(r), y + 0.008)
  const points = top.line.map(at)
  const [end, before] = [points.at(-1), points.at(-2)]
  if (end === undefined || before === undefined) return
  pot.line('rain', ...points)
  if (top.path.end === 'post') {
    pot.dot('drop', end, 5.5)
    return
  }
  const run = Math.hypot(end[0] - before[0], end[1] - before[1]) || 1
  const [dx, dy] = [(end[0] - before[0]) / run, (end[1] - before[1]) / run]
  pot.shape(
    'drop',
    end,
    [end[0] - arrow * dx + 4 * dy, end[1] - arrow * dy - 4 * dx],
    [end[0] - arrow * dx - 4 * dy, end[1] - arrow * dy + 4 * dx],
  )
}

/** A bracket beside the post over the zone where decay is found, and its words. */
function drawGroundline(pot: InkPot, input: Marked, { groundline, top }: MoistureResult, taken: Box[], seats: Map<string, number>): void {
  const { result, sight, isNarrow } = input
  const { faces } = sight
  if (!faces) return
  const theta = isNarrow ? faces.right : faces.left
  const side = sideOf(result, theta)
  const post = postRadius(result, theta)
  const ends = words.marks.rain[top.path.end]
  if (groundline.at !== 'none' && post !== null) {
    const { from, to } = groundline.bands[side]
    const [near, far] = [post + 0.02, post + 0.045]
    pot.line(
      'zone',
      sight.point(theta, near, from),
      sight.point(theta, far, from),
      sight.point(theta, far, to),
      sight.point(theta, near, to),
    )
    const heights = [(from + to) / 2, from, to, from - 0.2, from - 0.4]
    const places = freePlaces(input, [theta, theta === faces.left ? faces.right : faces.left], heights)
    putWords(pot, 'groundline', words.marks.groundline[groundline.at], 'figure', input, places, taken, seats)
  }
  const { downhill } = result.spec.site
  const last = top.line.at(-1)
  if (!last || isNarrow) return
  const [x, y] = sight.point(last[0] < 0 ? downhill + Math.PI : downhill, Math.abs(last[0]), last[1])
  const around = [0, 70, -70, 130, -130].flatMap((aside) => [-26, 24, -52, 50, -80].map((rise): Pixel => [x + aside, y + rise]))
  putWords(pot, 'rain', ends, 'water', input, around, taken, seats)
}

const grid = { rows: 22, columns: 5 } as const
const scatterStyle: Readonly<Record<ScatterClass, LineStyle | null>> = {
  sound: null,
  weak: 'weak',
  crumbly: 'crumbly',
  powder: 'powder',
}

/** One way in which a dry pour may have turned out: a picture, and no number comes of it. */
function drawScatter(pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void {
  const { result, sight } = input
  const pour = dryPourOf(result.spec)
  const { faces } = sight
  if (!pour || !faces) return
  const wall = result.spec.hole.diameter / 2
  for (const [turn, theta] of [faces.left, faces.right].entries()) {
    const post = postRadius(result, theta) ?? 0
    for (let row = 0; row < grid.rows; row++)
      for (let column = 0; column < grid.columns; column++) {
        const across = turn === 0 ? column + 0.5 : column + 0.5 + grid.columns
        const found = scatterStyle[pour.classAt(across / grid.columns, (row + 0.5) / grid.rows)]
        if (found === null) continue
        const r = (share: number) => post + (wall - post) * share
        const y = (share: number) => pour.to - (pour.to - pour.from) * share
        const [a, b] = [column / grid.columns, (column + 1) / grid.columns]
        const [c, d] = [row / grid.rows, (row + 1) / grid.rows]
        pot.shape(
          found,
          sight.point(theta, r(a), y(c)),
          sight.point(theta, r(b), y(c)),
          sight.point(theta, r(b), y(d)),
          sight.point(theta, r(a), y(d)),
        )
      }
  }
  const middle = (pour.from + pour.to) / 2
  const places = freePlaces(input, [faces.right, faces.left], [middle, middle - 0.15, middle + 0.15, pour.from, middle + 0.3])
  putWords(pot, 'scatter', words.marks.scatter, 'figure', input, places, taken, seats)
}
