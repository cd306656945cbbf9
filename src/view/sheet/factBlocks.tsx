import { drawingOf } from '../../core/derive/report/drawingFacts.ts'
import type { ReactNode } from 'react'
import { pullPath, isNeeded, linksOf } from '../../core/derive/report/pullPath.ts'
import { factsOf, sayTheSame } from '../../core/derive/report/report.ts'
import { markOf } from '../../core/derive/report/verdict.ts'
import { type Fact, otherGroups } from '../../core/model/fact.ts'
import { grouped, mixPartsWords, numberOf, waysWords, wordIn } from '../../facts/firstWords.ts'
import { answerWords } from '../../facts/answerWords.ts'
import { aboveWords, depthPairs, effectWords, isTold, nameOf, said, touchingWords, valueWords, verdictWords } from '../../facts/said.ts'
import { factsAbout } from '../../state/derived.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/usePier.ts'
import { GroupLine, FactLine, FactTable } from '../kit/FactTable.tsx'
import { Mark, MarkedWord, StandingMark } from '../kit/Mark.tsx'
import { Block, type BlockProps, shortened } from './blocks.tsx'

/** Why facts can't be verified: each reason once, behind all that it is true of. */
const Whys = ({ of }: Readonly<{ of: readonly Fact[] }>) => {
  const units = useUnits()
  const untold = of.filter(({ counted }) => counted === 'not counted').map((fact) => said(fact, units))
  return grouped(untold, ({ why }) => why).map(
    ([why, list]) =>
      why !== '' && (
        <p key={why}>
          <Mark name='unverified' /> <b>{list.map(({ name }) => name).join('; ')}:</b> {why}
        </p>
      ),
  )
}

/** A mark and the name behind it. */
const marked = (fact: Fact): ReactNode => {
  const mark = markOf(fact.verdict)
  return (
    <>
      {mark && <Mark name={mark} />} {nameOf(fact)}
    </>
  )
}

/** The answers that stand first on the screen. */
export const NumbersBlock = ({ result }: BlockProps) => {
  const units = useUnits()
  const facts = factsAbout(result)
  const words = wordsOf('sheet')
  const line = (fact: Fact, name: string, says: string) => (
    <FactLine
      key={fact.id}
      name={name}
      cells={[fact.value ? valueWords(fact.value, units) : verdictWords(fact)]}
      tail={
        <td>
          {says} {fact.value && <StandingMark standing={fact.standing} />}
        </td>
      }
    />
  )
  return (
    <Block title={words.numbers}>
      <FactTable className='paper-main'>
        {factsOf(facts, 'uplift').map((uplift) => {
          const rests = uplift.restsOn.map((id) => answerWords(id).label)
          return line(uplift, words.holds, `${uplift.value ? `${wordsOf('app').answers.governs}: ` : ''}${rests.join(', ')}`)
        })}
        {factsOf(facts, 'headline').map((fact) => line(fact, nameOf(fact), mixPartsWords(fact, units)))}
      </FactTable>
    </Block>
  )
}

/** Every link of the load path: what it may hold, or why that can't be verified, the load and their ratio. */
export const PathBlock = ({ result }: BlockProps) => {
  const units = useUnits()
  const chain = pullPath(factsAbout(result))
  const words = wordsOf('sheet').loadPath
  const { groups, governs } = wordsOf('app').answers
  const cells = (fact: Fact): readonly string[] => {
    const { value, limit, ratio } = said(fact, units)
    const held = fact.counted === 'not counted' || fact.group === 'uplift' ? wordsOf('app').verdicts.unverified : '–'
    return [value || held, limit, ratio]
  }
  const tags = { needed: '', spare: words.notInUse, bound: words.atMost } as const
  return (
    <Block title={words.title}>
      <FactTable className='paper-figures' heads={[words.link, words.holds, words.load, words.ratio]}>
        {chain.groups.map(({ group, links }) => [
          <GroupLine key={group} span={4}>
            {groups[group]}
          </GroupLine>,
          ...links.map((link) => {
            const tag = tags[link.link?.place ?? 'needed']
            const name = (
              <>
                {marked(link)}
                {link.link?.governs && <b className='paper-tag unbroken'>{governs}</b>}
                {tag !== '' && <span className='paper-tag unbroken'>{tag}</span>}
              </>
            )
            return <FactLine key={link.id} name={name} cells={cells(link)} />
          }),
        ])}
        <FactLine
          className='paper-sum'
          name={words.whole}
          cells={cells(chain.whole).map((cell, i) => (i === 1 && cell === '' ? '–' : cell))}
        />
      </FactTable>
      <Whys of={linksOf(chain).filter(isNeeded)} />
      {chain.asked === null && <p className='quiet'>{words.noLoad}</p>}
      {chain.whole.isEstimate && <p className='quiet'>{words.estimate}</p>}
    </Block>
  )
}

