/** How the picture is taken. Angles in radians, metres; `shift` in pixels, right and down, moves the picture on the screen. */
export type Pose = Readonly<{
  /** Plan angle at which the reader stands. */
  azimuth: number
  /** Height of the eye above the target, as an angle. */
  pitch: number
  distance: number
  target: readonly [number, number, number]
  shift: readonly [number, number]
}>

export type Viewport = Readonly<{ width: number; height: number }>

/** Upright field of view [rad]: a long lens, so that the section is hardly distorted. */
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

/** How far down the target would fall through the lens's own pitch, in pixels: what the lens is shifted by. */
export const lensDrop = (pitch: number, height: number): number => focalPixels(height) * Math.tan(pitch - lensPitch(pitch))

/** Where a point [m] falls on the screen [px, from the upper left], and its distance along the lens [m]. */
export function project(pose: Pose, { width, height }: Viewport, [x, y, z]: readonly [number, number, number]): [number, number, number] {
  const ca = Math.cos(pose.azimuth)
  const sa = Math.sin(pose.azimuth)
  const [tx, ty, tz] = pose.target
  const out = pose.distance * Math.cos(pose.pitch)
  const vx = x - tx - out * ca
  const vy = y - ty - pose.distance * Math.sin(pose.pitch)
  const vz = z - tz - out * sa
  const lens = lensPitch(pose.pitch)
  const cl = Math.cos(lens)
  const sl = Math.sin(lens)
  const inward = vx * ca + vz * sa
  const depth = -(inward * cl + vy * sl)
  const right = vx * sa - vz * ca
  const up = vy * cl - inward * sl
  const f = focalPixels(height)
  return [
    width / 2 + pose.shift[0] + (f * right) / depth,
    height / 2 + pose.shift[1] - (f * up) / depth - lensDrop(pose.pitch, height),
    depth,
  ]
}

/** Eye [m] and direction (of length about one) of the sight line through a pixel; written into `ray` as [ex, ey, ez, dx, dy, dz]. */
export function rayThrough(pose: Pose, { width, height }: Viewport, px: number, py: number, ray: Float64Array): void {
  const ca = Math.cos(pose.azimuth)
  const sa = Math.sin(pose.azimuth)
  const lens = lensPitch(pose.pitch)
  const cl = Math.cos(lens)
  const sl = Math.sin(lens)
  const f = focalPixels(height)
  const right = (px - width / 2 - pose.shift[0]) / f
  const up = -(py - height / 2 - pose.shift[1] + lensDrop(pose.pitch, height)) / f
  const out = pose.distance * Math.cos(pose.pitch)
  ray[0] = pose.target[0] + out * ca
  ray[1] = pose.target[1] + pose.distance * Math.sin(pose.pitch)
  ray[2] = pose.target[2] + out * sa
  ray[3] = -cl * ca + right * sa - up * sl * ca
  ray[4] = -sl + up * cl
  ray[5] = -cl * sa - right * ca - up * sl * sa
}
