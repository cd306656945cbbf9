import { type ReactNode, useId } from 'react'
import type { WoodWetness } from '../../core/engineering/tables/contactWetness.ts'
import { nativeRoles, type Role } from '../../core/model/solid.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import { shownLayers } from '../../state/shown.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { HatchPatterns, patternId } from '../section/HatchPatterns.tsx'
import { type Hatch, hatchOfGround, hatchOfRole } from '../section/hatch.ts'

type Entry = Readonly<{ hatch: Exclude<Hatch, 'none'>; role: Role }>

const hatchIn = (role: Role, { site }: PierSpec): Hatch =>
  role === 'soil' ? hatchOfGround(site.soil) : role === 'soil-lower' ? hatchOfGround((site.lower ?? site).soil) : hatchOfRole(role)

/** The patterns in view, each once, in the order of the zones. */
function entriesOf(roles: readonly Role[], spec: PierSpec): Entry[] {
  const seen = new Map<Hatch, Role>()
  for (const role of roles) if (!seen.has(hatchIn(role, spec))) seen.set(hatchIn(role, spec), role)
  return [...seen].flatMap(([hatch, role]) => (hatch === 'none' ? [] : [{ hatch, role }]))
}

const woodWetnesses: readonly WoodWetness[] = ['dries-out', 'wet-at-times', 'stays-wet']

/** Marks of a class of wet wood, as the picture has them: none, dots, close strokes. */
const marks: Readonly<Record<WoodWetness, string>> = {
  'dries-out': '',
  'wet-at-times': [4, 12, 20, 28].map((x, i) => `M${x} ${i % 2 === 0 ? 6 : 14}h0.01M${x} ${i % 2 === 0 ? 16 : 4}h0.01`).join(''),
  'stays-wet': [0, 6, 12, 18, 24, 30, 36, 42, 48].map((x) => `M${x} 0L${x - 20} 20`).join(''),
}

type SwatchProps = Readonly<{ name: string; isFramed?: boolean; children: ReactNode }>

/** 8 to 5 as on a drawing, with the name of what it shows. */
const Swatch = ({ name, isFramed = true, children }: SwatchProps) => (
  <li>
    <svg viewBox='0 0 32 20' aria-hidden='true'>
      {children}
      {isFramed && <rect className='legend-frame' x='0.5' y='0.5' width='31' height='19' />}
    </svg>
    {name}
  </li>
)

/** Swatches of the patterns in view; of wet wood its classes, driest first, with the marks by which they are told apart. */
export function Legend() {
  const { bar, patterns } = wordsOf('scene')
  const moisture = wordsOf('moisture')
  const prefix = useId().replace(/[^a-z0-9]/gi, '')
  const { zones, spec, sheets } = useResult()
  const layers = usePier((state) => shownLayers(state.view))
  // Years are looked at: what they leave open is drawn too.
  const isInYears = usePier(({ view: { time } }) => time?.stretch === 'years')
  const entries = entriesOf(
    zones.map(({ role }) => role).filter((role) => layers.soil || !nativeRoles.has(role)),
    spec,
  )
  const has = (id: 'water-table' | 'frost-line'): boolean => sheets.some((sheet) => sheet.id === id)
  return (
    <ul className='legend over-fine' aria-label={bar.legend}>
      {entries.map(({ hatch, role }) => (
        <Swatch key={hatch} name={patterns[hatch]}>
          <defs>
            <HatchPatterns prefix={`${prefix}-${hatch}`} scale={2.6} />
          </defs>
          <rect className={`section-zone role-${role}`} width='32' height='20' />
          <rect className='section-hatch' width='32' height='20' fill={`url(#${patternId(`${prefix}-${hatch}`, hatch)})`} />
        </Swatch>
      ))}
      {layers.water && has('water-table') && (
        <Swatch name={patterns.water} isFramed={false}>
          <path className='section-outline outline-water' d='M2 12H30' />
        </Swatch>
      )}
      {layers.frost && has('frost-line') && (
        <Swatch name={patterns.frost} isFramed={false}>
          <path className='section-outline outline-frost' d='M1 10H31' />
        </Swatch>
      )}
      {layers.wetness &&
        woodWetnesses.map((wetness) => (
          <Swatch key={wetness} name={moisture.wetness[wetness]}>
            <defs>
              <clipPath id={`${prefix}-${wetness}`}>
                <rect width='32' height='20' />
              </clipPath>
            </defs>
            <rect className={`wet-swatch wet-${wetness}`} width='32' height='20' />
            <path className={`wet-marks wet-${wetness}`} d={marks[wetness]} clipPath={`url(#${prefix}-${wetness})`} />
          </Swatch>
        ))}
      {layers.wetness && isInYears && (
        <Swatch name={moisture.open}>
          <rect className='wet-swatch wet-open' width='32' height='20' />
          <path className='wet-marks wet-open' d='M0 6L6 0M0 14L14 0M2 20L22 0M10 20L30 0M18 20L32 6M26 20L32 14' />
        </Swatch>
      )}
    </ul>
  )
}
