/** What lies over a picture of the pier, in pixels from its upper left: lines by style, and words on plates. Plain data, drawn by whoever shows it. */
export type LineStyle =
  | 'leader'
  | 'dimension'
  | 'arc'
  | 'tick'
  | 'dot'
  | 'arrow'
  | 'water'
  | 'frost'
  /** What wets the wood: classes down the post, joint, groundline zone, rain and where it ends, a pond; what the years leave open there; and a dry pour. */
  | 'damp'
  | 'wet'
  | 'joint'
  | 'zone'
  | 'rain'
  | 'drop'
  | 'pond'
  | 'open'
  | 'gone'
  /** What an inspection sees of the post, and what it does not. */
  | 'disc'
  | 'eye'
  | 'weak'
  | 'crumbly'
  | 'powder'

export type Plate = Readonly<{
  id: string
  /** One or two lines; of a figure the first is the value, the second says what it measures. */
  lines: readonly string[]
  /** Upper left and size of the plate. */
  x: number
  y: number
  width: number
  height: number
  kind: 'name' | 'figure' | 'water'
}>

export type Ink = Readonly<{ paths: Readonly<Record<LineStyle, string>>; plates: readonly Plate[] }>

export type Pixel = readonly [number, number]
export type Box = Readonly<{ x: number; y: number; width: number; height: number }>

const round = (value: number): number => Math.round(value * 10) / 10

/** Gathers path data by style. */
export class InkPot {
  readonly paths: Record<LineStyle, string> = {
    leader: '',
    dimension: '',
    arc: '',
    tick: '',
    dot: '',
    arrow: '',
    water: '',
    frost: '',
    damp: '',
    wet: '',
    joint: '',
    zone: '',
    rain: '',
    drop: '',
    pond: '',
    open: '',
    gone: '',
    disc: '',
    eye: '',
    weak: '',
    crumbly: '',
    powder: '',
  }
  readonly plates: Plate[] = []

  line(style: LineStyle, ...points: readonly Pixel[]): void {
    this.paths[style] += points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('')
  }

  shape(style: LineStyle, ...points: readonly Pixel[]): void {
    this.line(style, ...points)
    this.paths[style] += 'Z'
  }

  dot(style: LineStyle, [x, y]: Pixel, radius: number): void {
    this.paths[style] +=
      `M${round(x - radius)} ${round(y)}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0Z`
  }
}

export const overlaps = (a: Box, b: Box, gap = 0): boolean =>
  a.x < b.x + b.width + gap && b.x < a.x + a.width + gap && a.y < b.y + b.height + gap && b.y < a.y + a.height + gap
