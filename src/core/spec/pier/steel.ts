import { count, length, oneOf, part } from '../../fields/makers.ts'

export const barSizes = ['#3', '#4', '#5', '#6', '#7', '#8'] as const
export const barGradeIds = ['unknown', '40', '60'] as const
export const barCoatings = ['plain', 'galvanised', 'epoxy', 'stainless'] as const

/** Bars through the post; only with an embedded post. */
export const throughBarFields = part(
  {
    size: oneOf(barSizes, { link: 'ts', silent: '#5' }),
    count: count({ from: 1, to: 4, link: 'tn', silent: 1 }),
    /** Centre of the lowest bar above the post's foot. */
    aboveFoot: length({ from: '0.5 in', to: '96 in', step: '0.5 in', link: 'tf', silent: '5.5 in' }),
    /** Centre to centre, up the post; matters from two bars on. */
    spacing: length({
      from: '0.5 in',
      to: '36 in',
      step: '0.5 in',
      when: 'several bars',
      leftOut: 'unless shown',
      link: 'tp',
      silent: '4 in',
    }),
    length: length({ from: '3 in', to: '72 in', link: 'tl', silent: '14 in' }),
    grade: oneOf(barGradeIds, { link: 'tg', silent: '60' }),
    coating: oneOf(barCoatings, { link: 'tc', silent: 'galvanised' }),
  },
  { group: 'steel', when: 'post in the hole', link: 'tb', silent: 1 },
)

export const verticalBarFields = part(
  {
    size: oneOf(barSizes, { link: 'vs', silent: '#4' }),
    count: count({ from: 3, to: 12, link: 'vn', silent: 4 }),
    cover: length({ from: '1 in', to: '12 in', step: '0.5 in', link: 'vo', silent: '3 in' }),
    grade: oneOf(barGradeIds, { link: 'vg', silent: '60' }),
    coating: oneOf(barCoatings, { link: 'vc', silent: 'plain' }),
  },
  { group: 'steel', when: 'mix round the post', link: 'vb' },
)
