import { Color, type Material, Texture, Vector2, Vector4 } from 'three'
import type { Role } from '../../../core/model/solid.ts'
import type { BarCoating, PierSpec, PostSectionId } from '../../../core/model/spec.ts'
import { type Hatch, hatchOfGround, hatchOfRole } from '../../section/hatch.ts'
import { hatchTiles } from '../../section/hatchTile.ts'
import { cloudTexture, marksTexture, mineralTexture, turfTexture, woodTexture } from './bakedTextures.ts'
import { groundLook, type MineralLook, mineralLooks } from './mineralLooks.ts'
import type { SharedUniforms } from './sharedUniforms.ts'
import { type Family, type OwnUniforms, solidMaterial } from './solidMaterial.ts'

/** Materials of one look: of outside faces and of the faces that the cut made. */
export type ZoneMaterials = Readonly<{
  pair: readonly [Material, Material]
  /** Number of the bodies that are pointed at; -1 for none. */
  lit: { value: number }
  dispose(): void
}>

/** What a zone's look depends on; an equal key means equal materials. */
export const lookKey = (role: Role, spec: PierSpec, quality: 'full' | 'light', bounds: PostBounds | null): string =>
  [
    quality,
    role,
    role === 'soil' || role === 'topsoil' ? JSON.stringify(spec.site.soil) : '',
    role === 'soil-lower' ? JSON.stringify(spec.site.lower?.soil ?? null) : '',
    role === 'wood' ? `${spec.post.section} ${spec.post.treatment} ${bounds?.width} ${bounds?.depth}` : '',
    role === 'bar' ? (spec.bars?.coating ?? '') : '',
  ].join('|')

/** Sides of the post as built [m], and whether it is round; read off its outline, so that no table of sizes is needed here. */
export type PostBounds = Readonly<{ width: number; depth: number; isRound: boolean }>

/** Plies across the width of a post that is not of one piece. */
const plies: Readonly<Partial<Record<PostSectionId, number>>> = { '3-ply-2x6': 3, '4-ply-2x6': 4, '3-ply-2x8': 3 }

const coatingTone: Readonly<Record<BarCoating, readonly [string, string, number]>> = {
  plain: ['#7d5138', '#5f4234', 1],
  galvanised: ['#84898c', '#6d7275', 0],
  epoxy: ['#5d7a66', '#536d5c', 0],
  stainless: ['#9a9fa3', '#858a8e', 0],
}

/** About two thirds of the thickness of a common bar apart. Common practice, no source. */
const ribsPerMetre = 95

const uniform = (value: unknown): { value: unknown } => ({ value })
const colour = (hex: string): { value: unknown } => uniform(new Color(hex))

const grows = (role: Role): boolean => role === 'topsoil' || role === 'soil'

const mineralOwn = (look: MineralLook, role: Role): OwnUniforms => ({
  uGrain: uniform(mineralTexture(look)),
  ...(grows(role) ? { uTurf: uniform(turfTexture()) } : {}),
  uContrast: uniform(0.7 * look.mix[1]),
  uGrass: uniform(grows(role) ? 1 : 0),
  uSets: uniform(sets(role) ? 1 : 0),
  uScattered: uniform(role === 'dry-mix' ? 1 : 0),
})

/** Placed wet, it grows lighter as it hardens and dries. */
const sets = (role: Role): boolean => role === 'concrete' || role === 'flowable-fill'

const woodOwn = (spec: PierSpec, bounds: PostBounds | null): OwnUniforms => {
  const fresh = spec.post.treatment === 'untreated'
  return {
    uGrain: uniform(fresh ? woodTexture('#dfbe97', '#bb8d61') : woodTexture('#d0b684', '#a58a58')),
    uPost: uniform(new Vector4(bounds?.width ?? 0.14, bounds?.depth ?? 0.14, plies[spec.post.section] ?? 1, 0)),
    uRound: uniform(bounds?.isRound ? 1 : 0),
  }
}

