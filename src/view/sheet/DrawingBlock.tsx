import { Fragment } from 'react'
import type { CalloutItem, CalloutResult, CalloutVerdict } from '../../core/model/calloutResult.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { change, consequenceWords, differenceWords, markOf, valueWords, verifyWords, whyWords } from '../panels/drawing/values.ts'
import { Mark, type MarkName, MarkedWord } from '../kit/Mark.tsx'
import { Block, type BlockProps } from './blocks.tsx'
import { shortened } from './shortened.ts'

const overallMark: Readonly<Record<CalloutResult['overall'], MarkName>> = {
  'as drawn': 'meets',
  'not as drawn': 'short',
  "can't be confirmed as drawn": 'unverified',
}

/** What has to be told first. */
const order: readonly CalloutVerdict[] = ['falls short', "can't be verified", 'meets', 'not needed']
const isTold = ({ verdict }: CalloutItem): boolean => verdict === 'falls short' || verdict === "can't be verified"

/** Most of a drawing's own notes that is printed [characters]: the rest stays in the file. */
const mostNotes = 300

/** The pier held against its drawing: items under their verdict, each verdict as a shape and a word, and what would show them said once. */
export const AgainstDrawing = ({ result: { callout, spec } }: BlockProps) => {
  const words = wordsOf('sheet')
  const { say } = useUnits()
  const d = wordsOf('drawing')
  if (callout === null || callout.checked === 0) {
    return (
      <Block title={words.drawing.title}>
        <p>{words.drawing.none}</p>
      </Block>
    )
  }
  const groups = order
    .map((verdict) => ({ verdict, items: callout.items.filter((item) => item.drawn !== null && item.verdict === verdict) }))
    .filter(({ items }) => items.length > 0)
  const left = callout.items.filter((item) => item.drawn === null)
  const { number, date, notes } = spec.callout ?? { number: '', date: '', notes: '' }
  const shows = [...new Set(callout.items.filter(isTold).flatMap(({ verify }) => verify))]
  const told = (item: CalloutItem): string =>
    [
      whyWords(item.why),
      ...item.consequences.map(({ id, value, quantity }) => `${consequenceWords(id)} ${change(value, quantity, say)}.`),
    ].join(' ')
  return (
    <Block title={words.drawing.title}>
      <p>
        <b>
          <MarkedWord name={overallMark[callout.overall]} word={`${d.overall[callout.overall]}.`} />
        </b>{' '}
        {d.checked(callout.checked)} {d.decides} {number !== '' && `${words.place}: ${number}. `}
        {date !== '' && `${words.drawn}: ${date}.`}
      </p>
      <table className='paper-figures'>
        <thead>
          <tr>
            <th scope='col'>{d.columns.item}</th>
            <th scope='col'>{d.columns.drawn}</th>
            <th scope='col'>{d.columns.set}</th>
            <th scope='col'>{d.columns.difference}</th>
          </tr>
        </thead>
        {groups.map(({ verdict, items }) => {
          const mark = markOf[verdict]
          return (
            <tbody key={verdict}>
              <tr>
                <th colSpan={4} scope='colgroup' className='paper-group'>
                  {mark && <Mark name={mark} />} {d.verdicts[verdict]}
                </th>
              </tr>
              {items.map((item) => (
                <Fragment key={item.id}>
                  <tr>
                    <th scope='row'>{d.items[item.id]}</th>
                    <td className='number'>{valueWords(item.drawn, say)}</td>
                    <td className='number'>{valueWords(item.set, say)}</td>
                    <td className='number'>{differenceWords(item, say)}</td>
                  </tr>
                  {isTold(item) && (
                    <tr className='paper-more'>
                      <td colSpan={4}>{told(item)}</td>
                    </tr>
                  )}
                </Fragment>
              ))}
            </tbody>
          )
        })}
      </table>
      {shows.length > 0 && (
        <p>
          <b>{d.shows}:</b> {shows.map(verifyWords).join(' ')}
        </p>
      )}
      {left.length > 0 && (
        <p className='paper-quiet'>
          {d.notOn}: {left.map((item) => d.items[item.id]).join(', ')}.
        </p>
      )}
      {notes !== '' && (
        <p className='paper-note'>
          <b>{words.drawing.notes}:</b> {shortened(notes, mostNotes)}
          {notes.length > mostNotes && ` ${words.drawing.rest}`}
        </p>
      )}
    </Block>
  )
}
