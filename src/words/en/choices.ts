/** Words for the values of every choice. */
const soilKind = { presumptive: 'Code table', user: 'Your own' }

const soilClass = {
  'crystalline-rock': 'Crystalline bedrock',
  'foliated-rock': 'Layered or foliated rock',
  gravel: 'Sandy gravel, gravel',
  sand: 'Sand, silty or clayey sand or gravel',
  clay: 'Clay, sandy or silty clay, silt',
}

const barSize = {
  '#3': '#3 (3/8 in)',
  '#4': '#4 (1/2 in)',
  '#5': '#5 (5/8 in)',
  '#6': '#6 (3/4 in)',
  '#7': '#7 (7/8 in)',
  '#8': '#8 (1 in)',
}

const barGrade = { unknown: 'Unknown', '40': 'Grade 40', '60': 'Grade 60' }
const barCoating = { plain: 'Plain', galvanised: 'Galvanised', epoxy: 'Epoxy coated', stainless: 'Stainless' }
const bag = { '50': '50 lb bag', '60': '60 lb bag', '80': '80 lb bag' }

const postSection = {
  '4x4': '4×4',
  '4x6': '4×6',
  '6x6': '6×6',
  '6x8': '6×8',
  '8x8': '8×8',
  '3-ply-2x6': '3-ply 2×6',
  '4-ply-2x6': '4-ply 2×6',
  '3-ply-2x8': '3-ply 2×8',
  'round-6': 'Round, 6 in',
  'round-7': 'Round, 7 in',
  'round-8': 'Round, 8 in',
  'round-9': 'Round, 9 in',
  'round-10': 'Round, 10 in',
}

const useClass = {
  untreated: 'Untreated',
  UC3B: 'UC3B (above ground)',
  UC4A: 'UC4A (ground contact)',
  UC4B: 'UC4B (building posts)',
  UC4C: 'UC4C (severe)',
}

const yesNo = { yes: 'Yes', no: 'No' }

export const choices: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'site.soil.kind': soilKind,
  'site.soil.class': soilClass,
  'site.lower.soil.kind': soilKind,
  'site.lower.soil.class': soilClass,
  'hole.base.material': { gravel: 'Washed stone', concrete: 'Concrete pad', 'loose-soil': 'Loose soil left in' },
  'post.section': postSection,
  'post.species': {
    'southern-pine': 'Southern pine',
    'douglas-fir-larch': 'Douglas fir-larch',
    'hem-fir': 'Hem-fir',
    'spruce-pine-fir': 'Spruce-pine-fir',
    cedar: 'Cedar',
  },
  'post.treatment': useClass,
  'support.kind': { embedded: 'In the hole', bracket: 'On a bracket' },
  'fill.bagSize': bag,
  'bars.size': barSize,
  'bars.grade': barGrade,
  'bars.coating': barCoating,
  'verticalBars.size': barSize,
  'verticalBars.grade': barGrade,
  'verticalBars.coating': barCoating,
  'top.shape': { flat: 'Flat', crowned: 'Crowned', dished: 'Dished' },
  'concrete.unitWeight': { plain: 'Plain', reinforced: 'With steel' },
  'concrete.bagSize': bag,
  'site.weathering': { negligible: 'Little', moderate: 'Moderate', severe: 'Severe' },
  'sideways.ground': { 'as-tabulated': 'As in the code table', doubled: 'Twice the table' },
  'sideways.top': { free: 'Free', 'held-at-grade': 'Held by a slab' },
  code: { 'irc-2012-2018': 'IRC 2012 to 2018', 'irc-2021': 'IRC 2021', 'ibc-2012': 'IBC 2012', 'ibc-2018': 'IBC 2018 and 2021' },
  'loads.estimate.roof': {
    'free-monoslope': 'Open, one slope',
    'free-pitched': 'Open, ridge',
    'free-troughed': 'Open, valley',
    enclosed: 'Closed building',
    'partially-enclosed': 'Partly closed building',
  },
  'loads.estimate.flow': { clear: 'Clear', obstructed: 'Blocked' },
  'loads.estimate.edition': { '7-16': 'ASCE 7-16', '7-22': 'ASCE 7-22' },
  'loads.estimate.exposure': { B: 'B', C: 'C', D: 'D' },
  'callout.mixed': yesNo,
  'callout.encasement': yesNo,
  'callout.barThrough': yesNo,
  'callout.bracket': yesNo,
  'placing.cement': { I: 'Type I', III: 'Type III (early strength)' },
  'placing.air': yesNo,
  'placing.groundFrozen': yesNo,
  'water.ground': { drains: 'Drains', damp: 'Stays damp', wet: 'Stays wet' },
  'water.texture': {
    sand: 'Sand',
    'loamy-sand': 'Loamy sand',
    'sandy-loam': 'Sandy loam',
    loam: 'Loam',
    'silt-loam': 'Silt loam',
    'sandy-clay-loam': 'Sandy clay loam',
    'clay-loam': 'Clay loam',
    'silty-clay-loam': 'Silty clay loam',
    'sandy-clay': 'Sandy clay',
    'silty-clay': 'Silty clay',
    clay: 'Clay',
  },
  'water.around': { ground: 'Bare or paved', gravel: 'Gravel strip' },
  'water.swale': yesNo,
  'life.wide': yesNo,
  'life.decayZone': { '1': '1, low', '2': '2', '3': '3', '4': '4', '5': '5, severe' },
  'life.climate': { seattle: 'Seattle, 2012 to 2015' },
  'life.reference': {
    rows: 'All rows that fit',
    own: 'My own years',
    'common-practice-ten-years': 'Rule of thumb, wet soil',
    'stakes-panama': 'Bare pine stakes, Panama',
    'stakes-gulf': 'Bare pine stakes, Gulf states',
    'stakes-wisconsin': 'Bare pine stakes, Wisconsin',
    'posts-mississippi-untreated': 'Bare pine posts, Mississippi',
    'posts-oregon-fir': 'Bare fir posts, Oregon',
    'posts-oregon-osage': 'Osage-orange posts, Oregon',
    'posts-southwest-oak': 'Oak posts, Arizona and New Mexico',
    'posts-aca-50': 'ACA posts, Mississippi',
    'posts-creosote-50': 'Creosote posts, Mississippi',
    'posts-creosote-low': 'Creosote posts, little in them',
    'posts-penta-60': 'Penta posts',
    'posts-copper-naphthenate': 'Copper naphthenate posts',
    'lumber-copper-naphthenate': 'Copper naphthenate lumber',
    'posts-aca-low': 'ACA posts, little in them',
    'posts-mississippi-oil': 'Oil-treated posts, Mississippi',
  },

  'callout.barSize': barSize,
  'callout.section': postSection,
  'callout.treatment': useClass,
  'callout.soil': soilClass,
}
