import { shownLayers } from '../../state/shown.ts'
import { useEffect, useId, useMemo, useRef, useState } from 'react'
import { formatText } from '../../core/units/format.ts'
import { pointAt } from '../../state/actions/view.ts'
import type { Gone } from '../../state/goneBy.ts'
import { hiddenZones } from '../../state/shown.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { HatchPatterns } from './HatchPatterns.tsx'
import { SectionBodies, useSize } from './SectionBodies.tsx'
import { InkLayer } from './InkLayer.tsx'
import './section.css'
import { drawSection } from './drawSection.ts'
import { tallyRoom } from './tallyRoom.ts'
import { useWater } from './useWater.ts'
import { forgetWidths, lettersReady, typeSize } from './typeSize.ts'

const pixelsPerMillimetre = 4.2

/** The exact section through the pier's axis as a drawing: hatches, names, dimensions. Stands in for the 3D picture wherever there is none. */
export function SectionView() {
  const frame = useRef<HTMLDivElement>(null)
  const size = useSize(frame)
  const prefix = useId().replace(/[^a-z0-9]/gi, '')
  const result = useResult()
  // Drawn along the fall line, downhill on the right, however the picture is turned.
  const facing = result.spec.site.downhill + Math.PI / 2
  const cutPost = usePier((state) => state.view.cutPost)
  const layers = usePier((state) => shownLayers(state.view))
  const units = usePier((state) => state.view.units)
  const theme = usePier((state) => state.view.theme)
  const hidden = usePier(hiddenZones)
  const pointedAt = usePier((state) => state.view.pointedAt)
  const isWrong = usePier(({ view }) => view.mistakes.length > 0)
  const year = usePier(({ view: { time } }) => (time?.stretch === 'years' ? time.year : null))

  const water = useWater(layers.wetness)
  const [letters, setLetters] = useState(0)
  useEffect(() => {
    let alive = true
    lettersReady().then(() => {
      if (!alive) return
      forgetWidths()
      setLetters((count) => count + 1)
    })
    return () => {
      alive = false
    }
  }, [])

  const type = useMemo(() => typeSize(theme, (size?.width ?? 800) < 560), [theme, size])
  // biome-ignore lint/correctness/useExhaustiveDependencies: widths of words change when the page's letters arrive
  const drawing = useMemo(() => {
    if (!size || size.width < 40 || size.height < 40) return null
    const say = {
      length: (value: number) => formatText(value, 'length', units),
      slope: (value: number) => formatText(value, 'slope', units),
    }
    const gone: Gone = { least: 0, most: 0 }
    const isTold = year !== null && water?.goneBy(result.spec, year, gone) === true
    const over = year === null ? [] : [tallyRoom(size, theme, isWrong)]
    return drawSection({
      result,
      facing,
      cutPost,
      layers,
      drawWet: water?.drawWet ?? null,
      say,
      type,
      size,
      hidden,
      gone: isTold ? gone : null,
      over,
      isInYears: year !== null,
    })
  }, [result, facing, cutPost, layers, units, type, size, letters, hidden, year, theme, isWrong, water])

  return (
    <div className='section fills' ref={frame}>
      {drawing && size && (
        <svg
          role='img'
          aria-label={wordsOf('scene').section}
          viewBox={`0 0 ${size.width} ${size.height}`}
          onPointerLeave={() => pointAt(pierStore, null)}
        >
          <defs>
            <HatchPatterns prefix={prefix} scale={pixelsPerMillimetre} />
          </defs>
          <SectionBodies drawing={drawing} prefix={prefix} lit={pointedAt} onEnter={(zone) => pointAt(pierStore, zone)} />
          <InkLayer ink={drawing.ink} size={type} />
        </svg>
      )}
    </div>
  )
}
