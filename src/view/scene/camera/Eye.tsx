import { CameraControls, CameraControlsImpl } from '@react-three/drei/core/CameraControls'
import { useFrame, useThree } from '@react-three/fiber'
import { type Ref, useEffect, useImperativeHandle, useMemo, useRef } from 'react'
import { type Box3, PerspectiveCamera, Vector3 } from 'three'
import { fieldOfView, type Pose, type Viewport } from './lens.ts'
import type { PictureCamera } from './PictureCamera.ts'

/** How far the eye may go: `distance` [m] at which the whole is framed; the box in which the target may be dragged. */
export type Leash = Readonly<{ distance: number; within: Box3 }>

/** What may be asked of the eye. */
export type EyeHandle = Readonly<{
  pose(): Pose
  /** Goes there in a short move, or at once. */
  goTo(pose: Pose, leash: Leash, atOnce: boolean): void
  /** Turns the eye round and up by so much [rad], or draws it nearer: `nearer` below 1. For the keyboard. */
  nudge(round: number, up: number, nearer: number): void
  isMoving(): boolean
}>

type Props = Readonly<{
  ref: Ref<EyeHandle>
  viewport: Viewport
  /** The eye glides after a turn of the wheel. */
  isGliding: boolean
  /** A hand took the camera; it set off; it came to rest. */
  onGrab(): void
  onLeave(): void
  onRest(): void
}>

const moveTime = 200
const glideTime = 0.08
const ease = (t: number): number => t * t * (3 - 2 * t)
const turn = 2 * Math.PI

/**
 * Orbit, pan and zoom within limits, and short moves to named views. A hand moves a plain eye about its target; the picture is drawn from
 * where the lens stands for it, so that uprights stay upright at shallow angles and drafting views have no perspective. While a hand holds
 * it, each of its moves is one frame; nothing runs while nothing moves.
 */
export function Eye({ ref, viewport, isGliding, onGrab, onLeave, onRest }: Props) {
  const camera = useThree((state) => state.camera) as PictureCamera
  const invalidate = useThree((state) => state.invalidate)
  const eye = useMemo(() => new PerspectiveCamera((fieldOfView * 180) / Math.PI), [])
  const controls = useRef<CameraControlsImpl>(null)
  const now = useRef<Moving>({ shift: [0, 0], perspective: 1, size: 8, move: null, isHeld: false, toRest: false }).current

  const grab = (): void => {
    now.move = null
    now.toRest = true
    onGrab()
    onLeave()
  }
  const rest = (): void => {
    if (!now.toRest || now.isHeld || now.move) return
    now.toRest = false
    onRest()
  }
  const pose = (): Pose => {
    const { current } = controls
    const target = current?.getTarget(at, false) ?? at
    return {
      azimuth: Math.PI / 2 - (current?.azimuthAngle ?? 0),
      pitch: Math.PI / 2 - (current?.polarAngle ?? 0),
      distance: current?.distance ?? now.size,
      target: [target.x, target.y, target.z],
      shift: now.shift,
      perspective: now.perspective,
    }
  }
  const place = ({ azimuth, pitch, distance, target, shift, perspective }: Pose): void => {
    controls.current?.rotateTo(Math.PI / 2 - azimuth, Math.PI / 2 - pitch, false)
    controls.current?.dollyTo(distance, false)
    controls.current?.moveTo(...target, false)
    controls.current?.update(0)
    now.shift = shift
    now.perspective = perspective
  }
  useImperativeHandle(ref, () => ({
    pose,
    goTo: (to, { distance, within }, atOnce) => {
      const { current } = controls
      if (!current) return
      current.minDistance = distance * 0.12
      current.maxDistance = distance * 2.2
      current.setBoundary(within)
      now.size = distance
      now.move = atOnce ? null : { from: pose(), to, start: performance.now() }
      now.toRest = true
      if (atOnce) place(to)
      else onLeave()
      invalidate()
    },
    nudge: (round, up, nearer) => {
      grab()
      const { pitch } = pose()
      controls.current?.rotate(-round, pitch - Math.min(Math.PI / 2, Math.max(0, pitch + up)), false)
      controls.current?.dollyTo(pose().distance * nearer, false)
      invalidate()
    },
    isMoving: () => now.isHeld || now.move !== null,
  }))
  useFrame(() => {
    if (now.move) {
      const t = Math.min(1, (performance.now() - now.move.start) / moveTime)
      place(between(now.move.from, now.move.to, ease(t)))
      if (t === 1) now.move = null
    }
    camera.take(pose(), viewport, now.size)
  }, -0.5)
  usePanWithKeys(controls)
  return (
    <CameraControls
      ref={controls}
      camera={eye}
      maxPolarAngle={(91 * Math.PI) / 180}
      azimuthRotateSpeed={0.75}
      polarRotateSpeed={0.75}
      draggingSmoothTime={isGliding ? glideTime : 0}
      onControlStart={() => {
        now.isHeld = true
        if (controls.current) controls.current.draggingSmoothTime = 0
        grab()
      }}
      onControl={() => {
        grab()
        // Taken over at once: the frame that is asked for finds nothing more to do, and asks for no other.
        if (now.isHeld) controls.current?.update(1)
      }}
      onControlEnd={() => {
        now.isHeld = false
        if (controls.current) controls.current.draggingSmoothTime = isGliding ? glideTime : 0
        rest()
      }}
      onSleep={rest}
    />
  )
}

const at = new Vector3()

type Moving = {
  shift: readonly [number, number]
  perspective: number
  size: number
  move: Readonly<{ from: Pose; to: Pose; start: number }> | null
  isHeld: boolean
  /** It has not been said yet that the eye came to rest. */
  toRest: boolean
}

/** With Ctrl, Shift or Meta held, the first button drags the target instead of turning. */
function usePanWithKeys(controls: Readonly<{ current: CameraControlsImpl | null }>): void {
  const element = useThree((state) => state.gl.domElement)
  useEffect(() => {
    const press = ({ ctrlKey, shiftKey, metaKey }: PointerEvent): void => {
      const { current } = controls
      if (!current) return
      const { TRUCK, ROTATE } = CameraControlsImpl.ACTION
      current.mouseButtons.left = ctrlKey || shiftKey || metaKey ? TRUCK : ROTATE
    }
    element.addEventListener('pointerdown', press, { capture: true })
    return () => element.removeEventListener('pointerdown', press, { capture: true })
  }, [controls, element])
}

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
