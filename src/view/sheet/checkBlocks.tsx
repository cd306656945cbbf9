import { Fragment, type ReactNode } from 'react'
import type { CalloutResult } from '../../core/model/calloutResult.ts'
import type { Check } from '../../core/model/worked.ts'
import { sheet as words } from '../../text/en/sheet.ts'
import { text } from '../../text/index.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { rowOf } from '../panels/answers/answerWords.ts'
import { answerWords, reasonWords, verdictOf } from '../panels/answers/words.ts'
import { change, consequenceWords, differenceWords, markOf, valueWords, verifyWords, whyWords } from '../panels/drawing/values.ts'
import { chainView } from '../panels/loadPath/chainView.ts'
import { linkMark, whyNot } from '../panels/loadPath/linkWords.ts'
import { Mark, type MarkName, Verdict } from '../panels/Mark.tsx'
import { Block, type BlockProps } from './blocks.tsx'

/** What is to be said of the row above, over the whole width of the table. */
const Why = ({ columns, children }: Readonly<{ columns: number; children: ReactNode }>) => (
  <tr className='paper-more'>
    <td colSpan={columns}>{children}</td>
  </tr>
)

/** Every link of the load path: what it may hold, or why that can't be verified, the load and their ratio. */
export const LoadPath = ({ result }: BlockProps) => {
  const { say } = useUnits()
  const chain = chainView(result)
  const { verdicts } = text.app
  const whole = chain.demand === null ? '–' : say(chain.demand, 'force')
  const groupWord = (group: Check['group']): string => rowOf<string>(text.app.answers.groups, group) ?? ''
  return (
    <Block title={words.loadPath.title}>
      <table className='paper-four'>
        <thead>
          <tr>
            <th scope='col'>{words.loadPath.link}</th>
            <th scope='col'>{words.loadPath.holds}</th>
            <th scope='col'>{words.loadPath.load}</th>
            <th scope='col'>{words.loadPath.ratio}</th>
          </tr>
        </thead>
        {chain.groups.map(({ group, links }) => (
          <tbody key={group}>
            {groupWord(group) !== '' && (
              <tr>
                <th colSpan={4} scope='colgroup' className='paper-group'>
                  {groupWord(group)}
                </th>
              </tr>
            )}
            {links.map((link) => {
              const { check, holds, place, governs } = link
              const load = check.demand?.value ?? chain.demand
              const isSpare = place !== 'needed'
              const why = whyNot(link)
              return (
                <Fragment key={check.id}>
                  <tr className={isSpare ? 'paper-spare' : undefined}>
                    <th scope='row'>
                      <Mark name={linkMark(link)} /> {answerWords(check.id).label}
                      {governs && <b className='paper-tag'>{text.app.answers.governs}</b>}
                      {place === 'spare' && <span className='paper-tag'>{words.loadPath.notInUse}</span>}
                      {place === 'bound' && <span className='paper-tag'>{verdicts.bound}</span>}
                    </th>
                    <td className='number'>
                      {check.counted === 'not counted' ? verdicts.unverified : holds === null ? '–' : say(holds, 'force')}
                    </td>
                    <td className='number'>{isSpare || load === null ? '' : say(load, 'force')}</td>
                    <td className='number'>
                      {isSpare || holds === null || load === null || holds <= 0 ? '' : Math.max(0, check.ratio ?? load / holds).toFixed(2)}
                    </td>
                  </tr>
                  {why !== '' && !isSpare && <Why columns={4}>{why}</Why>}
                </Fragment>
              )
            })}
          </tbody>
        ))}
        <tbody>
          <tr className='paper-sum'>
            <th scope='row'>{words.loadPath.whole}</th>
            <td className='number'>{chain.allowable === null ? verdicts.unverified : say(chain.allowable, 'force')}</td>
            <td className='number'>{whole}</td>
            <td className='number'>{chain.ratio === null ? '' : Math.max(0, chain.ratio).toFixed(2)}</td>
          </tr>
        </tbody>
      </table>
      {chain.demand === null && <p className='paper-quiet'>{words.loadPath.noLoad}</p>}
      {chain.isEstimate && <p className='paper-quiet'>{words.loadPath.estimate}</p>}
    </Block>
  )
}

const overallMark: Readonly<Record<CalloutResult['overall'], MarkName>> = {
  'as drawn': 'meets',
  'not as drawn': 'short',
  "can't be confirmed as drawn": 'unverified',
}

