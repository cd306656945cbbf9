import { drawingOf } from '../../../core/derive/report/drawingFacts.ts'
import { markOf } from '../../../core/derive/report/verdict.ts'
import { factsOf } from '../../../core/derive/report/report.ts'
import type { CalloutVerdict } from '../../../core/model/calloutResult.ts'
import type { Fact } from '../../../core/model/fact.ts'
import { numberOf, wordIn } from '../../../facts/firstWords.ts'
import { effectWords, isTold, nameOf, said } from '../../../facts/said.ts'
import { switchPart } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useFacts, useIsLooking, useUnits } from '../../hooks/usePier.ts'
import { Bullets } from '../../kit/Lists.tsx'
import { FactTable, Pairs } from '../../kit/FactTable.tsx'
import { Button } from '../../kit/Controls.tsx'
import { MarkedWord } from '../../kit/Mark.tsx'
import { HeldFact } from '../answers/HeldFacts.tsx'
import { SourceList } from '../../kit/Sources.tsx'
import { showGroup } from '../inputs/InputStep.tsx'
import './drawing.css'

const enter = () => {
  if (pierStore.getState().document.spec.callout === null) switchPart(pierStore, 'callout', true)
  showGroup('drawing')
}

const Enter = () => {
  const isLooking = useIsLooking()
  return (
    <p>
      {wordsOf('drawing').empty}{' '}
      <Button disabled={isLooking} onClick={enter}>
        {wordsOf('drawing').enter}
      </Button>
    </p>
  )
}

/** Every verdict with its mark and its meaning, so that no fact hides behind a mark. */
const Meanings = () => {
  const { meanings, verdicts, verdictMeanings } = wordsOf('drawing')
  return (
    <details className='drawn-meanings above small'>
      <summary className='strong'>{meanings}</summary>
      <Pairs
        as='marks'
        of={(Object.keys(verdictMeanings) as CalloutVerdict[]).map((verdict) => [
          <MarkedWord key='word' name={markOf(verdict)} word={verdicts[verdict]} />,
          verdictMeanings[verdict],
        ])}
      />
    </details>
  )
}

/** Why, what the difference does in numbers, and what would show it. */
const Reasons = ({ fact }: Readonly<{ fact: Fact }>) => {
  const units = useUnits()
  const { tolerance = null, shownBy = [] } = fact
  const words = wordsOf('drawing')
  return (
    <div className='stack'>
      <p>{said(fact, units).why}</p>
      {fact.figures.length > 0 && <Pairs of={fact.figures.map((one) => effectWords(one, units.say))} />}
      {(numberOf(tolerance) ?? 0) > 0 && <p className='quiet'>{words.allowed(units.say(numberOf(tolerance) ?? 0, 'length'))}</p>}
      {shownBy.length > 0 && (
        <>
          <h4 className='small-head'>{words.shows}</h4>
          <Bullets className='' of={shownBy.map((key) => wordIn(words.verify, key))} />
        </>
      )}
      <SourceList ids={fact.sources} />
    </div>
  )
}

/** The pier held against its drawing: one word for the whole, who decides, and every item that is on the drawing. */
export const AgainstDrawing = () => {
  const facts = useFacts()
  const units = useUnits()
  const whole = drawingOf(facts)
  if (!whole) return <Enter />
  const words = wordsOf('drawing')
  const items = factsOf(facts, 'drawing-item')
  const left = items.filter(({ limit }) => limit === null)
  const { mark, word } = said(whole, units)
  return (
    <>
      <p className='large'>
        <MarkedWord name={mark} word={word} />
      </p>
      <p className='quiet'>
        {words.checked(numberOf(whole.value) ?? 0)} {words.decides}
      </p>
      <FactTable
        className='facts small drawn above'
        heads={[words.columns.item, words.columns.drawn, words.columns.set, words.columns.difference]}
      >
        {items
          .filter(({ limit }) => limit !== null)
          .map((item) => (
            <HeldFact
              key={item.id}
              fact={item}
              last='difference'
              under={(told) => <span className={`block small mark-${told.mark}`}>{told.word}</span>}
              isOpenAtFirst={isTold(item)}
            >
              <Reasons fact={item} />
            </HeldFact>
          ))}
      </FactTable>
      {left.length > 0 && (
        <p className='quiet above'>
          {words.notOn}: {left.map(nameOf).join(', ')}.
        </p>
      )}
      <Meanings />
    </>
  )
}
