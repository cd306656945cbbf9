import type { SmallDrawing } from '../../core/documents/documentKind.ts'

const pairs = (points: readonly number[]): string => {
  const words: string[] = []
  for (let i = 0; i + 1 < points.length; i += 2) words.push(`${points[i]},${points[i + 1]}`)
  return words.join(' ')
}

/** A saved pier the size of a stamp, in the colours of the page; an empty frame where there is none. */
export const Thumbnail = ({ drawing }: { drawing: SmallDrawing | null }) => (
  <svg
    className='shelf-stamp'
    viewBox={(drawing?.box ?? [0, 0, 72, 96]).join(' ')}
    preserveAspectRatio='xMidYMid slice'
    aria-hidden='true'
    focusable='false'
  >
    {drawing?.bodies.map(([role, points], i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is made once and never reordered
      <polygon key={i} className={`role-${role}`} points={pairs(points)} />
    ))}
  </svg>
)
