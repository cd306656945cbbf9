import { wedgeReach } from '../../engineering/moisture/jointGap.ts'
import { soilWetnesses } from '../../engineering/moisture/soilWetness.ts'
import { type Texture, textures } from '../../engineering/tables/infiltration.ts'
import { fall, group, length, oneOf, rainfall, ratio, yesNo } from '../../fields/makers.ts'

/** What wets the wood: damp ground, and treated wood that was set wet. Chosen here, to be changed; no source. */
export const waterFields = group(
  {
    /** Of the ground above the water table, over the year. */
    ground: oneOf(soilWetnesses, { link: 'ma', silent: 'damp' }),
    texture: oneOf(Object.keys(textures) as Texture[], { link: 'mb', silent: null }),
    /** What lies on the ground beside the post. */
    around: oneOf(['ground', 'gravel'], { link: 'mc', silent: 'ground' }),
    /** Of finished ground away from the pier on every side; null where grade alone decides. */
    fall: fall({ from: '0 %', to: '25 %', link: 'md', silent: null }),
    /** A shallow ditch uphill that leads water round. */
    swale: yesNo({ link: 'me', silent: 'no' }),
    /** Steady, to hold the ground against. */
    rain: rainfall({ from: '0 in/h', to: '10 in/h', link: 'mf', silent: '1 in/h' }),
    /** Of the wood, water by mass of dry wood: when it was set, and what it dries to at the top of the concrete. */
    atSetting: ratio({ from: '6 %', to: '100 %', link: 'mg', silent: '30 %' }),
    inService: ratio({ from: '6 %', to: '60 %', link: 'mh', silent: '15 %' }),
    /** Depth to which the joint between wood and concrete opens. */
    jointReach: length({ from: '1 in', to: '60 in', start: wedgeReach.value, link: 'mi', silent: '12 in' }),
  },
  { group: 'water', leftOut: 'start' },
)
