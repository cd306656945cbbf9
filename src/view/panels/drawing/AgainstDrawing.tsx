import type { CalloutResult, CalloutVerdict } from '../../../core/model/calloutResult.ts'
import { setPart } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useIsLooking, useResult } from '../../hooks/usePier.ts'
import { type MarkName, MarkedWord } from '../../kit/Mark.tsx'
import { showGroup } from '../inputs/showGroup.ts'
import { ItemRows } from './ItemRows.tsx'
import { markOf } from './values.ts'
import './drawing.css'

const overallMark: Readonly<Record<CalloutResult['overall'], MarkName>> = {
  'as drawn': 'meets',
  'not as drawn': 'short',
  "can't be confirmed as drawn": 'unverified',
}

const enter = () => {
  if (pierStore.getState().document.spec.callout === null) setPart(pierStore, 'callout', true)
  showGroup('drawing')
}

const Enter = () => {
  const isLooking = useIsLooking()
  return (
    <p>
      {wordsOf('drawing').empty}{' '}
      <button type='button' className='button' disabled={isLooking} onClick={enter}>
        {wordsOf('drawing').enter}
      </button>
    </p>
  )
}

/** Every verdict with its mark and its meaning, so that no fact hides behind a mark. */
const Meanings = () => (
  <details className='drawn-meanings'>
    <summary>{wordsOf('drawing').meanings}</summary>
    <dl className='marks'>
      {(Object.keys(markOf) as CalloutVerdict[]).map((verdict) => {
        const mark = markOf[verdict]
        const word = wordsOf('drawing').verdicts[verdict]
        return (
          <div key={verdict}>
            <dt>{mark ? <MarkedWord name={mark} word={word} /> : word}</dt>
            <dd>{wordsOf('drawing').verdictMeanings[verdict]}</dd>
          </div>
        )
      })}
    </dl>
  </details>
)

/** The pier held against its drawing: one word for the whole, who decides, and every item that is on the drawing. */
export const AgainstDrawing = () => {
  const { callout } = useResult()
  const words = wordsOf('drawing')
  if (callout === null || callout.checked === 0) return <Enter />
  const drawn = callout.items.filter((item) => item.drawn !== null)
  const left = callout.items.filter((item) => item.drawn === null)
  return (
    <>
      <p className='drawn-overall'>
        <MarkedWord name={overallMark[callout.overall]} word={words.overall[callout.overall]} />
      </p>
      <p className='quiet'>
        {words.checked(callout.checked)} {words.decides}
      </p>
      <table className='drawn'>
        <thead>
          <tr>
            <th scope='col'>{words.columns.item}</th>
            <th scope='col'>{words.columns.drawn}</th>
            <th scope='col'>{words.columns.set}</th>
            <th scope='col'>{words.columns.difference}</th>
          </tr>
        </thead>
        {drawn.map((item) => (
          <ItemRows key={item.id} item={item} />
        ))}
      </table>
      {left.length > 0 && (
        <p className='quiet drawn-left'>
          {words.notOn}: {left.map((item) => words.items[item.id]).join(', ')}.
        </p>
      )}
      <Meanings />
    </>
  )
}
