import { angle, force, group, length, oneOf, part, pressure, ratio, windSpeed } from '../../fields/makers.ts'

/** Lengths of buildings are told in feet or in metres. */
const told = { step: ['0.5 ft', '0.1 m'], unit: { us: 'ft', metric: 'm' } } as const

/**
 * Allowable-stress loads at the top of the pier, from the drawing. Each starts empty, which means that it is not asked: no figure is held
 * against the pier that nobody gave. What a silent link means were invented starts once, and are kept so that released links open alike.
 */
const entered = part(
  {
    uplift: force({ from: '0 lb', to: '40000 lb', link: 'lu', silent: '800 lb', start: null }),
    gravity: force({ from: '0 lb', to: '100000 lb', link: 'ld', silent: '4000 lb', start: null }),
    lateral: force({ from: '0 lb', to: '20000 lb', link: 'lt', silent: '400 lb', start: null }),
    /** Of the lateral load above grade. */
    lateralHeight: length({ ...told, from: '0 ft', to: '40 ft', link: 'lh', silent: '96 in', start: null }),
  },
  { given: 'drawing', link: 'le' },
)

/** What the loads at one post are estimated from. Wind and snow by the edition chosen; always shown as an estimate. An invented open shed of 24 ft span. */
const estimate = part(
  {
    roof: oneOf(['free-monoslope', 'free-pitched', 'free-troughed', 'enclosed', 'partially-enclosed'], {
      link: 'er',
      silent: 'free-pitched',
    }),
    flow: oneOf(['clear', 'obstructed'], { when: 'free roof', link: 'ef', silent: 'clear' }),
    /** Between the two post lines, and between posts along a line. */
    span: length({ ...told, from: '6 ft', to: '100 ft', link: 'es', silent: '288 in' }),
    bay: length({ ...told, from: '4 ft', to: '30 ft', link: 'eb', silent: '144 in' }),
    overhang: length({ ...told, from: '0 ft', to: '6 ft', link: 'eo', silent: '0 in' }),
    roofAngle: angle({ from: '0 deg', to: '45 deg', link: 'ea', silent: '18.43 deg' }),
    /** Mean roof height; eave height for an enclosed roof of 10 degrees or less. */
    roofHeight: length({ ...told, from: '6 ft', to: '30 ft', link: 'eh', silent: '144 in' }),
    edition: oneOf(['7-16', '7-22'], { link: 'ed', silent: '7-16' }),
    /** Basic wind speed V, strength level. */
    speed: windSpeed({ from: '60 mph', to: '220 mph', link: 'ev', silent: '115 mph' }),
    exposure: oneOf(['B', 'C', 'D'], { link: 'ex', silent: 'C' }),
    /** Of the site above sea level. */
    elevation: length({ ...told, from: '0 ft', to: '12000 ft', step: ['100 ft', '50 m'], link: 'el', silent: '0 in' }),
    topographic: ratio({ from: '1', to: '3', step: '0.05', unit: { us: '1', metric: '1' }, link: 'et', silent: '100 %' }),
    deadLoad: pressure({ from: '0 psf', to: '50 psf', link: 'em', silent: '5 psf' }),
    roofLive: pressure({ from: '0 psf', to: '30 psf', link: 'ei', silent: '20 psf' }),
    groundSnow: pressure({ from: '0 psf', to: '150 psf', link: 'ew', silent: '30 psf' }),
  },
  { link: 'ee' },
)

/** What pulls, presses and pushes. Loads from the drawing go before an estimate; with neither, nothing is held against the resistances. */
export const loadFields = group({ entered, estimate }, { group: 'loads' })
