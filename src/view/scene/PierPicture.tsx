import { useFrame, useThree } from '@react-three/fiber'
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import { lettingGo } from '../../core/derive/lettingGo.ts'
import { hiddenZones } from '../../state/shown.ts'
import { shownLayers } from '../../state/shown.ts'
import { pierStore } from '../../state/store.ts'
import { offerParts, offerPull } from '../live/probe.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { useWater } from '../section/useWater.ts'
import { player } from '../live/player.ts'
import type { Viewport } from './camera/lens.ts'
import type { PictureLayer } from './overlay/PictureLayer.ts'
import { type LivePicture, PierColumns, prefersStill } from './PierColumns.tsx'
import { drawnPier, type PierLook } from './pier/drawnPier.ts'
import { alone, movedIn, type PlacedPier, targetsOf } from './pier/placedPier.ts'
import { type PullState, pullState, riseTime, risenAfter, shownRise } from './pull/pullState.ts'

type Props = Readonly<{
  size: Viewport
  lives: number
  layer: PictureLayer
  /** Another value: what is written round the pier takes another room. */
  room: unknown
  /** A handle of the cut is held. */
  isHeld: boolean
  onStand: (picture: LivePicture | null) => void
}>

const playing = () => player

/** The one pier of the page in its picture, in step with the store. */
export function PierPicture({ size, lives, layer, room, isHeld, onStand }: Props) {
  const view = usePier((state) => state.view)
  const isDrafted = usePier((state) => state.draft !== null)
  const { standing, pulled, isRising } = useStanding()
  const water = useWater(shownLayers(view).wetness)
  useLayoutEffect(() => layer.overlay.show(standing, pulled), [layer, standing, pulled])
  // biome-ignore lint/correctness/useExhaustiveDependencies: words are laid out anew for what stands otherwise
  useLayoutEffect(() => {
    layer.isStirring = isRising
    layer.settle()
  }, [layer, standing, isRising, water])
  usePlayer()
  useProbe(standing, pulled, isRising)
  const free = useCallback<Parameters<typeof PierColumns>[0]['free']>(
    (column, name) => layer.overlay.safeArea(column, pierStore.getState(), name),
    [layer],
  )
  const columns = useMemo(() => [[standing]], [standing])
  return (
    <PierColumns
      size={size}
      lives={lives}
      columns={columns}
      view={view}
      settled={useLatest(standing.pier.result, !isDrafted)}
      room={room}
      free={free}
      moment={playing}
      isBusy={isRising || isHeld || isDrafted || view.playing}
      onFrame={layer.drawn}
      onRest={layer.settle}
      onStand={onStand}
    />
  )
}

/** The value as it was when last it was `taken`. */
function useLatest<T>(value: T, isTaken: boolean): T {
  const held = useRef(value)
  if (isTaken) held.current = value
  return held.current
}

/** The pier on show as it stands now, and what the pull does to it. */
function useStanding(): Readonly<{ standing: PlacedPier; pulled: PullState; isRising: boolean }> {
  const result = useResult()
  const hidden = usePier(hiddenZones)
  const { cut, cutPost, explode, pull, ...view } = usePier((state) => state.view)
  const { water, frost, soil, wetness } = shownLayers(view)
  const look = useMemo<PierLook>(() => ({ cut, cutPost, water, frost, soil, wetness }), [cut, cutPost, water, frost, soil, wetness])
  const pulled = useMemo(() => pullState(result, pull), [result, pull])
  const link = pulled.kind === 'letting-go' ? pulled.way.link : null
  // The same link of the same pier goes on as it is, under another pull.
  const way = useMemo(() => (link === null ? null : lettingGo(result, link)), [result, link])
  const { share, isRising } = useRising(link)
  const pier = useMemo(() => drawnPier(result, look, way), [result, look, way])
  const rise = way ? share * shownRise(way.how, result.spec.hole.depth) : 0
  const standing = useMemo(() => ({ ...alone, pier, hidden, lift: explode, rise }), [pier, hidden, explode, rise])
  return { standing, pulled, isRising }
}

/** The share 0..1 by which what `link` has let go has risen: from its place up, at once where motion is not wanted; nought while all hold. */
function useRising(link: string | null): Readonly<{ share: number; isRising: boolean }> {
  const invalidate = useThree((state) => state.invalidate)
  const [share, setShare] = useState(0)
  const start = useRef<number | null>(null)
  useLayoutEffect(() => {
    const isAtOnce = link === null || prefersStill()
    start.current = isAtOnce ? null : performance.now()
    setShare(link !== null && isAtOnce ? 1 : 0)
    invalidate()
  }, [link, invalidate])
  useFrame(() => {
    if (start.current === null) return
    const elapsed = performance.now() - start.current
    setShare(risenAfter(elapsed))
    if (elapsed >= riseTime) start.current = null
    else invalidate()
  }, -0.8)
  return { share, isRising: link !== null && share < 1 }
}

/** While the picture stands it draws what is played, and asks for its frames. */
function usePlayer(): void {
  const invalidate = useThree((state) => state.invalidate)
  useEffect(() => {
    player.setPump(() => invalidate())
    return () => player.setPump(null)
  }, [invalidate])
  useFrame(() => player.tick(performance.now()), -0.8)
}

/** Hands in how the picture is read. */
function useProbe(standing: PlacedPier, pulled: PullState, isMoving: boolean): void {
  useEffect(() => {
    const way = pulled.kind === 'letting-go' ? pulled.way : null
    offerPull(() => ({ kind: pulled.kind, link: way?.link ?? null, how: way?.how ?? null, isMoving, ...movedIn(standing) }))
    offerParts(() => targetsOf(standing).map(({ id }) => id))
  }, [standing, pulled, isMoving])
  useEffect(
    () => () => {
      offerPull(null)
      offerParts(null)
    },
    [],
  )
}
