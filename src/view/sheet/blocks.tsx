import type { ReactNode } from 'react'
import { stepsOf } from '../../core/derive/build/buildSteps.ts'
import type { Contact } from '../../core/model/kind.ts'
import type { PierResult, QuantityLine } from '../../core/model/result.ts'
import { wordsOf } from '../../words/index.ts'
import { type Say, useUnits } from '../hooks/useUnits.ts'
import { zoneWords } from '../panels/answers/answerWords.ts'
import { answerWords } from '../panels/answers/words.ts'
import { orderWords } from '../panels/answers/orderWords.ts'
import { StandingMark } from '../panels/answers/StandingMark.tsx'
import { isSame } from '../panels/answers/sideWords.ts'
import { issueText } from '../panels/issueText.ts'
import { bracketKind, fillKind } from '../../core/kinds/index.ts'
import { cautionWords } from '../panels/answers/words.ts'
import { questionsFor } from './questions.ts'

export type BlockProps = Readonly<{ result: PierResult }>

/** A part of the sheet under its own heading; it is never broken over two columns. */
export const Block = ({ title, children }: Readonly<{ title: string; children: ReactNode }>) => (
  <section className='paper-block'>
    <h3>{title}</h3>
    {children}
  </section>
)

const contacts: readonly Contact[] = ['air', 'native-soil', 'backfill', 'granular', 'flowable-fill', 'concrete', 'dry-mix', 'gravel']
const touching = (by: Readonly<Partial<Record<Contact, number>>>, say: Say, quantity: 'length' | 'area'): string =>
  contacts
    .flatMap((one) => ((by[one] ?? 0) > 1e-6 ? [`${wordsOf('materials').contacts[one]} ${say(by[one] ?? 0, quantity)}`] : []))
    .join(', ')

/** On level ground the sides are alike, and are told once. */
const sidesOf = ({ lines }: PierResult['exposure']): readonly (readonly [string, PierResult['exposure']['lines'][number]])[] => {
  const { sides } = wordsOf('app').answers
  const [first] = lines
  const isLevel = isSame(lines.map(({ belowGrade }) => belowGrade)) && isSame(lines.map((line) => line.inConcreteAboveGrade))
  return first && isLevel ? [[sides.all, first]] : lines.map((line) => [sides[line.side], line])
}

export const Wood = ({ result: { exposure } }: BlockProps) => {
  const words = wordsOf('sheet')
  const { say } = useUnits()
  return (
    <Block title={words.wood.title}>
      {exposure.areaBelowGrade > 1e-9 ? (
        <table className='paper-wood'>
          <tbody>
            {sidesOf(exposure).map(([side, line]) => (
              <tr key={side}>
                <th scope='row'>{side}</th>
                <td className='number'>{say(line.belowGrade, 'length')}</td>
                <td>
                  {touching(line.by, say, 'length')}
                  {line.inConcreteAboveGrade > 1e-6 && ` ${wordsOf('app').answers.aboveGrade(say(line.inConcreteAboveGrade, 'length'))}`}
                </td>
              </tr>
            ))}
            <tr>
              <th scope='row'>{wordsOf('app').answers.woodArea}</th>
              <td className='number'>{say(exposure.areaBelowGrade, 'area')}</td>
              <td>{touching(exposure.area, say, 'area')}</td>
            </tr>
          </tbody>
        </table>
      ) : (
        <p>{words.wood.none}</p>
      )}
    </Block>
  )
}

const nameOf = (line: QuantityLine): string =>
  zoneWords(line.id) === line.id ? wordsOf('materials').roles[line.role].label : zoneWords(line.id)

export const Quantities = ({ result }: BlockProps) => {
  const { say, bare, system } = useUnits()
  const { piers } = result.spec
  const ways = (line: QuantityLine, scope: 'each' | 'job'): string =>
    line.orders.map((order) => orderWords(order, system, say, scope, 'short')).join(` ${wordsOf('app').answers.or} `)
  const { hole } = result
  return (
    <Block title={wordsOf('sheet').order.title}>
      <table className='paper-order'>
        <thead>
          <tr>
            <th scope='col'>{wordsOf('app').answers.material}</th>
            <th scope='col'>{wordsOf('app').answers.volume}</th>
            <th scope='col'>{wordsOf('app').answers.weight}</th>
            <th scope='col'>{wordsOf('app').answers.onePier}</th>
            {piers > 1 && <th scope='col'>{wordsOf('app').answers.allPiers(piers)}</th>}
          </tr>
        </thead>
        <tbody>
          {result.quantities.map((line) => (
            <tr key={line.id}>
              <th scope='row'>{nameOf(line)}</th>
              <td className='number'>{say(line.volume.value, 'volume')}</td>
              <td className='number'>{say(line.weight, 'weight')}</td>
              <td>{ways(line, 'each') || '–'}</td>
              {piers > 1 && <td>{ways(line, 'job') || '–'}</td>}
            </tr>
          ))}
          <tr>
            <th scope='row'>{wordsOf('app').answers.spoilBank}</th>
            <td className='number'>{say(hole.spoilBank, 'volume')}</td>
            <td colSpan={piers > 1 ? 3 : 2}>
              {wordsOf('app').answers.spoilLoose}:{' '}
              <span className='paper-whole'>
                {bare(hole.spoilLoose.low, 'volume')}–{say(hole.spoilLoose.high, 'volume')}
              </span>
            </td>
          </tr>
        </tbody>
      </table>
    </Block>
  )
}

