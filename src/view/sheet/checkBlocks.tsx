import type { Check } from '../../core/model/worked.ts'
import { wordsOf } from '../../words/index.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { answerWords, reasonWords, verdictOf } from '../panels/answers/words.ts'
import { valueWords } from '../panels/drawing/values.ts'
import { Mark } from '../kit/Mark.tsx'
import { Block, type BlockProps, Depths } from './blocks.tsx'
import { Whys } from './Whys.tsx'

const other: readonly Check['group'][] = ['bearing', 'lateral', 'frost', 'detail']

/** What is not about uplift: what is asked, what is there, and how it stands, in shape and word. */
export const OtherChecks = ({ result }: BlockProps) => {
  const words = wordsOf('sheet')
  const { say } = useUnits()
  const standOff = result.exposure.standOff?.checks ?? []
  const rows = [
    ...other.flatMap((group) => result.checks.filter((check) => check.group === group && !standOff.includes(check))),
    ...standOff,
  ]
  // What is met has its mark alone, told once below: the words that matter stand out.
  const met = [...new Set(rows.map(verdictOf).flatMap(({ mark, word }) => (mark === 'meets' ? [word] : [])))]
  const untold = rows.flatMap((check) =>
    check.counted === 'not counted' ? [{ name: answerWords(check.id).label, why: reasonWords(check.why) }] : [],
  )
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
      <table className='paper-figures'>
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
              <tr key={check.id}>
                <th scope='row'>
                  <Mark name={mark} /> {answerWords(check.id).label}
                  {mark !== 'meets' && `: ${word}`}
                </th>
                <td className='number'>{side(check, 'asked')}</td>
                <td className='number'>{side(check, 'there')}</td>
                <td className='number'>{check.ratio === undefined ? '' : check.ratio.toFixed(2)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <Whys rows={untold} />
      {met.length > 0 && (
        <p className='paper-quiet'>
          <Mark name='meets' /> {met.join(' · ')}
        </p>
      )}
      <Depths result={result} />
    </Block>
  )
}
