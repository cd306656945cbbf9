import { useId, useMemo, useRef } from 'react'
import type { PierResult } from '../../core/model/result.ts'
import { wordsOf } from '../../words/index.ts'
import { type Gone, goneBy } from '../../state/goneBy.ts'
import { usePier, useUnits } from '../hooks/usePier.ts'
import { drawSection, type SectionDrawing, type SectionInput } from '../section/drawSection.ts'
import type { Box } from '../section/ink.ts'
import { HatchPatterns } from '../section/HatchPatterns.tsx'
import { SectionBodies, type Size, useSize } from '../section/SectionBodies.tsx'
import { InkLayer } from '../section/InkLayer.tsx'
import '../section/section.css'
import { columnTally } from '../section/tallyRoom.ts'
import { drawWet } from '../section/wetInk.ts'
import { useCompare } from './useCompare.ts'

const pixelsPerMillimetre = 4.2
/** Names and figures would not fit a narrow column; the plates and the table have them. */
const type = { name: 16, figure: 16 } as const

/** What the years leave open of a pier's post; null while no year is looked at, or where nothing can be told. */
function goneIn({ spec }: PierResult, year: number | null): Gone | null {
  const gone: Gone = { least: 0, most: 0 }
  return year !== null && goneBy(spec, year, gone) ? gone : null
}

const edge = 12

/** Sections of all piers at the one scale at which the largest still fits, with grade at one height. */
export function sectionsAtOneScale(
  piers: readonly (PierResult | null)[],
  cell: Size,
  view: Pick<SectionInput, 'facing' | 'cutPost' | 'layers' | 'say'>,
  year: number | null = null,
): readonly (SectionDrawing | null)[] {
  const layers = { ...view.layers, labels: false, dimensions: false, wetness: year !== null }
  // The tally of the years stands below the drawing.
  const size = { width: cell.width, height: cell.height - (year === null ? 0 : columnTally) }
  const draw = (result: PierResult, scales: readonly number[] = [], over: readonly Box[] = []) =>
    drawSection({ ...view, layers, drawWet, result, type, size, gone: goneIn(result, year), isInYears: year !== null, scales, over })
  const frames = piers.flatMap((result) => (result === null ? [] : draw(result).frame))
  const { top, bottom } = reachOf(frames)
  const scale = Math.min(...frames.map(({ perMetre }) => perMetre), (size.height - 2 * edge) / (top - bottom))
  const drawn = piers.map((result) => result && draw(result, [scale]))
  if (year === null) return drawn
  // What moves down keeps its words clear of the foot.
  const down = downToGrade(drawn)
  return piers.map((result, i) => result && draw(result, [scale], [{ x: 0, y: size.height - (down[i] ?? 0), ...size }]))
}

type Reach = Readonly<{ top: number; bottom: number }>
const reachOf = (all: readonly Reach[]): Reach => ({
  top: Math.max(...all.map(({ top }) => top)),
  bottom: Math.min(...all.map(({ bottom }) => bottom)),
})

/** How far each drawing moves down for its grade to stand as high as that of the others [px]. */
export function downToGrade(drawn: readonly (SectionDrawing | null)[]): readonly number[] {
  const frames = drawn.flatMap((one) => one?.frame ?? [])
  const { top, bottom } = reachOf(frames)
  return drawn.map((one) => {
    if (one === null) return 0
    const { frame } = one
    return ((top + bottom - frame.top - frame.bottom) / 2) * frame.perMetre
  })
}

/** The drawn sections side by side: where there is no 3D picture, and until there is. */
export const CompareSections = ({ piers }: Readonly<{ piers: readonly (PierResult | null)[] }>) => {
  const frame = useRef<HTMLDivElement>(null)
  const size = useSize(frame)
  const prefix = useId().replace(/[^a-z0-9]/gi, '')
  const facing = usePier((state) => state.view.cut.facing)
  const cutPost = usePier((state) => state.view.cutPost)
  const layers = usePier((state) => state.view.layers)
  const year = useCompare((state) => state.year)
  const { say } = useUnits()

  const drawings = useMemo(() => {
    const cell = size && { width: size.width / Math.max(1, piers.length), height: size.height }
    if (!cell || cell.width < 40 || cell.height < 40) return null
    const words = { length: (value: number) => say(value, 'length'), slope: (value: number) => say(value, 'slope') }
    const list = sectionsAtOneScale(piers, cell, { facing, cutPost, layers, say: words }, year)
    return { cell, list, down: downToGrade(list) }
  }, [size, piers, facing, cutPost, layers, say, year])

  return (
    <div className='section fills' ref={frame} role='img' aria-label={wordsOf('compare').sections}>
      {drawings && (
        <svg viewBox={`0 0 ${size?.width ?? 1} ${size?.height ?? 1}`} aria-hidden='true'>
          <defs>
            <HatchPatterns prefix={prefix} scale={pixelsPerMillimetre} />
          </defs>
          {drawings.list.map((drawing, i) => (
            <svg
              // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
              key={i}
              x={i * drawings.cell.width}
              width={drawings.cell.width}
              height={drawings.cell.height}
              viewBox={`0 ${-(drawings.down[i] ?? 0)} ${drawings.cell.width} ${drawings.cell.height}`}
              overflow='hidden'
              aria-hidden='true'
            >
              {drawing && <SectionBodies drawing={drawing} prefix={prefix} />}
              {drawing && year !== null && <InkLayer ink={drawing.ink} size={type} />}
            </svg>
          ))}
        </svg>
      )}
    </div>
  )
}
