import { dryPourOf } from '../../state/dryPourDerived.ts'
import { goneBy } from '../../state/goneBy.ts'
import { moistureOf } from '../../state/moistureDerived.ts'
import { offerWater } from './useWater.ts'
import { drawWet } from './wetInk.ts'

export const waterAndYears = { drawWet, dryPourOf, goneBy, moistureOf } as const

offerWater(waterAndYears)
