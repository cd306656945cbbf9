import type { Standing } from '../../model/worked.ts'
import type { Seconds } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'
import type { SourceId } from '../sources.ts'

/** What was watched. 'board': decking and braces; 'building-post': a post that carries a building, which no row has but common practice. */
export type Specimen = 'post' | 'stake' | 'lumber' | 'board' | 'building-post' | 'laboratory'
/** What kind of number a row gives: life seen, life worked out by its authors, share failed, or a finding without one. */
export type EvidenceKind = 'life' | 'estimated-life' | 'none-failed' | 'some-failed' | 'finding' | 'common-practice'

/**
 * One row of evidence. Words are keys into the text table. `life`: least and greatest as printed, `high` null where the
 * source says "or more"; `median`: time by which half are expected to fail. `sample`: number watched, and failed by `watched`.
 */
export type EvidenceRow = Readonly<{
  id: string
  specimen: Specimen
  /** Key of treatment or species. */
  wood: string
  /** Key of the place, its decay zone where one was read (1 the mildest, 5 the harshest), and where the wood stood there. */
  site: string
  zone: 1 | 2 | 3 | 4 | 5 | null
  contact: 'in-ground' | 'above-ground' | 'laboratory'
  kind: EvidenceKind
  sample: Readonly<{ count: number; failed: number | null }> | null
  watched: Cited<Seconds> | null
  life: Readonly<{ low: Cited<Seconds>; high: Cited<Seconds> | null }> | null
  median: Cited<Seconds> | null
  finding: string
  limits: readonly string[]
  source: SourceId
  standing: Standing
}>

/** Decay zones of sites; of the others none was read. Source: freeman-posts (south Mississippi), rus-1730b-121 (the two states). */
const siteZones: Readonly<Record<string, EvidenceRow['zone']>> = { 'south-mississippi': 5, 'arizona-new-mexico': 1 }

type Facts = Partial<Pick<EvidenceRow, 'sample' | 'limits' | 'contact'>> &
  Readonly<{ watched?: number; life?: readonly [low: number, high: number | null]; median?: number }>
const row = (
  id: string,
  [specimen, wood, site]: readonly [Specimen, string, string],
  kind: EvidenceKind,
  [source, standing]: readonly [SourceId, Standing],
  facts: Facts = {},
): EvidenceRow => {
  const years = (printed: number) => cited<Seconds>(printed, 'yr', source, standing)
  return {
    id,
    specimen,
    wood,
    site,
    zone: siteZones[site] ?? null,
    contact: facts.contact ?? (specimen === 'laboratory' ? 'laboratory' : 'in-ground'),
    kind,
    sample: facts.sample ?? null,
    watched: facts.watched === undefined ? null : years(facts.watched),
    life: facts.life ? { low: years(facts.life[0]), high: facts.life[1] === null ? null : years(facts.life[1]) } : null,
    median: facts.median === undefined ? null : years(facts.median),
    finding: id,
    limits: facts.limits ?? [],
    source,
    standing,
  }
}
const abstractOf = (source: SourceId) => [source, 'abstract only'] as const
const post50 = ['no-building-load', 'pass-or-fail-by-push', 'not-todays-treatment'] as const

