import type { BuildStep } from '../../core/model/buildStep.ts'
import { useRef } from 'react'
import { lastDay, lastYear, placeOf } from '../../state/actions/time.ts'
import type { Moment } from '../../state/appState.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { gainOn, percents, soundPercents } from '../../facts/timeWords.ts'
import { shownSteps } from '../../state/shown.ts'
import { lifeOf, mixOf } from '../../state/timeDerived.ts'
import type { PierSpec } from '../../core/model/spec.ts'

/** While it plays days and years pass too fast to be read out: so many go by in silence. */
const spokenEvery = { build: 1, month: 7, years: 10 } as const

/** The moment in words: a short line beside the rule, and the state as a sentence for who hears it. */
export function useSpokenMoment(moment: Moment): Readonly<{ last: number; line: string; spoken: string }> {
  const words = wordsOf('time')
  const { spec } = useResult()
  const playing = usePier((state) => state.view.playing)
  const steps = usePier(shownSteps)
  const before = useRef('')
  const last = moment.stretch === 'build' ? steps.length - 1 : moment.stretch === 'month' ? lastDay : lastYear
  const at = Math.min(placeOf(moment), last)
  const line =
    moment.stretch === 'build'
      ? words.place.build(String(at + 1), String(steps.length))
      : moment.stretch === 'month'
        ? words.place.month(String(at))
        : words.place.years(String(at))
  const isHeard = !playing || at % spokenEvery[moment.stretch] === 0
  if (isHeard) before.current = sentence(moment, at, line, steps[at], spec)
  return { last, line, spoken: before.current }
}

function sentence({ stretch }: Moment, at: number, line: string, step: BuildStep | undefined, spec: PierSpec): string {
  const words = wordsOf('time')
  if (stretch === 'build') return words.build.spoken(line, step ? wordsOf('steps')[step.id] : '')
  if (stretch === 'years') {
    const point = lifeOf(spec).sound?.find(({ year }) => year === at)
    return point ? words.years.spoken(String(at), soundPercents(point.share)) : words.years.spokenNone(String(at))
  }
  const { concrete } = mixOf(spec)
  if (concrete === null) return words.month.none
  if (concrete.as === 'dry') return words.month.dry.spoken(String(at))
  return at === 0 ? words.month.start : words.month.spoken(String(at), percents(gainOn(concrete, at)))
}
