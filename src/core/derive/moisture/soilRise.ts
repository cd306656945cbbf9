import { capillaryRise } from '../../engineering/tables/capillaryRise.ts'
import { type Texture, texturesOfClass } from '../../engineering/tables/infiltration.ts'
import type { Cited } from '../../engineering/cited.ts'
import type { PierSpec, PresumptiveClass, Soil } from '../../model/spec.ts'

/** Least and greatest published height that water rises in one soil; null where none is published. */
export type Rise = Readonly<{ low: Cited | null; high: Cited | null }>
const unknown: Rise = { low: null, high: null }

/** Class that a texture belongs to, by the pairing of the table. */
const classOfTexture = (texture: Texture | null): PresumptiveClass | null => {
  if (texture === null) return null
  for (const name in texturesOfClass) {
    const one = name as PresumptiveClass
    if (texturesOfClass[one].includes(texture)) return one
  }
  return null
}

const riseOf = (soil: Soil, texture: Texture | null): Rise => {
  const known = soil.kind === 'presumptive' ? soil.class : classOfTexture(texture)
  return known === null ? unknown : capillaryRise[known]
}

/** Rise in the first layer, and in the second with the depth where it starts [m]. The texture entered is that of the first. */
export type Rises = Readonly<{ upper: Rise; lower: Rise | null; from: number | null }>
export const risesOf = ({ site, water }: PierSpec): Rises => ({
  upper: riseOf(site.soil, water.texture),
  lower: site.lower && riseOf(site.lower.soil, null),
  from: site.lower?.from ?? null,
})

/** Rise in the layer at a depth below grade [m]. */
export const riseAtDepth = ({ upper, lower, from }: Rises, depth: number): Rise =>
  lower !== null && from !== null && depth > from ? lower : upper
