import { useFrame } from '@react-three/fiber'
import { type ReactNode, useLayoutEffect, useRef } from 'react'
import type { Fog } from 'three'
import type { PierSpec } from '../../../core/model/spec.ts'
import { lastDay } from '../../../state/actions/time.ts'
import type { Stretch } from '../../../state/appState.ts'
import { type Gone, goneBy } from '../../../state/goneBy.ts'
import type { PictureCamera } from '../camera/PictureCamera.ts'
import { useHeld } from './kit.ts'
import { Daylight } from '../light/Daylight.ts'
import { Floor } from '../light/Floor.ts'
import { Grass } from '../light/Grass.ts'
import { isNative } from '../pier/drawnPier.ts'
import { offsetOf, type PlacedPier } from '../pier/placedPier.ts'
import type { PierKit } from './kit.ts'
import type { Tones } from './tones.ts'

/** A moment on show, between whole steps, days and years too; no stretch for none. */
export type PlayedMoment = Readonly<{ stretch: Stretch | null; place: number }>

type Props = Readonly<{
  standing: PlacedPier
  kit: PierKit
  tones: Tones
  /** Counts drawing contexts. */
  lives: number
  isFull: boolean
  /** Asked in each frame. */
  moment: () => PlayedMoment
  children: ReactNode
}>

/** The place a pier stands in: paper and haze behind it, daylight, the floor under its block, and grass. */
export function PierSite({ standing, kit, tones, lives, isFull, moment, children }: Props) {
  const fog = useRef<Fog>(null)
  const { half } = standing.pier.extent
  useLayoutEffect(() => void kit.shared.uAccent.value.set(tones.accent), [kit, tones])
  useMoment(kit, standing.pier.result.spec, moment)
  useFrame(({ camera }) => {
    const { back } = camera as PictureCamera
    if (!fog.current) return
    fog.current.near = back - half * 0.2
    fog.current.far = back + half * 14
  })
  return (
    <>
      <color attach='background' args={[tones.paper]} />
      <fog attach='fog' ref={fog} args={[tones.paper, 1, 10]} />
      <Sun standing={standing} isDark={tones.isDark} isFull={isFull} lives={lives} />
      <Ground standing={standing} kit={kit} isDark={tones.isDark} isFull={isFull} />
      {children}
    </>
  )
}

type PartProps = Pick<Props, 'standing' | 'isFull'> & Readonly<{ isDark: boolean }>

/** Sun and sky. Asks for new shadows when what casts them has changed. */
function Sun({ standing, isDark, isFull, lives }: PartProps & Pick<Props, 'lives'>) {
  const daylight = useHeld('daylight', () => new Daylight())
  const { half, bottom, groundTop, pierTop, postTop } = standing.pier.extent
  const { facing } = standing.pier.look.cut
  useLayoutEffect(() => {
    const top = Math.min(postTop, Math.max(groundTop, pierTop) + half)
    daylight.aim(facing, Math.hypot(half * Math.SQRT2, (top - bottom) / 2) * 1.02, (top + bottom) / 2)
  }, [daylight, facing, half, bottom, groundTop, pierTop, postTop])
  useLayoutEffect(() => {
    daylight.setTheme(isDark)
    daylight.setShadows(isFull)
  }, [daylight, isDark, isFull])
  // biome-ignore lint/correctness/useExhaustiveDependencies: what stands elsewhere casts another shadow, and a new context has none
  useLayoutEffect(() => daylight.askForShadows(), [daylight, standing, isDark, isFull, lives])
  return <primitive object={daylight.root} />
}

/** The floor the block stands on, and the grass on top of it. */
function Ground({ standing, kit, isDark, isFull }: PartProps & Pick<Props, 'kit'>) {
  const { pier } = standing
  const { half, bottom, holeRadius } = pier.extent
  const { cut, soil } = pier.look
  const floor = useHeld('floor', () => new Floor())
  const grass = useHeld('grass', () => new Grass(kit.shared))
  useLayoutEffect(() => {
    floor.place(half, bottom, cut, 0)
    grass.place(half, holeRadius + 0.05, cut.facing, cut.open)
  }, [floor, grass, half, bottom, holeRadius, cut])
  useLayoutEffect(() => {
    floor.setTheme(isDark)
    floor.setShadows(isFull)
  }, [floor, isDark, isFull])
  const turf = pier.parts.find(({ zone }) => zone.id === 'topsoil') ?? pier.parts.find(({ zone }) => zone.id === 'soil')
  const isTorn = pier.parts.some(({ zone, isPiece }) => isPiece && isNative(zone.role))
  return (
    <>
      <primitive object={floor.root} visible={soil} />
      <primitive object={grass.mesh} visible={isFull && soil && !isTorn} position-y={turf ? offsetOf(standing, turf).y : 0} />
    </>
  )
}

/** In each frame: how fresh what sets in the ground is, and how much of such wood is gone. It makes nothing. */
function useMoment({ shared, worn }: PierKit, spec: PierSpec, moment: () => PlayedMoment): void {
  const gone = useRef<Gone>({ least: 0, most: 0 }).current
  useFrame(() => {
    const { stretch, place } = moment()
    const fresh = freshness(stretch, place)
    if (fresh !== shared.uFresh.value) for (const materials of worn) materials.setFresh(fresh)
    shared.uFresh.value = fresh
    const isGoing = stretch === 'years' && goneBy(spec, place, gone)
    shared.uGone.value.set(isGoing ? gone.most : 0, isGoing ? gone.least : 0)
  })
}

/** Just placed while it is built; over its first month it grows light, fast at first. For the eye, no measure. */
function freshness(stretch: Stretch | null, place: number): number {
  if (stretch === 'build') return 1
  return stretch === 'month' ? Math.max(0, 1 - place / lastDay) ** 1.6 : 0
}
