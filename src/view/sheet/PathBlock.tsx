import { wordsOf } from '../../words/index.ts'
import type { Check } from '../../core/model/worked.ts'
import { useUnits } from '../hooks/useUnits.ts'
import { rowOf } from '../panels/answers/answerWords.ts'
import { answerWords } from '../panels/answers/words.ts'
import { chainView } from '../panels/loadPath/chainView.ts'
import { linkMark, whyNot } from '../panels/loadPath/linkWords.ts'
import { Mark } from '../kit/Mark.tsx'
import { Block, type BlockProps } from './blocks.tsx'
import { Whys } from './Whys.tsx'

/** Every link of the load path: what it may hold, or why that can't be verified, the load and their ratio. */
export const LoadPath = ({ result }: BlockProps) => {
  const words = wordsOf('sheet')
  const { say } = useUnits()
  const chain = chainView(result)
  const { verdicts } = wordsOf('app')
  const whole = chain.demand === null ? '–' : say(chain.demand, 'force')
  const groupWord = (group: Check['group']): string => rowOf<string>(wordsOf('app').answers.groups, group) ?? ''
  const untold = chain.groups
    .flatMap(({ links }) => links)
    .filter((link) => link.place === 'needed' && whyNot(link) !== '')
    .map((link) => ({ name: answerWords(link.check.id).label, why: whyNot(link) }))
  return (
    <Block title={words.loadPath.title}>
      <table className='paper-figures'>
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
              return (
                <tr key={check.id}>
                  <th scope='row'>
                    <Mark name={linkMark(link)} /> {answerWords(check.id).label}
                    {governs && <b className='paper-tag'>{wordsOf('app').answers.governs}</b>}
                    {place === 'spare' && <span className='paper-tag'>{words.loadPath.notInUse}</span>}
                    {place === 'bound' && <span className='paper-tag'>{words.loadPath.atMost}</span>}
                  </th>
                  <td className='number'>
                    {check.counted === 'not counted' ? verdicts.unverified : holds === null ? '–' : say(holds, 'force')}
                  </td>
                  <td className='number'>{isSpare || load === null ? '' : say(load, 'force')}</td>
                  <td className='number'>
                    {isSpare || holds === null || load === null || holds <= 0 ? '' : Math.max(0, check.ratio ?? load / holds).toFixed(2)}
                  </td>
                </tr>
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
      <Whys rows={untold} />
      {chain.demand === null && <p className='paper-quiet'>{words.loadPath.noLoad}</p>}
      {chain.isEstimate && <p className='paper-quiet'>{words.loadPath.estimate}</p>}
    </Block>
  )
}
