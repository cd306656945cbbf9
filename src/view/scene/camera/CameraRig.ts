import { PerspectiveCamera } from 'three'
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js'
import { fieldOfView, type Pose, type Viewport } from './lens.ts'
import type { PictureCamera } from './PictureCamera.ts'

const moveTime = 200
const ease = (t: number): number => t * t * (3 - 2 * t)
const turn = 2 * Math.PI

type Listener = Readonly<{
  /** A frame is wanted. */
  needFrame(): void
  /** A hand took the camera, and it came to rest again. */
  onGrab(): void
  onRest(): void
}>

/**
 * Orbit, pan and zoom within limits, and short moves to named views. The orbit moves the eye; the lens is shifted afterwards
 * so that uprights stay upright at shallow angles. Nothing runs while nothing moves.
 */
export class CameraRig {
  private readonly controls: OrbitControls
  /** What a hand moves; the picture is drawn from where the lens stands for it. */
  private readonly eye = new PerspectiveCamera((fieldOfView * 180) / Math.PI)
  private perspective = 1
  private size = 8
  private viewport: Viewport = { width: 1, height: 1 }
  private shift: readonly [number, number] = [0, 0]
  private move: Readonly<{ from: Pose; to: Pose; start: number }> | null = null
  private held = false
  private settling = false
  private leash = { half: 2, low: -2, high: 1 }

  constructor(
    private readonly camera: PictureCamera,
    element: HTMLElement,
    private readonly listener: Listener,
  ) {
    this.controls = new OrbitControls(this.eye, element)
    this.controls.enableDamping = true
    this.controls.dampingFactor = 0.14
    this.controls.rotateSpeed = 0.75
    this.controls.zoomSpeed = 0.9
    this.controls.maxPolarAngle = (91 * Math.PI) / 180
    this.controls.addEventListener('start', this.grab)
    this.controls.addEventListener('end', this.letGo)
    this.controls.addEventListener('change', this.changed)
  }

  setDamping(isWanted: boolean): void {
    this.controls.enableDamping = isWanted
  }

  setViewport(viewport: Viewport): void {
    this.viewport = viewport
  }

  /** `size` [m] of what is shown: nearest and farthest eye, and how far the target may be dragged off. */
  setLimits(distance: number, half: number, low: number, high: number): void {
    this.controls.minDistance = distance * 0.12
    this.controls.maxDistance = distance * 2.2
    this.leash = { half, low, high }
    this.size = distance
  }

  pose(): Pose {
    const { position } = this.eye
    const { target } = this.controls
    const [x, y, z] = [position.x - target.x, position.y - target.y, position.z - target.z]
    const level = Math.hypot(x, z)
    return {
      azimuth: Math.atan2(z, x),
      pitch: Math.atan2(y, level),
      distance: Math.hypot(level, y),
      target: [target.x, target.y, target.z],
      shift: this.shift,
      perspective: this.perspective,
    }
  }

  /** Goes there in a short move, or at once. */
  goTo(pose: Pose, atOnce: boolean): void {
    this.move = atOnce ? null : { from: this.pose(), to: pose, start: performance.now() }
    if (atOnce) this.place(pose)
    this.settling = true
    this.listener.needFrame()
  }

  get isMoving(): boolean {
    return this.held || this.move !== null
  }

  /** Turns the eye round and up by so much [rad], or draws it nearer: `nearer` below 1. For the keyboard. */
  nudge(round: number, up: number, nearer: number): void {
    const pose = this.pose()
    const pitch = Math.min(1.55, Math.max(0, pose.pitch + up))
    const distance = Math.min(this.controls.maxDistance, Math.max(this.controls.minDistance, pose.distance * nearer))
    this.grab()
    this.held = false
    this.place({ ...pose, azimuth: pose.azimuth + round, pitch, distance })
    this.settling = true
    this.listener.needFrame()
  }

  /** Before each frame. */
  frame(): void {
    if (this.move) {
      const t = Math.min(1, (performance.now() - this.move.start) / moveTime)
      this.place(between(this.move.from, this.move.to, ease(t)))
      if (t === 1) this.move = null
      this.listener.needFrame()
    }
    const isDamping = this.controls.update()
    this.camera.take(this.pose(), this.viewport, this.size)
    if (this.settling && !this.held && !this.move && !isDamping) {
      this.settling = false
      this.listener.onRest()
    }
  }

  dispose(): void {
    this.controls.dispose()
  }

  private place({ azimuth, pitch, distance, target, shift, perspective }: Pose): void {
    this.controls.target.set(...target)
    const level = distance * Math.cos(pitch)
    this.eye.position.set(
      target[0] + level * Math.cos(azimuth),
      target[1] + distance * Math.sin(pitch),
      target[2] + level * Math.sin(azimuth),
    )
    this.shift = shift
    this.perspective = perspective
  }

  private readonly grab = (): void => {
    this.move = null
    this.held = true
    this.settling = true
    this.listener.onGrab()
  }

  private readonly letGo = (): void => {
    this.held = false
    this.listener.needFrame()
  }

  private readonly changed = (): void => {
    const { target } = this.controls
    target.set(clamp(target.x, this.leash.half), clampBetween(target.y, this.leash.low, this.leash.high), clamp(target.z, this.leash.half))
    this.listener.needFrame()
  }
}

const clamp = (value: number, most: number): number => Math.min(most, Math.max(-most, value))
const clampBetween = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value))

function between(from: Pose, to: Pose, t: number): Pose {
  const mix = (a: number, b: number): number => a + (b - a) * t
  const round = ((((to.azimuth - from.azimuth) % turn) + 1.5 * turn) % turn) - turn / 2
  return {
    azimuth: from.azimuth + round * t,
    pitch: mix(from.pitch, to.pitch),
    distance: from.distance * (to.distance / from.distance) ** t,
    target: [mix(from.target[0], to.target[0]), mix(from.target[1], to.target[1]), mix(from.target[2], to.target[2])],
    shift: [mix(from.shift[0], to.shift[0]), mix(from.shift[1], to.shift[1])],
    perspective: mix(from.perspective, to.perspective),
  }
}
