import type { Role } from '../../../core/model/solid.ts'
import type { PresumptiveClass, Soil } from '../../../core/model/spec.ts'

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

type Four = readonly [number, number, number, number]
type More = Partial<Pick<MineralLook, 'scale' | 'packed' | 'bump' | 'ink' | 'inkShare'>>
const usual = { scale: [1.1, 8, 4.4, 10], packed: 0, bump: 0.9, ink: '#2e2417', inkShare: 0.62 } as const

/** Colours of base, mottle and two kinds of stone; shares as in `mix`; and what is not as in most soils. */
function look(colours: `${string} ${string} ${string} ${string}`, mix: Four, more: More = {}): MineralLook {
  const [base, mottle, stoneA, stoneB] = colours.split(' ') as [string, string, string, string]
  return { base, mottle, stoneA, stoneB, mix, ...usual, ...more }
}

const described = look('#93754f #795b36 #b3a184 #8f7c62', [0.85, 0.5, 0.16, 0.14])
const ground: Readonly<Record<PresumptiveClass, MineralLook>> = {
  sand: look('#b39b76 #9c8661 #c8b48c #8f7750', [0.7, 0.42, 0.03, 0.2], { bump: 0.7, inkShare: 0.6 }),
  clay: look('#8f7660 #7a604c #a58c74 #80695a', [0.8, 0.3, 0.04, 0.06], { bump: 0.55 }),
  gravel: look('#96815f #806a4a #a99f88 #7d7363', [0.7, 0.3, 0.62, 0.4], { scale: [1.1, 7, 2.6, 6], bump: 1.3 }),
  'foliated-rock': look('#8f887c #767066 #a49c8e #7f7768', [0.9, 0.28, 0, 0.05], { bump: 1.1, inkShare: 0.5 }),
  'crystalline-rock': look('#8f8a83 #7b766f #a49e96 #78736c', [0.8, 0.35, 0, 0.3], { bump: 0.8, inkShare: 0.5 }),
}

/** Look of native ground; the deeper layer is a step greyer so that the two never run together. */
export function groundLook(soil: Soil, isLower: boolean): MineralLook {
  const own = soil.kind === 'user' ? described : ground[soil.class]
  return isLower ? { ...own, base: greyer(own.base), mottle: greyer(own.mottle) } : own
}

/** A good half of the way to the grey-beige of a bearing layer. */
function greyer(colour: string): string {
  const parts = ([0x9b, 0x93, 0x83] as const).map((toward, n) => {
    const value = Number.parseInt(colour.slice(2 * n + 1, 2 * n + 3), 16)
    return Math.round(value + (toward - value) * 0.62)
      .toString(16)
      .padStart(2, '0')
  })
  return `#${parts.join('')}`
}

export type PlacedMineral = Exclude<Role, 'soil' | 'soil-lower' | 'wood' | 'bar' | 'steel'>

const stoneInk = { inkShare: 0.18 } as const

export const mineralLooks: Readonly<Record<PlacedMineral, MineralLook>> = {
  topsoil: look('#544332 #3d3125 #7d6b52 #59492f', [0.8, 0.42, 0.06, 0.12], { bump: 1, ink: '#d9c8a6', inkShare: 0.42 }),
  backfill: look('#7d664b #594634 #97805f #4e3e2c', [1, 0.45, 0.42, 0.22], { scale: [2.6, 9, 4.2, 8], bump: 1.7 }),
  granular: look('#404346 #373a3d #787c80 #54585c', [0.6, 0.3, 0.85, 0.6], {
    scale: [1.4, 9, 4.2, 9],
    packed: 0.55,
    bump: 1.8,
    ...stoneInk,
  }),
  gravel: look('#43423f #3d3c3a #9c9993 #5f5e5b', [0.5, 0.2, 1, 0.2], {
    scale: [1.4, 9, 2.4, 7],
    packed: 1,
    bump: 2.6,
    ...stoneInk,
    ink: '#26231d',
  }),
  mulch: look('#73472c #52301d #9a6533 #553421', [1, 0.6, 0.6, 0.3], { scale: [3, 14, 6, 12], bump: 2, ink: '#e0cba6', inkShare: 0.4 }),
  'dry-mix': look('#c8c0ae #a89e8a #b8b09e #91886f', [1, 0.55, 0.3, 0.35], {
    scale: [2.3, 12, 3.2, 9],
    bump: 1.9,
    ink: '#2b2a27',
    inkShare: 0.5,
  }),
  concrete: look('#bab9b7 #aeadaa #c7c5c2 #a39f98', [0.7, 0.16, 0.5, 0.3], {
    scale: [1.6, 10, 4.6, 10],
    bump: 0.5,
    ink: '#23252a',
    inkShare: 0.56,
  }),
  'flowable-fill': look('#cfd6ce #c3ccc4 #d6dcd3 #a3ada4', [0.8, 0.22, 0.03, 0.2], {
    scale: [1.2, 11, 4, 10],
    bump: 0.5,
    ink: '#33302a',
    inkShare: 0.5,
  }),
}
