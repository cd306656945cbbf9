import type { ComponentType, ReactNode } from 'react'
import { claimsAbout, type Finding } from '../../core/derive/evidence.ts'
import { fillKind } from '../../core/kinds/index.ts'
import type { Band } from '../../core/model/timeResult.ts'
import { bracketUnder } from '../../facts/practiceWords.ts'
import { wordIn } from '../../facts/firstWords.ts'
import { type CompareRowId, costOf } from '../../state/compareRows.ts'
import { moistureOf } from '../../state/moistureDerived.ts'
import { lifeOf } from '../../state/timeDerived.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/usePier.ts'
import { StandingMark } from '../kit/Mark.tsx'
import { SourceList } from '../kit/Sources.tsx'
import { goneOf100, lastYearOf } from '../../facts/timeWords.ts'
import { type CellProps, factCells } from './factCells.tsx'

/** Two sides of a thing, each under its name; on paper behind it. */
const TwoSides = ({ as, of }: Pick<CellProps, 'as'> & Readonly<{ of: readonly (readonly [name: string, says: string])[] }>) =>
  as === 'paper' ? (
    of.map(([name, says]) => (
      <p key={name}>
        <b>{name}:</b> {says}
      </p>
    ))
  ) : (
    <dl className='cmp-pairs'>
      {of.flatMap(([name, says]) => [
        <dt key={name} className='small heavy'>
          {name}
        </dt>,
        <dd key={`${name}:`}>{says}</dd>,
      ])}
    </dl>
  )

/** On paper the head of the row says so for all cells. */
const Practice = ({ as }: Pick<CellProps, 'as'>) =>
  as !== 'paper' && (
    <p className='quiet light'>
      <StandingMark standing='common practice' />
    </p>
  )

const Inspect = ({ result, as }: CellProps) => {
  const { inspect, table } = wordsOf('compare')
  const { open, closed } = inspect[result.spec.fill.kind]
  return (
    <>
      <TwoSides
        as={as}
        of={[
          [table.open, open],
          [table.closed, closed],
        ]}
      />
      <Practice as={as} />
    </>
  )
}

const Replace = ({ result: { spec }, as }: CellProps) => {
  const { replace, table } = wordsOf('compare')
  return (
    <>
      <p>
        {replace[spec.fill.kind]} {spec.support.kind !== 'bracket' && <span className='quiet light'>{table.noTime}</span>}
      </p>
      <Practice as={as} />
    </>
  )
}

/** A strength and a weakness, with the sources that stand behind the method. */
const Sides = ({ result: { spec }, as }: CellProps) => {
  const { table } = wordsOf('compare')
  const { strength, weakness } = wordsOf('fills')[spec.fill.kind]
  return (
    <>
      <TwoSides
        as={as}
        of={[
          [table.forIt, strength],
          [table.againstIt, weakness],
        ]}
      />
      {as !== 'paper' && (
        <details>
          <summary className='opens'>{wordsOf('app').answers.sources}</summary>
          <SourceList ids={[...fillKind(spec.fill.kind).sources, ...(bracketUnder(spec)?.sources ?? [])]} />
        </details>
      )}
    </>
  )
}

const List = ({ title, children }: Readonly<{ title: string; children: readonly ReactNode[] }>) => (
  <>
    <h4 className='small-head'>{title}</h4>
    {children.length === 0 ? <p>{wordsOf('compare').table.nothing}</p> : <ul className='bullets'>{children}</ul>}
  </>
)

const Findings = ({ title, findings }: Readonly<{ title: string; findings: readonly Finding[] }>) => (
  <>
    <List title={title}>
      {findings.map(({ id, standing }) => (
        <li key={id}>
          {wordIn(wordsOf('compare').findings, id)} <StandingMark standing={standing} />
        </li>
      ))}
    </List>
    <SourceList ids={findings.map(({ source }) => source)} />
  </>
)

/** What people say of such a pier, each with both sides of the evidence and its gaps. */
const Evidence = ({ result }: CellProps) => {
  const { claims, missing, table } = wordsOf('compare')
  const about = claimsAbout(result)
  if (about.length === 0) return <p>{table.nothing}</p>
  return (
    <ul className='cmp-links'>
      {about.map((claim) => (
        <li key={claim.id}>
          <details>
            <summary className='opens'>
              <span>
                “{wordIn(claims, claim.id)}”{' '}
                <span className='quiet light unbroken'>{table.count(claim.inFavour.length, claim.against.length)}</span>
              </span>
            </summary>
            <Findings title={table.speaksFor} findings={claim.inFavour} />
            <Findings title={table.speaksAgainst} findings={claim.against} />
            <List title={table.notFound}>
              {claim.missing.map((id) => (
                <li key={id}>{wordIn(missing, id)}</li>
              ))}
            </List>
          </details>
        </li>
      ))}
    </ul>
  )
}

const Ask = ({ result }: CellProps) => <p>{wordsOf('fills')[result.spec.fill.kind].ask}</p>

/** Buried wood by class of wetness. */
const Wet = ({ result }: CellProps) => {
  const { say } = useUnits()
  const shares = moistureOf(result.spec).shares.filter(({ area }) => area > 1e-9)
  if (shares.length === 0) return <p>{wordsOf('compare').table.noWood}</p>
  return (
    <ul>
      {shares.map(({ wetness, share, area }) => (
        <li key={wetness}>
          {wordsOf('moisture').wetness[wetness]}: {say(share, 'ratio')} <span className='quiet light'>{say(area, 'area')}</span>
        </li>
      ))}
    </ul>
  )
}

/** The range that rows of evidence leave, or that there is none. */
const Life = ({ result }: CellProps) => {
  const { goneBy, noLife } = wordsOf('compare').table
  const { sound, standing } = lifeOf(result.spec)
  const year = lastYearOf(sound ?? [])
  const gone = goneOf100(sound ?? [], year)
  if (gone === null) return <p>{noLife}</p>
  return (
    <p>
      {goneBy(String(year), gone.low, gone.high)} <StandingMark standing={standing} />
    </p>
  )
}

/** Present value and yearly cost as ranges. A price that is missing and a life that nobody knows are told apart. */
const Cost = ({ result }: CellProps) => {
  const { say } = useUnits()
  const words = wordsOf('compare').table
  const cost = costOf(result)
  const money = ({ low, high }: Band): string => words.spread(say(low, 'money'), say(high, 'money'))
  if (!cost?.present || !cost.yearly) return <p>{cost?.lacks.join() === 'life' ? words.noLifeCost : words.noPrice}</p>
  return (
    <>
      <p>
        {money(cost.present)} <span className='quiet light'>{words.today}</span>
      </p>
      <p className='quiet light'>{words.aYear(money(cost.yearly))}</p>
    </>
  )
}

/** What stands in the rows that years, prices and the trade answer. */
const tradeCells = {
  wet: Wet,
  life: Life,
  inspect: Inspect,
  replace: Replace,
  cost: Cost,
  sides: Sides,
  evidence: Evidence,
  ask: Ask,
} as const

/** What stands in each row for one pier. */
export const cells: Readonly<Record<CompareRowId, ComponentType<CellProps>>> = { ...factCells, ...tradeCells }

/** Rows of which every cell is known from the trade alone. */
export const isPractice = (id: CompareRowId): boolean => id === 'inspect' || id === 'replace'
