import { factsOf } from '../../../core/derive/report/report.ts'
import type { Fact } from '../../../core/model/fact.ts'
import { orderWords } from '../../../facts/firstWords.ts'
import { nameOf, valueWords } from '../../../facts/said.ts'
import { wordsOf } from '../../../words/index.ts'
import { useFacts, useSpec, useUnits } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { FactTable, Pairs } from '../../kit/FactTable.tsx'
import { StandingMark } from '../../kit/Mark.tsx'

const Part = ({ fact, isWet }: { fact: Fact; isWet: boolean }) => {
  const units = useUnits()
  const pointing = usePointing(fact.drawn)
  const [weight, inWater] = fact.figures
  return (
    <tr className='row over-fine' tabIndex={0} {...pointing}>
      <th scope='row'>
        <span className={`swatch role-${fact.role}`} aria-hidden='true' />
        {nameOf(fact)} <StandingMark standing={fact.standing} />
      </th>
      {[fact.value, weight?.value, isWet && inWater?.value].map(
        (value, i) =>
          value && (
            // biome-ignore lint/suspicious/noArrayIndexKey: a cell is its place
            <td key={i} className='number'>
              {valueWords(value, units)}
            </td>
          ),
      )}
    </tr>
  )
}

/** Ways to buy it: any one of them will do. */
const Ways = ({ fact: { orders = [] }, scope }: { fact: Fact; scope: 'each' | 'job' }) => {
  const units = useUnits()
  return (
    <td className='number'>
      {orders.map((order, i) => (
        <span key={order.as} className='block'>
          {i > 0 && `${wordsOf('app').answers.or} `}
          {orderWords(order, units, scope, 'long')}
        </span>
      ))}
    </td>
  )
}

/** What lies in the hole, and what to buy for it. */
export const Quantities = () => {
  const facts = useFacts()
  const units = useUnits()
  const { piers, site } = useSpec()
  const isWet = site.waterTable !== null
  const lines = factsOf(facts, 'quantity')
  const words = wordsOf('app').answers
  return (
    <>
      <FactTable className='grid' heads={[words.part, words.volume, words.weight, ...(isWet ? [words.inWater] : [])]}>
        <tbody>
          {lines.map((fact) => (
            <Part key={fact.id} fact={fact} isWet={isWet} />
          ))}
        </tbody>
      </FactTable>
      {!isWet && <p className='quiet'>{words.noWater}</p>}
      <h4>{words.order}</h4>
      <FactTable className='grid' heads={[words.material, words.onePier, ...(piers > 1 ? [words.allPiers(piers)] : [])]}>
        <tbody>
          {lines
            .filter(({ orders = [] }) => orders.length > 0)
            .map((fact) => (
              <tr key={fact.id}>
                <th scope='row'>{nameOf(fact)}</th>
                <Ways fact={fact} scope='each' />
                {piers > 1 && <Ways fact={fact} scope='job' />}
              </tr>
            ))}
        </tbody>
      </FactTable>
      {piers > 1 && lines.some(({ orders = [] }) => orders.some(({ as }) => as === 'bags')) && <p className='quiet'>{words.sharedBag}</p>}
      <h4>{words.digging}</h4>
      <Pairs of={factsOf(facts, 'hole').map((fact) => [nameOf(fact), fact.value && valueWords(fact.value, units)])} />
    </>
  )
}
