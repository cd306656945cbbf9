import type { Order, QuantityLine } from '../../../core/model/result.ts'
import { wordsOf } from '../../../words/index.ts'
import { useResult, useSpec } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { answerWords, zoneWords } from './answerWords.ts'
import { orderWords } from './orderWords.ts'
import { StandingMark } from './StandingMark.tsx'

export { orderWords }

const nameOf = (line: QuantityLine): string =>
  zoneWords(line.id) === line.id ? wordsOf('materials').roles[line.role].label : zoneWords(line.id)

const Line = ({ line, wet }: { line: QuantityLine; wet: boolean }) => {
  const { say } = useUnits()
  const pointing = usePointing(line.zones)
  return (
    <tr className='row' tabIndex={0} {...pointing}>
      <th scope='row'>
        <span className={`swatch role-${line.role}`} aria-hidden='true' />
        {nameOf(line)} <StandingMark standing={line.standing} />
      </th>
      <td className='number'>{say(line.volume.value, 'volume')}</td>
      <td className='number'>{say(line.weight, 'weight')}</td>
      {wet && <td className='number'>{say(line.buoyantWeight, 'weight')}</td>}
    </tr>
  )
}

/** Ways to buy it: any one of them will do. */
const Ways = ({ orders, scope }: { orders: readonly Order[]; scope: 'each' | 'job' }) => {
  const { say, system } = useUnits()
  return orders.map((order, i) => (
    <span key={order.as} className='way'>
      {i > 0 && `${wordsOf('app').answers.or} `}
      {orderWords(order, system, say, scope)}
    </span>
  ))
}

/** What lies in the hole, and what to buy for it. */
export const Quantities = () => {
  const { quantities, hole } = useResult()
  const { say, bare } = useUnits()
  const { piers, site } = useSpec()
  const wet = site.waterTable !== null
  const ordered = quantities.filter((line) => line.orders.length > 0)
  const words = wordsOf('app').answers
  return (
    <>
      <table className='grid'>
        <thead>
          <tr>
            <th scope='col'>{words.part}</th>
            <th scope='col'>{words.volume}</th>
            <th scope='col'>{words.weight}</th>
            {wet && <th scope='col'>{words.inWater}</th>}
          </tr>
        </thead>
        <tbody>
          {quantities.map((line) => (
            <Line key={line.id} line={line} wet={wet} />
          ))}
        </tbody>
      </table>
      {!wet && <p className='quiet'>{words.noWater}</p>}
      <h4>{words.order}</h4>
      <table className='grid'>
        <thead>
          <tr>
            <th scope='col'>{words.material}</th>
            <th scope='col'>{words.onePier}</th>
            {piers > 1 && <th scope='col'>{words.allPiers(piers)}</th>}
          </tr>
        </thead>
        <tbody>
          {ordered.map((line) => (
            <tr key={line.id}>
              <th scope='row'>{nameOf(line)}</th>
              <td className='number'>
                <Ways orders={line.orders} scope='each' />
              </td>
              {piers > 1 && (
                <td className='number'>
                  <Ways orders={line.orders} scope='job' />
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      <h4>{words.digging}</h4>
      <dl className='pairs'>
        <div>
          <dt>{answerWords('hole-volume').label}</dt>
          <dd>{say(hole.volume.value, 'volume')}</dd>
        </div>
        <div>
          <dt>{words.spoilBank}</dt>
          <dd>{say(hole.spoilBank, 'volume')}</dd>
        </div>
        <div>
          <dt>{words.spoilLoose}</dt>
          <dd>
            {bare(hole.spoilLoose.low, 'volume')}–{say(hole.spoilLoose.high, 'volume')}
          </dd>
        </div>
        {hole.void > 1e-6 && (
          <div>
            <dt>{words.empty}</dt>
            <dd>{say(hole.void, 'volume')}</dd>
          </div>
        )}
      </dl>
    </>
  )
}
