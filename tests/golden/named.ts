/**
 * The numbers and verdicts of one pier that are held, each under a name of its own, read out of what `calc` prints. This file alone knows
 * where `calc` prints them: when a key of its JSON moves, the path here moves with it and no held number changes.
 */

type Tree = Readonly<{ [key: string]: unknown }>
const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null

/** What stands under a path of keys; undefined where the path ends early. */
const at = (node: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, key) => (isTree(inner) ? inner[key] : undefined), node)
const numberAt = (node: unknown, path: string): number | null => {
  const value = at(node, path)
  return typeof value === 'number' ? value : null
}
const listAt = (node: unknown, path: string): readonly unknown[] => {
  const value = at(node, path)
  return Array.isArray(value) ? value : []
}

/** Sum of the numbers that are there; null where there is none. */
const sumOf = (values: readonly (number | null)[]): number | null => {
  const there = values.filter((value) => value !== null)
  return there.length === 0 ? null : there.reduce((sum, value) => sum + value, 0)
}

const single = {
  'hole [m³]': 'hole.volume_m3',
  'left empty [m³]': 'hole.void_m3',
  'most loose spoil [m³]': 'hole.spoilLoose_m3.high',
  'depth at the axis [m]': 'depths.bearingAtAxis_m',
  'depth downhill [m]': 'depths.bearingAtDownhillEdge_m',
  'depth uphill [m]': 'depths.bearingAtUphillEdge_m',
  'wood below grade [m²]': 'exposure.areaBelowGrade_m2',
  'uplift [N]': 'demand.uplift.value',
  'gravity [N]': 'demand.gravity.value',
  'sideways load [N]': 'demand.lateral.value',
  'allowable uplift [N]': 'uplift.allowable_N',
  'uplift ratio': 'uplift.ratio',
  'wet and airy wood [m]': 'time.moisture.wetAndAiry_m',
  'slope of the top': 'time.moisture.top.slope.value',
  'water over the rim [m]': 'time.moisture.top.path.overRim_m',
  'pond [m³]': 'time.moisture.top.pondedVolume_m3',
  'runoff [m³/s]': 'time.moisture.top.runoff.value',
  'full load at the earliest [s]': 'time.mix.concrete.loadDay_s.low',
  'least life [s]': 'time.life.estimated_s.low',
  'most life [s]': 'time.life.estimated_s.high',
  'least cost': 'time.cost.present.low',
  'most cost': 'time.cost.present.high',
} as const

/** What a zone is made of: the volumes of all zones of one role together. */
const roles = [
  'topsoil',
  'soil',
  'soil-lower',
  'backfill',
  'granular',
  'gravel',
  'mulch',
  'dry-mix',
  'concrete',
  'flowable-fill',
  'wood',
  'bar',
  'steel',
] as const

/** Checks held by themselves, under the end of their id: a judgement of the soil comes before it. */
const links = [
  'post-net-tension',
  'post-tear-out',
  'bar-through-post',
  'bar-shear',
  'bracket-bolts',
  'bracket-legs-hold',
  'concrete-breakout',
  'concrete-tension',
  'friction-and-weight',
  'cone-over-ledge',
  'breakout-of-ledge',
  'block-of-piers',
  'bearing-gross',
  'bearing-net',
  'lateral-embedment',
  'lateral-held-at-grade',
  'lateral-broms',
  'frost-depth',
  'frost-jacking',
] as const

export const namedNumbers = (result: unknown): ReadonlyMap<string, number | null> => {
  const zones = listAt(result, 'zones')
  const quantities = listAt(result, 'quantities')
  const checks = listAt(result, 'checks')
  const orders = quantities.flatMap((line) => listAt(line, 'orders'))
  const shares = listAt(result, 'time.moisture.shares')
  const sum = (list: readonly unknown[], path: string) => sumOf(list.map((one) => numberAt(one, path)))
  return new Map<string, number | null>([
    ...Object.entries(single).map(([name, path]) => [name, numberAt(result, path)] as const),
    ...roles.map((role) => {
      const made = zones.filter((zone) => at(zone, 'role') === role)
      return [`${role} [m³]`, sum(made, 'volume_m3')] as const
    }),
    ['surface of all zones [m²]', sum(zones, 'surface_m2')],
    ['weight [N]', sum(quantities, 'weight_N')],
    ['weight in water [N]', sum(quantities, 'buoyantWeight_N')],
    ['bags a pier', sum(orders, 'each')],
    ['bags in all', sum(orders, 'job')],
    ['ordered by volume [m³]', sum(orders, 'job_m3')],
    ['bags by weight [lb]', sum(orders, 'bagSize_lb')],
    ...['wet-at-times', 'stays-wet'].map((wetness) => {
      const of = shares.filter((share) => at(share, 'wetness') === wetness)
      return [`wood that is ${wetness} [m²]`, sum(of, 'area_m2')] as const
    }),
    ...links.map((link) => {
      const of = checks.filter((check) => String(at(check, 'id')).endsWith(link))
      return [link, sum(of, 'allowable.value')] as const
    }),
    ['all allowable values', sum(checks, 'allowable.value')],
    ['all demands', sum(checks, 'demand.value')],
    ['all ratios', sum(checks, 'ratio')],
  ])
}

/** Verdicts that are one word each. */
export const namedWords = (result: unknown): ReadonlyMap<string, string> => {
  const word = (path: string): string => String(at(result, path) ?? '')
  return new Map([
    ['governed by', word('uplift.governing')],
    ['ground by', word('uplift.soil')],
    ['against the drawing', word('callout.overall')],
  ])
}

/** One word in small letters, as ids are; a number with its unit begins with no letter. */
const isId = (text: string): boolean => /^[a-z][^\sA-Z]*$/.test(text)
/** What a person typed, and sources, which are held in full and apart. */
const apart = new Set(['spec', 'written', 'sources'])

/** Calls `see` with every text and the nearest key above it. */
function gather(node: unknown, see: (text: string, key: string) => void, key = ''): void {
  if (typeof node === 'string') see(node, key)
  else if (Array.isArray(node)) for (const one of node) gather(one, see, key)
  else if (isTree(node)) for (const [inner, value] of Object.entries(node)) if (!apart.has(inner)) gather(value, see, inner)
}

const distinct = (texts: readonly string[]): string[] => [...new Set(texts)].sort()

/**
 * Every text of a result by what it is, each once and in order, so that it does not matter where or how often it is printed.
 * `words` is what a person reads, numbers with their units too; ids are left out. `verdicts` is a line for each check and each item of the
 * drawing. `sources` are the records in full.
 */
export const textsOf = (result: unknown): Readonly<Record<'words' | 'verdicts' | 'formulas' | 'sources', readonly string[]>> => {
  const words: string[] = []
  const formulas: string[] = []
  gather(result, (text, key) => {
    if (key === 'formula' || key === 'symbol') formulas.push(text)
    else if (!isId(text)) words.push(text)
  })
  const said = (node: unknown, keys: readonly string[]): string => keys.map((key) => String(at(node, key) ?? '')).join(' | ')
  const checks = listAt(result, 'checks').map((check) =>
    said(check, ['label', 'counted', 'why', 'standing', 'allowable.text.us', 'demand.text.us', 'choice']),
  )
  const items = listAt(result, 'callout.items').map((item) => said(item, ['label', 'verdict', 'why']))
  const sources = Object.values(at(result, 'sources') ?? {}).map((source) => JSON.stringify(source))
  return { words: distinct(words), verdicts: distinct([...checks, ...items]), formulas: distinct(formulas), sources: distinct(sources) }
}
