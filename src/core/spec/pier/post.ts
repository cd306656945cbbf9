import { angle, either, group, kindOf, length, oneOf } from '../../fields/makers.ts'
import { bracketKinds } from '../../kinds/index.ts'

export const postSectionIds = [
  '4x4',
  '4x6',
  '6x6',
  '6x8',
  '8x8',
  '3-ply-2x6',
  '4-ply-2x6',
  '3-ply-2x8',
  'round-6',
  'round-7',
  'round-8',
  'round-9',
  'round-10',
] as const
export const speciesIds = ['southern-pine', 'douglas-fir-larch', 'hem-fir', 'spruce-pine-fir', 'cedar'] as const
/** Weakest first: a later one may stand wherever an earlier one may. */
export const useClassIds = ['untreated', 'UC3B', 'UC4A', 'UC4B', 'UC4C'] as const

export const postFields = group(
  {
    section: oneOf(postSectionIds, { link: 'ps', silent: '6x6' }),
    species: oneOf(speciesIds, { link: 'pw', silent: 'southern-pine' }),
    treatment: oneOf(useClassIds, { link: 'pt', silent: 'UC4B' }),
    /** Above grade at the axis, while it stands plumb. */
    heightAboveGrade: length({ from: '2 in', to: '360 in', link: 'ph', silent: '120 in' }),
    /** Off plumb, with its top toward the downhill side; for a post that stands in the hole. */
    lean: angle({ from: '0 deg', to: '5 deg', step: '0.5 deg', when: 'post in the hole', leftOut: 'start', link: 'pl', silent: '0 deg' }),
  },
  { group: 'post' },
)

/** Where the post stands. It follows from the fill. */
export const supportFields = either(
  [
    kindOf('embedded', {
      /** Up from the hole's cleaned bottom. */
      foot: length({ from: '0 in', to: '96 in', step: '0.5 in', group: 'post', link: 'pf', silent: '6 in' }),
    }),
    kindOf('bracket', {
      bracket: either(bracketKinds, { link: 'bk', silent: 'side-plates', start: bracketKinds[0].id }),
      standOff: length({ from: '0 in', to: '12 in', step: '0.25 in', after: 'support.bracket.kind', link: 'bs', silent: '1 in' }),
    }),
  ],
  { group: 'steel' },
)
