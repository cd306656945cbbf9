import earcut from 'earcut'
import type { Mesh } from '../model/solid.ts'
import { type Corner, cornerPoint, type Edge } from './corner.ts'
import { MeshWriter } from './meshWriter.ts'
import type { PlanAngles } from './planAngles.ts'
import { isAxis } from './radial.ts'

type Point = readonly [number, number]

/**
 * Mesh of a swept body over the shared plan angles: one strip of faces for each edge of the polygon, then, where the body is
 * cut open, the two exact section faces and their outline. Outward faces are anticlockwise.
 */
export function sweptMesh(corners: readonly Corner[], angles: PlanAngles): Mesh {
  const n = corners.length
  const count = angles.theta.length
  const radii = new Float64Array(n * count)
  const heights = new Float64Array(n * count)
  corners.forEach((c, i) => {
    for (let k = 0; k < count; k++) {
      const p = cornerPoint(c, angles.cos[k] ?? 1, angles.sin[k] ?? 0)
      radii[i * count + k] = p[0]
      heights[i * count + k] = p[1]
    }
  })
  const writer = new MeshWriter(n * count * 4 + 4 * n, n * count * 6 + 6 * n)
  corners.forEach((from, i) => {
    const j = (i + 1) % n
    const to = corners[j]
    if (!to || ('at' in from && 'at' in to && isAxis(from.at) && isAxis(to.at))) return
    const strip = { r1: i * count, r2: j * count, radii, heights, angles }
    if (from.next === 'upright' && 'at' in from && from.at.kind === 'rectangle') flatStrip(writer, strip, from.at.hx, from.at.hz)
    else smoothStrip(writer, strip, from.next)
  })
  const outsideCount = writer.indexCount
  const outline: number[] = []
  if (!angles.closed) {
    const half = isHalfTurn(angles)
    sectionFace(writer, polygonOf(radii, heights, n, count, 0), angles.cos[0] ?? 1, angles.sin[0] ?? 0, -1, outline, half)
    const last = count - 1
    sectionFace(writer, polygonOf(radii, heights, n, count, last), angles.cos[last] ?? 1, angles.sin[last] ?? 0, 1, outline, half)
  }
  return writer.finish(outsideCount, outline)
}

const isHalfTurn = ({ theta }: PlanAngles): boolean => Math.abs((theta[theta.length - 1] ?? 0) - (theta[0] ?? 0) - Math.PI) < 1e-6

type Strip = Readonly<{ r1: number; r2: number; radii: Float64Array; heights: Float64Array; angles: PlanAngles }>

function smoothStrip(writer: MeshWriter, { r1, r2, radii, heights, angles }: Strip, edge: Edge): void {
  const { cos, sin } = angles
  const count = cos.length
  const base = writer.vertexCount
  for (let k = 0; k < count; k++) {
    const c = cos[k] ?? 1
    const s = sin[k] ?? 0
    const ra = radii[r1 + k] ?? 0
    const rb = radii[r2 + k] ?? 0
    const ya = heights[r1 + k] ?? 0
    const yb = heights[r2 + k] ?? 0
    let nx: number
    let ny: number
    let nz: number
    if (typeof edge === 'string') {
      const outward = yb - ya
      nx = outward * c
      ny = ra - rb
      nz = outward * s
    } else {
      const side = rb > ra ? -1 : 1
      nx = -side * (edge.m * c + edge.gx)
      ny = side
      nz = -side * (edge.m * s + edge.gz)
    }
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz)
    if (length > 0) {
      nx /= length
      ny /= length
      nz /= length
    } else ny = 1
    writer.vertex(ra * c, ya, ra * s, nx, ny, nz)
    writer.vertex(rb * c, yb, rb * s, nx, ny, nz)
  }
  for (let k = 1; k < count; k++) facet(writer, base + 2 * k - 2, { r1, r2, radii, heights, angles }, k)
}

