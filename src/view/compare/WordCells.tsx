import { claimsAbout, type Finding } from '../../core/derive/evidence.ts'
import type { CalloutVerdict } from '../../core/model/calloutResult.ts'
import type { PierResult } from '../../core/model/result.ts'
import type { Check } from '../../core/model/worked.ts'
import { bracketKind, fillKind } from '../../core/kinds/index.ts'
import { chainOfResult, contactsOf } from '../../state/compareRows.ts'
import { type Words, wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { SourceList, StandingMark } from '../panels/answers/WorkedDetails.tsx'
import { answerWords, reasonWords } from '../panels/answers/words.ts'
import { markOf, whyWords } from '../panels/drawing/values.ts'
import { Mark, type MarkName, MarkedWord } from '../kit/Mark.tsx'

type Cell = Readonly<{ result: PierResult }>

/** How a link counts, whatever it is held against elsewhere. */
const countMark: Readonly<Record<Check['counted'], readonly [MarkName, keyof Words['compare']['table']['links']]>> = {
  counted: ['counted', 'counted'],
  "engineer's judgement": ['judgement', 'judged'],
  'not counted': ['unverified', 'uncounted'],
  'upper bound': ['bound', 'uncounted'],
}

/** Every link of the pull, counted or not, each with its reason one tap away. */
export const Links = ({ result }: Cell) => (
  <ul className='cmp-links'>
    {chainOfResult(result).map((check) => {
      const [mark, word] = countMark[check.counted]
      return (
        <li key={check.id}>
          <details>
            <summary>
              <Mark name={mark} />
              <span>
                {answerWords(check.id).label} <span className={`cmp-word mark-${mark}`}>{wordsOf('compare').table.links[word]}</span>
              </span>
            </summary>
            <p>{reasonWords(check.why)}</p>
            <SourceList ids={check.sources} />
          </details>
        </li>
      )
    })}
  </ul>
)

const overallMark = { 'as drawn': 'meets', 'not as drawn': 'short', "can't be confirmed as drawn": 'unverified' } as const
const held: readonly CalloutVerdict[] = ['falls short', "can't be verified", 'meets']

export const Drawing = ({ result }: Cell) => {
  const { callout } = result
  if (callout === null || callout.checked === 0) return <p className='cmp-small'>{wordsOf('compare').table.noDrawing}</p>
  const items = held.flatMap((verdict) => callout.items.filter((item) => item.verdict === verdict))
  return (
    <>
      <p className='cmp-figure cmp-none'>
        <MarkedWord name={overallMark[callout.overall]} word={wordsOf('drawing').overall[callout.overall]} />
      </p>
      <p className='cmp-small'>{wordsOf('drawing').checked(callout.checked)}</p>
      <ul className='cmp-links'>
        {items.map((item) => (
          <li key={item.id}>
            <details>
              <summary>
                <Mark name={markOf[item.verdict] ?? 'unneeded'} />
                <span>
                  {wordsOf('drawing').items[item.id]}{' '}
                  <span className={`cmp-word mark-${markOf[item.verdict]}`}>{wordsOf('drawing').verdicts[item.verdict]}</span>
                </span>
              </summary>
              <p>{whyWords(item.why)}</p>
            </details>
          </li>
        ))}
      </ul>
    </>
  )
}

export const Touching = ({ result }: Cell) => {
  const { say } = useUnits()
  const contacts = contactsOf(result)
  if (contacts.length === 0) return <p>{wordsOf('compare').table.noWood}</p>
  return (
    <ul>
      {contacts.map(([contact, area]) => (
        <li key={contact}>
          {wordsOf('materials').contacts[contact]} <span className='cmp-small'>{say(area, 'area')}</span>
        </li>
      ))}
    </ul>
  )
}

const Practice = () => (
  <p className='cmp-small'>
    <StandingMark standing='common practice' />
  </p>
)

export const Inspect = ({ result }: Cell) => {
  const words = wordsOf('compare')
  const { open, closed } = words.inspect[result.spec.fill.kind]
  return (
    <>
      <dl className='cmp-pairs'>
        <dt>{words.table.open}</dt>
        <dd>{open}</dd>
        <dt>{words.table.closed}</dt>
        <dd>{closed}</dd>
      </dl>
      <Practice />
    </>
  )
}

export const Replace = ({ result }: Cell) => {
  const words = wordsOf('compare')
  return (
    <>
      <p>{words.replace[result.spec.fill.kind]}</p>
      {result.spec.support.kind !== 'bracket' && <p className='cmp-small'>{words.table.noTime}</p>}
      <Practice />
    </>
  )
}

/** A strength and a weakness, with the sources that stand behind the method. */
export const Sides = ({ result }: Cell) => {
  const words = wordsOf('compare')
  const { fill, support } = result.spec
  const kind = fillKind(fill.kind)
  const bracket = support.kind === 'bracket' ? bracketKind(support.bracket.kind) : null
  const { strength, weakness } = wordsOf('fills')[kind.id]
  return (
    <>
      <dl className='cmp-pairs'>
        <dt>{words.table.forIt}</dt>
        <dd>{strength}</dd>
        <dt>{words.table.againstIt}</dt>
        <dd>{weakness}</dd>
      </dl>
      <details className='cmp-more'>
        <summary>{wordsOf('app').answers.sources}</summary>
        <SourceList ids={[...kind.sources, ...(bracket?.sources ?? [])]} />
      </details>
    </>
  )
}

const Findings = ({ title, findings }: Readonly<{ title: string; findings: readonly Finding[] }>) => {
  const words = wordsOf('compare')
  return (
    <>
      <h5>{title}</h5>
      {findings.length === 0 ? (
        <p>{words.table.nothing}</p>
      ) : (
        <ul className='bullets'>
          {findings.map(({ id, standing }) => (
            <li key={id}>
              {words.findings[id as keyof Words['compare']['findings']]} <StandingMark standing={standing} />
            </li>
          ))}
        </ul>
      )}
      <SourceList ids={findings.map(({ source }) => source)} />
    </>
  )
}

/** What people say of such a pier, each with both sides of the evidence and its gaps. */
export const Evidence = ({ result }: Cell) => {
  const words = wordsOf('compare')
  const claims = claimsAbout(result)
  if (claims.length === 0) return <p>{words.table.nothing}</p>
  return (
    <ul className='cmp-links'>
      {claims.map((claim) => (
        <li key={claim.id}>
          <details>
            <summary>
              <span>
                “{words.claims[claim.id as keyof Words['compare']['claims']]}”{' '}
                <span className='cmp-small'>{words.table.count(claim.inFavour.length, claim.against.length)}</span>
              </span>
            </summary>
            <Findings title={words.table.speaksFor} findings={claim.inFavour} />
            <Findings title={words.table.speaksAgainst} findings={claim.against} />
            <h5>{words.table.notFound}</h5>
            <ul className='bullets'>
              {claim.missing.map((id) => (
                <li key={id}>{words.missing[id as keyof Words['compare']['missing']]}</li>
              ))}
            </ul>
          </details>
        </li>
      ))}
    </ul>
  )
}

export const Ask = ({ result }: Cell) => <p>{wordsOf('fills')[result.spec.fill.kind].ask}</p>
