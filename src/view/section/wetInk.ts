import type { MoistureResult, PostSide, WetStretch } from '../../core/model/moistureResult.ts'
import { moistureOf } from '../../state/moistureDerived.ts'
import { wordsOf } from '../../words/index.ts'
import type { AnnotationInput } from './annotate.ts'
import type { Box, InkPot, LineStyle, Pixel } from './ink.ts'
import { freePlaces, type Marked, putNote } from './marksInk.ts'
import { drawEyes } from './eyeInk.ts'
import { drawOpen } from './openInk.ts'
import { alongPost, postRadius, sideOf } from './postEdge.ts'
import { drawRain, nameRain } from './rainInk.ts'
import { drawScatter } from './scatterInk.ts'

/** How far into the post a class is drawn, as a share of its half: the wetter, the further, so that it is told apart without colour. */
const reach: Readonly<Record<WetStretch['wetness'], number>> = { 'dries-out': 0, 'wet-at-times': 0.42, 'stays-wet': 1 }
const style: Readonly<Record<WetStretch['wetness'], LineStyle>> = { 'dries-out': 'damp', 'wet-at-times': 'damp', 'stays-wet': 'wet' }
/** The joint is a hair wide: it is drawn this much wider, and no wider than this [m]. */
const drawnWider = { times: 6, most: 0.016 } as const
/** A ribbon of classes that come and go is drawn in pieces of this length [m], with gaps half as long. */
const piece = 0.05

/** What wets the wood: classes down the post, the joint, the groundline zone, the way of rain and the water that a dish holds. */
export const drawWet = (pot: InkPot, input: Marked, taken: Box[], seats: Map<string, number>): void => {
  const { result, sight } = input
  const { faces } = sight
  if (!faces) return
  const moisture = moistureOf(result.spec)
  drawScatter(pot, input, taken, seats)
  const leaned = alongPost(input)
  for (const [theta, hand] of [[faces.left, -1] as const, [faces.right, 1] as const]) {
    const side = sideOf(result, theta)
    drawPond(pot, input, theta, moisture)
    const post = postRadius(result, theta)
    if (post === null) continue
    for (const stretch of moisture.profile) if (stretch.side === side) ribbon(pot, leaned, theta, post, stretch)
    drawOpen(pot, leaned, { theta, hand, post, side, moisture })
    drawJoint(pot, leaned, { theta, post, side, moisture })
  }
  taken.push(...drawRain(pot, input, moisture))
  if (input.isInYears) taken.push(...drawEyes(pot, leaned, moisture))
  nameRain(pot, input, moisture, taken, seats)
  drawGroundline(pot, leaned, moisture, taken, seats)
  nameJoint(pot, leaned, moisture, taken, seats)
}
export type DrawWet = typeof drawWet

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

const drawnWide = ({ joint }: MoistureResult): number => (joint ? Math.min(drawnWider.times * joint.widest, drawnWider.most) : 0)

type JointAt = Readonly<{ theta: number; post: number; side: PostSide; moisture: MoistureResult }>
function drawJoint(pot: InkPot, { sight }: AnnotationInput, { theta, post, side, moisture }: JointAt): void {
  const { joint } = moisture
  const wide = drawnWide(moisture)
  if (!joint || !(wide > 0)) return
  const top = joint.top[side]
  pot.shape('joint', sight.point(theta, post, top), sight.point(theta, post + wide, top), sight.point(theta, post, top - joint.reach))
}

/** What a dish holds when full, over its bed from the post, or from the axis where none stands in it. */
function drawPond(pot: InkPot, { sight, result }: AnnotationInput, theta: number, { top: { pond } }: MoistureResult): void {
  if (!pond) return
  const inner = (result.spec.support.kind === 'embedded' ? postRadius(result, theta) : null) ?? 0
  const bed = pond.bed.flatMap(([r, y], i): (readonly [number, number])[] => {
    if (r >= inner) return [[r, y]]
    const [outer, high] = pond.bed[i - 1] ?? [r, y]
    return outer > inner ? [[inner, y + ((inner - r) / (outer - r)) * (high - y)]] : []
  })
  const [rim] = bed
  if (!rim) return
  pot.shape(
    'pond',
    sight.point(theta, inner, pond.level),
    sight.point(theta, rim[0], pond.level),
    ...bed.map(([r, y]) => sight.point(theta, r, y)),
  )
}

/** A bracket beside the post over the zone where decay is found, and its words. */
function drawGroundline(pot: InkPot, input: Marked, { groundline }: MoistureResult, taken: Box[], seats: Map<string, number>): void {
  const words = wordsOf('scene')
  const { result, sight, isNarrow } = input
  const { faces } = sight
  if (!faces || groundline.at === 'none') return
  const theta = isNarrow ? faces.right : faces.left
  const post = postRadius(result, theta)
  if (post === null) return
  const { from, to } = groundline.bands[sideOf(result, theta)]
  const [near, far] = [post + 0.02, post + 0.045]
  pot.line('zone', sight.point(theta, near, from), sight.point(theta, far, from), sight.point(theta, far, to), sight.point(theta, near, to))
  const target = sight.point(theta, far, (from + to) / 2)
  const [x, y] = target
  const places = () => [
    ...freePlaces(input, [theta], [(from + to) / 2, from, to]),
    ...[-100, -140, -190, 120, 170, 220].flatMap((aside) => [-40, -70, -100, 0, 40].map((rise): Pixel => [x + aside, y + rise])),
    ...freePlaces(input, [theta === faces.left ? faces.right : faces.left], [(from + to) / 2, from, to]),
    ...freePlaces(input, [theta], [from - 0.2, from - 0.4]),
  ]
  putNote(pot, 'groundline', [words.marks.watch, words.marks.groundline[groundline.at]], 'figure', input, target, places, taken, seats)
}

/** Says that the gap is drawn wider than it is, at the face that has no bracket. */
function nameJoint(pot: InkPot, input: Marked, moisture: MoistureResult, taken: Box[], seats: Map<string, number>): void {
  const { result, sight, isNarrow } = input
  const { joint } = moisture
  const { faces } = sight
  const wide = drawnWide(moisture)
  if (!faces || !joint || !(wide > 0)) return
  const theta = isNarrow ? faces.left : faces.right
  const post = postRadius(result, theta)
  if (post === null) return
  const height = joint.top[sideOf(result, theta)] - joint.reach * 0.25
  const target = sight.point(theta, post + wide * 0.4, height)
  const places = () => freePlaces(input, [theta], [height - 0.1, height - 0.2, height, height - 0.35])
  putNote(pot, 'joint', wordsOf('scene').marks.joint, 'figure', input, target, places, taken, seats)
}
