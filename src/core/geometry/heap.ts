import { type Corner, corner, heightAlong } from './corner.ts'
import { axis, circle, cornerAngles, type Radial, radiusAlong } from './radial.ts'
import { level, type Surface } from './surface.ts'
import { signChanges } from './volumeBelow.ts'

/** Steepness of a loose heap of soil or mulch, rise over run: 1 up in 1.5 out. Source: common practice, no source. */
export const heapSlope = 2 / 3

/** The heap's own flank, from `height` over a finished top at `inner` [m] outward. */
export const heapFall = (top: Surface, inner: number, height: number): Surface => ({
  a: top.a + top.m * inner + height + heapSlope * inner,
  m: -heapSlope,
  gx: 0,
  gz: 0,
})

export type Heap = Readonly<{
  /** The finished top it lies on, with its landing where a bracket stands. */
  top: Surface
  rim: number
  grade: Surface
  /** Radius at which its height is measured: the middle of the post's widest face, or the landing's edge [m]. */
  inner: number
  /** Above the top at `inner` [m]. */
  height: number
  /** The axis where a post leans through it instead. */
  post: Radial
  /** Edge of the ground shown; a heap that runs farther down a slope is cut off there. */
  block: Radial
  /** Signed height of the post's foot where it stands on a bracket [m]; null for a post that runs down through the heap. */
  bracketFoot: number | null
}>

/**
 * Soil or mulch heaped round the post, falling off from `height` at `inner` until it meets the top itself or, beyond the rim,
 * the ground; against a bank that stands higher than the heap at the rim it ends at the bank. Level over a bracket's landing.
 */
export function heapCorners(heap: Heap): Readonly<{ corners: Corner[]; breaks: number[] }> {
  const { top, rim, grade, inner, post, block, bracketFoot } = heap
  const cone: Surface = { a: top.a, m: top.m, gx: top.gx, gz: top.gz }
  const crest = cone.a + cone.m * inner + heap.height
  const fall = heapFall(top, inner, heap.height)
  const atRim = heightAlong(fall, rim, 1, 0)
  const reachesRim = atRim > heightAlong(cone, rim, 1, 0)
  const toeOnTop = reachesRim ? rim : (fall.a - cone.a) / (cone.m - fall.m)
  const innerRadius = (cos: number, sin: number) => (bracketFoot === null ? radiusAlong(post, cos, sin) : inner)
  const edge = (cos: number, sin: number) => Math.max(innerRadius(cos, sin), toeOnTop)
  const bank = (cos: number, sin: number) => heightAlong(grade, rim, cos, sin)

  const onTop = {
    follow: (cos: number, sin: number): readonly [number, number] => [edge(cos, sin), heightAlong(cone, edge(cos, sin), cos, sin)],
    next: 'straight',
  } as const satisfies Corner
  const atBank: Corner = {
    follow: (cos, sin) => {
      const r = edge(cos, sin)
      return [r, reachesRim ? Math.min(bank(cos, sin), atRim) : heightAlong(cone, r, cos, sin)]
    },
    next: grade,
  }
  /** Where the heap runs out on the ground beyond the rim, unless the block ends first. */
  const runOut = (cos: number, sin: number) => (fall.a - grade.a) / (grade.gx * cos + grade.gz * sin - fall.m)
  const toeAt = (on: Surface, next: Corner['next']): Corner => ({
    follow: (cos, sin) => {
      if (!reachesRim) return onTop.follow(cos, sin)
      if (bank(cos, sin) >= atRim) return [rim, atRim]
      const out = runOut(cos, sin)
      const r = Math.min(out, radiusAlong(block, cos, sin))
      return [r, heightAlong(out > r ? on : grade, r, cos, sin)]
    },
    next,
  })
  const shoulder: Corner = {
    follow: (cos, sin) => {
      const r = innerRadius(cos, sin)
      return [r, Math.max(heightAlong(fall, r, cos, sin), heightAlong(cone, r, cos, sin))]
    },
    next: 'upright',
  }
  const outer = [onTop, atBank, toeAt(grade, 'upright'), toeAt(fall, fall), shoulder]
  const breaks = [
    ...bankBreaks(grade, rim, atRim),
    ...outlineBreaks(post, toeOnTop),
    ...cornerAngles(block),
    ...signChanges((cos, sin) => runOut(cos, sin) - radiusAlong(block, cos, sin)),
  ]
  if (bracketFoot === null)
    return {
      corners: [
        { follow: (cos, sin) => [innerRadius(cos, sin), heightAlong(cone, innerRadius(cos, sin), cos, sin)], next: cone },
        ...outer,
      ],
      breaks: [...breaks, ...cornerAngles(post)],
    }
  const landing = level(cone.a + cone.m * inner)
  const flat = level(crest)
  const under = [corner(axis, landing, landing), corner(circle(inner), landing, cone)]
  const foot = level(bracketFoot)
  const over =
    bracketFoot >= crest
      ? [corner(axis, flat, 'upright')]
      : [corner(post, flat, 'upright'), corner(post, foot, foot), corner(axis, foot, 'upright')]
  return { corners: [...under, ...outer.slice(0, 4), corner(circle(inner), flat, flat), ...over], breaks }
}

/** Angles at which the bank outside the rim is as high as the heap there. */
function bankBreaks(grade: Surface, rim: number, atRim: number): number[] {
  const share = (atRim - grade.a) / (rim * Math.hypot(grade.gx, grade.gz))
  if (!(Math.abs(share) < 1)) return []
  const uphill = Math.atan2(grade.gz, grade.gx)
  return [uphill + Math.acos(share), uphill - Math.acos(share)]
}

/** Angles at which a rectangle's sides pass a circle. */
function outlineBreaks(post: Radial, radius: number): number[] {
  if (post.kind !== 'rectangle') return []
  const onX = post.hx < radius ? [Math.acos(post.hx / radius)] : []
  const onZ = post.hz < radius ? [Math.asin(post.hz / radius)] : []
  return [...onX, ...onZ].flatMap((t) => [t, Math.PI - t, Math.PI + t, -t])
}
