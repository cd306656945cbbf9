import type { Hatch } from './hatch.ts'

/** A tile that repeats, in paper millimetres: lines to stroke and dots or shapes to fill. */
export type HatchTile = Readonly<{ width: number; height: number; strokes: string; dots: string }>

/** Whole-number hash to 0..1. */
const chance = (i: number, j: number, seed: number): number => {
  let h = Math.imul(i, 0x27d4eb2d) ^ Math.imul(j, 0x165667b1) ^ Math.imul(seed, 0x9e3779b1)
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d)
  h = Math.imul(h ^ (h >>> 12), 0x297a2d39)
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296
}

const n = (value: number): string => (Math.round(value * 100) / 100).toString()
type Cell = Readonly<{ x: number; y: number; i: number; j: number }>

/** Middles of jittered cells over a tile; `slack` is how far a middle may stray, as a share of the cell. */
function cells(width: number, height: number, across: number, up: number, slack: number, seed: number): Cell[] {
  const columns = Math.round(width / across)
  const rows = Math.round(height / up)
  return Array.from({ length: columns * rows }, (_, k) => {
    const i = k % columns
    const j = Math.floor(k / columns)
    return {
      x: (i + 0.5 + (chance(i, j, seed) - 0.5) * slack) * (width / columns),
      y: (j + 0.5 + (chance(i, j, seed + 1) - 0.5) * slack) * (height / rows),
      i,
      j,
    }
  })
}

const dot = (x: number, y: number, r: number): string =>
  `M${n(x - r)} ${n(y)}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`
const line = (x1: number, y1: number, x2: number, y2: number): string => `M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}`

const scatter = (size: number, cell: number, radius: number, seed: number): string =>
  cells(size, size, cell, cell, 0.62, seed)
    .map(({ x, y, i, j }) => dot(x, y, radius * (0.75 + 0.5 * chance(i, j, seed + 2))))
    .join('')

/** Groups of three short strokes, leaning left and right in turn. */
function earth(width: number, height: number, across: number, up: number, half: number, gap: number, wild: number, seed: number): string {
  return cells(width, height, across, up, 0.24, seed)
    .map(({ x, y, i, j }) => {
      const angle = ((i + j) % 2 === 0 ? 1 : -1) * (Math.PI / 4) + (chance(i, j, seed + 3) - 0.5) * wild
      const [c, s] = [Math.cos(angle), Math.sin(angle)]
      return [-1, 0, 1]
        .map((k) => {
          const reach = half * (1 - 0.08 * k)
          const [ox, oy] = [-s * k * gap, c * k * gap]
          return line(x + ox - c * reach, y + oy - s * reach, x + ox + c * reach, y + oy + s * reach)
        })
        .join('')
    })
    .join('')
}

const triangles = (size: number, cell: number, share: number, seed: number): string =>
  cells(size, size, cell, cell, 0.4, seed)
    .filter(({ i, j }) => chance(i, j, seed + 4) < share)
    .map(({ x, y, i, j }) => {
      const r = 0.6 + 0.45 * chance(i, j, seed + 5)
      const turn = chance(i, j, seed + 6) * 2 * Math.PI
      const corners = [0, 1, 2].map(
        (k) => [x + r * Math.cos(turn + (k * 2 * Math.PI) / 3), y + r * Math.sin(turn + (k * 2 * Math.PI) / 3)] as const,
      )
      return `M${corners.map(([px, py]) => `${n(px)} ${n(py)}`).join('L')}Z`
    })
    .join('')

const stones = (size: number, cell: number, sides: readonly [number, number], fill: number, seed: number): string =>
  cells(size, size, cell, cell, 0.3, seed)
    .map(({ x, y, i, j }) => {
      const count = Math.round(sides[0] + chance(i, j, seed + 2) * (sides[1] - sides[0]))
      const turn = chance(i, j, seed + 3) * 6
      const corners = Array.from({ length: count }, (_, k) => {
        const a = turn + ((k + (chance(i * 7 + k, j, seed + 4) - 0.5) * 0.5) * 2 * Math.PI) / count
        const r = cell * fill * (0.75 + 0.4 * chance(i, j * 5 + k, seed + 5))
        return `${n(x + r * Math.cos(a))} ${n(y + r * Math.sin(a) * 0.86)}`
      })
      return `M${corners.join('L')}Z`
    })
    .join('')

