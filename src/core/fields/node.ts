import type {
  Celsius,
  CubicMetres,
  Metres,
  MetresPerSecond,
  Newtons,
  Pascals,
  PressureGradient,
  QuantityKind,
  Radians,
  Seconds,
  Slope,
  UnitSystem,
  UnitWeight,
} from '../units/quantity.ts'
import type { UnitId } from '../units/factors.ts'

/** The steps in which inputs are asked, in the order in which a pier is built. */
export const fieldGroups = ['site', 'hole', 'post', 'fill', 'steel', 'top', 'concrete', 'water', 'loads', 'drawing', 'years'] as const
export type FieldGroup = (typeof fieldGroups)[number]

/** When a pier has an input, where that depends on more than the part or the kind that holds it. */
export type Condition =
  | 'post in the hole'
  | 'post on a bracket'
  | 'mix round the post'
  | 'concrete or dry mix'
  | 'dry mix'
  | 'watered'
  | 'finished top'
  | 'shaped top'
  | 'several bars'
  | 'slope'
  | 'free roof'
  | 'own years'
  | 'no own months'

/** What any field may say of itself. */
export type FieldOptions = Readonly<{
  /** Step in which it is asked; what a part, a group or a kind holds is asked with it unless it says otherwise. */
  group?: FieldGroup
  /** Path of the field that it is asked behind, where that is not its place in the tree. */
  after?: string
  when?: Condition
  /** Its key in a link: two letters, for ever. What has none stays in the file. */
  link?: string
  /** What a file that leaves it out means: the value of the first pier; or nothing is lacking as long as the pier does not show it. */
  leftOut?: 'start' | 'unless shown'
  /** What is given here is read off the drawing. */
  given?: 'drawing'
}>

/** SI type of a number of each quantity that can be asked. */
export type NumberOf = {
  length: Metres
  volume: CubicMetres
  force: Newtons
  strength: Pascals
  pressure: Pascals
  unitWeight: UnitWeight
  gradient: PressureGradient
  angle: Radians
  slope: Slope
  ratio: number
  count: number
  life: Seconds
  temperature: Celsius
  rain: MetresPerSecond
  speed: MetresPerSecond
  dosage: number
  money: number
}
export type AskedQuantity = keyof NumberOf & QuantityKind

/** One word of a link. Quantities are texts as in a job file. */
export type Word = string | number | null

export type NumberNode<V extends number | null = number | null> = FieldOptions &
  Readonly<{
    type: 'number'
    quantity: AskedQuantity
    /** Bounds and steps, SI. */
    min: number
    max: number
    step: Readonly<Record<UnitSystem, number>>
    /** Unit that it is told in, where it is not the one of its quantity: feet for a span. */
    unit?: Readonly<Record<UnitSystem, UnitId>>
    nullable: boolean
    /** Value of the first pier, and of a part that is put in. */
    start: V
    /** What a link means that says nothing of it, for ever. */
    silent: Word
  }>
export type ChoiceNode<V extends string | number | null = string | number | null> = FieldOptions &
  Readonly<{ type: 'choice'; choices: readonly (string | number)[]; nullable: boolean; start: V; silent: Word }>
/** Words that stay in the file; `least` and `most` characters. */
export type TextNode = FieldOptions & Readonly<{ type: 'text'; least: number; most: number; start: string }>

export type Shape = Readonly<Record<string, FieldNode>>
export type ValuesOf<S extends Shape> = Readonly<{ [K in keyof S]: S[K]['start'] }>
export type GroupNode<S extends Shape = Shape> = FieldOptions & Readonly<{ type: 'group'; fields: S; start: ValuesOf<S> }>
/** An optional part: null, or its fields; `first` is what it holds when it is put in. */
export type PartNode<S extends Shape = Shape> = FieldOptions &
  Readonly<{ type: 'part'; fields: S; first: ValuesOf<S>; start: ValuesOf<S> | null; silent: 0 | 1 }>

/** One of the kinds that a part of the pier may be of, with its own fields. */
export type Kind = Readonly<{ id: string; fields: Shape }>
/** A part of the pier as a kind has it: its id, and its own values. */
export type OfKind<K extends Kind> = K extends Kind ? Readonly<{ kind: K['id'] }> & ValuesOf<K['fields']> : never
/** One kind out of several. `isAsked`: is the kind itself an input, or does it follow from another? */
export type EitherNode<K extends Kind = Kind> = FieldOptions &
  Readonly<{ type: 'either'; kinds: readonly K[]; isAsked: boolean; start: OfKind<K>; silent: Word }>

export type FieldNode =
  | NumberNode
  | ChoiceNode
  | TextNode
  | (FieldOptions & Readonly<{ type: 'group'; fields: Shape; start: object }>)
  | (FieldOptions & Readonly<{ type: 'part'; fields: Shape; first: object; start: object | null; silent: 0 | 1 }>)
  | (FieldOptions & Readonly<{ type: 'either'; kinds: readonly Kind[]; isAsked: boolean; start: Readonly<{ kind: string }>; silent: Word }>)

/** Paths of the inputs of a tree: values, optional parts and kinds; words that stay in the file are none. */
export type PathsOf<S extends Shape> = { [K in keyof S & string]: PathsAt<S[K], K> }[keyof S & string]
type Below<S extends Shape, P extends string> = `${P}.${PathsOf<S>}`
type PathsAt<N, P extends string> = N extends { type: 'number' | 'choice' }
  ? P
  : N extends { type: 'part'; fields: infer S extends Shape }
    ? P | Below<S, P>
    : N extends { type: 'group'; fields: infer S extends Shape }
      ? Below<S, P>
      : N extends { type: 'either'; kinds: readonly (infer K)[] }
        ? `${P}.kind` | (K extends { fields: infer S extends Shape } ? Below<S, P> : never)
        : never
