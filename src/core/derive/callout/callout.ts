import type { CalloutItem, CalloutResult } from '../../model/calloutResult.ts'
import type { PierResult } from '../../model/result.ts'
import type { PierFrame } from '../pierFrame.ts'
import { encasementItem, mixedItem, strengthItem } from './concrete.ts'
import { depthItem, diameterItem, frostItem } from './hole.ts'
import type { CalloutContext } from './item.ts'
import { soilItem, upliftItem } from './resistance.ts'
import { barSizeItem, barThroughItem, bracketItem, sectionItem, treatmentItem } from './steelAndPost.ts'

const items: readonly ((context: CalloutContext) => CalloutItem)[] = [
  diameterItem,
  depthItem,
  strengthItem,
  mixedItem,
  encasementItem,
  barThroughItem,
  barSizeItem,
  sectionItem,
  treatmentItem,
  bracketItem,
  upliftItem,
  frostItem,
  soilItem,
]

/**
 * The pier as set against what the drawing asks, item by item. Null without a callout.
 * The word for the whole is no more than the items say: one that falls short makes it "not as drawn", one that can't be verified leaves
 * it open, and it is never a word on whether the pier may be built.
 */
export function calloutCheck(
  frame: PierFrame,
  parts: Pick<PierResult, 'depths' | 'uplift' | 'checks' | 'quantities' | 'zones'>,
): CalloutResult | null {
  const { callout } = frame.spec
  if (callout === null) return null
  const context = { callout, frame, ...parts }
  const all = items.map((one) => one(context))
  const drawn = all.filter((one) => one.drawn !== null)
  return { overall: overall(drawn), checked: drawn.length, items: all }
}

function overall(drawn: readonly CalloutItem[]): CalloutResult['overall'] {
  if (drawn.some((one) => one.verdict === 'falls short')) return 'not as drawn'
  if (drawn.length === 0 || drawn.some((one) => one.verdict === "can't be verified")) return "can't be confirmed as drawn"
  return 'as drawn'
}
