import { useId, useState } from 'react'
import type { CalloutItem } from '../../../core/model/calloutResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { Mark } from '../../kit/Mark.tsx'
import { SourceList } from '../answers/WorkedDetails.tsx'
import { change, consequenceWords, differenceWords, markOf, valueWords, verifyWords, whyWords } from './values.ts'

/** Why, what the difference does in numbers, and what would show it. */
const Reasons = ({ item }: { item: CalloutItem }) => {
  const { say } = useUnits()
  const words = wordsOf('drawing')
  return (
    <div className='drawn-reasons'>
      <p>{whyWords(item.why)}</p>
      {item.consequences.length > 0 && (
        <dl className='pairs'>
          {item.consequences.map(({ id, value, quantity }) => (
            <div key={id}>
              <dt>{consequenceWords(id)}</dt>
              <dd>{change(value, quantity, say)}</dd>
            </div>
          ))}
        </dl>
      )}
      {item.tolerance !== null && item.tolerance > 0 && <p className='quiet'>{words.allowed(say(item.tolerance, 'length'))}</p>}
      {item.verify.length > 0 && (
        <>
          <h5>{words.shows}</h5>
          <ul>
            {item.verify.map((key) => (
              <li key={key}>{verifyWords(key)}</li>
            ))}
          </ul>
        </>
      )}
      <SourceList ids={item.sources} />
    </div>
  )
}

/** One item of the drawing: two rows of the table, the second with the reasons. What does not simply meet is open at first. */
export const ItemRows = ({ item }: { item: CalloutItem }) => {
  const id = useId()
  const { say } = useUnits()
  const pointing = usePointing(item.where)
  const isTold = item.verdict === 'falls short' || item.verdict === "can't be verified"
  const [chosen, setChosen] = useState<boolean | null>(null)
  const open = chosen ?? isTold
  const mark = markOf[item.verdict]
  return (
    <tbody className='row drawn-item' data-verdict={item.verdict} {...pointing}>
      <tr>
        <th scope='row'>
          <button type='button' className='drawn-name' aria-expanded={open} aria-controls={id} onClick={() => setChosen(!open)}>
            {mark && <Mark name={mark} />}
            <span>
              {wordsOf('drawing').items[item.id]}
              <span className={`drawn-verdict mark-${mark}`}>{wordsOf('drawing').verdicts[item.verdict]}</span>
            </span>
          </button>
        </th>
        <td className='number'>{valueWords(item.drawn, say)}</td>
        <td className='number'>{valueWords(item.set, say)}</td>
        <td className='number'>{differenceWords(item, say)}</td>
      </tr>
      <tr id={id} className='drawn-more' hidden={!open}>
        <td colSpan={4}>
          <Reasons item={item} />
        </td>
      </tr>
    </tbody>
  )
}
