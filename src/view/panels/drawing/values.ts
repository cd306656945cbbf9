import type {
  CalloutItem,
  CalloutValue,
  CalloutVerdict,
  DrawingEffect,
  DrawingProof,
  DrawingReason,
} from '../../../core/model/calloutResult.ts'
import { wordsOf } from '../../../words/index.ts'
import type { Say } from '../../hooks/useUnits.ts'
import type { MarkName } from '../Mark.tsx'

/** The silhouette of each verdict. An item that is not on the drawing has none: nothing was held against it. */
export const markOf: Readonly<Record<CalloutVerdict, MarkName | null>> = {
  meets: 'meets',
  'falls short': 'short',
  "can't be verified": 'unverified',
  'not needed': 'unneeded',
  'not on the drawing': null,
}

/** Choices are named in full in a list; in a narrow column the part before the bracket will do. */
const short = (word: string): string => word.replace(/ \(.*\)$/, '').split(',')[0] ?? word

export const valueWords = (value: CalloutValue | null, say: Say): string => {
  if (value === null) return wordsOf('drawing').words.none
  if (value.as === 'number') return say(value.value, value.quantity)
  if (value.as === 'choice') return short(wordsOf('choices')[value.path]?.[value.choice] ?? value.choice)
  return wordsOf('drawing').words[value.word]
}

const signed = (text: string, value: number): string => (value < 0 ? `\u2212${text}` : `+${text}`)

/** A number with its sign, whatever its size: "−2 in", "+12%". */
export const change = (value: number, quantity: Parameters<Say>[1], say: Say): string => signed(say(Math.abs(value), quantity), value)

/** Shares below this are rounding. */
const nothing = 1e-9
/** The difference of an item; a dash where the two are no numbers or are alike. */
export const differenceWords = (item: CalloutItem, say: Say): string => {
  const { difference, drawn } = item
  if (difference === null || Math.abs(difference) < nothing) return '\u2013'
  return change(difference, drawn?.as === 'number' ? drawn.quantity : 'length', say)
}

export const whyWords = (why: DrawingReason): string => wordsOf('drawing').why[why]
export const verifyWords = (key: DrawingProof): string => wordsOf('drawing').verify[key]
export const consequenceWords = (id: DrawingEffect): string => wordsOf('drawing').consequences[id]