const ovals = (size: number, cell: number, seed: number): string =>
  cells(size, size, cell, cell, 0.35, seed)
    .filter(({ i, j }) => chance(i, j, seed + 2) > 0.2)
    .map(({ x, y, i, j }) => {
      const [rx, ry] = [cell * (0.17 + 0.12 * chance(i, j, seed + 3)), cell * (0.11 + 0.07 * chance(i, j, seed + 4))]
      const turn = Math.round(chance(i, j, seed + 5) * 180)
      const a = (turn * Math.PI) / 180
      const [dx, dy] = [rx * Math.cos(a), rx * Math.sin(a)]
      return `M${n(x - dx)} ${n(y - dy)}A${n(rx)} ${n(ry)} ${turn} 1 0 ${n(x + dx)} ${n(y + dy)}A${n(rx)} ${n(ry)} ${turn} 1 0 ${n(x - dx)} ${n(y - dy)}Z`
    })
    .join('')

const dashes = (size: number, rowGap: number, repeat: number, dash: number, share: number, seed: number): string =>
  cells(size, size, repeat, rowGap, 0, seed)
    .filter(({ i, j }) => chance(i, j, seed + 2) < share)
    .map(({ x, y, i, j }) => {
      const at = x + (chance(0, j, seed) - 0.5) * (repeat - dash)
      const half = (dash / 2) * (0.8 + 0.4 * chance(i, j, seed + 3))
      return line(at - half, y, at + half, y)
    })
    .join('')

/** Wavy lines that run on from tile to tile, up the tile. */
const grain = (width: number, height: number): string =>
  Array.from({ length: Math.round(width / 1.8) }, (_, k) => {
    const x = (k + 0.5) * 1.8 + (chance(k, 1, 71) - 0.5) * 0.7
    const wave = 0.25 + 0.3 * chance(k, 2, 71)
    return `M${n(x)} 0C${n(x + wave)} ${n(height / 3)} ${n(x - wave)} ${n((2 * height) / 3)} ${n(x)} ${n(height)}`
  }).join('')

/** The marks of drafting notes 1.2 as tiles. */
export const hatchTiles: Readonly<Record<Exclude<Hatch, 'none'>, HatchTile>> = {
  concrete: { width: 24, height: 24, strokes: triangles(24, 6, 0.62, 3), dots: scatter(24, 2, 0.14, 1) + scatter(24, 3.43, 0.2, 2) },
  earth: { width: 46, height: 36, strokes: earth(46, 36, 11.5, 9, 2.5, 1.1, 0.16, 5), dots: '' },
  sand: { width: 36, height: 36, strokes: earth(36, 36, 18, 12, 2.3, 1.1, 0.16, 5), dots: scatter(36, 1.5, 0.13, 21) },
  stones: { width: 24, height: 24, strokes: stones(24, 3, [4, 7], 0.46, 31), dots: scatter(24, 4, 0.14, 33) },
  pebbles: { width: 24, height: 24, strokes: ovals(24, 4.8, 35), dots: scatter(24, 2.4, 0.14, 37) },
  clay: { width: 46, height: 36, strokes: dashes(46, 2.25, 5.75, 2.4, 0.55, 41) + earth(46, 36, 23, 12, 2.4, 1.1, 0.16, 5), dots: '' },
  rock: { width: 36, height: 30, strokes: stones(36, 9, [4, 5], 0.56, 51), dots: '' },
  mortar: { width: 24, height: 24, strokes: '', dots: scatter(24, 1.2, 0.1, 61) + scatter(24, 4.8, 0.24, 63) },
  grain: { width: 18, height: 40, strokes: grain(18, 40), dots: '' },
  steel: { width: 3.2, height: 3.2, strokes: 'M-0.4 3.6L3.6 -0.4M0.7 4.1L4.1 0.7M-0.9 2.5L2.5 -0.9', dots: '' },
  'broken-earth': { width: 36, height: 30, strokes: earth(36, 30, 9, 7.5, 1.4, 1, 1.5, 81), dots: scatter(30, 3, 0.18, 82) },
  topsoil: { width: 39, height: 30, strokes: earth(39, 30, 13, 10, 2, 1.05, 0.2, 93), dots: scatter(30, 2, 0.16, 91) },
  flowable: { width: 34, height: 34, strokes: dashes(34, 3.4, 8.5, 2.4, 0.9, 101), dots: scatter(34, 2.4, 0.14, 102) },
}