/** The pier held against its drawing, item by item, each verdict as a shape and a word. */
export const AgainstDrawing = ({ result: { callout, spec } }: BlockProps) => {
  const { say } = useUnits()
  const d = text.drawing
  if (callout === null || callout.checked === 0) {
    return (
      <Block title={words.drawing.title}>
        <p>{words.drawing.none}</p>
      </Block>
    )
  }
  const drawn = callout.items.filter((item) => item.drawn !== null)
  const left = callout.items.filter((item) => item.drawn === null)
  const { number, date, notes } = spec.callout ?? { number: '', date: '', notes: '' }
  return (
    <Block title={words.drawing.title}>
      <p>
        <Verdict name={overallMark[callout.overall]} word={d.overall[callout.overall]} /> {d.checked(callout.checked)} {d.decides}
      </p>
      {(number !== '' || date !== '') && (
        <p>{[number && `${words.place}: ${number}`, date && `${words.drawn}: ${date}`].filter((part) => part !== '').join(' · ')}</p>
      )}
      <table className='paper-four'>
        <thead>
          <tr>
            <th scope='col'>{d.columns.item}</th>
            <th scope='col'>{d.columns.drawn}</th>
            <th scope='col'>{d.columns.set}</th>
            <th scope='col'>{d.columns.difference}</th>
          </tr>
        </thead>
        <tbody>
          {drawn.map((item) => {
            const mark = markOf[item.verdict]
            const isTold = item.verdict === 'falls short' || item.verdict === "can't be verified"
            return (
              <Fragment key={item.id}>
                <tr>
                  <th scope='row'>
                    {mark && <Mark name={mark} />} {d.items[item.id]}: <b>{d.verdicts[item.verdict]}</b>
                  </th>
                  <td className='number'>{valueWords(item.drawn, say)}</td>
                  <td className='number'>{valueWords(item.set, say)}</td>
                  <td className='number'>{differenceWords(item, say)}</td>
                </tr>
                {isTold && (
                  <Why columns={4}>
                    {whyWords(item.why)}{' '}
                    {item.consequences.map(({ id, value, quantity }) => `${consequenceWords(id)} ${change(value, quantity, say)}. `)}
                    {item.verify.length > 0 && `${d.shows}: ${item.verify.map(verifyWords).join(' ')}`}
                  </Why>
                )}
              </Fragment>
            )
          })}
        </tbody>
      </table>
      {left.length > 0 && (
        <p className='paper-quiet'>
          {d.notOn}: {left.map((item) => d.items[item.id]).join(', ')}.
        </p>
      )}
      {notes !== '' && <p className='paper-note'>{notes}</p>}
    </Block>
  )
}

const other: readonly Check['group'][] = ['bearing', 'lateral', 'frost', 'detail']

/** What is not about uplift: what is asked, what is there, and how it stands, in shape and word. */
export const OtherChecks = ({ result }: BlockProps) => {
  const { say } = useUnits()
  const standOff = result.exposure.standOff?.checks ?? []
  const rows = [
    ...other.flatMap((group) => result.checks.filter((check) => check.group === group && !standOff.includes(check))),
    ...standOff,
  ]
  // What is met has its mark alone, told once below: the words that matter stand out.
  const met = [...new Set(rows.map(verdictOf).flatMap(({ mark, word }) => (mark === 'meets' ? [word] : [])))]
  const side = (check: Check, which: 'asked' | 'there'): string => {
    if (check.choice) {
      const { path, asked, is } = check.choice
      return valueWords({ as: 'choice', path, choice: which === 'asked' ? asked : is }, say)
    }
    if (which === 'asked') return check.demand ? say(check.demand.value, check.demand.quantity) : ''
    return check.counted === 'not counted' || !check.allowable ? '' : say(check.allowable.value, check.allowable.quantity)
  }
  return (
    <Block title={words.checks.title}>
      <table className='paper-four'>
        <thead>
          <tr>
            <th scope='col'>{words.checks.check}</th>
            <th scope='col'>{words.checks.asked}</th>
            <th scope='col'>{words.checks.there}</th>
            <th scope='col'>{words.checks.ratio}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((check) => {
            const { mark, word } = verdictOf(check)
            return (
              <Fragment key={check.id}>
                <tr>
                  <th scope='row'>
                    <Mark name={mark} /> {answerWords(check.id).label}
                    {mark !== 'meets' && `: ${word}`}
                  </th>
                  <td className='number'>{side(check, 'asked')}</td>
                  <td className='number'>{side(check, 'there')}</td>
                  <td className='number'>{check.ratio === undefined ? '' : check.ratio.toFixed(2)}</td>
                </tr>
                {check.counted === 'not counted' && <Why columns={4}>{reasonWords(check.why)}</Why>}
              </Fragment>
            )
          })}
        </tbody>
      </table>
      {met.length > 0 && (
        <p className='paper-quiet'>
          <Mark name='meets' /> {met.join(' · ')}
        </p>
      )}
    </Block>
  )
}