/** `rib` [1/m]: ribs to the metre of a bar; 0 for smooth steel. */
const metalOwn = (tone: readonly [string, string, number], rib = 0): OwnUniforms => ({
  uMetal: colour(tone[0]),
  uMetalB: colour(tone[1]),
  uRust: uniform(tone[2]),
  uRib: uniform(rib),
})

/** `own` bakes what is not there yet. */
type Recipe = Readonly<{ family: Family; own: () => OwnUniforms; ink: string; inkShare: number; hatch: Hatch; plain: string }>

function recipe(role: Role, spec: PierSpec, bounds: PostBounds | null): Recipe {
  const hatch = hatchOfRole(role)
  switch (role) {
    case 'wood':
      return { family: 'wood', own: () => woodOwn(spec, bounds), hatch, ink: '#5a3d22', inkShare: 0.5, plain: '#c9a877' }
    case 'bar': {
      const tone = coatingTone[spec.bars?.coating ?? spec.verticalBars?.coating ?? 'plain']
      return { family: 'metal', own: () => metalOwn(tone, ribsPerMetre), hatch, ink: '#000000', inkShare: 0, plain: tone[0] }
    }
    case 'steel':
      return { family: 'metal', own: () => metalOwn(['#a3a8ab', '#8b9093', 0]), hatch, ink: '#1d1f22', inkShare: 0.55, plain: '#8b9093' }
    case 'soil':
    case 'soil-lower': {
      const soil = role === 'soil' ? spec.site.soil : (spec.site.lower?.soil ?? spec.site.soil)
      return mineral(groundLook(soil, role === 'soil-lower'), role, hatchOfGround(soil))
    }
    default:
      return mineral(mineralLooks[role], role, hatch)
  }
}

const mineral = (look: MineralLook, role: Role, hatch: Hatch): Recipe => {
  const { ink, inkShare, base } = look
  return { family: 'mineral', own: () => mineralOwn(look, role), hatch, ink, inkShare, plain: base }
}

/** Materials of all bodies that look the same. */
export function zoneMaterials(
  role: Role,
  spec: PierSpec,
  shared: SharedUniforms,
  quality: 'full' | 'light',
  bounds: PostBounds | null,
): ZoneMaterials {
  const { family, own, ink, inkShare, hatch, plain } = recipe(role, spec, bounds)
  const lit = { value: -1 }
  let baked: OwnUniforms | null = null
  const bake = (): OwnUniforms => {
    baked ??= { ...own(), ...(hatch === 'none' ? {} : marksOwn(hatch, ink, inkShare)), uCloud: uniform(cloudTexture()) }
    return { ...baked, uLit: lit }
  }
  const flat = (gain: number) => () => ({
    uTone: uniform(new Color(plain).multiplyScalar(gain)),
    uSets: uniform(sets(role) ? 1 : 0),
    uScattered: uniform(role === 'dry-mix' ? 1 : 0),
    uLit: lit,
  })
  const plainFamily = family === 'wood' ? 'plainWood' : 'plain'
  const pair =
    quality === 'light'
      ? ([solidMaterial(plainFamily, 'outside', shared, flat(1)), solidMaterial(plainFamily, 'outside', shared, flat(1.08))] as const)
      : ([
          solidMaterial(family, 'outside', shared, bake),
          solidMaterial(family, hatch === 'none' ? 'cut' : 'marked', shared, bake),
        ] as const)
  return {
    pair,
    lit,
    dispose: () => {
      for (const material of pair) material.dispose()
      for (const { value } of Object.values(baked ?? {})) if (value instanceof Texture) value.dispose()
    },
  }
}

const marksOwn = (hatch: Exclude<Hatch, 'none'>, ink: string, share: number): OwnUniforms => ({
  uMarks: uniform(marksTexture(hatch)),
  uMarksTile: uniform(new Vector2(hatchTiles[hatch].width, hatchTiles[hatch].height)),
  uInk: colour(ink),
  uInkShare: uniform(share),
})