/** Faces of a rectangle's upright sides: each facet has the normal of its own side, so that corners stay crisp. */
function flatStrip(writer: MeshWriter, strip: Strip, hx: number, hz: number): void {
  const { r1, r2, radii, heights, angles } = strip
  const { cos, sin } = angles
  for (let k = 1; k < cos.length; k++) {
    const c0 = cos[k - 1] ?? 1
    const s0 = sin[k - 1] ?? 0
    const c1 = cos[k] ?? 1
    const s1 = sin[k] ?? 0
    const outward = (heights[r2 + k] ?? 0) + (heights[r2 + k - 1] ?? 0) >= (heights[r1 + k] ?? 0) + (heights[r1 + k - 1] ?? 0) ? 1 : -1
    const onX = Math.abs(c0 + c1) * hz > Math.abs(s0 + s1) * hx
    const nx = onX ? outward * Math.sign(c0 + c1) : 0
    const nz = onX ? 0 : outward * Math.sign(s0 + s1)
    const base = writer.vertexCount
    const ra0 = radii[r1 + k - 1] ?? 0
    const rb0 = radii[r2 + k - 1] ?? 0
    const ra1 = radii[r1 + k] ?? 0
    const rb1 = radii[r2 + k] ?? 0
    writer.vertex(ra0 * c0, heights[r1 + k - 1] ?? 0, ra0 * s0, nx, 0, nz)
    writer.vertex(rb0 * c0, heights[r2 + k - 1] ?? 0, rb0 * s0, nx, 0, nz)
    writer.vertex(ra1 * c1, heights[r1 + k] ?? 0, ra1 * s1, nx, 0, nz)
    writer.vertex(rb1 * c1, heights[r2 + k] ?? 0, rb1 * s1, nx, 0, nz)
    facet(writer, base, strip, k)
  }
}

/**
 * Two triangles between angles k-1 and k; `base` is the first of four vertices a0 b0 a1 b1. The diagonal starts at the outer
 * (on a tie, upper) corner whichever way the edge runs, so that two zones that share a twisted face share its triangles.
 */
function facet(writer: MeshWriter, base: number, { r1, r2, radii, heights }: Strip, k: number): void {
  const ra0 = radii[r1 + k - 1] ?? 0
  const ra1 = radii[r1 + k] ?? 0
  const rb0 = radii[r2 + k - 1] ?? 0
  const rb1 = radii[r2 + k] ?? 0
  const sameBefore = ra0 === rb0 && heights[r1 + k - 1] === heights[r2 + k - 1]
  const sameAfter = ra1 === rb1 && heights[r1 + k] === heights[r2 + k]
  if (sameBefore && sameAfter) return
  const aOnAxis = ra0 === 0 && ra1 === 0
  const bOnAxis = rb0 === 0 && rb1 === 0
  const difference = ra0 + ra1 - rb0 - rb1
  const aIsOuter = difference !== 0 ? difference > 0 : (heights[r1 + k] ?? 0) > (heights[r2 + k] ?? 0)
  const a0 = base
  const b0 = base + 1
  const a1 = base + 2
  const b1 = base + 3
  if (aIsOuter) {
    writer.triangle(a0, b0, b1, sameBefore || bOnAxis)
    writer.triangle(a0, b1, a1, sameAfter || aOnAxis)
  } else {
    writer.triangle(a0, b0, a1, sameBefore || aOnAxis)
    writer.triangle(b0, b1, a1, sameAfter || bOnAxis)
  }
}

function polygonOf(radii: Float64Array, heights: Float64Array, n: number, count: number, k: number): Point[] {
  const points: Point[] = []
  for (let i = 0; i < n; i++) {
    const p: Point = [radii[i * count + k] ?? 0, heights[i * count + k] ?? 0]
    const last = points[points.length - 1]
    if (!last || last[0] !== p[0] || last[1] !== p[1]) points.push(p)
  }
  const first = points[0]
  const last = points[points.length - 1]
  if (first && last && points.length > 1 && first[0] === last[0] && first[1] === last[1]) points.pop()
  return points
}

/** `side` -1 for the face at the first angle, +1 at the last: the sign of its normal along growing plan angle. */
function sectionFace(
  writer: MeshWriter,
  points: readonly Point[],
  cos: number,
  sin: number,
  side: number,
  outline: number[],
  hideAxis: boolean,
): void {
  if (points.length < 3) return
  const base = writer.vertexCount
  for (const [r, y] of points) writer.vertex(r * cos, y, r * sin, -side * sin, 0, side * cos)
  const triangles = earcut(points.flat())
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t] ?? 0
    const b = triangles[t + 1] ?? 0
    const c = triangles[t + 2] ?? 0
    const turnsLeft = leftTurn(points[a], points[b], points[c])
    if (turnsLeft === side > 0) writer.triangle(base + a, base + b, base + c, false)
    else writer.triangle(base + a, base + c, base + b, false)
  }
  let from = points[points.length - 1]
  for (const to of points) {
    if (from && !(hideAxis && from[0] === 0 && to[0] === 0)) {
      outline.push(from[0] * cos, from[1], from[0] * sin, to[0] * cos, to[1], to[0] * sin)
    }
    from = to
  }
}

const leftTurn = (a: Point | undefined, b: Point | undefined, c: Point | undefined): boolean =>
  a !== undefined && b !== undefined && c !== undefined && (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 0
