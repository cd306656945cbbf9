import type { BuildStep, MistakeId } from '../../core/model/buildStep.ts'
import type { PierSpec } from '../../core/model/spec.ts'
import type { Moment } from '../../state/appState.ts'
import { mixOf } from '../../state/timeDerived.ts'
import type { Question } from '../../words/en/questions.ts'
import { wordsOf } from '../../words/index.ts'

/** A question that belongs to a moment, and what answers it in the picture: a mistake that is made, or time that plays. */
export type Asked = Readonly<{ key: string; question: Question; shows: MistakeId | 'play' }>

/** Null where there is nothing to guess. */
export function questionAt(moment: Moment, steps: readonly BuildStep[], spec: PierSpec): Asked | null {
  const ofMistake = wordsOf('questions').mistakes as Readonly<Partial<Record<MistakeId, Question>>>
  const questions = wordsOf('questions')
  if (moment.stretch === 'build') {
    const shows = steps[moment.step]?.wrong.find((id) => ofMistake[id] !== undefined)
    const question = shows && ofMistake[shows]
    return shows && question ? { key: shows, question, shows } : null
  }
  if (moment.stretch === 'years') {
    const kind = spec.support.kind === 'embedded' ? 'buried' : 'above'
    return { key: `years-${kind}`, question: questions.years[kind], shows: 'play' }
  }
  const { concrete } = mixOf(spec)
  const kind = concrete?.as ?? null
  return kind && { key: `month-${kind}`, question: questions.month[kind], shows: 'play' }
}
