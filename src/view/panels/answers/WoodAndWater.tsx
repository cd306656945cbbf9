import { Suspense } from 'react'
import { inConcreteAbove } from '../../../core/derive/report/placedFacts.ts'
import { factsOf, sayTheSame } from '../../../core/derive/report/report.ts'
import type { Fact } from '../../../core/model/fact.ts'
import { numberOf } from '../../../facts/firstWords.ts'
import { aboveWords, contactWords, nameOf, touchingWords, valueWords } from '../../../facts/said.ts'
import { wordsOf } from '../../../words/index.ts'
import { useFacts, useUnits } from '../../hooks/usePier.ts'
import { Pairs } from '../../kit/FactTable.tsx'
import { lazyPage } from '../../lazyPage.tsx'
import { CheckTable } from './HeldFacts.tsx'

const WaterPanel = lazyPage(
  () => import('../water/WaterPanel.tsx').then((module) => module.WaterPanel),
  ['answers', 'compare', 'glossary', 'moisture', 'reasons', 'terms'],
)

/** What touches one line of the post: the bar says how much, not where. */
const Side = ({ fact, title, longest }: { fact: Fact; title: string; longest: number }) => {
  const units = useUnits()
  const above = aboveWords(fact, units)
  return (
    <div className='exposure-line'>
      <div className='ends strong small'>
        <h4 className='small-head'>{title}</h4>
        <span className='number'>{fact.value && valueWords(fact.value, units)}</span>
      </div>
      <div className='exposure-bar' aria-hidden='true'>
        {fact.figures
          .filter(({ id }) => id !== inConcreteAbove)
          .map(({ id, value }) => (
            <span
              key={id}
              className={`role-${id === 'native-soil' ? 'soil' : id}`}
              style={{ width: `${(100 * (numberOf(value) ?? 0)) / longest}%` }}
            />
          ))}
      </div>
      <p className='exposure-words quiet'>
        {touchingWords(fact, units)}
        {above && ` · ${above}`}
      </p>
    </div>
  )
}

/** Each side by its name; sides that are alike, as on level ground, once. */
function told(lines: readonly Fact[]): readonly Readonly<{ title: string; fact: Fact }>[] {
  const { sides } = wordsOf('app').answers
  const [up, middle, down] = lines
  if (!up || !middle || !down || !sayTheSame([up, down])) return lines.map((fact) => ({ title: nameOf(fact), fact }))
  if (sayTheSame([up, middle])) return [{ title: sides.all, fact: up }]
  return [
    { title: sides.faces, fact: up },
    { title: sides.axis, fact: middle },
  ]
}

/** How much wood is below grade, on which side, and what touches it. */
export const WoodAndWater = () => {
  const facts = useFacts()
  const units = useUnits()
  const words = wordsOf('app').answers
  const lines = factsOf(facts, 'exposure')
  const longest = Math.max(...lines.map(({ value }) => numberOf(value) ?? 0), 1e-9)
  return (
    <>
      {factsOf(facts, 'stand-off').length > 0 ? (
        <>
          <p>{words.noWoodBelow}</p>
          <CheckTable groups={['stand-off']} />
        </>
      ) : (
        <>
          {told(lines).map(({ title, fact }) => (
            <Side key={title} fact={fact} title={title} longest={longest} />
          ))}
          {factsOf(facts, 'exposure-area').map((area) => (
            <Pairs
              key={area.id}
              of={[
                [nameOf(area), area.value && valueWords(area.value, units)],
                ...area.figures.map(({ id, value }) => [words.touching(contactWords(id)), valueWords(value, units), 'part'] as const),
              ]}
            />
          ))}
        </>
      )}
      <Suspense fallback={<p className='quiet'>{wordsOf('moisture').loading}</p>}>
        <WaterPanel />
      </Suspense>
    </>
  )
}
