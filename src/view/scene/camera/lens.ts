/** How the picture is taken. Angles in radians, metres; `shift` in pixels, right and down, moves the picture on the screen. */
export type Pose = Readonly<{
  /** Plan angle at which the reader stands. */
  azimuth: number
  /** Height of the eye above the target, as an angle. */
  pitch: number
  distance: number
  target: readonly [number, number, number]
  shift: readonly [number, number]
  /** 1 perspective … 0 orthographic: how much of the way from here to its place makes a thing smaller. The target's own size stays. */
  perspective: number
}>

export type Viewport = Readonly<{ width: number; height: number }>

/** One frame of the picture: where the eye is, and how large the picture is on the screen. */
export type Frame = Readonly<{ pose: Pose; viewport: Viewport }>

/** Upright field of view [rad] in full perspective: a long lens, so that the section is hardly distorted. */
export const fieldOfView = (26 * Math.PI) / 180

/** Up to this pitch uprights stay upright, as in a draughtsman's two-point perspective; from `tilted` on the lens looks straight. */
const upright = (24 * Math.PI) / 180
const tilted = (48 * Math.PI) / 180

/** Pitch the lens itself takes for a given pitch of the eye; the rest is done by shifting the lens. */
export function lensPitch(pitch: number): number {
  const size = Math.abs(pitch)
  if (size <= upright) return 0
  if (size >= tilted) return pitch
  const t = (size - upright) / (tilted - upright)
  return pitch * t * t * (3 - 2 * t)
}

/** Focal length in pixels for a picture of this height. */
export const focalPixels = (height: number): number => height / 2 / Math.tan(fieldOfView / 2)

/** Eyes farther off than this many distances are not set up: the rest of the way to an orthographic picture is in the projection alone. */
const farthest = 20

/** The lens of a pose: how it is turned, how its eye is shifted up to keep uprights upright, and where sight lines start. */
function setUp({ azimuth, pitch, distance, perspective }: Pose) {
  const lens = lensPitch(pitch)
  const reach = distance * Math.cos(pitch - lens)
  return {
    ca: Math.cos(azimuth),
    sa: Math.sin(azimuth),
    cl: Math.cos(lens),
    sl: Math.sin(lens),
    /** Shear of the picture: how far up a point goes with each metre that it lies beyond the target. */
    shear: Math.tan(pitch - lens),
    /** Metres at the target that are as large on the screen as the focal length. */
    reach,
    /** From the eye to the target, along the lens [m]. */
    back: reach / Math.max(perspective, 1 / farthest),
  }
}

/** Where a point [m] falls on the screen [px, from the upper left], and the metres there that are as large as the focal length. */
export function projectPoint(
  pose: Pose,
  { width, height }: Viewport,
  [x, y, z]: readonly [number, number, number],
): [number, number, number] {
  const { ca, sa, cl, sl, shear, reach } = setUp(pose)
  const [tx, ty, tz] = pose.target
  const inward = (x - tx) * ca + (z - tz) * sa
  const beyond = -(inward * cl + (y - ty) * sl)
  const right = (x - tx) * sa - (z - tz) * ca
  const up = (y - ty) * cl - inward * sl
  const size = reach + pose.perspective * beyond
  const f = focalPixels(height)
  return [width / 2 + pose.shift[0] + (f * right) / size, height / 2 + pose.shift[1] - (f * (up + shear * beyond)) / size, size]
}

/** Eye [m] and direction (of length about one) of the sight line through a pixel; written into `ray` as [ex, ey, ez, dx, dy, dz]. */
export function rayThrough(pose: Pose, { width, height }: Viewport, px: number, py: number, ray: Float64Array): void {
  const { ca, sa, cl, sl, shear, reach, back } = setUp(pose)
  const f = focalPixels(height)
  const across = (px - width / 2 - pose.shift[0]) / f
  const upward = -(py - height / 2 - pose.shift[1]) / f
  const size = reach - pose.perspective * back
  const right = across * size
  const up = upward * size + shear * back
  ray[0] = pose.target[0] + right * sa - up * sl * ca + back * cl * ca
  ray[1] = pose.target[1] + up * cl + back * sl
  ray[2] = pose.target[2] - right * ca - up * sl * sa + back * cl * sa
  const outward = across * pose.perspective
  const rise = upward * pose.perspective - shear
  ray[3] = -cl * ca + outward * sa - rise * sl * ca
  ray[4] = -sl + rise * cl
  ray[5] = -cl * sa - outward * ca - rise * sl * sa
}

type Point = readonly [number, number, number]

/** Where the renderer's eye stands, its axes to the right, up and toward the reader, and how far off the target is along the lens [m]. */
export function lensPlace(pose: Pose): Readonly<{ eye: Point; axes: readonly [Point, Point, Point]; back: number }> {
  const { ca, sa, cl, sl, shear, back } = setUp(pose)
  const [tx, ty, tz] = pose.target
  const up = shear * back
  return {
    eye: [tx - up * sl * ca + back * cl * ca, ty + up * cl + back * sl, tz - up * sl * sa + back * cl * sa],
    axes: [
      [sa, 0, -ca],
      [-sl * ca, cl, -sl * sa],
      [cl * ca, sl, cl * sa],
    ],
    back,
  }
}

type Row = readonly [number, number, number, number]
type Rows = readonly [...Row, ...Row, ...Row, ...Row]

/** Row by row, the matrix from what the lens sees to the screen, for what lies between `near` and `far` of the eye [m]. One for every share of perspective. */
export function projectionRows(pose: Pose, { width, height }: Viewport, near: number, far: number): Rows {
  const { shear, reach, back } = setUp(pose)
  const { perspective: p, shift } = pose
  const f = focalPixels(height)
  // Size at a distance z of the eye: p · z + rest.
  const rest = reach - p * back
  const [atNear, atFar] = [p * near + rest, p * far + rest]
  const deep = -(atFar + atNear) / (far - near)
  const [sx, sy] = [(2 * shift[0]) / width, (-2 * shift[1]) / height]
  return [
    ...([(2 * f) / width, 0, -p * sx, rest * sx] as const),
    ...([0, (2 * f) / height, (-2 * f * shear) / height - p * sy, rest * sy] as const),
    ...([0, 0, deep, deep * near - atNear] as const),
    ...([0, 0, -p, rest] as const),
  ]
}