/** What touches the wood, a side a line; on level ground the sides are alike, and are told once. */
export const WoodBlock = ({ result }: BlockProps) => {
  const units = useUnits()
  const facts = factsAbout(result)
  const words = wordsOf('sheet').wood
  const [area] = factsOf(facts, 'exposure-area')
  const lines = factsOf(facts, 'exposure')
  const isLevel = sayTheSame(lines)
  const sides = isLevel ? lines.slice(0, 1) : lines
  return (
    <Block title={words.title}>
      {(numberOf(area?.value ?? null) ?? 0) > 1e-9 ? (
        <FactTable className='paper-wood'>
          {[...sides, ...(area ? [area] : [])].map((fact) => (
            <FactLine
              key={fact.id}
              name={isLevel && fact !== area ? wordsOf('app').answers.sides.all : nameOf(fact)}
              cells={[said(fact, units).value]}
              tail={<td>{[touchingWords(fact, units), aboveWords(fact, units)].join(' ').trim()}</td>}
            />
          ))}
        </FactTable>
      ) : (
        <p>{words.none}</p>
      )}
    </Block>
  )
}

export const OrderBlock = ({ result }: BlockProps) => {
  const units = useUnits()
  const facts = factsAbout(result)
  const { piers } = result.spec
  const words = wordsOf('app').answers
  const scopes = piers > 1 ? (['each', 'job'] as const) : (['each'] as const)
  const [bank, loose] = factsOf(facts, 'hole').filter(({ id }) => id.startsWith('spoil'))
  return (
    <Block title={wordsOf('sheet').order.title}>
      <FactTable
        className='paper-order'
        heads={[words.material, words.volume, words.weight, words.orderOne, ...(piers > 1 ? [words.orderAll(piers)] : [])]}
      >
        {factsOf(facts, 'quantity').map((fact) => (
          <FactLine
            key={fact.id}
            name={nameOf(fact)}
            cells={[fact.value, fact.figures[0]?.value].map((value) => (value ? valueWords(value, units) : ''))}
            tail={scopes.map((scope) => <td key={scope}>{waysWords(fact, units, scope) || '–'}</td>)}
          />
        ))}
        {bank && loose && (
          <FactLine
            name={nameOf(bank)}
            cells={[said(bank, units).value]}
            tail={
              <td colSpan={scopes.length + 1}>
                {nameOf(loose)}: <span className='unbroken'>{said(loose, units).value}</span>
              </td>
            }
          />
        )}
      </FactTable>
    </Block>
  )
}

/** What has to be told first. */
const order = ['falls short', "can't be verified", 'meets', 'not needed'] as const

/** Most of a drawing's own notes that is printed [characters]: the rest stays in the file. */
const mostNotes = 160

