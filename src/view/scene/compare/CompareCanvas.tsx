import { type RefObject, useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { PierResult } from '../../../core/model/result.ts'
import { offerComparedPictures } from '../../live/comparedPictures.ts'
import '../../section/waterAndYears.ts'
import { usePier } from '../../hooks/usePier.ts'
import { columnTally } from '../../section/tallyRoom.ts'
import type { Frame, Viewport } from '../camera/lens.ts'
import { SceneCanvas } from '../canvas/SceneCanvas.tsx'
import { type LivePicture, PierColumns } from '../PierColumns.tsx'
import { drawnPier, type PierLook } from '../pier/drawnPier.ts'
import { alone, type PlacedPier, placedExtent } from '../pier/placedPier.ts'
import '../scene.css'
import { paperTones, readTones } from '../site/tones.ts'
import { CompareInk } from './CompareInk.ts'

type Props = Readonly<{
  /** From left to right, in columns of one width; null for a pier that can't be built. */
  piers: readonly (PierResult | null)[]
  /** Year at which wet wood and the way of rain are shown; null: they are not. */
  year: number | null
  /** Changes with the colours of the page. */
  tone: string
  /** The drawing context is gone for good, or has come back after all. */
  onLost: (isLost: boolean) => void
}>

/** Room [px] left free round the pier in its column. */
const margin = 10
/** Share of the height below the hole, so that the foot of the block is seen in a narrow column. */
const footRoom = 0.085

/** Several piers on one canvas, with what wets the wood drawn over them. */
export function CompareCanvas({ piers, year, tone, onLost }: Props) {
  const isFull = usePier((state) => state.view.quality === 'full')
  const ink = useRef<HTMLDivElement>(null)
  const [picture, setPicture] = useState<LivePicture | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a tone names colours that are read off the page
  useEffect(() => picture?.dress(readTones()), [picture, tone])
  useEffect(() => {
    if (!picture) return
    // A context that was lost draws nothing: the drawn sections do without.
    offerComparedPictures(() => (picture.state.gl.getContext().isContextLost() ? null : columnPictures(picture, piers)))
    return () => offerComparedPictures(null)
  }, [picture, piers])
  return (
    <>
      <SceneCanvas isFull={isFull} onLost={onLost}>
        {(size, lives) => <ComparedPiers size={size} lives={lives} piers={piers} year={year} holder={ink} onStand={setPicture} />}
      </SceneCanvas>
      <div className='overlay fills' aria-hidden='true' ref={ink} />
    </>
  )
}

type PiersProps = Pick<Props, 'piers' | 'year'> &
  Readonly<{
    size: Viewport
    lives: number
    holder: RefObject<HTMLDivElement | null>
    onStand: (picture: LivePicture | null) => void
  }>

const none: ReadonlySet<string> = new Set()

function ComparedPiers({ size, lives, piers, year, holder, onStand }: PiersProps) {
  const view = usePier((state) => state.view)
  const isWet = year !== null
  const columns = useStandings(piers, isWet)
  const isMoving = useRef<LivePicture | null>(null)
  const ink = useMemo(() => new CompareInk(holder.current ?? document.createElement('div')), [holder])
  useEffect(() => () => ink.clear(), [ink])
  useEffect(() => {
    if (!isWet) ink.clear()
  }, [ink, isWet])
  const stand = useCallback(
    (picture: LivePicture | null) => {
      isMoving.current = picture
      onStand(picture)
    },
    [onStand],
  )
  const drawInk = (frame: Frame): void => {
    if (!isWet) return
    const inked = columns.map((standing) =>
      standing && view.explode === 0 ? { result: standing.pier.result, extent: placedExtent(standing) } : null,
    )
    ink.draw(inked, frame, view.cut, view.theme, isMoving.current?.eye.isMoving() === true)
  }
  const moment = useMemo(() => {
    const shown = { stretch: isWet ? ('years' as const) : null, place: year ?? 0 }
    return () => shown
  }, [isWet, year])
  return (
    <PierColumns
      size={size}
      lives={lives}
      columns={useMemo(() => columns.map((standing) => (standing ? [standing] : [])), [columns])}
      view={useMemo(() => ({ ...view, pointedAt: null, openLink: null }), [view])}
      settled={null}
      room={useMemo(() => ({ piers, isWet }), [piers, isWet])}
      free={({ width, height }) => ({
        left: margin,
        top: margin,
        right: width - margin,
        bottom: height - Math.max(height * footRoom, isWet ? columnTally + margin : 0),
      })}
      moment={moment}
      isBusy={false}
      onFrame={drawInk}
      onRest={() => isMoving.current?.state.invalidate()}
      onStand={stand}
    />
  )
}

/** Each pier as it stands in its column; one that has been there before is not made anew. */
function useStandings(piers: readonly (PierResult | null)[], wetness: boolean): readonly (PlacedPier | null)[] {
  const { cut, cutPost, layers, explode } = usePier((state) => state.view)
  const { water, frost, soil } = layers
  const look = useMemo<PierLook>(() => ({ cut, cutPost, water, frost, soil, wetness }), [cut, cutPost, water, frost, soil, wetness])
  const made = useRef(new Map<PierResult, PlacedPier>())
  return useMemo(() => {
    const before = made.current
    made.current = new Map()
    return piers.map((result) => {
      if (result === null) return null
      const known = before.get(result)
      const pier = known?.pier.look === look ? known.pier : drawnPier(result, look, null)
      const standing = known?.pier === pier && known.lift === explode ? known : { ...alone, pier, hidden: none, lift: explode, rise: 0 }
      made.current.set(result, standing)
      return standing
    })
  }, [piers, look, explode])
}

/** Each column as it is seen, on white paper, as the address of a JPEG; null for a column without a pier. The screen keeps its own colours. */
function columnPictures({ state, dress }: LivePicture, piers: readonly (PierResult | null)[]): readonly (string | null)[] {
  const canvas = state.gl.domElement
  const [width, height] = [Math.floor(canvas.width / Math.max(1, piers.length)), canvas.height]
  if (width < 2 || height < 2) return piers.map(() => null)
  dress(paperTones)
  // What a canvas shows can be read until the task ends in which it was drawn.
  state.advance(performance.now())
  const copy = document.createElement('canvas')
  copy.width = width
  copy.height = height
  const pen = copy.getContext('2d')
  const taken = piers.map((pier, i) => {
    if (pier === null || !pen) return null
    pen.drawImage(canvas, i * width, 0, width, height, 0, 0, width, height)
    return copy.toDataURL('image/jpeg', 0.9)
  })
  dress(readTones())
  return taken
}
