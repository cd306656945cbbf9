/** Rows of lifeEvidence.ts that give a life to start from, by id: the page opens without the rows themselves. Source: assumption (the list; each row names its own). */
export const referenceRows = [
  'common-practice-ten-years',
  'stakes-panama',
  'stakes-gulf',
  'stakes-wisconsin',
  'posts-mississippi-untreated',
  'posts-oregon-fir',
  'posts-oregon-osage',
  'posts-southwest-oak',
  'posts-aca-50',
  'posts-creosote-50',
  'posts-creosote-low',
  'posts-penta-60',
  'posts-copper-naphthenate',
  'lumber-copper-naphthenate',
  'posts-aca-low',
  'posts-mississippi-oil',
] as const