/** Untreated wood in the ground. Source: fpl-rn-02, freeman-posts, osu-bulletin-681, osu-post-farm-1976, osu-post-farm-1985, long-1941. */
export const untreatedEvidence: readonly EvidenceRow[] = [
  row('stakes-panama', ['stake', 'pine-untreated', 'panama'], 'life', abstractOf('fpl-rn-02'), { life: [1, 1], limits: ['small-stakes'] }),
  row('stakes-gulf', ['stake', 'pine-untreated', 'gulf-states'], 'life', abstractOf('fpl-rn-02'), {
    life: [1.8, 3.6],
    limits: ['small-stakes'],
  }),
  row('stakes-wisconsin', ['stake', 'pine-untreated', 'wisconsin'], 'life', abstractOf('fpl-rn-02'), {
    life: [6, 6],
    limits: ['small-stakes'],
  }),
  row('posts-mississippi-untreated', ['post', 'pine-untreated', 'south-mississippi'], 'life', abstractOf('freeman-posts'), {
    life: [2, 2],
  }),
  row('posts-oregon-fir', ['post', 'douglas-fir-untreated', 'corvallis'], 'life', ['osu-bulletin-681', 'read'], { life: [7, 7] }),
  row('posts-oregon-osage', ['post', 'osage-orange', 'corvallis'], 'life', abstractOf('osu-post-farm-1976'), {
    life: [45, null],
    limits: ['durable-species'],
  }),
  row('posts-oregon-juniper', ['post', 'western-juniper', 'corvallis'], 'some-failed', ['osu-post-farm-1985', 'secondary'], {
    sample: { count: 25, failed: 9 },
    watched: 55,
    limits: ['durable-species'],
  }),
  row('posts-southwest-oak', ['post', 'gambel-oak', 'arizona-new-mexico'], 'life', abstractOf('long-1941'), {
    life: [30, 40],
    limits: ['durable-species', 'dry-climate'],
  }),
]

/** Pressure-treated wood in the ground. Source: lebow-2015, lebow-2013, freeman-posts, stakes-canada-2017, lebow-2018, markstrom-gjovik-1992. */
export const treatedEvidence: readonly EvidenceRow[] = [
  row('posts-cca-50', ['post', 'cca', 'south-mississippi'], 'none-failed', abstractOf('lebow-2015'), {
    sample: { count: 125, failed: 0 },
    watched: 50,
    limits: post50,
  }),
  row('posts-penta-50', ['post', 'penta', 'south-mississippi'], 'none-failed', abstractOf('lebow-2015'), {
    sample: { count: 75, failed: 0 },
    watched: 50,
    limits: post50,
  }),
  row('posts-aca-50', ['post', 'aca', 'south-mississippi'], 'some-failed', abstractOf('lebow-2015'), {
    sample: { count: 25, failed: 3 },
    watched: 50,
    median: 96,
    limits: post50,
  }),
  row('posts-creosote-50', ['post', 'creosote', 'south-mississippi'], 'some-failed', abstractOf('lebow-2015'), {
    sample: { count: 25, failed: 5 },
    watched: 50,
    median: 78,
    limits: post50,
  }),
  row('posts-creosote-low', ['post', 'creosote', 'south-mississippi'], 'estimated-life', abstractOf('lebow-2013'), {
    life: [54, 54],
    limits: ['low-retention', 'not-todays-treatment'],
  }),
  row('posts-penta-60', ['post', 'penta', 'south-mississippi'], 'estimated-life', abstractOf('lebow-2013'), {
    life: [60, null],
    limits: ['not-todays-treatment'],
  }),
  row('posts-copper-naphthenate', ['post', 'copper-naphthenate', 'south-mississippi'], 'estimated-life', abstractOf('lebow-2013'), {
    life: [65, 65],
    limits: ['low-retention'],
  }),
  row('lumber-copper-naphthenate', ['lumber', 'copper-naphthenate', 'south-mississippi'], 'estimated-life', abstractOf('lebow-2013'), {
    life: [27, 30],
    limits: ['higher-retention-than-the-posts'],
  }),
  row('posts-aca-low', ['post', 'aca', 'south-mississippi'], 'estimated-life', abstractOf('lebow-2013'), {
    life: [60, 60],
    limits: ['low-retention', 'not-todays-treatment'],
  }),
  row('stakes-acza-30', ['stake', 'acza', 'south-mississippi'], 'none-failed', abstractOf('lebow-2013'), {
    watched: 30,
    limits: ['sample-size-not-read'],
  }),
  row('stakes-aca-60', ['stake', 'aca', 'south-mississippi'], 'none-failed', abstractOf('lebow-2013'), {
    watched: 60,
    limits: ['sample-size-not-read', 'not-todays-treatment'],
  }),
  row('posts-cca-35', ['post', 'cca', 'south-mississippi'], 'none-failed', abstractOf('lebow-2013'), {
    watched: 35,
    limits: ['sample-size-not-read', 'not-todays-treatment'],
  }),
  row(
    'posts-mississippi-oil',
    ['post', 'creosote-penta-copper-naphthenate', 'south-mississippi'],
    'estimated-life',
    abstractOf('freeman-posts'),
    {
      life: [60, null],
      limits: ['not-todays-treatment', 'no-building-load'],
    },
  ),
  row('stakes-copper-azole-10', ['stake', 'copper-azole', 'canada'], 'finding', abstractOf('stakes-canada-2017'), {
    watched: 10,
    limits: ['ten-years-only', 'small-stakes'],
  }),
  row('stakes-acq-10', ['stake', 'acq', 'canada'], 'finding', abstractOf('stakes-canada-2017'), {
    watched: 10,
    limits: ['ten-years-only', 'small-stakes'],
  }),
  row('stakes-copper-12', ['stake', 'cca-acq-copper-azole', 'south-mississippi'], 'finding', abstractOf('lebow-2018'), {
    watched: 12,
    limits: ['ten-years-only', 'small-stakes'],
  }),
  row('posts-ponderosa-30', ['post', 'ponderosa-treated', 'south-dakota'], 'finding', abstractOf('markstrom-gjovik-1992'), {
    watched: 30,
    limits: ['fence-posts', 'dry-climate'],
  }),
]

