/** Row of the dry-mix trial among the rows of evidence. */
export const dryMixTrialRow = 'dry-mix-trial'

/**
 * A thing that the trade says, with the rows of evidence that speak for it and against it, and what was looked for and not
 * found. A row may stand on neither side of any claim. Ids are those of `lifeEvidence`, `dryMixTrialRow` and `notFound`.
 */
export type Claim = Readonly<{ id: string; inFavour: readonly string[]; against: readonly string[]; missing: readonly string[] }>

/** Claims that a customer brings or a trainer meets; each row of evidence names its own source. */
export const claims: readonly Claim[] = [
  {
    id: 'concrete-rots-posts',
    inFavour: ['concrete-micronised-worse'],
    against: ['concrete-acq-better', 'concrete-copper-azole-no-effect', 'concrete-untreated-no-change'],
    missing: ['posts-in-concrete-against-soil-under-load', 'moisture-of-building-posts-in-concrete', 'gaps-round-building-posts'],
  },
  {
    id: 'concrete-protects-posts',
    inFavour: ['concrete-acq-better'],
    against: ['concrete-micronised-worse', 'concrete-copper-azole-no-effect'],
    missing: ['posts-in-concrete-against-soil-under-load', 'moisture-of-building-posts-in-concrete', 'gaps-round-building-posts'],
  },
  {
    id: 'dry-mix-never-hydrates',
    inFavour: [],
    against: [dryMixTrialRow],
    missing: ['strengths-of-the-2003-trial', 'conductivity-of-dry-mix'],
  },
  {
    id: 'dry-mix-is-as-good-as-mixed',
    inFavour: [dryMixTrialRow],
    against: [],
    missing: ['strengths-of-the-2003-trial', 'conductivity-of-dry-mix'],
  },
  {
    id: 'posts-in-wet-soil-last-ten-years',
    inFavour: ['common-practice-ten-years', 'stakes-gulf', 'posts-mississippi-untreated', 'posts-oregon-fir'],
    against: ['posts-cca-50', 'posts-penta-50', 'posts-aca-50', 'posts-creosote-50'],
    missing: ['todays-copper-treatments-past-twelve-years', 'posts-in-concrete-against-soil-under-load'],
  },
  {
    id: 'treated-posts-last-sixty-years',
    inFavour: ['posts-penta-60', 'posts-copper-naphthenate', 'posts-aca-low', 'posts-mississippi-oil'],
    against: ['lumber-copper-naphthenate', 'posts-creosote-low'],
    missing: ['todays-copper-treatments-past-twelve-years'],
  },
  { id: 'gravel-drains-the-hole', inFavour: [], against: [], missing: ['gravel-against-concrete'] },
]
