import type { Ink } from './ink.ts'
import { inkStyles, lineAt } from './plateLines.ts'
import type { TypeSize } from './typeSize.ts'

/** Lines and words over a picture, as SVG. */
export const InkLayer = ({ ink, size }: Readonly<{ ink: Ink; size: TypeSize }>) => (
  <g className='ink'>
    {inkStyles.map((style) => (
      <g key={style}>
        <path className={`ink-${style} casing`} d={ink.paths[style]} />
        <path className={`ink-${style}`} d={ink.paths[style]} />
      </g>
    ))}
    {ink.plates.map((plate) => (
      <g key={plate.id} className={`plate plate-${plate.kind}`} transform={`translate(${plate.x} ${plate.y})`}>
        <rect width={plate.width} height={plate.height} rx={2} />
        {plate.lines.map((line, i) => (
          <text key={line} {...lineAt(plate, i, size)}>
            {line}
          </text>
        ))}
      </g>
    ))}
  </g>
)
