import type { QuantityLine } from '../../../core/model/result.ts'
import { text } from '../../../text/index.ts'
import { usePier, useResult, useSpec } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { type Say, useUnits } from '../../hooks/useUnits.ts'
import { answerWords, zoneWords } from './words.ts'
import { StandingMark } from './WorkedDetails.tsx'

const nameOf = (line: QuantityLine): string => zoneWords(line.id) === line.id ? text.roles[line.role].label : zoneWords(line.id)

const Line = ({ line, say }: { line: QuantityLine; say: Say }) => {
  const pointing = usePointing(line.zones)
  return (
    <tr className='row' tabIndex={0} {...pointing}>
      <th scope='row'>
        <span className={`swatch role-${line.role}`} aria-hidden='true' />
        {nameOf(line)} <StandingMark standing={line.standing} />
      </th>
      <td className='number'>{say(line.volume.value, 'volume')}</td>
      <td className='number'>{say(line.weight, 'weight')}</td>
      <td className='number'>{say(line.buoyantWeight, 'weight')}</td>
    </tr>
  )
}

const orderWords = (line: QuantityLine, system: 'us' | 'metric', say: Say, all: boolean): string => {
  const { order } = line
  if (order === null) return ''
  const amount = all ? order.job : order.each
  if (order.as === 'bags') return text.app.answers.bags(say(amount, 'count'), order.bagSize)
  return say(amount, 'volume', system === 'us' ? { unit: 'yd3' } : { unit: 'm3' })
}

/** What lies in the hole, and what to buy for it. */
export const Quantities = () => {
  const { quantities, hole } = useResult()
  const { say, system } = useUnits()
  const water = usePier((state) => (state.draft ?? state.document).spec.site.waterTable !== null)
  const { piers } = useSpec()
  const ordered = quantities.filter((line) => line.order !== null)
  const words = text.app.answers
  return (
    <>
      <table className='grid'>
        <thead>
          <tr>
            <th scope='col'>{words.part}</th>
            <th scope='col'>{words.volume}</th>
            <th scope='col'>{words.weight}</th>
            <th scope='col'>{words.inWater}</th>
          </tr>
        </thead>
        <tbody>
          {quantities.map((line) => (
            <Line key={line.id} line={line} say={say} />
          ))}
        </tbody>
      </table>
      {!water && <p className='quiet'>{words.noWater}</p>}
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
              <td className='number'>{orderWords(line, system, say, false)}</td>
              {piers > 1 && <td className='number'>{orderWords(line, system, say, true)}</td>}
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
            {say(hole.spoilLoose.low, 'volume')} – {say(hole.spoilLoose.high, 'volume')}
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
