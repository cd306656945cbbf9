import type { PostSide, WetStretch } from '../../../core/model/moistureResult.ts'
import type { WoodWetness } from '../../../core/engineering/tables/contactWetness.ts'

/** A height on each side of the post [m]. */
export type Levels = Readonly<Record<PostSide, number>>
/** One class right round the post; on a side where it is missing, both levels are the same. */
export type WetBand = Readonly<{ wetness: WoodWetness; waterAndAir: boolean; from: Levels; to: Levels }>

type Piece = Readonly<{ wetness: WoodWetness; waterAndAir: boolean; from: number; to: number }>
type Kind = string

const kindOf = ({ wetness, waterAndAir }: Pick<Piece, 'wetness' | 'waterAndAir'>): Kind => `${wetness} ${waterAndAir}`

/** Stretches of one side, top down, those that look alike run together. */
function piecesOf(profile: readonly WetStretch[], side: PostSide): Piece[] {
  const pieces: Piece[] = []
  for (const { wetness, waterAndAir, from, to } of profile.filter((one) => one.side === side)) {
    const last = pieces.at(-1)
    if (last && kindOf(last) === kindOf({ wetness, waterAndAir })) pieces[pieces.length - 1] = { ...last, from }
    else pieces.push({ wetness, waterAndAir, from, to })
  }
  return pieces
}

/** Shortest list that holds both lists in their order. */
function woven(a: readonly Kind[], b: readonly Kind[]): Kind[] {
  const [x, ...xs] = a
  const [y, ...ys] = b
  if (x === undefined || y === undefined) return [...a, ...b]
  if (x === y) return [x, ...woven(xs, ys)]
  const [first, second] = [
    [x, ...woven(xs, b)],
    [y, ...woven(a, ys)],
  ] as const
  return first.length <= second.length ? [...first] : [...second]
}

/** Each kind of the order in turn, of no height where this side has none. */
function seated(order: readonly Kind[], pieces: readonly Piece[]): Readonly<{ from: number; to: number }>[] {
  let next = 0
  return order.map((kind) => {
    const piece = pieces[next]
    if (piece && kindOf(piece) === kind) {
      next++
      return { from: piece.from, to: piece.to }
    }
    const at = piece?.to ?? pieces.at(-1)?.from ?? 0
    return { from: at, to: at }
  })
}

/** The profile as bands that run round the post, top down, so that one body can be coloured from three lines. */
export function wetBands(profile: readonly WetStretch[]): WetBand[] {
  const sides = { uphill: piecesOf(profile, 'uphill'), axis: piecesOf(profile, 'axis'), downhill: piecesOf(profile, 'downhill') }
  const order = woven(woven(sides.uphill.map(kindOf), sides.axis.map(kindOf)), sides.downhill.map(kindOf))
  const at = { uphill: seated(order, sides.uphill), axis: seated(order, sides.axis), downhill: seated(order, sides.downhill) }
  const levels = (i: number, end: 'from' | 'to'): Levels => ({
    uphill: at.uphill[i]?.[end] ?? 0,
    axis: at.axis[i]?.[end] ?? 0,
    downhill: at.downhill[i]?.[end] ?? 0,
  })
  return order.map((kind, i) => {
    const [wetness, air] = kind.split(' ') as [WoodWetness, string]
    return { wetness, waterAndAir: air === 'true', from: levels(i, 'from'), to: levels(i, 'to') }
  })
}
