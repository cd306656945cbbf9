import { drawingOf } from '../../core/derive/report/drawingFacts.ts'
import type { ReactNode } from 'react'
import { factsOf } from '../../core/derive/report/report.ts'
import { countingVerdict } from '../../core/derive/report/verdict.ts'
import type { Fact } from '../../core/model/fact.ts'
import type { PierResult } from '../../core/model/result.ts'
import { mixPartsWords, mostWoodWords, numberOf, toOrderWords } from '../../facts/firstWords.ts'
import { answerWords, reasonWords } from '../../facts/answerWords.ts'
import { contactWords, said, valueWords } from '../../facts/said.ts'
import { headlineOf, pullLinks, touchesOf, uncountedWeight } from '../../state/compareRows.ts'
import { factsAbout } from '../../state/derived.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/usePier.ts'
import { FactList } from '../kit/FactList.tsx'
import { MarkedWord, StandingMark } from '../kit/Mark.tsx'
import { SourceList } from '../kit/Sources.tsx'
import { StatusLine } from '../kit/StatusLine.tsx'

/** On paper there is nothing to open, and each word stands once where it is true of several names. */
export type CellProps = Readonly<{ result: PierResult; as?: 'cell' | 'paper' | undefined }>

const Small = ({ children, title }: Readonly<{ children: ReactNode; title?: string }>) => (
  <p className='quiet light' title={title}>
    {children}
  </p>
)

/** The number of a row with what stands under it. */
const Headline = ({ result, id, children }: CellProps & Readonly<{ id: string; children?: ReactNode }>) => {
  const units = useUnits()
  const { value, standing } = headlineOf(result, id)
  return (
    <>
      <p className='cmp-figure strong'>
        {value && valueWords(value, units)} <StandingMark standing={standing} />
      </p>
      {children}
    </>
  )
}

/** No number may be stated: a mark of its own, the word, and the links that say so; on paper these have a row of their own. */
const Unverified = ({ result, as }: CellProps) => (
  <>
    <p className='cmp-figure strong cmp-none'>
      <MarkedWord name='unverified' word={wordsOf('app').verdicts.unverified} />
    </p>
    {as !== 'paper' && (
      <ul className='quiet light'>
        {headlineOf(result, 'uplift').restsOn.map((id) => (
          <li key={id}>{wordsOf('compare').table.notCounted(answerWords(id).label)}</li>
        ))}
      </ul>
    )}
  </>
)

const Status = ({ result }: CellProps) => <StatusLine facts={factsAbout(result)} />

const HoldsDown = (props: CellProps) => {
  const units = useUnits()
  const { value, limit, restsOn } = headlineOf(props.result, 'uplift')
  if (value === null) return <Unverified {...props} />
  return (
    <Headline {...props} id='uplift'>
      {limit && <Small>{wordsOf('compare').table.needs(valueWords(limit, units))}</Small>}
      {pullLinks(props.result)
        .filter(({ id }) => restsOn.includes(id))
        .map((link) => (
          <Small key={link.id} title={reasonWords(link.reason)}>
            <span className='governs heavy'>{wordsOf('app').answers.governs}</span> {answerWords(link.id).label}
          </Small>
        ))}
    </Headline>
  )
}

const LoadUsed = (props: CellProps) => {
  const units = useUnits()
  const uplift = headlineOf(props.result, 'uplift')
  if (uplift.ratio === null) return <Unverified {...props} />
  const { mark, word } = said(uplift, units)
  return (
    <>
      <p className='cmp-figure strong'>{units.say(uplift.ratio, 'ratio')}</p>
      <MarkedWord name={mark} word={word} />
    </>
  )
}

const Hole = (props: CellProps) => {
  const { say, bare } = useUnits()
  const loose = factsOf(factsAbout(props.result), 'hole').find(({ id }) => id === 'spoil-loose')?.value
  return (
    <Headline {...props} id='hole-volume'>
      {loose?.as === 'range' && <Small>{wordsOf('app').answers.looseNote(bare(loose.low, 'volume'), say(loose.high, 'volume'))}</Small>}
    </Headline>
  )
}

const Mix = (props: CellProps) => {
  const units = useUnits()
  const bought = factsOf(factsAbout(props.result), 'quantity').filter(({ orders }) => orders && orders.length > 0)
  const parts = mixPartsWords(headlineOf(props.result, 'mix-volume'), units)
  return (
    <Headline {...props} id='mix-volume'>
      {parts !== '' && <Small>{parts}</Small>}
      <ul className='quiet light'>
        {bought.map((fact) => (
          <li key={fact.id}>
            {fact.role && wordsOf('materials').roles[fact.role].label}: {toOrderWords(fact, units)}
          </li>
        ))}
      </ul>
    </Headline>
  )
}

const Weight = (props: CellProps) => {
  const { say } = useUnits()
  const left = uncountedWeight(props.result)
  return (
    <Headline {...props} id='pier-weight'>
      <Small>{wordsOf('app').answers.weightNote}</Small>
      {left > 0 && <Small>{wordsOf('compare').table.massNotCounted(say(left, 'weight'))}</Small>}
    </Headline>
  )
}

const Wood = (props: CellProps) => (
  <Headline {...props} id='wood-below-grade'>
    <Small>{mostWoodWords(factsOf(factsAbout(props.result), 'exposure'))}</Small>
  </Headline>
)

/** Every link of the pull, counted or not, whatever it is held against elsewhere. */
const Links = ({ result, as = 'cell' }: CellProps) => {
  const units = useUnits()
  const links = pullLinks(result).map((link): Fact => ({ ...link, verdict: countingVerdict(link.counted ?? 'not counted') }))
  return <FactList as={as} of={links.map((link) => ({ id: link.id, ...said(link, units), more: <SourceList ids={link.sources} /> }))} />
}

/** The pier against its drawing: the whole, then the items that were held against it. */
const Drawing = ({ result, as = 'cell' }: CellProps) => {
  const units = useUnits()
  const facts = factsAbout(result)
  const whole = drawingOf(facts)
  if (!whole) return <Small>{wordsOf('compare').table.noDrawing}</Small>
  const { mark, word } = said(whole, units)
  const all = factsOf(facts, 'drawing-item')
  const items = (['falls short', "can't be verified", 'meets'] as const).flatMap((verdict) => all.filter((one) => one.verdict === verdict))
  return (
    <>
      <p className='cmp-figure strong cmp-none'>
        <MarkedWord name={mark} word={word} />
      </p>
      {as === 'cell' && <Small>{wordsOf('drawing').checked(numberOf(whole.value) ?? 0)}</Small>}
      <FactList as={as} of={items.map((item) => ({ id: item.id, ...said(item, units) }))} />
    </>
  )
}

const Touching = ({ result }: CellProps) => {
  const units = useUnits()
  const touches = touchesOf(result)
  if (touches.length === 0) return <p>{wordsOf('compare').table.noWood}</p>
  return (
    <ul>
      {touches.map(({ id, value }) => (
        <li key={id}>
          {contactWords(id)} <span className='quiet light'>{valueWords(value, units)}</span>
        </li>
      ))}
    </ul>
  )
}

/** What stands in the rows that facts of the pier answer. */
export const factCells = {
  status: Status,
  'holds-down': HoldsDown,
  'load-used': LoadUsed,
  links: Links,
  drawing: Drawing,
  hole: Hole,
  mix: Mix,
  weight: Weight,
  wood: Wood,
  touching: Touching,
} as const
