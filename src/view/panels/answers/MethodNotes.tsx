import { fillKind } from '../../../core/kinds/index.ts'
import { bracketUnder, cautionsOf } from '../../../facts/practiceWords.ts'
import type { KindText } from '../../../words/en/fills.ts'
import { wordsOf } from '../../../words/index.ts'
import { useSpec } from '../../hooks/usePier.ts'
import { Bullets } from '../../kit/Lists.tsx'
import { SourceList } from '../../kit/Sources.tsx'

const TwoSides = ({ words }: { words: KindText }) => (
  <>
    <p>{words.what}</p>
    <dl className='two-sides small'>
      <dt className='heavy'>{wordsOf('app').answers.forIt}</dt>
      <dd>{words.strength}</dd>
      <dt className='heavy'>{wordsOf('app').answers.againstIt}</dt>
      <dd>{words.weakness}</dd>
      <dt className='heavy'>{wordsOf('app').answers.ask}</dt>
      <dd>{words.ask}</dd>
    </dl>
  </>
)

/** The method in use: what it is, what speaks for and against it, how it is built, what goes wrong. */
export const MethodNotes = () => {
  const spec = useSpec()
  const kind = fillKind(spec.fill.kind)
  const bracket = bracketUnder(spec)
  const cautions = cautionsOf(spec)
  return (
    <>
      <TwoSides words={wordsOf('fills')[kind.id]} />
      {bracket && (
        <>
          <h4>{wordsOf('brackets')[bracket.id].label}</h4>
          <TwoSides words={wordsOf('brackets')[bracket.id]} />
        </>
      )}
      {cautions.length > 0 && <Bullets of={cautions} />}
      <details className='row over-fine'>
        <summary className='opens'>
          <span className='row-name grows'>{wordsOf('app').answers.howBuilt}</span>
        </summary>
        <ol className='steps stack tight small'>
          {kind.steps.map((step) => (
            <li key={step}>{wordsOf('steps')[step]}</li>
          ))}
        </ol>
      </details>
      <SourceList ids={[...kind.sources, ...(bracket?.sources ?? [])]} />
    </>
  )
}
