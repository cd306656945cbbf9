import type { WoodWetness } from '../../core/engineering/tables/contactWetness.ts'
import { wordsOf } from '../../words/index.ts'

const woodWetnesses: readonly WoodWetness[] = ['dries-out', 'wet-at-times', 'stays-wet']

/** Marks of a class, as the picture has them: none, dots, close strokes. */
const marks: Readonly<Record<WoodWetness, string>> = {
  'dries-out': '',
  'wet-at-times': [4, 12, 20, 28].map((x, i) => `M${x} ${i % 2 === 0 ? 6 : 14}h0.01M${x} ${i % 2 === 0 ? 16 : 4}h0.01`).join(''),
  'stays-wet': [0, 6, 12, 18, 24, 30, 36, 42, 48].map((x) => `M${x} 0L${x - 20} 20`).join(''),
}

type Props = Readonly<{
  /** Keeps two legends on one page apart. */
  prefix: string
  /** Years are looked at: what they leave open is drawn too. */
  isInYears: boolean
}>

/** The classes of wet wood, driest first, with the marks by which they are told apart. */
export const WetLegend = ({ prefix, isInYears }: Props) => {
  const words = wordsOf('moisture')
  return (
    <>
      {woodWetnesses.map((wetness) => (
        <li key={wetness}>
          <svg viewBox='0 0 32 20' aria-hidden='true'>
            <defs>
              <clipPath id={`${prefix}-${wetness}`}>
                <rect width='32' height='20' />
              </clipPath>
            </defs>
            <rect className={`wet-swatch wet-${wetness}`} width='32' height='20' />
            <path className={`wet-marks wet-${wetness}`} d={marks[wetness]} clipPath={`url(#${prefix}-${wetness})`} />
            <rect className='legend-frame' x='0.5' y='0.5' width='31' height='19' />
          </svg>
          {words.wetness[wetness]}
        </li>
      ))}
      {isInYears && (
        <li>
          <svg viewBox='0 0 32 20' aria-hidden='true'>
            <rect className='wet-swatch wet-open' width='32' height='20' />
            <path className='wet-marks wet-open' d='M0 6L6 0M0 14L14 0M2 20L22 0M10 20L30 0M18 20L32 6M26 20L32 14' />
            <rect className='legend-frame' x='0.5' y='0.5' width='31' height='19' />
          </svg>
          {words.open}
        </li>
      )}
    </>
  )
}
