import { type Hatch, hatches } from './hatch.ts'
import { hatchTiles } from './hatchTile.ts'

/** Id of a hatch's pattern; `prefix` keeps two drawings on one page apart. */
export const patternId = (prefix: string, hatch: Hatch): string => `${prefix}-${hatch}`

/** The hatches as SVG patterns. `scale` is user units to a paper millimetre. They are drawn in the current colour. */
export const HatchPatterns = ({ prefix, scale }: Readonly<{ prefix: string; scale: number }>) => (
  <>
    {hatches.map((hatch) => {
      if (hatch === 'none') return null
      const { width, height, strokes, dots } = hatchTiles[hatch]
      return (
        <pattern
          key={hatch}
          id={patternId(prefix, hatch)}
          patternUnits='userSpaceOnUse'
          width={width}
          height={height}
          patternTransform={`scale(${scale})`}
        >
          <path d={strokes} fill='none' stroke='currentColor' strokeWidth={0.2} strokeLinecap='round' strokeLinejoin='round' />
          <path d={dots} fill='currentColor' />
        </pattern>
      )
    })}
  </>
)
