import { type Metres, metres } from '../../units/quantity.ts'
import { splashHeight } from '../tables/lotDrainage.ts'

type Inputs = Readonly<{ around: 'ground' | 'gravel'; groundAtPost: Metres }>
export type SplashBand = Readonly<{ from: Metres; to: Metres; inHeavyRain: Metres }>

/**
 * Length of wood above the ground that splashes reach.
 * @param around bare or paved ground, or gravel and a drained strip [1]
 * @param groundAtPost height of what the rain falls on beside the post [m], signed
 * @returns from and to, and what a heavy rain is said to reach [m], signed
 * Formula: 300 mm over ground, 150 mm over gravel; 500 mm said of heavy rain
 * Valid: rain that falls free. Outside: below an eave without a gutter it goes higher.
 * Source: timber-splash-guide, common-practice
 * Checked by: tests/core/engineering/moisture/topDrainage.test.ts
 */
export function splashBand({ around, groundAtPost }: Inputs): SplashBand {
  return {
    from: groundAtPost,
    to: metres(groundAtPost + splashHeight[around].value),
    inHeavyRain: metres(groundAtPost + splashHeight.heavyRain.value),
  }
}
