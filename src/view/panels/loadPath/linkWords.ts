import { type Words, wordsOf } from '../../../words/index.ts'
import type { Say } from '../../hooks/useUnits.ts'
import { reasonWords } from '../answers/words.ts'
import type { MarkName } from '../../kit/Mark.tsx'
import type { ChainView, ChartLink } from './chainView.ts'

/** One word or a few about how a link stands; `tone` colours it as its mark. A quiet one is only spoken: the key of the chart shows it. */
export type LinkWord = Readonly<{ text: string; tone?: MarkName | 'governs'; isQuiet?: true }>

const marks = { counted: 'counted', "engineer's judgement": 'judgement', 'not counted': 'unverified', 'upper bound': 'bound' } as const

export const linkMark = ({ check, isShort }: ChartLink): MarkName => (isShort ? 'short' : marks[check.counted])

/** What stands under a link's bar: how it may be used, whether it is in use, whether it governs. */
export function linkWords(
  { check, place, governs, isShort, holds }: ChartLink,
  chain: ChainView,
  judged: string | null,
  say: Say,
): readonly LinkWord[] {
  const words = wordsOf('loadPath')
  const verdicts = wordsOf('app').verdicts
  if (place === 'bound') return [{ text: words.noMoreThan(say(holds ?? 0, 'force')), tone: 'bound' }]
  // The reason that stands below it says so in full.
  if (check.counted === 'not counted') return [{ text: verdicts.unverified, tone: 'unverified', isQuiet: true }]
  const said: LinkWord[] = []
  if (isShort) said.push({ text: wordsOf('app').answers.below[chain.isEstimate ? 'estimated' : 'entered'], tone: 'short' })
  said.push(
    check.counted === 'counted'
      ? { text: verdicts.counted, tone: 'counted', isQuiet: true }
      : { text: verdicts.judgement, tone: 'judgement', isQuiet: true },
  )
  if (place === 'spare') said.push({ text: words.spare })
  if (check.id === judged) said.push({ text: words.byJudgement })
  if (governs) said.push({ text: wordsOf('app').answers.governs, tone: 'governs' })
  return said
}

/** Why a link is not counted, in one or two sentences; '' for one that is. */
export const whyNot = ({ check }: ChartLink): string => (check.counted === 'not counted' ? reasonWords(check.why) : '')

/** What would make it verifiable; '' where nothing is known that would. */
export const wouldVerify = (why: string | undefined): string =>
  why !== undefined && Object.hasOwn(wordsOf('verifiable'), why) ? wordsOf('verifiable')[why as keyof Words['verifiable']] : ''