export const Depths = ({ result: { depths } }: BlockProps) => {
  const { say } = useUnits()
  const { sides } = wordsOf('app').answers
  const rows = [
    [sides.uphill, depths.bearingAtUphillEdge],
    [sides.axis, depths.bearingAtAxis],
    [sides.downhill, depths.bearingAtDownhillEdge],
  ] as const
  const isLevel = isSame(rows.map(([, depth]) => depth))
  const shown = isLevel ? ([[sides.all, depths.bearingAtAxis]] as const) : rows
  return (
    <p>
      <b>{wordsOf('sheet').depths}:</b> {shown.map(([side, depth]) => `${side} ${say(depth, 'length')}`).join(' · ')}
    </p>
  )
}

/** What is to be seen on the day: the method's own steps with a box each, what goes wrong, and a line for initials. */
export const OnTheDay = ({ result: { spec } }: BlockProps) => {
  const words = wordsOf('sheet')
  const kind = fillKind(spec.fill.kind)
  const bracket = spec.support.kind === 'bracket' ? bracketKind(spec.support.bracket.kind) : null
  const steps = stepsOf(spec)
  const cautions = [...new Set([...kind.cautions, ...(bracket?.cautions ?? [])])]
  return (
    <Block title={words.day.title}>
      <p className='paper-quiet'>{words.day.note}</p>
      <ul className='paper-boxes'>
        {steps.map((step) => (
          <li key={step}>
            <span className='paper-box' aria-hidden='true' />
            {wordsOf('steps')[step]}
          </li>
        ))}
      </ul>
      {cautions.length > 0 && (
        <>
          <h4>{words.day.wrong}</h4>
          <ul className='paper-dots'>
            {cautions.map((key) => (
              <li key={key}>{cautionWords(key)}</li>
            ))}
          </ul>
        </>
      )}
      <p className='paper-sign'>
        {words.day.initials} <span /> {words.day.dateLine} <span />
      </p>
    </Block>
  )
}

export const Questions = ({ results }: Readonly<{ results: readonly PierResult[] }>) => {
  const words = wordsOf('sheet')
  return (
    <Block title={words.ask}>
      <ol>
        {questionsFor(results).map((id) => (
          <li key={id}>{words.questions[id]}</li>
        ))}
      </ol>
    </Block>
  )
}

export const Issues = ({ result: { issues } }: BlockProps) => {
  const { system } = useUnits()
  return (
    <Block title={wordsOf('sheet').issues}>
      <ul className='paper-dots'>
        {issues.map((issue) => (
          <li key={issue.code + issue.path}>{issueText(issue, system)}</li>
        ))}
      </ul>
    </Block>
  )
}

/** Danger first. */
export const Cautions = () => (
  <Block title={wordsOf('sheet').cautions}>
    <ul className='paper-dots'>
      {wordsOf('cautions').standing.map((caution) => (
        <li key={caution.id}>
          <b>{caution.short}</b> {caution.long}
        </li>
      ))}
    </ul>
  </Block>
)

/** The answers that stand first on the screen. */
export const MainNumbers = ({ result }: BlockProps) => {
  const words = wordsOf('sheet')
  const { say } = useUnits()
  const { uplift, headlines, checks } = result
  const governing = checks.find((check) => check.id === uplift.governing)
  return (
    <Block title={words.numbers}>
      <table className='paper-main'>
        <tbody>
          <tr>
            <th scope='row'>{words.holds}</th>
            <td className='number'>{uplift.allowable === null ? wordsOf('app').verdicts.unverified : say(uplift.allowable, 'force')}</td>
            <td>
              {governing && `${wordsOf('app').answers.governs}: ${answerWords(governing.id).label}`}
              {uplift.allowable === null && uplift.uncounted.map((id) => answerWords(id).label).join(', ')}{' '}
              {uplift.allowable !== null && <StandingMark standing={uplift.standing} />}
            </td>
          </tr>
          {headlines.map((worked) => (
            <tr key={worked.id}>
              <th scope='row'>{answerWords(worked.id).label}</th>
              <td className='number'>{say(worked.value, worked.quantity)}</td>
              <td>
                <StandingMark standing={worked.standing} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Block>
  )
}
