import { View } from '@react-three/drei/web/View'
import { flushSync, type RootState, useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { Box3, Vector3 } from 'three'
import type { Viewpoint, ViewSettings } from '../../state/appState.ts'
import { offerRenderer } from '../live/probe.ts'
import { Eye, type EyeHandle } from './camera/Eye.tsx'
import { framed, type SafeArea } from './camera/framing.ts'
import { focalPixels, type Frame, type Viewport } from './camera/lens.ts'
import { partExtent } from './camera/pierExtent.ts'
import { aimAt, narrowWidth } from './camera/viewpoints.ts'
import { Pixels } from './canvas/Pixels.tsx'
import { PaperScale } from './materials/paperScale.ts'
import { bodyOf, onSite, type PlacedPier, placedExtent } from './pier/placedPier.ts'
import { type CanvasKit, createCanvasKit, useHeld } from './site/kit.ts'
import { type PlayedMoment, PierSite } from './site/PierSite.tsx'
import { readTones, type Tones } from './site/tones.ts'

/** The picture while it stands, for those who write over it, turn it or copy it. */
export type LivePicture = Readonly<{
  eye: EyeHandle
  kit: CanvasKit
  /** Renderer, and scene and camera of the first column. */
  state: RootState
  /** Draws in other colours from now on. */
  dress(tones: Tones): void
}>

type Props = Readonly<{
  size: Viewport
  /** The piers of each site, from left to right, in columns of one width; none for a pier that can't be built. */
  columns: readonly (readonly PlacedPier[])[]
  view: ViewSettings
  /** Counts drawing contexts. */
  lives: number
  /** Another value: the pier that is edited is another one now, and is framed in a short move. */
  settled: unknown
  /** Another value: the room has changed, and the pier is framed at once. */
  room: unknown
  /** Room that the piers may fill in a column of this size. */
  free: (column: Viewport, name: Viewpoint) => SafeArea
  moment: () => PlayedMoment
  /** A hand or a player moves something else of the picture. */
  isBusy: boolean
  /** Told after each frame. */
  onFrame: (frame: Frame) => void
  /** The eye has come to rest. */
  onRest: () => void
  onStand: (picture: LivePicture | null) => void
}>

/** Sites side by side on one canvas, with one eye and one lens for all, so that scale, light and cut are the same in every column. */
export function PierColumns(props: Props) {
  const { size, columns, view, moment, lives, isBusy, onFrame, onRest, onStand } = props
  const isFull = view.quality === 'full'
  const column = useMemo(() => ({ width: size.width / Math.max(1, columns.length), height: size.height }), [size, columns.length])
  const places = useMemo(() => Array.from({ length: columns.length }, (_, i) => placeOn(column, i)), [column, columns.length])
  const eye = useRef<EyeHandle>(null)
  const [tones, setTones] = useState(readTones)
  const kit = useHeld('kit', createCanvasKit)
  const [isTurning, setTurning] = useState(false)
  const dress = useCallback((worn: Tones) => flushSync(() => setTones(worn)), [])
  const grab = useFraming(props, column, eye)
  usePaperScale(kit, column, eye)
  const invalidate = useThree((state) => state.invalidate)
  useLayoutEffect(() => void kit.lines.lit.color.set(tones.accent), [kit, tones])
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is rewritten in place asks for no frame by itself
  useLayoutEffect(() => invalidate(), [invalidate, columns, view, moment, tones])
  useFrame(() => {
    if (eye.current) onFrame({ pose: eye.current.pose(), viewport: column })
  }, 2)
  useDrawnFrames()
  return (
    <>
      <Pixels isMoving={isTurning || isBusy} />
      <Eye
        ref={eye}
        viewport={column}
        isGliding={isFull && !prefersStill()}
        onGrab={grab}
        onLeave={() => setTurning(true)}
        onRest={() => {
          setTurning(false)
          onRest()
        }}
      />
      {columns.map(([first, ...others], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a column is a place, and shows whatever stands there
        <View key={i} track={places[i] as RefObject<HTMLElement>}>
          {first ? (
            <PierSite
              places={[first, ...others]}
              kit={kit}
              tones={tones}
              lives={lives}
              isFull={isFull}
              pointedAt={view.pointedAt}
              moment={moment}
            />
          ) : (
            <color attach='background' args={[tones.paper]} />
          )}
          {i === 0 && <Stands eye={eye} kit={kit} dress={dress} onStand={onStand} />}
        </View>
      ))}
    </>
  )
}

/** Hands the picture in to whoever works with it. Stands in the first column, so that it knows its scene. */
function Stands({
  eye,
  kit,
  dress,
  onStand,
}: Pick<LivePicture, 'kit' | 'dress'> & Pick<Props, 'onStand'> & Readonly<{ eye: RefObject<EyeHandle | null> }>) {
  const get = useThree((state) => state.get)
  useEffect(() => {
    if (!eye.current) return
    onStand({ eye: eye.current, kit, state: get(), dress })
    return () => onStand(null)
  }, [onStand, eye, kit, get, dress])
  return null
}

/** Where a column stands, measured against the canvas, so that a page that scrolls moves nothing. */
const placeOn = ({ width, height }: Viewport, i: number): RefObject<HTMLElement> => {
  const place = new DOMRect(i * width, 0, width, height)
  return { current: { getBoundingClientRect: () => place } as HTMLElement }
}

/** Keeps the marks of the materials at their size on paper. */
function usePaperScale({ uPaperScale }: CanvasKit, { height }: Viewport, eye: RefObject<EyeHandle | null>): void {
  const scale = useMemo(() => new PaperScale(), [])
  useFrame(({ invalidate }) => {
    const distance = eye.current?.pose().distance ?? 1
    if (scale.update(distance / focalPixels(height), performance.now(), uPaperScale.value)) invalidate()
  })
}

/** Counts drawn frames, and hands in how the renderer is read once the first picture stands. */
function useDrawnFrames(): void {
  const renderer = useThree((state) => state.gl)
  const frames = useRef(0)
  useFrame(() => {
    frames.current++
    if (frames.current !== 2) return
    offerRenderer(() => ({
      geometries: renderer.info.memory.geometries,
      textures: renderer.info.memory.textures,
      programs: renderer.info.programs?.length ?? 0,
      frames: frames.current - 1,
    }))
  }, 2)
  useEffect(() => () => offerRenderer(null), [])
}

/** Frames the piers where a named view is asked for or the room changes; leaves an eye that a hand has moved where it is. Gives what to call when one does. */
function useFraming(props: Props, column: Viewport, eye: RefObject<EyeHandle | null>): () => void {
  const { columns, view, settled, room, free } = props
  const { viewpoint, openLink, cut } = view
  /** Named view that the eye stands at, until a hand moves it. */
  const standsAt = useRef<Viewpoint | null>(viewpoint.name)
  const before = useRef<Readonly<{ at: number; settled: unknown }> | null>(null)
  const piers = columns.flat()
  const lift = piers[0]?.lift ?? 0
  // biome-ignore lint/correctness/useExhaustiveDependencies: framed anew by these alone, as all else is then
  useLayoutEffect(() => {
    const was = before.current
    before.current = { at: viewpoint.at, settled }
    const isCalled = was !== null && was.at !== viewpoint.at
    if (isCalled) standsAt.current = viewpoint.name
    const name = standsAt.current
    if (name === null || piers.length === 0) return
    const aims = piers.map((standing) => {
      const { spec, checks } = standing.pier.result
      // A close-up is of the part whose link is open.
      const where = checks.find(({ id }) => id === openLink)?.where ?? []
      const part = partExtent(where, (id) => bodyOf(standing.pier, id)?.mesh ?? null)
      const aim = aimAt(name, placedExtent(standing), cut.facing, spec.site.downhill + standing.turn, column.width < narrowWidth, part)
      return { ...aim, points: aim.points.map((point) => onSite(standing, point)) }
    })
    const [first] = aims
    if (!first) return
    const pose = framed({ ...first, points: aims.flatMap(({ points }) => points) }, column, free(column, name))
    const within = new Box3()
    for (const {
      at,
      pier: { extent },
    } of piers) {
      const { half, bottom, groundTop, pierTop } = extent
      within.expandByPoint(new Vector3(at[0] - half, at[1] + bottom, at[2] - half))
      within.expandByPoint(new Vector3(at[0] + half, at[1] + Math.max(groundTop, pierTop) + half, at[2] + half))
    }
    const leash = { distance: pose.distance, within }
    const isMove = isCalled || (was !== null && was.settled !== settled)
    eye.current?.goTo(pose, leash, !isMove || prefersStill())
  }, [viewpoint.at, settled, room, column, lift])
  return () => {
    standsAt.current = null
  }
}

export const prefersStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches
