import { type Metres, type Newtons, type Pascals, newtons } from '../../units/quantity.ts'
import { showing } from '../showing.ts'

type Inputs = Readonly<{ span: Metres; bay: Metres; overhang: Metres; windward: Pascals; leeward: Pascals }>

/**
 * Uplift at the two posts under one frame, by statics.
 * @param span between post lines [m], positive
 * @param bay spacing of frames that the post carries [m]
 * @param overhang of the roof past each post line, on plan [m], non-negative
 * @param windward uplift on the windward half, on plan [Pa], up positive
 * @param leeward uplift on the leeward half, on plan [Pa], up positive
 * @returns uplift at the windward and at the leeward post [N], up positive
 * Formula: R_lee = s (L/2 + a)[pL (3L/4 + a/2) + pW (L/4 - a/2)]/L, R_wind the other way round; a = 0: s L (3 pL + pW)/8
 * Valid: a truss or rafter pair on two post lines, no moment at the posts. Outside: other frames need their own statics.
 * Source: statics
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function roofReactions({ span, bay, overhang, windward, leeward }: Inputs): Readonly<{ windward: Newtons; leeward: Newtons }> {
  const half = bay * (span / 2 + overhang)
  const far = (0.75 * span + overhang / 2) / span
  const near = (0.25 * span - overhang / 2) / span
  return { windward: newtons(half * (windward * far + leeward * near)), leeward: newtons(half * (leeward * far + windward * near)) }
}

/** Uplift at the leeward post by statics, with its work shown. */
export const workedLeewardReaction = showing({
  id: 'leeward-reaction',
  quantity: 'force',
  formula: String.raw`R = \frac{s(L/2+a)}{L}\left[p_L\left(\tfrac{3L}{4}+\tfrac{a}{2}\right) + p_W\left(\tfrac{L}{4}-\tfrac{a}{2}\right)\right]`,
  terms: {
    bay: ['s', 'length'],
    span: ['L', 'length'],
    overhang: ['a', 'length'],
    leeward: ['p_L', 'pressure'],
    windward: ['p_W', 'pressure'],
  },
  sources: ['statics'],
  of: (inputs: Inputs) => roofReactions(inputs).leeward,
})

/** Uplift at the windward post by statics, with its work shown. */
export const workedWindwardReaction = showing({
  id: 'windward-reaction',
  quantity: 'force',
  formula: String.raw`R = \frac{s(L/2+a)}{L}\left[p_W\left(\tfrac{3L}{4}+\tfrac{a}{2}\right) + p_L\left(\tfrac{L}{4}-\tfrac{a}{2}\right)\right]`,
  terms: {
    bay: ['s', 'length'],
    span: ['L', 'length'],
    overhang: ['a', 'length'],
    windward: ['p_W', 'pressure'],
    leeward: ['p_L', 'pressure'],
  },
  sources: ['statics'],
  of: (inputs: Inputs) => roofReactions(inputs).windward,
})

type TributaryInputs = Readonly<{ span: Metres; bay: Metres; overhang: Metres; pressure: Pascals }>

/**
 * Load at a post by tributary area: half the span and one bay.
 * @param span between post lines [m]
 * @param bay spacing that the post carries [m]
 * @param overhang of the roof past the post line, on plan [m]
 * @param pressure on plan [Pa]
 * @returns load [N]
 * Formula: R = p s (L/2 + a)
 * Valid: even pressure. Outside: uneven halves go by statics; this form puts too much on one post and too little on the other.
 * Source: statics
 * Checked by: tests/external/asce-7-16-27-3/check.test.ts
 */
export function tributaryLoad({ span, bay, overhang, pressure }: TributaryInputs): Newtons {
  return newtons(pressure * bay * (span / 2 + overhang))
}

/** Load by tributary area, with its work shown. */
export const workedTributaryLoad = showing({
  id: 'tributary-load',
  quantity: 'force',
  formula: 'R = p\\,s\\,(L/2 + a)',
  terms: { pressure: ['p', 'pressure'], bay: ['s', 'length'], span: ['L', 'length'], overhang: ['a', 'length'] },
  sources: ['statics'],
  of: tributaryLoad,
})