/** Concrete, gravel and barriers against wood: what was found, and what was not. Source: nicholas-2019, scheffer-morrell-1997, osu-release-1997, extension-answer-2018, bohnhoff-2003. */
export const contactEvidence: readonly EvidenceRow[] = [
  row('concrete-makes-wood-alkaline', ['post', 'several-treatments', 'four-sites'], 'finding', abstractOf('nicholas-2019'), {
    limits: ['no-life-measured'],
  }),
  row('concrete-copper-azole-no-effect', ['laboratory', 'copper-azole', 'laboratory'], 'finding', abstractOf('nicholas-2019'), {
    limits: ['laboratory-only'],
  }),
  row('concrete-acq-better', ['laboratory', 'acq', 'laboratory'], 'finding', abstractOf('nicholas-2019'), { limits: ['laboratory-only'] }),
  row('concrete-micronised-worse', ['laboratory', 'micronised-copper-azole', 'laboratory'], 'finding', abstractOf('nicholas-2019'), {
    limits: ['laboratory-only'],
  }),
  row('concrete-untreated-no-change', ['laboratory', 'untreated', 'laboratory'], 'finding', abstractOf('nicholas-2019'), {
    limits: ['laboratory-only'],
  }),
  row('polyethylene-sleeve', ['stake', 'untreated', 'one-accelerated-test'], 'finding', abstractOf('scheffer-morrell-1997'), {
    watched: 2,
    limits: ['small-stakes', 'accelerated-test'],
  }),
  row('water-inside-sleeve', ['post', 'any', 'oregon'], 'finding', ['osu-release-1997', 'read'], { limits: ['opinion-of-researchers'] }),
  row('gravel-or-concrete-no-research', ['post', 'any', 'oregon'], 'finding', ['extension-answer-2018', 'read'], {
    limits: ['expert-answer'],
  }),
]

/** The trade's rule of thumb for a post in soil that stays wet, about ten years. Shown beside the field data that disagree. Source: common-practice. */
export const commonPracticeLife: EvidenceRow = row(
  'common-practice-ten-years',
  ['building-post', 'any', 'soil-that-stays-wet'],
  'common-practice',
  ['common-practice', 'common practice'],
  { life: [10, 10], limits: ['no-source'] },
)

