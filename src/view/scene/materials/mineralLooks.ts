import type { PresumptiveClass, Soil } from '../../../core/model/spec.ts'
import type { Role } from '../../../core/model/solid.ts'

/**
 * How a crumbly or cast material looks. Colours are sRGB, shares are 0..1. Soils are near moist Munsell colours, and what may lie side
 * by side is far enough apart for any kind of sight: `tests/view/scene/told`.
 */
export type MineralLook = Readonly<{
  base: string
  mottle: string
  stoneA: string
  stoneB: string
  /** Cells to the metre: of cloud and grain four times this, of coarse and fine stones eight times. */
  scale: readonly [number, number, number, number]
  /** Share of mottle, contrast of grain, share of coarse stones, share of fine stones. */
  mix: readonly [number, number, number, number]
  /** 1 packs stones face to face with dark joints. */
  packed: number
  bump: number
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
  ink: earthInk,
  inkShare: 0.62,
}

const ground: Readonly<Record<PresumptiveClass, MineralLook>> = {
  sand: {
    ...subsoil,
    base: '#b39b76',
    mottle: '#9c8661',
    stoneA: '#c8b48c',
    stoneB: '#8f7750',
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
  },
  gravel: {
    ...subsoil,
    base: '#96815f',
    mottle: '#806a4a',
    stoneA: '#a99f88',
    stoneB: '#7d7363',
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
    base: '#8f8a83',
    mottle: '#7b766f',
    stoneA: '#a49e96',
    stoneB: '#78736c',
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
    base: '#4f4e4b',
    mottle: '#454440',
    stoneA: '#94938f',
    stoneB: '#6b6a67',
    scale: [1.4, 9, 3.4, 7.5],
    mix: [0.6, 0.3, 0.85, 0.6],
    packed: 0.55,
    bump: 1.8,
    inkShare: 0.18,
  },
  gravel: {
    ...subsoil,
    base: '#434343',
    mottle: '#3d3d3e',
    stoneA: '#93938f',
    stoneB: '#5c5e5f',
    scale: [1.4, 9, 2.7, 7],
    mix: [0.5, 0.2, 1, 0.2],
    packed: 1,
    bump: 2.6,
    ink: '#26231d',
    inkShare: 0.18,
  },
  mulch: {
    ...subsoil,
    base: '#7d5233',
    mottle: '#5c3a24',
    stoneA: '#a0703f',
    stoneB: '#5d3d27',
    scale: [3, 14, 6, 12],
    mix: [1, 0.6, 0.6, 0.3],
    bump: 2,
    ink: '#e0cba6',
    inkShare: 0.4,
  },
  'dry-mix': {
    ...subsoil,
    base: '#c2baa9',
    mottle: '#9f9583',
    stoneA: '#b1a998',
    stoneB: '#8b826f',
    scale: [2.3, 12, 3.2, 9],
    mix: [1, 0.55, 0.3, 0.35],
    bump: 1.9,
    ink: '#2b2a27',
    inkShare: 0.5,
  },
  concrete: {
    ...subsoil,
    base: '#bab9b7',
    mottle: '#aeadaa',
    stoneA: '#c7c5c2',
    stoneB: '#a39f98',
    scale: [1.6, 10, 4.6, 10],
    mix: [0.7, 0.16, 0.5, 0.3],
    bump: 0.5,
    ink: '#23252a',
    inkShare: 0.56,
  },
  'flowable-fill': {
    ...subsoil,
    base: '#cfd6ce',
    mottle: '#c3ccc4',
    stoneA: '#d6dcd3',
    stoneB: '#a3ada4',
    scale: [1.2, 11, 4, 10],
    mix: [0.8, 0.22, 0.03, 0.2],
    bump: 0.5,
    ink: '#33302a',
    inkShare: 0.5,
  },
}
