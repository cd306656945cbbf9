import { angle, count, either, fall, gradient, group, kindOf, length, oneOf, part, pressure, unitWeightField } from '../../fields/makers.ts'

export const presumptiveClasses = ['crystalline-rock', 'foliated-rock', 'gravel', 'sand', 'clay'] as const

/** Own values that a soil starts from and a silent link means. */
type SilentSoil = Readonly<{ class: (typeof presumptiveClasses)[number]; unitWeight: string; bearing: string; lateral: string }>

/** One soil: a class with values that the building code presumes, or values that the user answers for. `link`: the keys' first letter. */
const soil = <const L extends string>(link: L, silent: SilentSoil) =>
  either(
    [
      kindOf('presumptive', { class: oneOf(presumptiveClasses, { link: `${link}c`, silent: silent.class }) }),
      kindOf('user', {
        /** Moist. */
        unitWeight: unitWeightField({ from: '60 pcf', to: '180 pcf', link: `${link}g`, silent: silent.unitWeight }),
        frictionAngle: angle({ from: '0 deg', to: '50 deg', link: `${link}a`, silent: '30 deg' }),
        /** Undrained shear strength for clay; 0 for sand. */
        cohesion: pressure({ from: '0 psf', to: '10000 psf', step: ['50 psf', '1 kPa'], link: `${link}o`, silent: '0 psf' }),
        allowableBearing: pressure({
          from: '100 psf',
          to: '40000 psf',
          step: ['100 psf', '5 kPa'],
          link: `${link}b`,
          silent: silent.bearing,
        }),
        /** Allowable lateral bearing per depth. */
        lateral: gradient({ from: '0 psf/ft', to: '2400 psf/ft', link: `${link}p`, silent: silent.lateral }),
        /** Allowable side friction the user answers for; 0 when none. */
        sideFriction: pressure({
          from: '0 psf',
          to: '5000 psf',
          step: ['10 psf', '1 kPa'],
          link: `${link}${link === 's' ? 'f' : 's'}`,
          silent: '0 psf',
        }),
      }),
    ],
    { link: `${link}k`, silent: 'presumptive' },
  )

/** Ground, slope, water and frost. Bounds here and in the files beside are those of the tool, set here; no source. */
export const siteFields = group(
  {
    soil: soil('s', { class: 'sand', unitWeight: '119 pcf', bearing: '2000 psf', lateral: '150 psf/ft' }),
    /** A second native layer below `from`, measured straight down from grade, parallel to it. */
    lower: part(
      {
        from: length({ from: '6 in', to: '144 in', link: 'lf', silent: '36 in' }),
        soil: soil('l', { class: 'clay', unitWeight: '109 pcf', bearing: '1500 psf', lateral: '100 psf/ft' }),
      },
      { link: 'sl' },
    ),
    /** Thickness, 0 for none. Carries no load in any check. */
    topsoil: length({ from: '0 in', to: '36 in', after: 'site.soil.sideFriction', link: 'st', silent: '6 in' }),
    slope: fall({ from: '0 %', to: '50 %', link: 'ss', silent: '8 %' }),
    /** Plan angle that points downhill, from +x toward +z (clockwise seen from above). */
    downhill: angle({ from: '0 deg', to: '360 deg', step: '15 deg', link: 'sd', silent: '0 deg' }),
    /** Depth of a level water table below grade at the axis; null for none met. */
    waterTable: length({ from: '0 in', to: '240 in', link: 'sw', silent: null }),
    frostDepth: length({ from: '0 in', to: '96 in', link: 'sr', silent: '42 in' }),
    /** Blow count N60 of a boring over the shaft; null when none was made. */
    blows: count({ from: 1, to: 100, link: 'sn', silent: null }),
    /** Height from the pier's grade down to the toe of the slope; null when not known or level. */
    slopeHeight: length({ from: '12 in', to: '1200 in', step: '12 in', when: 'slope', link: 'sh', silent: null }),
    weathering: oneOf(['negligible', 'moderate', 'severe'], { leftOut: 'start', link: 'sx', silent: 'severe' }),
  },
  { group: 'site' },
)

/** How the ground is counted sideways. */
export const sidewaysFields = group(
  {
    /** Twice the tabulated value, for an isolated pole that may move half an inch at grade under a short load. */
    ground: oneOf(['as-tabulated', 'doubled'], { leftOut: 'start', link: 'wg', silent: 'as-tabulated' }),
    top: oneOf(['free', 'held-at-grade'], { leftOut: 'start', link: 'wt', silent: 'free' }),
  },
  { group: 'site' },
)
