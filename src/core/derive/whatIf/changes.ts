import type { ChangeId } from '../../model/saidIds.ts'
import { bars as barTable } from '../../engineering/tables/bars.ts'
import { cover } from '../../engineering/tables/concrete.ts'
import { postSections } from '../../engineering/tables/postSections.ts'
import type { BarSize, PierSpec, PostSectionId } from '../../model/spec.ts'
import { placesMix } from '../../spec/placement.ts'
import { verticalBarFields } from '../../spec/pier/steel.ts'
import { toSI } from '../../units/factors.ts'
import { metres } from '../../units/quantity.ts'

const inch = (value: number) => metres(toSI(value, 'in'))

/** Auger diameters that crews have, in. Common practice, no source. */
const augers = [8, 9, 10, 12, 14, 16, 18, 20, 24, 30, 36, 42, 48].map(inch)
const barSizes = Object.keys(barTable) as BarSize[]

/** One thing that could be built otherwise: `apply` gives the changed pier, or null where it does not apply. */
export type Change = Readonly<{ id: ChangeId; apply: (spec: PierSpec) => PierSpec | null }>

/** A bar grown with its hole as far as cover allows, never shortened. */
const grownBar = (spec: PierSpec, diameter: number): PierSpec['bars'] =>
  spec.bars && { ...spec.bars, length: metres(Math.max(spec.bars.length, diameter - 2 * cover.castAgainstEarth.value)) }

const nextAuger: Change = {
  id: 'next-auger',
  apply: (spec) => {
    const diameter = augers.find((size) => size > spec.hole.diameter * (1 + 1e-9))
    return diameter === undefined ? null : { ...spec, hole: { ...spec.hole, diameter }, bars: grownBar(spec, diameter) }
  },
}

const deeper: Change = {
  id: 'six-inches-deeper',
  apply: (spec) => ({ ...spec, hole: { ...spec.hole, depth: metres(spec.hole.depth + inch(6)) } }),
}

const nextBar: Change = {
  id: 'next-bar',
  apply: (spec) => {
    const size = spec.bars && barSizes[barSizes.indexOf(spec.bars.size) + 1]
    return spec.bars && size ? { ...spec, bars: { ...spec.bars, size } } : null
  },
}

const anotherBar: Change = {
  id: 'another-bar',
  apply: (spec) => {
    if (!spec.bars) return null
    const apart = 4 * barTable[spec.bars.size].diameter.value
    return { ...spec, bars: { ...spec.bars, count: spec.bars.count + 1, spacing: metres(Math.max(spec.bars.spacing, apart)) } }
  },
}

/** A bell half as wide again as the shaft, with sides at 60 degrees. */
const bell: Change = {
  id: 'add-bell',
  apply: (spec) => {
    if (spec.hole.bell) return null
    const diameter = metres(1.5 * spec.hole.diameter)
    const height = metres(((diameter - spec.hole.diameter) / 2) * Math.tan(Math.PI / 3))
    return { ...spec, hole: { ...spec.hole, bell: { diameter, height } } }
  },
}

const verticalSteel: Change = {
  id: 'add-vertical-bars',
  apply: (spec) => (spec.verticalBars || !placesMix(spec) ? null : { ...spec, verticalBars: verticalBarFields.first }),
}

const heavierPost: Readonly<Partial<Record<PostSectionId, PostSectionId>>> = {
  '4x4': '6x6',
  '4x6': '6x6',
  '6x6': '6x8',
  '6x8': '8x8',
  '3-ply-2x6': '4-ply-2x6',
}
const nextPost: Change = {
  id: 'next-post',
  apply: (spec) => {
    const section = heavierPost[spec.post.section]
    if (!section || postSections[section].width >= spec.hole.diameter) return null
    return { ...spec, post: { ...spec.post, section } }
  },
}

const anotherBolt: Change = {
  id: 'another-bolt',
  apply: (spec) => {
    if (spec.support.kind !== 'bracket') return null
    const { bracket } = spec.support
    return { ...spec, support: { ...spec.support, bracket: { ...bracket, boltCount: bracket.boltCount + 1 } } }
  },
}

/** Every change that is tried, one at a time. */
export const changes: readonly Change[] = [nextAuger, deeper, nextBar, anotherBar, bell, verticalSteel, nextPost, anotherBolt]
