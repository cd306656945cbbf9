import { type ReactNode, useEffect, useId, useRef, useState } from 'react'
import { radians } from '../../core/units/quantity.ts'
import type { Layer, Viewpoint } from '../../state/appState.ts'
import { setCut, setCutPost, setExplode, setLayer } from '../../state/actions/view.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { useViewpoints } from '../hooks/useViewpoints.ts'
import { takeView } from '../../state/actions/takeView.ts'
import { Legend } from './Legend.tsx'

const layers: readonly Layer[] = ['soil', 'labels', 'dimensions', 'water', 'frost', 'wetness']
const degree = Math.PI / 180
const cuts = [
  ['whole', 0],
  ['corner', 100],
  ['half', 180],
  ['open', 270],
] as const

/** Plan of a round block with the cut's sector left out, opening toward the reader. */
function CutGlyph({ open }: Readonly<{ open: number }>) {
  const half = (open / 2) * degree
  const [x1, y1, x2, y2] = [9 * Math.sin(half), 9 * Math.cos(half), -9 * Math.sin(half), 9 * Math.cos(half)].map((v) => v.toFixed(2))
  return (
    <svg viewBox='-11 -11 22 22' aria-hidden='true'>
      {open === 0 ? <circle r='9' /> : <path d={`M0 0L${x1} ${y1}A9 9 0 ${open < 180 ? 1 : 0} 0 ${x2} ${y2}Z`} />}
    </svg>
  )
}

/** Viewpoints, presets of the cut, what is handed in, and what is shown. Stands at the foot of the picture. */
export function ViewBar({ children }: Readonly<{ children: ReactNode }>) {
  const words = wordsOf('scene')
  const cut = usePier((state) => state.view.cut)
  const viewpoint = usePier((state) => state.view.viewpoint.name)
  const viewpoints = useViewpoints()
  const openDegrees = Math.round(cut.open / degree)
  return (
    <div className='view-bar rings-inside panel over-fine small'>
      <fieldset className='view-group view-wide' aria-label={words.bar.look}>
        {viewpoints.map((name) => (
          <button
            className='tab'
            key={name}
            type='button'
            title={words.viewpointHints[name]}
            aria-pressed={name === viewpoint}
            onClick={() => takeView(pierStore, name)}
          >
            {words.viewpoints[name]}
          </button>
        ))}
      </fieldset>
      <label className='view-narrow'>
        <span className='spoken'>{words.bar.look}</span>
        <select value={viewpoint} onChange={(event) => takeView(pierStore, event.currentTarget.value as Viewpoint)}>
          {viewpoints.map((name) => (
            <option key={name} value={name}>
              {words.viewpoints[name]}
            </option>
          ))}
        </select>
      </label>
      <fieldset className='view-group view-cuts' aria-label={words.bar.cut}>
        {cuts.map(([name, degrees]) => (
          <button
            className='tab'
            key={name}
            type='button'
            title={words.bar[name]}
            aria-label={words.bar[name]}
            aria-pressed={openDegrees === degrees}
            onClick={() => setCut(pierStore, { open: radians(degrees * degree), facing: cut.facing })}
          >
            <CutGlyph open={degrees} />
          </button>
        ))}
      </fieldset>
      {children}
      <ShowPanel />
    </div>
  )
}

/** A small panel over the bar: layers, the post's cut, parts lifted, legend. */
function ShowPanel() {
  const words = wordsOf('scene')
  const [isOpen, setOpen] = useState(false)
  const panel = useRef<HTMLDivElement>(null)
  const id = useId()
  const shown = usePier((state) => state.view.layers)
  const cutPost = usePier((state) => state.view.cutPost)
  const explode = usePier((state) => state.view.explode)
  useEffect(() => {
    if (!isOpen) return
    const outside = (event: Event): void => {
      if (event.target instanceof Node && !panel.current?.contains(event.target)) setOpen(false)
    }
    const onEscape = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') setOpen(false)
    }
    document.addEventListener('pointerdown', outside)
    document.addEventListener('keydown', onEscape)
    return () => {
      document.removeEventListener('pointerdown', outside)
      document.removeEventListener('keydown', onEscape)
    }
  }, [isOpen])
  return (
    <div className='view-show' ref={panel}>
      <button
        type='button'
        className='tab left-fine view-show-button'
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        {words.bar.show}
      </button>
      <section id={id} className='view-panel panel stack wide' hidden={!isOpen} aria-label={words.bar.more}>
        <div className='view-checks'>
          {layers.map((layer) => (
            <label key={layer} className='tick'>
              <input type='checkbox' checked={shown[layer]} onChange={(event) => setLayer(pierStore, layer, event.currentTarget.checked)} />
              {words.layers[layer]}
            </label>
          ))}
          <label className='tick'>
            <input type='checkbox' checked={cutPost} onChange={(event) => setCutPost(pierStore, event.currentTarget.checked)} />
            {words.bar.cutPost}
          </label>
        </div>
        <label className='stack tight'>
          {words.bar.apart}
          <input
            type='range'
            min={0}
            max={1}
            step={0.01}
            value={explode}
            onChange={(event) => setExplode(pierStore, event.currentTarget.valueAsNumber)}
          />
        </label>
        <Legend />
      </section>
    </div>
  )
}
