import { force, freeText, group, length, oneOf, part, strength } from '../../fields/makers.ts'
import { postSectionIds, useClassIds } from './post.ts'
import { presumptiveClasses } from './site.ts'
import { barSizes } from './steel.ts'

const answer = (link: string) => oneOf(['yes', 'no'], { link, silent: null })

/**
 * What a permit drawing says of one pier, in the order in which a pier is built; null where the drawing, as entered, does not say. Nothing is
 * allowed below a figure unless the drawing allows it: common practice, no source.
 */
export const calloutFields = part(
  {
    diameter: length({ from: '4 in', to: '96 in', link: 'qd', silent: null }),
    /** Of the bearing surface below grade on the downhill side. */
    depth: length({ from: '6 in', to: '240 in', link: 'qh', silent: null }),
    /** Of the concrete at 28 days. */
    strength: strength({ from: '500 psi', to: '10000 psi', link: 'qs', silent: null }),
    /** Must it be mixed before it is placed? */
    mixed: answer('qm'),
    /** Must concrete reach from the bottom of the fill up to grade? */
    encasement: answer('qe'),
    /** Must a bar go through the post? */
    barThrough: answer('qb'),
    barSize: oneOf(barSizes, { link: 'qz', silent: null }),
    section: oneOf(postSectionIds, { link: 'qp', silent: null }),
    treatment: oneOf(useClassIds, { link: 'qt', silent: null }),
    /** May the post stand on a bracket? */
    bracket: answer('qk'),
    /** Design uplift of one post, allowable stress. */
    uplift: force({ from: '1 lb', to: '40000 lb', link: 'qu', silent: null }),
    frostDepth: length({ from: '0 in', to: '96 in', link: 'qf', silent: null }),
    soil: oneOf(presumptiveClasses, { link: 'qc', silent: null }),
    /** How far the pier may fall short of the drawing and still meet it. */
    tolerance: group(
      {
        diameter: length({ from: '0 in', to: '6 in', step: '0.25 in', link: 'qi', silent: '0 in' }),
        depth: length({ from: '0 in', to: '12 in', step: '0.5 in', link: 'qj', silent: '0 in' }),
      },
      { leftOut: 'start' },
    ),
    number: freeText(80),
    date: freeText(40),
    notes: freeText(4000),
  },
  { group: 'drawing', given: 'drawing', link: 'qq' },
)
