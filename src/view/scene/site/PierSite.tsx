import { useFrame, useThree } from '@react-three/fiber'
import { useLayoutEffect, useRef } from 'react'
import type { Fog } from 'three'
import { nativeRoles } from '../../../core/model/solid.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { lastDay } from '../../../state/actions/time.ts'
import type { Stretch } from '../../../state/appState.ts'
import { useWater, waterNow } from '../../section/useWater.ts'
import type { Gone } from '../../../state/goneBy.ts'
import type { PictureCamera } from '../camera/PictureCamera.ts'
import { Daylight } from '../light/Daylight.ts'
import { Floor } from '../light/Floor.ts'
import { Grass } from '../light/Grass.ts'
import { cornerShade } from '../materials/sharedUniforms.ts'
import { offsetOf, type PlacedPier } from '../pier/placedPier.ts'
import { showWet } from '../pier/showWet.ts'
import { Bodies } from './Bodies.tsx'
import { type CanvasKit, createSiteKit, type SiteKit, useHeld } from './kit.ts'
import { Lines } from './Lines.tsx'
import type { Tones } from './tones.ts'

/** A moment on show, between whole steps, days and years too; no stretch for none. */
export type PlayedMoment = Readonly<{ stretch: Stretch | null; place: number }>

type Props = Readonly<{
  /** Piers at their places, looked at in one way. Wet wood and years are shown of one that stands alone. */
  places: readonly [PlacedPier, ...PlacedPier[]]
  kit: CanvasKit
  tones: Tones
  /** Counts drawing contexts. */
  lives: number
  isFull: boolean
  pointedAt: string | null
  /** Asked in each frame. */
  moment: () => PlayedMoment
}>

/** Piers at their places on one site: one daylight, one floor, one growth of grass, and one draw for all that looks the same. */
export function PierSite({ places, kit, tones, lives, isFull, pointedAt, moment }: Props) {
  const own = useHeld(kit, () => createSiteKit(kit))
  const [{ pier, turn, at }] = places
  const reach = Math.max(...places.map((one) => one.pier.extent.half + Math.hypot(one.at[0] - at[0], one.at[2] - at[2])))
  useWhatMaterialsRead(pier, turn, own, places.length === 1)
  useLayoutEffect(() => void own.shared.uAccent.value.set(tones.accent), [own, tones])
  useMoment(own, pier.result.spec, moment)
  return (
    <>
      <color attach='background' args={[tones.paper]} />
      <Haze paper={tones.paper} reach={reach} />
      <Sun places={places} isDark={tones.isDark} isFull={isFull} lives={lives} />
      <Ground places={places} isDark={tones.isDark} isFull={isFull} />
      <Bodies places={places} kit={own} isFull={isFull} pointedAt={pointedAt} />
      <Lines places={places} kit={own} pointedAt={pointedAt} />
    </>
  )
}

/** What stands far behind a site that reaches so far [m] goes over into the paper. */
function Haze({ paper, reach }: Readonly<{ paper: string; reach: number }>) {
  const fog = useRef<Fog>(null)
  useFrame(({ camera }) => {
    const { back } = camera as PictureCamera
    if (!fog.current) return
    fog.current.near = back - reach * 0.2
    fog.current.far = back + reach * 14
  })
  return <fog attach='fog' ref={fog} args={[paper, 1, 10]} />
}

type PartProps = Pick<Props, 'places' | 'isFull'> & Readonly<{ isDark: boolean }>

/** Sun and sky. Asks for new shadows when what casts them has changed. */
function Sun({ places, isDark, isFull, lives }: PartProps & Pick<Props, 'lives'>) {
  const daylight = useHeld('daylight', () => new Daylight())
  useLayoutEffect(() => daylight.setTheme(isDark, isFull), [daylight, isDark, isFull])
  // biome-ignore lint/correctness/useExhaustiveDependencies: what stands elsewhere casts another shadow, and a new context has none
  useLayoutEffect(() => daylight.aim(places), [daylight, places, isDark, isFull, lives])
  return <primitive object={daylight.root} />
}

/** The floor that blocks stand on, and the grass on top of them. */
function Ground({ places, isDark, isFull }: PartProps) {
  const floor = useHeld('floor', () => new Floor())
  const grass = useHeld('grass', () => new Grass())
  const { soil } = places[0].pier.look
  useLayoutEffect(() => {
    floor.place(places)
    grass.place(
      places.filter(({ pier }) => !pier.parts.some(({ zone, isPiece }) => isPiece && nativeRoles.has(zone.role))),
      turfLift,
    )
  }, [floor, grass, places])
  useLayoutEffect(() => floor.setTheme(isDark, isFull), [floor, isDark, isFull])
  return (
    <>
      <primitive object={floor.pool} visible={soil} />
      <primitive object={grass.mesh} visible={isFull && soil} />
    </>
  )
}

/** How far the turf of a pier is lifted [m]. */
function turfLift(standing: PlacedPier): number {
  const { parts } = standing.pier
  const turf = parts.find(({ zone }) => zone.id === 'topsoil') ?? parts.find(({ zone }) => zone.id === 'soil')
  return turf ? offsetOf(standing, turf).y : 0
}

/** Writes what all materials of a site read into the values they share. */
function useWhatMaterialsRead({ result, look, post }: PlacedPier['pier'], turn: number, { shared }: SiteKit, isAlone: boolean): void {
  const { spec, zones } = result
  const isWet = look.wetness && isAlone
  const fetched = useWater(isWet)
  const water = isWet ? fetched : null
  const invalidate = useThree((state) => state.invalidate)
  useLayoutEffect(() => {
    const facing = look.cut.facing + turn
    shared.uCorner.value = cornerShade(look.cut.open)
    shared.uRight.value.set(Math.sin(facing), -Math.cos(facing))
  }, [look, turn, shared])
  useLayoutEffect(() => showWet(shared, spec, zones, post, water), [shared, spec, zones, post, water])
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is fetched after its layer was switched on asks for a frame of its own
  useLayoutEffect(() => invalidate(), [invalidate, water])
}

/** In each frame: how fresh what sets in the ground is, and how much of such wood is gone. It makes nothing. */
function useMoment({ shared }: SiteKit, spec: PierSpec, moment: () => PlayedMoment): void {
  const gone = useRef<Gone>({ least: 0, most: 0 }).current
  useFrame(() => {
    const { stretch, place } = moment()
    shared.uFresh.value = freshness(stretch, place)
    const isGoing = stretch === 'years' && waterNow()?.goneBy(spec, place, gone) === true
    shared.uGone.value.set(isGoing ? gone.most : 0, isGoing ? gone.least : 0)
  })
}

/** Just placed while it is built; over its first month it grows light, fast at first. For the eye, no measure. */
function freshness(stretch: Stretch | null, place: number): number {
  if (stretch === 'build') return 1
  return stretch === 'month' ? Math.max(0, 1 - place / lastDay) ** 1.6 : 0
}