/** Wood above the ground in the weather, on no post and no bracket. Source: highley-1995, decks-canada-2012, stakes-canada-2017, stakes-near-ground-2017. */
export const aboveGroundEvidence: readonly EvidenceRow[] = [
  row('above-braces-wisconsin', ['board', 'several-woods-untreated', 'wisconsin'], 'estimated-life', abstractOf('highley-1995'), {
    life: [8, null],
    watched: 22,
    limits: ['small-pieces'],
    contact: 'above-ground',
  }),
  row('above-stakes-untreated', ['stake', 'pine-untreated', 'hawaii-mississippi-florida'], 'life', abstractOf('stakes-near-ground-2017'), {
    life: [5, 8],
    limits: ['small-pieces', 'close-to-the-ground'],
    contact: 'above-ground',
  }),
  row('above-decks-untreated', ['board', 'several-woods-untreated', 'canada'], 'finding', abstractOf('decks-canada-2012'), {
    watched: 20,
    limits: ['small-pieces'],
    contact: 'above-ground',
  }),
  row('above-decks-cca', ['board', 'cca', 'canada'], 'none-failed', abstractOf('decks-canada-2012'), {
    watched: 20,
    limits: ['small-pieces', 'sample-size-not-read', 'not-todays-treatment'],
    contact: 'above-ground',
  }),
  row('above-decks-copper', ['board', 'acq-copper-azole', 'canada'], 'finding', abstractOf('stakes-canada-2017'), {
    watched: 10,
    limits: ['small-pieces', 'ten-years-only'],
    contact: 'above-ground',
  }),
]

/** All rows, in the order shown. */
export const lifeEvidence: readonly EvidenceRow[] = [
  commonPracticeLife,
  ...untreatedEvidence,
  ...treatedEvidence,
  ...contactEvidence,
  ...aboveGroundEvidence,
]

/** What was seen of termites beside the decay, each in its place; ids are keys of words. Source: osu-post-farm-1976, freeman-posts, stakes-canada-2017. */
export const termiteEvidence = [
  { id: 'termites-corvallis', treatment: 'any', zone: null, source: 'osu-post-farm-1976', standing: 'abstract only' },
  { id: 'termites-mississippi', treatment: 'any', zone: 5, source: 'freeman-posts', standing: 'abstract only' },
  { id: 'termites-canada', treatment: 'treated', zone: null, source: 'stakes-canada-2017', standing: 'abstract only' },
  { id: 'termites-canada-untreated', treatment: 'untreated', zone: null, source: 'stakes-canada-2017', standing: 'abstract only' },
] as const satisfies readonly Readonly<{
  id: string
  treatment: 'any' | 'treated' | 'untreated'
  zone: EvidenceRow['zone']
  source: SourceId
  standing: Standing
}>[]

/** Causes of failure at the Oregon post farm after 1949, percent of failures. Source: osu-post-farm-1976. */
export const failureCauses = {
  fungi: cited(75, '%', 'osu-post-farm-1976', 'abstract only'),
  fungiAndTermites: cited(16, '%', 'osu-post-farm-1976', 'abstract only'),
  fungiAndOtherInsects: cited(6, '%', 'osu-post-farm-1976', 'abstract only'),
  termites: cited(2, '%', 'osu-post-farm-1976', 'abstract only'),
} as const

/** What was looked for and not found. Keys into the text table. Source: assumption (a search, not a proof). */
export const notFound = [
  'moisture-of-building-posts-in-concrete',
  'gaps-round-building-posts',
  'posts-in-concrete-against-soil-under-load',
  'todays-copper-treatments-past-twelve-years',
  'conductivity-of-dry-mix',
  'strengths-of-the-2003-trial',
  'gravel-against-concrete',
  'prices-of-methods',
  'posts-on-brackets',
  'posts-outside-zone-five',
] as const
