import type { InputId } from '../../core/uncertainty/inputs.ts'
import type { SpreadKind, SpreadProblem } from '../../core/uncertainty/distributions.ts'
import type { InThousand } from '../../core/uncertainty/summary.ts'

type Words = Readonly<{ label: string; plain: string; why: string }>

/** Words of the study of ranges: how far the uplift moves when its inputs come out a little different. */
export const sure = {
  notChance:
    'This is not a probability of failure. It shows how far the number moves when the inputs are off by the ranges below. All of those ranges are assumed. None was measured on your site.',

  lead: (low: string, high: string): string => `900 in 1,000 tries hold ${low}–${high}.`,
  leadSome: (low: string, high: string): string => `Of the tries that have a number, 900 in 1,000 hold ${low}–${high}.`,
  noneHold: 'No try has a number. With these ranges the pier can’t be built, or a link can’t be counted.',
  asEntered: 'As entered',
  middle: 'Middle try',
  tryMeans: (samples: string): string => `A try is this pier built once more, each input a little off. There are ${samples} tries.`,
  below: (count: string, load: string): string => `${count} hold less than the load of ${load}.`,
  noneIsNotNever: 'None is not never. The tries know only the ranges below.',
  noLoad: 'No uplift load is entered, so there is nothing to hold the tries against.',
  without: (count: string): string => `${count} have no number.`,
  withoutLink: (link: string): string => `${link} could not be counted`,
  notPossible: 'Could not be built as drawn',

  chart: {
    name: 'Allowable uplift of all tries',
    spoken: (low: string, middle: string, high: string): string =>
      `Dots heaped over the allowable uplift. 50 in 1,000 lie below ${low}, half below ${middle}, 950 in 1,000 below ${high}.`,
    dots: (each: string): string => `One dot stands for ${each} tries. There are 100 dots.`,
    shortDots: 'A triangle is a dot below the load.',
    hollow: 'A ring is a dot without a number.',
    load: 'load',
    entered: 'as entered',
    beyond: (load: string): string => `load ${load}, off the chart`,
    table: 'The same as a table',
    share: 'Tries that hold less',
    holds: 'Allowable uplift',
  },

  links: {
    title: 'Which link set the number',
    plain: 'In each try the weakest link that counts sets the number. Each row shows 100 boxes, and one box stands for 10 in 1,000.',
    spoken: (count: number): string => `${count} of 100 boxes`,
  },

  swings: {
    title: 'What moves the number most',
    plain:
      'One input goes low, then high, while all others stay as entered. 100 in 1,000 draws are lower than the low value and 100 are higher than the high one.',
    still: (list: string): string => `These hardly move it now, or not at all: ${list}.`,
    none: 'No number',
    spoken: (low: string, high: string): string => `from ${low} to ${high}`,
    columns: { input: 'Input', low: 'Low value', high: 'High value', atLow: 'Holds at low', atHigh: 'Holds at high' },
  },

  ranges: {
    title: 'Ranges, all assumed',
    plain: 'Change any of them. Each try draws every input by itself. One draw holds for both soils.',
    asEntered: (figure: string): string => `As entered: ${figure}.`,
    draws: (low: string, high: string): string => `${low}–${high}`,
    fixed: 'stays as entered',
    vary: (label: string): string => `${label} varies`,
    edit: (label: string): string => `Change the range of ${label.toLowerCase()}`,
    fold: (label: string): string => `Close the range of ${label.toLowerCase()}`,
    change: 'Change',
    close: 'Close',
    shape: 'Shape',
    added: 'Amounts are added to the figure.',
    times: 'Shares are of the figure.',
    restore: 'Put all ranges back',
    why: 'Why this range:',
  },

  run: {
    tries: 'Tries',
    seed: 'Seed',
    seedHelp: 'The same seed draws the same tries again.',
    again: 'Run again',
    stop: 'Stop',
    nextSeed: 'Next seed',
    progress: (done: string, of: string): string => `${done} of ${of} tries`,
    stopped: 'Stopped. What you see is the last answer.',
    stoppedEmpty: 'Stopped. There is no answer yet.',
    failed: 'The tries broke off. Run them again.',
    stale: 'Something has changed. What you see is the last answer.',
    badSeed: 'A seed is a whole number from 0 to 4,294,967,295.',
  },

  unverified: {
    title: 'No range can be given',
    plain: 'A link of this pier can’t be verified. A range would look as if it could.',
  },

  shapes: {
    normal: 'Hump',
    lognormal: 'Hump, longer on the high side',
    triangular: 'Triangle',
    uniform: 'Flat',
  } satisfies Record<SpreadKind, string>,

  figures: {
    middle: 'Middle',
    sd: 'Spread from the middle',
    cov: 'Spread from the middle',
    low: 'Least',
    peak: 'Most likely',
    high: 'Most',
  },

  problems: {
    'not-a-number': 'One of the figures is not a number.',
    'ends-out-of-order': 'Least has to be less than most.',
    'peak-outside-ends': 'Most likely has to lie between least and most.',
    'no-width': 'The spread has to be more than zero.',
    'not-above-zero': 'Middle and least have to be more than zero.',
    'all-cut-off': 'Nothing of the hump is left between least and most.',
  } satisfies Record<SpreadProblem, string>,

  inputs: {
    'friction-angle': {
      label: 'Friction angle of the soil',
      plain: 'How steep the soil can stand by its own friction.',
      why: 'The angle comes from a table or a guess, and soil changes from hole to hole.',
    },
    'clay-strength': {
      label: 'Strength of the clay',
      plain: 'Its strength in shear, as you entered it.',
      why: 'Clay changes much from place to place and with its water.',
    },
    'user-friction': {
      label: 'Side friction you entered',
      plain: 'The allowable friction that you answer for.',
      why: 'A test in one hole is not the soil of the next.',
    },
    'blow-count': {
      label: 'Blow count',
      plain: 'Blows that the sampler needed in the boring.',
      why: 'Rigs, crews and soil make counts jump.',
    },
    'soil-weight': {
      label: 'Weight of the soil',
      plain: 'Weight of one cubic foot or metre of it.',
      why: 'Packing and moisture change it by a few parts in 100.',
    },
    'water-table': {
      label: 'Depth to water',
      plain: 'From the ground down to standing water.',
      why: 'Water rises and falls with the season by a foot or so.',
    },
    'hole-diameter': {
      label: 'Hole diameter as drilled',
      plain: 'What the auger really leaves.',
      why: 'Augers wear a little small, and holes ream a little large.',
    },
    'bell-diameter': {
      label: 'Bell diameter as cut',
      plain: 'How wide the foot really is.',
      why: 'A bell is cut by feel and more often too small.',
    },
    'hole-depth': {
      label: 'Hole depth as dug',
      plain: 'From the ground down to the cleaned bottom.',
      why: 'Loose soil in the bottom takes depth away, and few holes are dug to the inch.',
    },
    'fill-height': {
      label: 'Height of the concrete',
      plain: 'How high the collar was poured.',
      why: 'The pour stops by eye.',
    },
    'bar-height': {
      label: 'Bar height above the foot',
      plain: 'From the end of the post up to the lowest bar.',
      why: 'The hole for the bar is drilled on site, by tape.',
    },
    'bar-off-middle': {
      label: 'Bar off its middle',
      plain: 'How far the bar sticks out more on one side than on the other.',
      why: 'The bar is driven by eye. Its short side sets what it holds.',
    },
    'bracket-embedment': {
      label: 'Bracket depth in the concrete',
      plain: 'How deep its steel really stands.',
      why: 'A bracket in wet concrete floats or sinks a little.',
    },
    'concrete-strength': {
      label: 'Strength of the concrete',
      plain: 'What it reaches in the hole.',
      why: 'Site mixing, added water and curing move it both ways.',
    },
    'concrete-weight': {
      label: 'Weight of the concrete',
      plain: 'Weight of one cubic foot or metre of it.',
      why: 'Stone and air content differ between plants and bags.',
    },
    'wood-gravity': {
      label: 'Density of the wood',
      plain: 'Specific gravity. Dense wood holds a bar better and weighs more.',
      why: 'Boards of one species differ by about a tenth.',
    },
  } satisfies Record<InputId, Words>,

  inThousand: ({ kind, count }: InThousand, samples: string): string =>
    ({
      none: `None of ${samples} tries`,
      'under-one': 'Fewer than 1 in 1,000 tries',
      count: `${count} in 1,000 tries`,
      'over-all-but-one': 'More than 999 in 1,000 tries',
      all: `All ${samples} tries`,
    })[kind],
}
