import { parseQuantity } from '../units/parse.ts'
import { toSI } from '../units/factors.ts'
import { valueAt, withValueAt } from './path.ts'

/** What the first version put in when loads from the drawing were switched on, by path [N, m]: an invented open shed. */
const filledIn = {
  'loads.entered.uplift': toSI(800, 'lb'),
  'loads.entered.gravity': toSI(4000, 'lb'),
  'loads.entered.lateral': toSI(400, 'lb'),
  'loads.entered.lateralHeight': toSI(96, 'in'),
} as const
/** Loads that a page may have filled in by itself. */
export const loadPaths = Object.keys(filledIn) as readonly (keyof typeof filledIn)[]

const isFilledIn = (path: keyof typeof filledIn, written: unknown): boolean => {
  const reading = typeof written === 'string' ? parseQuantity(written, path.endsWith('Height') ? 'length' : 'force') : null
  return reading?.ok === true && Math.abs(reading.value - filledIn[path]) < 1e-9 * filledIn[path]
}

/**
 * From version 1 to 2: a load that stands as the page put it in, and of which nothing tells that somebody gave it, is assumed. It keeps its
 * value, and whoever opens the pier is told.
 */
export function filledInLoads(old: unknown): unknown {
  const paths = loadPaths.filter((path) => isFilledIn(path, valueAt(valueAt(old, 'pier'), path)) && originAt(old, path) === undefined)
  if (paths.length === 0) return old
  const origins = { ...(valueAt(old, 'origins') as object | undefined), ...Object.fromEntries(paths.map((path) => [path, 'assumed'])) }
  return withValueAt(old, 'origins', origins)
}

const originAt = (job: unknown, path: string): unknown =>
  (valueAt(job, 'origins') as Readonly<Record<string, unknown>> | null | undefined)?.[path]
