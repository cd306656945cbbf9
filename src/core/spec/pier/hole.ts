import { group, length, oneOf, part } from '../../fields/makers.ts'

/** The hole from the ground up: shaft, then its optional bell, wider mouth and base. */
export const holeFields = group(
  {
    diameter: length({ from: '8 in', to: '48 in', link: 'hd', silent: '20 in' }),
    depth: length({ from: '12 in', to: '120 in', link: 'hh', silent: '48 in' }),
    /** Straight-sided widening at the bottom. */
    bell: part(
      {
        diameter: length({ from: '9 in', to: '72 in', link: 'bd', silent: '30 in' }),
        height: length({ from: '2 in', to: '60 in', link: 'bh', silent: '10 in' }),
      },
      { link: 'hb' },
    ),
    /** Mouth wider than the shaft: `diameter` at grade on the axis, narrowing to the shaft over `depth`. */
    flare: part(
      {
        diameter: length({ from: '9 in', to: '72 in', link: 'fd', silent: '24 in' }),
        depth: length({ from: '2 in', to: '96 in', link: 'fh', silent: '8 in' }),
      },
      { link: 'hf' },
    ),
    base: part(
      {
        /** Loose soil is nothing to build: it is what was left in the hole. */
        material: oneOf(['gravel', 'concrete', 'loose-soil'], { link: 'gm', silent: 'gravel' }),
        thickness: length({ from: '1 in', to: '36 in', link: 'gt', silent: '4 in' }),
      },
      { link: 'hg' },
    ),
  },
  { group: 'hole' },
)
