import type { ChangeId } from '../../core/model/saidIds.ts'
import type { LettingGoHow } from '../../core/derive/lettingGo.ts'

/** How a link would let go, in one or two plain sentences. */
const lettingGo: Readonly<Record<LettingGoHow, string>> = {
  'post-pulls-apart': 'The post would part at the hole for the highest bar or bolt. The lower end stays in place.',
  'post-end-tears': 'The bar or bolt would tear out of the end of the post, along the grain. The bar stays where it is.',
  'wood-bears': 'The bar or bolt would crush its way down through the wood. The post rises and the steel stays.',
  'concrete-bears': 'The bar would crush the concrete that it bears on. The post rises out of the pier.',
  'plate-bears': 'The bolt would crush the edge of its hole in the steel plate. The post rises.',
  'bar-bends': 'The bar would bend in the post and crush the wood round it. The post rises and the pier stays in the ground.',
  'bolts-bend': 'The bolts would bend and crush the wood round them. The post rises and the bracket stays.',
  'bar-shears': 'The bar would be cut at both faces of the post. The middle piece goes up with the post.',
  'bracket-gives': 'The bracket would give way, in steel or in bolts. Its report says no more here.',
  'legs-pull-out': 'The legs of the bracket would pull out of the concrete. Post and bracket go up, and the pier stays in the ground.',
  'concrete-cone': 'A cone of concrete would break out of the top of the pier, with the steel in it. The rest stays in the ground.',
  'pier-parts': 'The pier would part just under the pull. Its upper piece goes up with the post and the rest stays in the ground.',
  'pier-slides': 'The whole pier would slide up out of the ground. The soil round it stays.',
  'pier-heaves-soil':
    'The pier would come up, and its wide foot can not pass the soil. The soil right over the foot has to heave up with it. The number counts side grip and weight alone.',
  'pier-lifts-cone': 'The pier would come up with a cone of soil over its wide foot.',
  'piers-lift-block': 'The piers would come up together, with the ground between them.',
  'base-breaks-out': 'The wide foot would break out, and heave up the ground over it.',
}

/** Changes that are tried on a pier, by their id. */
const tries = {
  'next-auger': 'One auger size up',
  'six-inches-deeper': '6 in deeper',
  'next-bar': 'Next bar size',
  'another-bar': 'One more bar',
  'add-bell': 'A bell at the bottom',
  'add-vertical-bars': 'Upright bars',
  'next-post': 'Next post size',
  'another-bolt': 'One more bolt',
} as const satisfies Readonly<Record<ChangeId, string>>

/** Words of the load path: the chart of links, the ways to count the ground, the pull to look at, the changes to try. */
export const loadPath = {
  title: 'Load path',
  help: 'The weakest link that counts sets the answer.',
  chart: 'Links of the load path, from the post down',
  /** What is asked for, over its line in the chart. */
  demand: { entered: 'Asked', estimated: 'Estimate' },
  pull: 'Pull',
  noDemand: 'No uplift is entered yet.',
  noNetUplift: 'Dead load wins over the wind here: no uplift is left.',
  enterLoads: 'Enter loads',
  ratio: (share: string): string => `${share} of what it holds`,
  times: (times: string): string => `${times} times what it holds`,
  estimateNote: 'This rests on an estimate of the wind. The drawing goes before it.',
  unverifiedHelp: 'This load path has no number. That is not zero, and it is not a failure.',
  verifiable: 'What would make it verifiable',
  spare: 'Not used',
  inUse: 'Used',
  byJudgement: 'Used, for a reason you typed',
  noMoreThan: (load: string): string => `No more than ${load}. Never counted.`,
  beyond: 'goes on past the chart',
  pad: {
    work: 'The work',
    where: 'where',
    least: 'least, so it governs',
    notCountedNote: 'Worked out to look at. These numbers may not be counted.',
    sources: 'Sources',
    writtenFor: 'This formula is written for US units.',
    noWork: 'Nothing to work out.',
  },
  neverTwice: 'Weight is taken at 0.6 of its value. The same soil is never counted twice, and no term carries two factors.',
  noSeismic: 'Earthquake is not covered.',

  demandPart: {
    title: 'Where the uplift comes from',
    help: 'Every wind case is tried at both posts of a frame. The one that pulls most governs.',
    standing: 'A first look from the roof and the wind. It never replaces the drawing.',
    windCase: 'Wind',
    up: 'Uplift',
    none: 'none left',
    work: 'How the uplift was worked out',
  },

  soil: {
    title: 'Another way to count the ground',
    help: 'The least is used. A larger one needs a reason, and somebody who answers for it.',
    only: 'Only one way can be worked out here.',
    ways: 'Ways to count the ground',
    least: 'the least',
    reason: 'Why may this one be used?',
    reasonHelp: 'Say what you know of this ground, and who decided. Ten characters or more.',
    use: 'Use it',
    cancel: 'Cancel',
    back: 'Go back to the least',
    given: 'Reason',
    stays: 'The reason stays in the file, not in the link.',
    idle: 'The way that was chosen gives no number here, so the least is used.',
  },

  changes: {
    title: 'What changes the number most',
    help: 'Each is tried alone on this pier, and the gains do not add up. It is a comparison, not advice.',
    working: 'Working it out',
    later: 'Worked out when you let go.',
    tryIt: 'Try it',
    tryThis: (change: string): string => `Try it: ${change}`,
    gain: (load: string): string => `+${load}`,
    loss: (load: string): string => `−${load}`,
    none: 'no change',
    governs: (link: string): string => `then governs: ${link}`,
    little: 'Next to no change:',
    ask: 'Better soil data',
    askHow: 'Ask the engineer. A boring or a soil report may give more than the table, or less.',
    askMark: 'Ask',
    nothing: "There is nothing to compare while a link can't be verified.",
    tried: (change: string): string => `Tried: ${change}. Undo takes it back.`,
  },

  raise: {
    title: 'Raise the uplift',
    help: 'Pull on the post and watch each link fill.',
    slider: 'Pull on the post',
    play: 'Let it run',
    pause: 'Pause',
    end: 'Go to the end',
    off: 'Stop pulling',
    none: "No pull can be shown at which it lets go: a link can't be verified.",
    holds: (pull: string, link: string): string => `At ${pull} every link holds. First to fill: ${link}.`,
    letsGo: (pull: string, link: string): string => `At ${pull} this link is full: ${link}.`,
    illustrative:
      'Illustrative. The number is the allowable one, with its factors taken off. Nobody knows at what pull this pier would really let go.',
  },

  lettingGo,
  tries,
} as const
