import type { PresumptiveClass, Soil } from '../../../core/model/spec.ts'
import type { Role } from '../../../core/model/solid.ts'

/**
 * How a crumbly or cast material looks. Colours are sRGB; scales are repeats of the noise cube per metre;
 * shares are 0..1. Soil colours are moist Munsell colours of the drafting notes (5.1), concrete of 5.3.
 */
export type MineralLook = Readonly<{
  base: string
  mottle: string
  stoneA: string
  stoneB: string
  /** Cloud, grain, coarse stones, fine stones [1/m]. */
  scale: readonly [number, number, number, number]
  /** Share of mottle, contrast of grain, share of coarse stones, share of fine stones. */
  mix: readonly [number, number, number, number]
  /** 1 packs stones face to face with dark joints. */
  packed: number
  bump: number
  roughness: number
  /** Ink of the marks on a cut face, and how strong. */
  ink: string
  inkShare: number
}>

const earthInk = '#2e2417'
const subsoil: MineralLook = {
  base: '#93754f',
  mottle: '#795b36',
  stoneA: '#b3a184',
  stoneB: '#8f7c62',
  scale: [1.1, 8, 4.4, 10],
  mix: [0.85, 0.5, 0.16, 0.14],
  packed: 0,
  bump: 0.9,
  roughness: 0.97,
  ink: earthInk,
  inkShare: 0.62,
}

const ground: Readonly<Record<PresumptiveClass, MineralLook>> = {
  sand: {
    ...subsoil,
    base: '#bba889',
    mottle: '#a5927a',
    stoneA: '#d2c3a6',
    stoneB: '#a08b6b',
    mix: [0.7, 0.42, 0.03, 0.2],
    bump: 0.7,
    inkShare: 0.6,
  },
  clay: {
    ...subsoil,
    base: '#8f7660',
    mottle: '#7a604c',
    stoneA: '#a58c74',
    stoneB: '#80695a',
    mix: [0.8, 0.3, 0.04, 0.06],
    bump: 0.55,
    roughness: 0.9,
  },
  gravel: {
    ...subsoil,
    base: '#a08c6a',
    mottle: '#8b7452',
    stoneA: '#bdb39c',
    stoneB: '#8d8473',
    scale: [1.1, 7, 2.6, 6],
    mix: [0.7, 0.3, 0.62, 0.4],
    bump: 1.3,
  },
  'foliated-rock': {
    ...subsoil,
    base: '#8f887c',
    mottle: '#767066',
    stoneA: '#a49c8e',
    stoneB: '#7f7768',
    mix: [0.9, 0.28, 0, 0.05],
    bump: 1.1,
    inkShare: 0.5,
  },
  'crystalline-rock': {
    ...subsoil,
    base: '#a19b92',
    mottle: '#8a847c',
    stoneA: '#b9b3aa',
    stoneB: '#86807a',
    mix: [0.8, 0.35, 0, 0.3],
    bump: 0.8,
    inkShare: 0.5,
  },
}

/** Look of native ground; the deeper layer is a step greyer so that the two never run together. */
export function groundLook(soil: Soil, isLower: boolean): MineralLook {
  const look = soil.kind === 'user' ? subsoil : ground[soil.class]
  return isLower ? { ...look, base: greyer(look.base), mottle: greyer(look.mottle) } : look
}

/** A third of the way to the grey-beige of a bearing layer. */
function greyer(colour: string): string {
  const toward = [0x9b, 0x93, 0x83] as const
  const parts = [1, 3, 5].map((at, n) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16)
    return Math.round(value + ((toward[n] as number) - value) * 0.62)
      .toString(16)
      .padStart(2, '0')
  })
  return `#${parts.join('')}`
}

export type PlacedMineral = Exclude<Role, 'soil' | 'soil-lower' | 'wood' | 'bar' | 'steel'>

export const mineralLooks: Readonly<Record<PlacedMineral, MineralLook>> = {
  topsoil: {
    ...subsoil,
    base: '#544332',
    mottle: '#3d3125',
    stoneA: '#7d6b52',
    stoneB: '#59492f',
    mix: [0.8, 0.42, 0.06, 0.12],
    bump: 1,
    ink: '#d9c8a6',
    inkShare: 0.42,
  },
  backfill: {
    ...subsoil,
    base: '#7d664b',
    mottle: '#594634',
    stoneA: '#97805f',
    stoneB: '#4e3e2c',
    scale: [2.6, 9, 4.2, 8],
    mix: [1, 0.45, 0.42, 0.22],
    bump: 1.7,
  },
  granular: {
    ...subsoil,
    base: '#a3967f',
    mottle: '#8f826c',
    stoneA: '#bfb4a0',
    stoneB: '#8a8172',
    scale: [1.4, 9, 3.4, 7.5],
    mix: [0.6, 0.3, 0.85, 0.6],
    packed: 0.55,
    bump: 1.8,
    inkShare: 0.35,
  },
  gravel: {
    ...subsoil,
    base: '#6f685b',
    mottle: '#5b5549',
    stoneA: '#c3bbab',
    stoneB: '#8b857b',
    scale: [1.4, 9, 2.7, 7],
    mix: [0.5, 0.2, 1, 0.2],
    packed: 1,
    bump: 2.6,
    ink: '#26231d',
    inkShare: 0.25,
  },
  mulch: {
    ...subsoil,
    base: '#6b4a30',
    mottle: '#4a3220',
    stoneA: '#8a6544',
    stoneB: '#4b3423',
    scale: [3, 14, 6, 12],
    mix: [1, 0.6, 0.6, 0.3],
    bump: 2,
    ink: '#e0cba6',
    inkShare: 0.4,
  },
  'dry-mix': {
    ...subsoil,
    base: '#b7b1a4',
    mottle: '#8d8678',
    stoneA: '#a49c8e',
    stoneB: '#7f786c',
    scale: [2.3, 12, 3.2, 9],
    mix: [1, 0.55, 0.3, 0.35],
    bump: 1.9,
    roughness: 1,
    ink: '#2b2a27',
    inkShare: 0.5,
  },
  concrete: {
    ...subsoil,
    base: '#b0aca5',
    mottle: '#a29d95',
    stoneA: '#c2beb5',
    stoneB: '#8d867c',
    scale: [1.6, 10, 4.6, 10],
    mix: [0.7, 0.16, 0.5, 0.3],
    bump: 0.5,
    roughness: 0.86,
    ink: '#23252a',
    inkShare: 0.56,
  },
  'flowable-fill': {
    ...subsoil,
    base: '#b5a88f',
    mottle: '#a3957b',
    stoneA: '#c3b79f',
    stoneB: '#998b72',
    scale: [1.2, 11, 4, 10],
    mix: [0.8, 0.22, 0.03, 0.2],
    bump: 0.5,
    roughness: 0.92,
    ink: '#33302a',
    inkShare: 0.5,
  },
}
