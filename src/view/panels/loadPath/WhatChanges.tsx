import type { ChangeId } from '../../../core/model/saidIds.ts'
import { useState } from 'react'
import type { WhatIf } from '../../../core/derive/whatIf/whatIf.ts'
import { seenDocument } from '../../../state/derived.ts'
import { applySuggestion } from '../../../state/suggestions.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useIsLooking, usePier, useUnits } from '../../hooks/usePier.ts'
import { answerWords } from '../../../facts/answerWords.ts'
import type { PullPath } from '../../../core/derive/report/pullPath.ts'
import { Worse } from '../../kit/Worse.tsx'
import { useSuggestions } from './useSuggestions.ts'
import { Button } from '../../kit/Controls.tsx'

const tryWords = (id: ChangeId): string => wordsOf('loadPath').tries[id]

/** A gain of less than this share of what the pier holds now is next to no change. */
const little = 0.01

const Change = ({ one, most, governing, onTry }: { one: WhatIf; most: number; governing: string | null; onTry: () => void }) => {
  const words = wordsOf('loadPath').changes
  const { say } = useUnits()
  const isLooking = useIsLooking()
  const label = tryWords(one.id)
  const gain = one.gain >= 0 ? words.gain(say(one.gain, 'force')) : words.loss(say(-one.gain, 'force'))
  return (
    <li className='change ruled' data-loss={one.gain < 0 || undefined}>
      <span>
        {label}
        {one.governing !== governing && <span className='quiet block'> {words.governs(answerWords(one.governing).label)}</span>}
        <Worse checks={one.gain > 0 ? one.worse : []} />
      </span>
      <span className='number strong'>{gain}</span>
      <svg className='change-bar' width='100%' height='8' aria-hidden='true' focusable='false'>
        <rect width={`${((100 * Math.abs(one.gain)) / most).toFixed(2)}%`} height='8' />
      </svg>
      <Button disabled={isLooking} aria-label={words.tryThis(label)} onClick={onTry}>
        {words.tryIt}
      </Button>
    </li>
  )
}

/** What would change the number most, each tried alone, each to be built with one touch and taken back with another. */
export const WhatChanges = ({ chain }: { chain: PullPath }) => {
  const words = wordsOf('loadPath').changes
  const spec = usePier((state) => (state.draft === null ? seenDocument(state).spec : null))
  const found = useSuggestions(spec)
  const [tried, setTried] = useState('')
  const { holds } = chain
  if (holds === null) return <p className='quiet'>{words.nothing}</p>
  const isLittle = ({ gain }: WhatIf): boolean => Math.abs(gain) < little * holds
  const listed = found?.filter((one) => !isLittle(one)) ?? []
  const rest = found?.filter(isLittle) ?? []
  const most = Math.max(...listed.map((one) => Math.abs(one.gain)), Number.MIN_VALUE)
  const build = (one: WhatIf) => spec !== null && applySuggestion(pierStore, spec, one) && setTried(words.tried(tryWords(one.id)))
  return (
    <div aria-busy={found === null}>
      {found === null ? (
        <p className='quiet'>{spec === null ? words.later : words.working}</p>
      ) : (
        <ul>
          {listed.map((one) => (
            <Change key={one.id} one={one} most={most} governing={chain.whole.restsOn[0] ?? null} onTry={() => build(one)} />
          ))}
          <li className='change ruled change-ask'>
            <span className='whole-row'>
              {words.ask}
              <span className='quiet block'> {words.askHow}</span>
            </span>
          </li>
        </ul>
      )}
      {rest.length > 0 && (
        <p className='quiet'>
          {words.little} {rest.map((one) => tryWords(one.id).toLowerCase()).join(', ')}.
        </p>
      )}
      <p className='quiet' role='status'>
        {tried}
      </p>
    </div>
  )
}
