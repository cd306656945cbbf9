import type { Pictogram as Drawing } from './pictogram.ts'

/** A section the size of a stamp: what is placed, where, in the colours of the picture. */
export const Pictogram = ({ drawing }: { drawing: Drawing }) => {
  const { x, y, width, height } = drawing.box
  return (
    <svg
      className='pictogram'
      viewBox={`${x} ${y} ${width} ${height}`}
      preserveAspectRatio='xMidYMid slice'
      aria-hidden='true'
      focusable='false'
    >
      {drawing.polygons.map((polygon, i) => (
        <polygon
          // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is made once and never reordered
          key={i}
          className={`role-${polygon.role}`}
          points={polygon.points.map(([right, up]) => `${right.toFixed(4)},${(-up).toFixed(4)}`).join(' ')}
        />
      ))}
    </svg>
  )
}
