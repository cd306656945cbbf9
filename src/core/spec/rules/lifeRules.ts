import { customary, factorNames } from '../lifeFields.ts'
import { error, exceeds, fallsShort, type Rule, when } from './rule.ts'

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
