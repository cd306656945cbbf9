import { type Holds, holds } from '../../core/derive/build/guesses.ts'
import type { BuildStep, MistakeId } from '../../core/model/buildStep.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import type { Moment } from '../../state/appState.ts'
import { mixOf } from '../../state/timeDerived.ts'
import { type Words, wordsOf } from '../../words/index.ts'

type AskedMistake = keyof typeof holds.mistakes

/** A question that belongs to a moment, the place of the option that holds, and what answers it in the picture: a mistake that is made, or time that plays. */
export type Asked = Readonly<{
  key: string
  question: Words['questions']['mistakes'][AskedMistake]
  holds: Holds
  shows: MistakeId | 'play'
}>

const isAsked = (id: MistakeId): id is AskedMistake => Object.hasOwn(holds.mistakes, id)

/** Null where there is nothing to guess. */
export function questionAt(moment: Moment, steps: readonly BuildStep[], spec: PierSpec): Asked | null {
  const words = wordsOf('questions')
  if (moment.stretch === 'build') {
    const shows = steps[moment.step]?.wrong.find(isAsked)
    return shows ? { key: shows, question: words.mistakes[shows], holds: holds.mistakes[shows], shows } : null
  }
  if (moment.stretch === 'years') {
    const kind = spec.support.kind === 'embedded' ? 'buried' : 'above'
    return { key: `years-${kind}`, question: words.years[kind], holds: holds.years[kind], shows: 'play' }
  }
  const { concrete } = mixOf(spec)
  const kind = concrete?.as ?? null
  return kind && { key: `month-${kind}`, question: words.month[kind], holds: holds.month[kind], shows: 'play' }
}
