/** Words of the years and of the mix: what was found, what it does not cover, what can be seen. Read in the answers and the time strip alone. */
export const life = {
  /** One sentence for each row of tables/lifeEvidence.ts, with its place and its limits. */
  evidence: {
    'common-practice-ten-years': 'The trade says that a post in soil that stays wet lasts about 10 years. Common practice, no source.',
    'stakes-panama': 'Bare pine stakes in Panama: about 1 year. Small stakes.',
    'stakes-gulf': 'Bare pine stakes in Mississippi, Florida and Louisiana: 1.8 to 3.6 years. Small stakes.',
    'stakes-wisconsin': 'Bare pine stakes in Wisconsin: about 6 years. Small stakes.',
    'posts-mississippi-untreated': 'Bare pine posts in south Mississippi: 2 years.',
    'posts-oregon-fir': 'Bare fir posts in Corvallis, Oregon: 7 years.',
    'posts-oregon-osage': 'Osage-orange posts in Corvallis, Oregon: 45 years or more. A wood that lasts by itself.',
    'posts-oregon-juniper': 'Western juniper posts in Corvallis, Oregon: 16 of 25 still stood after 55 years. A wood that lasts by itself.',
    'posts-southwest-oak': 'Gambel oak posts in Arizona and New Mexico: 30 to 40 years. A dry place.',
    'posts-cca-50':
      'CCA posts in south Mississippi: 0 of 125 failed in 50 years. No building stood on them, and it is not a treatment of today.',
    'posts-penta-50':
      'Penta posts in south Mississippi: 0 of 75 failed in 50 years. No building stood on them, and it is not a treatment of today.',
    'posts-aca-50':
      'ACA posts in south Mississippi: 3 of 25 failed in 50 years; half are expected to fail by 96. No building stood on them.',
    'posts-creosote-50':
      'Creosote posts in south Mississippi: 5 of 25 failed in 50 years; half are expected to fail by 78. No building stood on them.',
    'posts-creosote-low': 'Posts with little creosote: 54 years, worked out by those who watched them.',
    'posts-penta-60': 'Penta posts: 60 years or more, worked out by those who watched them.',
    'posts-copper-naphthenate': 'Copper naphthenate posts with little in them: 65 years, worked out by those who watched them.',
    'lumber-copper-naphthenate': 'Copper naphthenate lumber with more in it than those posts: 27 to 30 years.',
    'posts-aca-low': 'Posts with little ACA: 60 years, worked out by those who watched them.',
    'stakes-acza-30': 'ACZA stakes: none failed in 30 years. How many there were could not be read.',
    'stakes-aca-60': 'ACA stakes: none failed in 60 years. How many there were could not be read.',
    'posts-cca-35': 'CCA posts in south Mississippi: none failed in 35 years. How many there were could not be read.',
    'posts-mississippi-oil': 'Oil-treated posts in south Mississippi: over 60 years, worked out by those who watched them.',
    'stakes-copper-azole-10': 'Copper azole stakes in Canada: mostly sound after 10 years. Nobody has watched them for longer.',
    'stakes-acq-10': 'ACQ stakes in Canada: sound at one site, slight to moderate decay at the other, after 10 years.',
    'stakes-copper-12': 'CCA, ACQ and copper azole stakes in south Mississippi: good enough for several woods after 12 years.',
    'posts-ponderosa-30': 'Treated ponderosa fence posts in South Dakota: doing well after 30 years. A dry place.',
    'concrete-makes-wood-alkaline': 'Wood in concrete turned alkaline soon, at four sites. No life was measured.',
    'concrete-copper-azole-no-effect': 'In the laboratory, concrete made no difference to wood with copper azole.',
    'concrete-acq-better': 'In the laboratory, concrete helped wood with ACQ against decay.',
    'concrete-micronised-worse': 'In the laboratory, concrete made wood with one fine-ground copper treatment decay more.',
    'concrete-untreated-no-change': 'In the laboratory, concrete made no steady difference to bare wood.',
    'above-braces-wisconsin':
      'Bare cross-braces of 19 woods on a test fence in Wisconsin, watched for up to 22 years: 8 years or more on average. Heartwood of Douglas-fir, redwood and some others: over 20.',
    'above-stakes-untreated':
      'Bare pine stakes close above the ground: all failed after about 5 years in Hawaii and south Mississippi, after about 8 in Florida.',
    'above-decks-untreated': 'Bare decks at two places in Canada: all but those of red cedar were due for replacement after 20 years.',
    'above-decks-cca': 'CCA decks at the same two places in Canada: all still in use after 20 years.',
    'above-decks-copper':
      'Copper azole and ACQ decks in Canada: mostly in very good shape after 10 years. Bare boards beside them rotted badly.',
    'polyethylene-sleeve': 'A plastic sleeve kept small bare stakes nearly sound for 2 years. One quick test.',
    'water-inside-sleeve': 'Researchers in Oregon did not think water inside a sleeve a worry: there is little air. An opinion.',
    'gravel-or-concrete-no-research': 'An expert in Oregon found no study of gravel against concrete round a post.',
  },
  lacks: {
    'own-years': 'These are your own years. No row of evidence stands behind them.',
    'row-is-open': 'The row says “or more”. It tells the least, and no far end.',
    'no-building-load': 'None of these posts carried a building.',
    'no-post-with-todays-treatment':
      'No post with a treatment that is sold for homes today was found. Stakes with such treatments were watched for 10 to 12 years, and stand apart.',
    'none-in-concrete': 'All these posts stood in soil. No field test of posts in concrete was found.',
    'zone-not-given': 'No decay zone is set. The treated posts all stood in zone 5, the harshest.',
    'zone-is-milder': 'The posts stood in a harsher decay zone than yours. So they show the most that may be lost, and not the least.',
    'no-post-on-bracket':
      'No field test of a post on a bracket was found. What was found is wood above the ground: boards, braces and short stakes. They set no share for a post.',
    'small-stakes': 'The row is of small pieces, which fail sooner than posts.',
  },
  /** Why a row is no part of a band. */
  apart: {
    'no-post': 'Apart: not a post.',
    'durable-wood': 'Apart: another kind of wood.',
    'less-preservative': 'Apart: less preservative than the standard asks for.',
    'no-count': 'Apart: no count of failures could be read.',
    'one-side': 'Apart: “or more” sets one side only.',
    'zone-not-read': 'Apart: no decay zone of that place could be read.',
    'milder-zone': 'Apart: a milder decay zone than yours.',
    'not-chosen': 'Apart: not the row you chose.',
    'no-life': 'Apart: tells no life.',
  },
  /** What a band is of. */
  woods: {
    own: 'Your own years',
    cca: 'CCA',
    penta: 'Penta',
    aca: 'ACA',
    creosote: 'Creosote',
    'creosote-penta-copper-naphthenate': 'Oil-treated',
    'copper-naphthenate': 'Copper naphthenate',
    'pine-untreated': 'Bare pine',
    'douglas-fir-untreated': 'Bare Douglas-fir',
    'osage-orange': 'Osage-orange',
    'gambel-oak': 'Gambel oak',
    any: 'The trade’s rule',
  },
  inZone: (zone: string): string => `decay zone ${zone}`,
  fromHarsher: (zone: string): string => `from zone ${zone}, so at most`,
  termites: {
    'termites-corvallis':
      'Of the posts that failed in Corvallis, Oregon after 1949, termites alone took 2 in 100, and fungi with termites 16.',
    'termites-mississippi':
      'South Mississippi, decay zone 5, is a place of many termites. What they did to the posts there is part of those rows.',
    'termites-canada': 'Copper azole and ACQ kept termites off the stakes in Canada for 10 years.',
    'termites-canada-untreated': 'Bare stakes in Canada had very severe decay and termite attack by year 10.',
  },
  inspection: {
    'post-foot': 'the foot of the post',
    bracket: 'the bracket',
    bolts: 'the bolts',
    'top-of-concrete': 'the top of the concrete',
    'steel-in-concrete': 'the steel inside the concrete',
    'post-above-ground': 'the post above ground',
    'wood-below-ground': 'all wood below ground',
    joint: 'the gap between wood and concrete, below its mouth',
    'top-under-heap': 'the top of the concrete under the heap',
    bar: 'the bar',
  },
  notFound: {
    'moisture-of-building-posts-in-concrete': 'How wet posts of buildings get inside concrete.',
    'gaps-round-building-posts': 'How wide the gap round such posts gets.',
    'posts-in-concrete-against-soil-under-load': 'A field study of loaded posts, some in concrete and some in soil.',
    'todays-copper-treatments-past-twelve-years': 'Today’s copper treatments after more than 12 years.',
    'conductivity-of-dry-mix': 'How fast water goes through loose dry mix.',
    'strengths-of-the-2003-trial': 'The strengths that the 2003 trial measured.',
    'gravel-against-concrete': 'A study of gravel against concrete round a post.',
    'prices-of-methods': 'Published prices of these ways to build.',
    'posts-on-brackets': 'A field test of posts on brackets above concrete.',
    'posts-outside-zone-five': 'Counts of failures of treated posts outside decay zone 5.',
  },
  hazard: {
    low: 'low (under 35)',
    moderate: 'moderate (35 to 65)',
    high: 'high (over 65)',
    says: (index: string, hazard: string): string => `Climate index ${index}: ${hazard}. For wood above ground alone.`,
    buried: 'Wood in the ground: high, whatever the climate index says.',
  },
  /** Things that are said and are not so, each put right where it belongs. */
  traps: {
    'trap-dry-mix-never-hydrates':
      'Dry mix can harden in moist ground: a trial of 2003 shows it. That does not cover loose mix in clay or dry ground.',
    'trap-more-water-fixes-dry-mix':
      'More water does not mend a dry pour. What fills every gap is three times what the cement can use, and too much makes it weak.',
    'trap-gel-strength-is-no-constant':
      'The law of strength by gel has no fixed strength in it. It gives shares of a known mix, and no more.',
    'trap-rain-day-definition': 'A rain day has at least 0.25 mm (0.01 in). Counted from 1 mm, the index comes out nearly a third too low.',
    'trap-factor-values-from-the-standard': 'The standard for the factors gives no values. All of them are 1 here until you change one.',
    'trap-treated-posts-last-sixty-years':
      'Sixty years is known of older factory treatments on posts at one hard site. Today’s copper treatments have been watched for 12.',
    'trap-stand-off-is-no-requirement':
      'Standing 1 in off concrete or 6 in off soil lets a post go without treatment. It does not forbid a treated post in the ground.',
    'trap-three-hundred-drum-turns': '300 turns of the drum is no longer a fixed limit. The ticket and the order say what holds.',
    'trap-drilled-pier-specification':
      'The rule for drilled piers begins at 30 in. A 12 in post hole has no such rule: the tolerance is the project’s.',
  },
  zero: (failed: string, sample: string): string => `None failed, but so small a number can not rule out ${failed} in ${sample}.`,
} as const
