import type { SourceId } from '../../core/engineering/sources.ts'
import type { TimeResult } from '../../core/model/timeResult.ts'
import type { Worked } from '../../core/model/worked.ts'
import { wordsOf } from '../../words/index.ts'
import { workedJson } from './workedJson.ts'

/** SI unit of numbers that stand by themselves, by key; where a range or a list holds them, its own key carries the unit. */
const units: Readonly<Record<string, string>> = {
  from: 'm',
  to: 'm',
  length: 'm',
  reach: 'm',
  widest: 'm',
  wetAndAiry: 'm',
  overRim: 'm',
  inHeavyRain: 'm',
  heaped: 'm',
  height: 'm',
  area: 'm2',
  pondedVolume: 'm3',
  poured: 'm3',
  age: 's',
  life: 's',
  every: 's',
  loadDay: 's',
  estimated: 's',
  first: 's',
}
const unitOfKey = (key: string, where: string): string | undefined => {
  if (key === 'top' && where.endsWith('joint')) return 'm'
  // The whole of what may be said of life is no duration.
  return where === '' ? undefined : units[key]
}

const isWorked = (node: object): node is Worked => 'formula' in node && 'quantity' in node && 'inputs' in node

/** True for a number, and for ranges and lists of numbers, of which one end may be open. */
const isNumeric = (value: unknown): boolean =>
  typeof value === 'number' ||
  (typeof value === 'object' &&
    value !== null &&
    Object.values(value).some(isNumeric) &&
    Object.values(value).every((one) => one === null || isNumeric(one)))

function plain(node: unknown, where = ''): unknown {
  if (typeof node !== 'object' || node === null) return node
  if (isWorked(node)) return workedJson(node)
  if (Array.isArray(node)) return node.map((one) => plain(one, where))
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) => {
      const unit = unitOfKey(key, where)
      return unit !== undefined && isNumeric(value)
        ? [`${key}_${unit}`, value]
        : [key, plain(value, where === '' ? key : `${where}.${key}`)]
    }),
  )
}

/**
 * Water, mix, years and cost as plain data; what a stretch of wood is called and why it is of its class stand beside it in words.
 * Lists that say each number a second time are left out.
 */
export function timeJson({ moisture, mix, life, cost }: TimeResult): unknown {
  const words = wordsOf('moisture')
  const { worked: _water, top, ...water } = moisture
  const { worked: _mix, ...placed } = mix
  const profile = moisture.profile.map((one) => ({
    ...(plain(one, 'moisture.profile') as object),
    text: `${words.touches[one.touch]}: ${words.wetness[one.wetness]}, ${words.oxygen[one.oxygen]}`,
    why: words.reasons[one.reason] ?? one.reason,
  }))
  const line = top.line.map(([r, y]) => ({ r_m: r, y_m: y }))
  return {
    moisture: { ...(plain(water, 'moisture') as object), profile, top: { ...(plain(top, 'moisture.top') as object), line } },
    ...(plain({ mix: placed, life, cost }) as object),
  }
}

/** Every source that any of it names. */
export const timeSources = ({ moisture, mix, life, cost }: TimeResult): SourceId[] => [
  ...moisture.sources,
  ...mix.sources,
  ...life.sources,
  ...(cost?.sources ?? []),
]
