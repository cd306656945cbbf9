import { bagSizes } from '../../engineering/tables/bags.ts'
import { count, degrees, dosage, group, length, oneOf, part, ratio, strength, unitWeightField, volume, yesNo } from '../../fields/makers.ts'

export const topFields = group(
  {
    shape: oneOf(['flat', 'crowned', 'dished'], { link: 'us', silent: 'crowned' }),
    /** Crown's rise, or dish's depth, at the middle of the post's widest face (at the bracket's landing for a bracket). */
    rise: length({ from: '0 in', to: '12 in', step: '0.25 in', when: 'shaped top', link: 'ur', silent: '1.5 in' }),
    /** Height of the level rim above grade at the uphill edge of the hole; negative when it ends below. */
    rim: length({ from: '-24 in', to: '24 in', step: '0.5 in', link: 'um', silent: '2 in' }),
    /** Soil or mulch heaped over the finished top, measured at the post. 0 for none. */
    heaped: length({ from: '0 in', to: '12 in', step: '0.5 in', link: 'uh', silent: '0 in' }),
  },
  { group: 'top', when: 'finished top', leftOut: 'unless shown' },
)

const core = (link: string) => strength({ from: '100 psi', to: '12000 psi', step: ['50 psi', '0.5 MPa'], link, silent: '3000 psi' })

export const concreteFields = group(
  {
    /** Specified, at 28 days. */
    strength: strength({
      from: '1000 psi',
      to: '10000 psi',
      when: 'concrete or dry mix',
      leftOut: 'unless shown',
      link: 'cs',
      silent: '3500 psi',
    }),
    unitWeight: oneOf(['plain', 'reinforced'], { when: 'concrete or dry mix', leftOut: 'unless shown', link: 'cu', silent: 'plain' }),
    bagSize: oneOf(bagSizes, { when: 'concrete or dry mix', leftOut: 'unless shown', link: 'cb', silent: 80 }),
    /** Extra to order, share of the net volume. */
    waste: ratio({ from: '0 %', to: '50 %', link: 'cw', silent: '10 %' }),
    /** Strengths of three cores taken from the mix as placed, corrected for their shape. */
    cores: part({ first: core('xa'), second: core('xb'), third: core('xc') }, { when: 'concrete or dry mix', link: 'cc' }),
  },
  { group: 'concrete' },
)

/** How the mix was placed, the water it gets and the weather it meets. Chosen here, to be typed over; no source. */
export const placingFields = group(
  {
    /** Water poured on a fill that is placed dry, one pier. */
    poured: volume({ from: '0 gal', to: '60 gal', unit: { us: 'gal', metric: 'L' }, when: 'watered', link: 'ja', silent: '2 gal' }),
    /** Of dry mix as it lies in the hole before it is wetted. */
    looseWeight: unitWeightField({ from: '90 pcf', to: '140 pcf', when: 'dry mix', link: 'jb', silent: '110 pcf' }),
    cement: oneOf(['I', 'III'], { when: 'concrete or dry mix', link: 'jc', silent: 'I' }),
    air: yesNo({ when: 'concrete or dry mix', link: 'jd', silent: 'no' }),
    /** Added at the site to concrete that came mixed, volume for volume. */
    addedWater: dosage({ from: '0 gal/yd3', to: '20 gal/yd3', when: 'concrete or dry mix', link: 'je', silent: '0 L/m3' }),
    /** Of the concrete over its first weeks. */
    temperature: degrees({ from: '14 degF', to: '113 degF', when: 'concrete or dry mix', link: 'jf', silent: '68 degF' }),
    /** Expected in its first days. */
    coldestAir: degrees({ from: '-40 degF', to: '113 degF', when: 'concrete or dry mix', link: 'jg', silent: '50 degF' }),
    groundFrozen: yesNo({ when: 'concrete or dry mix', link: 'jh', silent: 'no' }),
    /** Share of the 28-day strength whose day is asked for. */
    share: ratio({ from: '10 %', to: '100 %', step: '5 %', when: 'concrete or dry mix', link: 'ji', silent: '75 %' }),
    /** Which picture of a dry pour is drawn. */
    pattern: count({ from: 1, to: 999, when: 'dry mix', link: 'jj', silent: 1 }),
  },
  { group: 'concrete', leftOut: 'start' },
)