/** The pier held against its drawing: items under their verdict, each verdict as a shape and a word, and what would show them said once. */
export const DrawingBlock = ({ result }: BlockProps) => {
  const units = useUnits()
  const facts = factsAbout(result)
  const words = wordsOf('sheet')
  const d = wordsOf('drawing')
  const whole = drawingOf(facts)
  if (!whole)
    return (
      <Block title={words.drawing.title}>
        <p>{words.drawing.none}</p>
      </Block>
    )
  const all = factsOf(facts, 'drawing-item')
  const left = all.filter(({ limit }) => limit === null)
  const { number, date, notes } = result.spec.callout ?? { number: '', date: '', notes: '' }
  const shows = [...new Set(all.filter(isTold).flatMap(({ shownBy = [] }) => shownBy))]
  const { mark, word } = said(whole, units)
  const reasons = (item: Fact): string =>
    [said(item, units).why, ...item.figures.map((one) => `${effectWords(one, units.say).join(' ')}.`)].join(' ')
  return (
    <Block title={words.drawing.title}>
      <p>
        <b>
          <MarkedWord name={mark} word={`${word}.`} />
        </b>{' '}
        {d.checked(numberOf(whole.value) ?? 0)} {d.decides} {number !== '' && `${words.place}: ${number}. `}
        {date !== '' && `${words.drawn}: ${date}.`}
      </p>
      <FactTable className='paper-figures' heads={[d.columns.item, d.columns.drawn, d.columns.set, d.columns.difference]}>
        {order.map((verdict) => {
          const items = all.filter((item) => item.limit !== null && item.verdict === verdict)
          const name = markOf(verdict)
          if (items.length === 0) return null
          return [
            <GroupLine key={verdict} span={4}>
              {name && <Mark name={name} />} {d.verdicts[verdict]}
            </GroupLine>,
            ...items.map((item) => {
              const told = said(item, units)
              return (
                <FactLine key={item.id} name={told.name} cells={[told.limit, told.value, told.difference]}>
                  {isTold(item) && (
                    <tr className='paper-more'>
                      <td colSpan={4}>{reasons(item)}</td>
                    </tr>
                  )}
                </FactLine>
              )
            }),
          ]
        })}
      </FactTable>
      {shows.length > 0 && (
        <p>
          <b>{d.shows}:</b> {shows.map((key) => wordIn(d.verify, key)).join(' ')}
        </p>
      )}
      {left.length > 0 && (
        <p className='quiet'>
          {d.notOn}: {left.map(nameOf).join(', ')}.
        </p>
      )}
      {notes !== '' && (
        <p>
          <b>{words.drawing.notes}:</b> {shortened(notes, mostNotes)}
          {notes.length > mostNotes && ` ${words.drawing.rest}`}
        </p>
      )}
    </Block>
  )
}

/** What is not about uplift: what is asked, what is there, and how it stands, in shape and word. */
export const ChecksBlock = ({ result }: BlockProps) => {
  const units = useUnits()
  const facts = factsAbout(result)
  const words = wordsOf('app').answers
  const checks = factsOf(facts, ...otherGroups, 'stand-off')
  // What is met has its mark alone, told once below: the words that matter stand out.
  const isMet = (fact: Fact): boolean => markOf(fact.verdict) === 'meets'
  const met = [...new Set(checks.filter(isMet).map(verdictWords))]
  return (
    <Block title={words.sections.checks.title}>
      <FactTable className='paper-figures' heads={[words.check, words.asked, words.there, words.ratio]}>
        {checks.map((fact) => {
          const { word, limit, value, ratio } = said(fact, units)
          const name = (
            <>
              {marked(fact)}
              {!isMet(fact) && `: ${word}`}
            </>
          )
          return <FactLine key={fact.id} name={name} cells={[limit, value, ratio]} />
        })}
      </FactTable>
      <Whys of={checks} />
      {met.length > 0 && (
        <p className='quiet'>
          <Mark name='meets' /> {met.join(' · ')}
        </p>
      )}
      <p>
        <b>{wordsOf('sheet').depths}:</b>{' '}
        {depthPairs(facts, units)
          .map((pair) => pair.join(' '))
          .join(' · ')}
      </p>
    </Block>
  )
}
