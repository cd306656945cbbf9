import { factorBounds } from '../../engineering/life/factorMethod.ts'
import { lifeFields } from '../pier/life.ts'
import { error, exceeds, fallsShort, type Rule, when } from './rule.ts'

const { factors } = lifeFields.fields
const factorNames = Object.keys(factors.fields) as (keyof typeof factors.fields)[]
/** Customary bounds of a factor, beyond which the user must ask to go. */
const customary = { low: factorBounds.low.value, high: factorBounds.high.value } as const

/** Factors beyond their customary bounds must be asked for; two own years stand in order. */
export const lifeRules: Rule = ({ life }) => [
  ...factorNames.flatMap((name) => {
    const got = life.factors[name]
    const limit = got > 1 ? customary.high : customary.low
    const isBeyond = life.wide === 'no' && (exceeds(got, customary.high) || fallsShort(got, customary.low))
    return when(isBeyond, () =>
      error('factor-beyond-custom', `life.factors.${name}`, { got, limit, quantity: 'ratio', sources: ['factor-bounds'] }),
    )
  }),
  ...when(life.reference === 'own' && life.own.low > life.own.high, () =>
    error('years-out-of-order', 'life.own.low', { got: life.own.low, limit: life.own.high, quantity: 'life' }),
  ),
]
