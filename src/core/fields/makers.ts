import type { UnitId } from '../units/factors.ts'
import { parseQuantity } from '../units/parse.ts'
import type { UnitSystem } from '../units/quantity.ts'
import type {
  FieldOptions,
  AskedQuantity,
  ChoiceNode,
  EitherNode,
  FieldNode,
  GroupNode,
  Kind,
  NumberNode,
  NumberOf,
  OfKind,
  PartNode,
  Shape,
  TextNode,
  ValuesOf,
} from './node.ts'

/** Value of a text with its unit; a bare number is a plain one. Throws on a text that can't be read: a mistake of the declaration. */
const read = (text: string, quantity: AskedQuantity): number => {
  const reading = parseQuantity(text, quantity, '1')
  if (!reading.ok) throw new Error(`read: '${text}' is no ${quantity}`)
  return reading.value
}
/** A difference, which scales of temperature count from no zero. */
const difference = (text: string, quantity: AskedQuantity): number =>
  read(text, quantity) - (quantity === 'temperature' ? read(text.replace(/^[\d.]+/, '0'), quantity) : 0)

type Ends = Readonly<{ from: string; to: string }>
/** One text for both systems, or US and metric. */
type Steps = string | readonly [us: string, metric: string]
/**
 * `silent` is what a link means that says nothing, for ever, and where the first pier starts unless `start` says otherwise. Where either is
 * null the field may be left empty.
 */
type Start<V> = Readonly<{ silent: string | null; start?: string | V | null }>
type NumberOptions<V> = FieldOptions & Ends & Start<V> & Readonly<{ step?: Steps; unit?: Readonly<Record<UnitSystem, UnitId>> }>

/** A step of whole inches goes with one of 10 mm, a finer one with 1 mm. */
const both = (step: Steps): readonly [string, string] => {
  if (typeof step !== 'string') return step
  const inches = /^([\d.]+) in$/.exec(step)?.[1]
  return [step, inches === undefined ? step : Number(inches) >= 1 ? '10 mm' : '1 mm']
}

type Given<O, V> = O extends { silent: null } | { start: null } ? V | null : V
const number =
  <Q extends AskedQuantity>(quantity: Q, usual: Steps) =>
  <const O extends NumberOptions<NumberOf[Q]>>(options: O): NumberNode<Given<O, NumberOf[Q]>> => {
    const { from, to, step = usual, silent, start, ...asked }: NumberOptions<NumberOf[Q]> = options
    const [us, metric] = both(step)
    const said = start === undefined ? silent : start
    const first = typeof said === 'string' ? read(said, quantity) : said
    return {
      ...asked,
      type: 'number',
      quantity,
      min: read(from, quantity),
      max: read(to, quantity),
      step: { us: difference(us, quantity), metric: difference(metric, quantity) },
      nullable: silent === null || start === null,
      silent,
      // Read as the quantity it is: the compiler can't follow a text to its unit.
      start: first as Given<O, NumberOf[Q]>,
    }
  }

export const length = number('length', '1 in')
export const volume = number('volume', ['0.5 gal', '1 L'])
export const force = number('force', ['50 lb', '0.2 kN'])
export const strength = number('strength', ['250 psi', '1 MPa'])
export const pressure = number('pressure', ['1 psf', '0.1 kPa'])
export const unitWeightField = number('unitWeight', ['1 pcf', '0.1 kN/m3'])
export const gradient = number('gradient', ['10 psf/ft', '1 kPa/m'])
export const angle = number('angle', '1 deg')
export const fall = number('slope', '1 %')
export const ratio = number('ratio', '1 %')
export const span = number('life', '1 yr')
export const degrees = number('temperature', ['1 degF', '1 degC'])
export const rainfall = number('rain', ['0.1 in/h', '1 mm/h'])
export const windSpeed = number('speed', ['5 mph', '2 m/s'])
export const dosage = number('dosage', ['0.5 gal/yd3', '1 L/m3'])
export const money = number('money', '10')

type CountOptions = FieldOptions & Readonly<{ from: number; to: number; silent: number | null; start?: number }>
/** A whole number. */
export const count = <const O extends CountOptions>(options: O): NumberNode<Given<O, number>> => {
  const { from, to, silent, start, ...asked }: CountOptions = options
  const steps = { us: 1, metric: 1 }
  const first = start ?? silent
  return {
    ...asked,
    type: 'number',
    quantity: 'count',
    min: from,
    max: to,
    step: steps,
    nullable: silent === null,
    silent,
    start: first as Given<O, number>,
  }
}

type ChoiceOptions<C> = FieldOptions & Readonly<{ silent: C | null; start?: C }>
/** One of several; null too where a silent link means none. */
export const oneOf = <const C extends string | number, const O extends ChoiceOptions<C>>(
  choices: readonly C[],
  options: O & ChoiceOptions<C>,
): ChoiceNode<Given<O, C>> => {
  const { silent, start, ...asked }: ChoiceOptions<C> = options
  return { ...asked, type: 'choice', choices, nullable: silent === null, silent, start: (start ?? silent) as Given<O, C> }
}

/** Words that a person writes, at most so many characters, and at least so many. */
export const freeText = (most: number, least = 0): TextNode => ({ type: 'text', least, most, start: '' })

const startsOf = <S extends Shape>(fields: S): ValuesOf<S> =>
  Object.fromEntries(Object.entries(fields).map(([key, node]) => [key, node.start])) as ValuesOf<S>

export const group = <const S extends Shape>(fields: S, asked: FieldOptions = {}): GroupNode<S> => ({
  ...asked,
  type: 'group',
  fields,
  start: startsOf(fields),
})

/** A part that a pier may have or lack. `silent`: 1 where a link that says nothing means that it is there. */
export const part = <const S extends Shape>(
  fields: S,
  { silent = 0, ...asked }: FieldOptions & Readonly<{ silent?: 0 | 1 }> = {},
): PartNode<S> => {
  const first = startsOf(fields)
  return { ...asked, type: 'part', fields, first, start: silent === 1 ? first : null, silent }
}

/** One of several kinds, with its own fields. */
export const kindOf = <const Id extends string, const S extends Shape>(id: Id, fields: S): Readonly<{ id: Id; fields: S }> => ({
  id,
  fields,
})

type EitherOptions<Id> = FieldOptions & Readonly<{ silent?: Id; start?: Id }>
/** One kind of several. A kind that follows from another input has no `link` and is not asked. */
export const either = <const K extends Kind>(kinds: readonly K[], options: EitherOptions<K['id']> = {}): EitherNode<K> => {
  const { silent, start = silent ?? kinds[0]?.id, ...asked } = options
  const first = kinds.find((kind) => kind.id === start)
  if (first === undefined) throw new Error(`either: no kind '${start}'`)
  return { ...asked, type: 'either', kinds, isAsked: asked.link !== undefined, start: startOfKind(first), silent: silent ?? null }
}

/** What a kind starts with when it is chosen. */
export const startOfKind = <K extends Kind>(kind: K): OfKind<K> => ({ kind: kind.id, ...startsOf(kind.fields) }) as OfKind<K>

/** Yes or no. */
export const yesNo = <const O extends ChoiceOptions<'no' | 'yes'>>(options: O) => oneOf(['no', 'yes'], options)

/** The like field for each of several things, by their ids. */
export const each = <T extends Readonly<{ id: string }>, N extends FieldNode>(
  things: readonly T[],
  field: (thing: T, index: number) => N,
): Readonly<Record<T['id'], N>> =>
  Object.fromEntries(things.map((thing, index) => [thing.id, field(thing, index)])) as Readonly<Record<T['id'], N>>
