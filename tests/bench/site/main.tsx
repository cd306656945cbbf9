import { useMemo } from 'react'
import { createRoot } from 'react-dom/client'
import { flushSync } from 'react-dom'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { metres, radians } from '../../../src/core/units/quantity.ts'
import { pierStore } from '../../../src/state/store.ts'
import { SceneCanvas } from '../../../src/view/scene/canvas/SceneCanvas.tsx'
import { type LivePicture, PierColumns } from '../../../src/view/scene/PierColumns.tsx'
import { drawnPier } from '../../../src/view/scene/pier/drawnPier.ts'
import type { PlacedPier } from '../../../src/view/scene/pier/placedPier.ts'
import '../../../src/view/styles/tokens.css'

/** What the graphics card holds, and what the last frame drew. */
export type SiteReading = Readonly<{
  draws: number
  triangles: number
  geometries: number
  textures: number
  programs: number
  frames: number
}>
export type SitePage = Readonly<{
  /** Null before a picture stands. */
  read(): SiteReading | null
  /** Puts so many piers on the site. */
  show(piers: number): void
  /** Makes the hole of one of them another one, in one of a dozen sizes. */
  edit(pier: number, size: number): void
  /** Draws a frame now, and gives how long its script took [ms]. */
  draw(): number
  /** Takes the canvas away. */
  leave(): void
}>
declare global {
  interface Window {
    site?: SitePage
  }
}

/** A pier of the site: all ways to fill the hole in turn, in a dozen depths. An invented site. */
const pierOf = (i: number, size: number): PierResult => {
  const kind = fillKinds[i % fillKinds.length]?.id ?? 'mixed-full-height'
  const spec = withChoice(defaultSpec, 'fill.kind', kind)
  return derivePier({ ...spec, hole: { ...spec.hole, depth: metres(1.2 + 0.02 * size) } })
}

const { view } = pierStore.getState()
const facing = radians(Math.PI / 2)
const looked = { cut: { open: radians(1.75), facing }, cutPost: false, water: true, frost: true, soil: true, wetness: false } as const
const shownView = { ...view, cut: looked.cut, viewpoint: { name: 'three-quarter', at: 1 }, quality: 'full' } as const

/** In rows of eight, 8 ft apart, down the slope. */
const standing = (i: number, size: number): PlacedPier => {
  const [x, z] = [2.44 * ((i % 8) - 3.5), 2.44 * (Math.floor(i / 8) - 2)]
  const { slope, downhill } = defaultSpec.site
  const y = -slope * (x * Math.cos(downhill) + z * Math.sin(downhill))
  return { at: [x, y, z], turn: 0, pier: drawnPier(pierOf(i, size), looked, null), hidden: new Set(), lift: 0, rise: 0 }
}

let picture: LivePicture | null = null
let frames = 0
let places: readonly PlacedPier[] = []
const asked = Number(new URLSearchParams(location.search).get('piers'))

const moment = { stretch: null, place: 0 } as const
const atRest = () => moment
const nothing = () => undefined
const count = () => frames++
/** Kept when its picture goes, to be asked what is left. */
let renderer: LivePicture['state']['gl'] | null = null
const stand = (made: LivePicture | null) => {
  picture = made
  renderer = made?.state.gl ?? renderer
}

type Props = Readonly<{ size: Readonly<{ width: number; height: number }>; lives: number; places: readonly PlacedPier[] }>

function Picture({ size, lives, places }: Props) {
  return (
    <PierColumns
      size={size}
      lives={lives}
      columns={useMemo(() => [places], [places])}
      view={shownView}
      settled={null}
      room={places.length}
      free={({ width, height }) => ({ left: 20, top: 20, right: width - 20, bottom: height - 20 })}
      moment={atRest}
      isBusy={false}
      onFrame={count}
      onRest={nothing}
      onStand={stand}
    />
  )
}

const holder = document.getElementById('root')
if (!holder) throw new Error('the page has no #root')
const root = createRoot(holder)
const put = (next: readonly PlacedPier[]): void => {
  places = next
  flushSync(() =>
    root.render(
      <SceneCanvas isFull onLost={nothing}>
        {(size, lives) => <Picture size={size} lives={lives} places={next} />}
      </SceneCanvas>,
    ),
  )
}

window.site = {
  read: () => {
    if (!renderer) return null
    const { render, memory, programs } = renderer.info
    const { geometries, textures } = memory
    return { draws: render.calls, triangles: render.triangles, geometries, textures, programs: programs?.length ?? 0, frames }
  },
  show: (piers) => put(Array.from({ length: piers }, (_, i) => standing(i, i % 12))),
  edit: (pier, size) => put(places.map((was, i) => (i === pier ? standing(i, size) : was))),
  draw: () => {
    const start = performance.now()
    picture?.state.advance(start)
    return performance.now() - start
  },
  leave: () => root.unmount(),
}
window.site.show(asked || 1)
