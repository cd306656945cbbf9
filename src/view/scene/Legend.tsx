import { useId } from 'react'
import type { Role } from '../../core/model/solid.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { shownLayers } from '../../state/shownLayers.ts'
import { HatchPatterns, patternId } from '../section/HatchPatterns.tsx'
import { type Hatch, hatchOfGround, hatchOfRole } from '../section/hatch.ts'
import { WetLegend } from './WetLegend.tsx'

type Entry = Readonly<{ hatch: Exclude<Hatch, 'none'>; role: Role }>

const hatchIn = (role: Role, { site }: PierSpec): Hatch =>
  role === 'soil' ? hatchOfGround(site.soil) : role === 'soil-lower' ? hatchOfGround((site.lower ?? site).soil) : hatchOfRole(role)

/** The patterns in view, each once, in the order of the zones. */
function entriesOf(roles: readonly Role[], spec: PierSpec): Entry[] {
  const seen = new Set<Hatch>()
  return roles.flatMap((role): Entry[] => {
    const hatch = hatchIn(role, spec)
    if (hatch === 'none' || seen.has(hatch)) return []
    seen.add(hatch)
    return [{ hatch, role }]
  })
}

/** Swatches of the patterns in view, 8 to 5 as on a drawing. */
export function Legend() {
  const words = wordsOf('scene')
  const prefix = useId().replace(/[^a-z0-9]/gi, '')
  const { zones, spec, sheets } = useResult()
  const layers = usePier((state) => shownLayers(state.view))
  const isInYears = usePier(({ view: { time } }) => time?.stretch === 'years')
  const isShown = (role: Role): boolean => layers.soil || (role !== 'soil' && role !== 'soil-lower' && role !== 'topsoil')
  const entries = entriesOf(zones.map(({ role }) => role).filter(isShown), spec)
  const has = (id: 'water-table' | 'frost-line'): boolean => sheets.some((sheet) => sheet.id === id)
  return (
    <ul className='legend' aria-label={words.bar.legend}>
      {entries.map(({ hatch, role }) => (
        <li key={hatch}>
          <svg viewBox='0 0 32 20' aria-hidden='true'>
            <defs>
              <HatchPatterns prefix={`${prefix}-${hatch}`} scale={2.6} />
            </defs>
            <rect className={`section-zone role-${role}`} width='32' height='20' />
            <rect className='section-hatch' width='32' height='20' fill={`url(#${patternId(`${prefix}-${hatch}`, hatch)})`} />
            <rect className='legend-frame' x='0.5' y='0.5' width='31' height='19' />
          </svg>
          {words.patterns[hatch]}
        </li>
      ))}
      {layers.water && has('water-table') && (
        <li>
          <svg viewBox='0 0 32 20' aria-hidden='true'>
            <path className='section-outline water' d='M2 12H30' />
          </svg>
          {words.patterns.water}
        </li>
      )}
      {layers.frost && has('frost-line') && (
        <li>
          <svg viewBox='0 0 32 20' aria-hidden='true'>
            <path className='section-outline frost' d='M1 10H31' />
          </svg>
          {words.patterns.frost}
        </li>
      )}
      {layers.wetness && <WetLegend prefix={prefix} isInYears={isInYears} />}
    </ul>
  )
}
