import { type Metres, type Newtons, newtons, type Pascals } from '../../units/quantity.ts'
import { cited } from '../cited.ts'
import { showing } from '../showing.ts'

/** Piers closer than this many times their least width pull on the same ground, and the share of a block that they may count on. Source: ibc-1810-3-3-1-6. */
export const groupRule = {
  closerThan: cited(3, '1', 'ibc-1810-3-3-1-6', 'secondary'),
  share: cited(2 / 3, '1', 'ibc-1810-3-3-1-6', 'secondary'),
} as const

type WeightInputs = Readonly<{ pier: Newtons; stress: Pascals; spacing: Metres; diameter: Metres }>

/**
 * Weight of one pier and of its share of the ground inside a block of piers, down to their bottom.
 * @param pier what hangs on the post, lighter in water [N]
 * @param stress effective vertical stress at the bottom [Pa], non-negative
 * @param spacing centre to centre of the nearest two [m], at least the diameter
 * @param diameter of the hole [m], positive
 * @returns weight of the share of the block [N]
 * Formula: Wb = W + sigma [(s + D) D/2 - pi D^2/4], the share of a pair, which is less than that of a row
 * Valid: a pair or a row. Outside: inside a field of piers each has ground on all sides; an engineer looks at it.
 * Source: ibc-1810-3-3-1-6, computed-here
 * Checked by: tests/core/derive/pierGroup.test.ts
 */
export function blockWeight({ pier, stress, spacing, diameter }: WeightInputs): Newtons {
  return newtons(pier + stress * (((spacing + diameter) * diameter) / 2 - (Math.PI * diameter ** 2) / 4))
}

type ShearInputs = Readonly<{ ultimate: Newtons; spacing: Metres; diameter: Metres }>

/**
 * Ultimate shear on the faces of a block of piers, the share of one pier.
 * @param ultimate side friction of one pier [N]; the faces of the block hold as much on each unit of area
 * @param spacing centre to centre of the nearest two [m], at least the diameter
 * @param diameter of the hole [m], positive
 * @returns shear of the share [N]
 * Formula: Vb = R min(2 s, s + 2 D)/(pi D): the faces of a long row, or of a pair, whichever are less
 * Valid: a pair or a row. Outside: inside a field of piers there are no faces; an engineer looks at it.
 * Source: ibc-1810-3-3-1-6, computed-here
 * Checked by: tests/core/derive/pierGroup.test.ts
 */
export function blockShear({ ultimate, spacing, diameter }: ShearInputs): Newtons {
  return newtons((ultimate * Math.min(2 * spacing, spacing + 2 * diameter)) / (Math.PI * diameter))
}

type Inputs = Readonly<{ weight: Newtons; faces: Newtons; share: number }>

/**
 * Allowable uplift of one pier of a group, from its share of the block.
 * @param weight of the share, effective [N]
 * @param faces shear of the share, ultimate [N]
 * @param share of both that may be counted on [1]: two thirds
 * @returns allowable uplift [N]
 * Formula: T = (2/3) Wb + (2/3) Vb, or that of a pier alone if it is less
 * Valid: piers closer than 3 D. Outside: no other factor is taken off.
 * Source: ibc-1810-3-3-1-6
 * Checked by: tests/core/derive/pierGroup.test.ts
 */
export function blockUplift({ weight, faces, share }: Inputs): Newtons {
  return newtons(share * (weight + faces))
}

/** Weight of a share of a block, with its work shown. */
export const workedBlockWeight = showing({
  id: 'block-weight',
  quantity: 'weight',
  formula: String.raw`W_b = W + \sigma'_v\left(\tfrac{(s + D)\,D}{2} - \tfrac{\pi}{4} D^2\right)`,
  terms: {
    pier: ['W', 'weight'],
    stress: [String.raw`\sigma'_v`, 'pressure'],
    spacing: ['s', 'length'],
    diameter: ['D', 'length'],
  },
  sources: ['ibc-1810-3-3-1-6', 'computed-here'],
  of: blockWeight,
})

/** Shear of a share of a block, with its work shown. */
export const workedBlockShear = showing({
  id: 'block-shear',
  quantity: 'force',
  formula: String.raw`V_b = R_u\,\frac{\min(2 s,\ s + 2 D)}{\pi D}`,
  terms: { ultimate: ['R_u', 'force'], spacing: ['s', 'length'], diameter: ['D', 'length'] },
  sources: ['ibc-1810-3-3-1-6', 'computed-here'],
  of: blockShear,
})

/** Allowable uplift by a share of a block, with its work shown. */
export const workedBlockUplift = showing({
  id: 'block-uplift',
  quantity: 'force',
  formula: String.raw`T_a = r\,(W_b + V_b)`,
  terms: { share: ['r', 'ratio'], weight: ['W_b', 'weight'], faces: ['V_b', 'force'] },
  sources: ['ibc-1810-3-3-1-6'],
  of: blockUplift,
})

type MeetingInputs = Readonly<{ reach: Metres; radius: Metres; spread: number }>

/**
 * Depth at which the ground that two neighbours would lift begins to be the same ground.
 * @param reach half the distance to the nearest neighbour, centre to centre [m], positive
 * @param radius of what lifts [m]
 * @param spread of the lifted ground, sideways for each unit up [1]: the tangent of the angle of the soil cone
 * @returns depth [m], 0 where the feet themselves meet
 * Formula: h = (s/2 - R)/tan theta, not below 0
 * Valid: the zone taken as the soil cone's. Outside: a deep plate breaks out in a narrower zone, so this is careful.
 * Source: go-95, assumption
 * Checked by: tests/core/derive/pierGroup.test.ts
 */
export function meetingDepth({ reach, radius, spread }: MeetingInputs): Metres {
  return Math.max(0, (reach - radius) / spread) as Metres
}

/** Depth where neighbours meet, with its work shown. */
export const workedMeetingDepth = showing({
  id: 'meeting-depth',
  quantity: 'length',
  formula: String.raw`h = \max\left(0,\ \frac{r - R}{\tan\theta}\right)`,
  terms: { reach: ['r', 'length'], radius: ['R', 'length'] },
  along: ({ spread }: MeetingInputs) => [{ symbol: String.raw`\theta`, name: 'angle', value: Math.atan(spread), quantity: 'angle' }],
  sources: ['go-95', 'assumption'],
  of: meetingDepth,
})
