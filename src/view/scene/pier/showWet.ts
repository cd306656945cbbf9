import type { ScatterClass } from '../../../core/engineering/mix/dryPourScatter.ts'
import type { WoodWetness } from '../../../core/engineering/tables/contactWetness.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { shiftAt } from '../../../core/geometry/leaningPost.ts'
import { postOf } from '../../../core/geometry/postOf.ts'
import type { Zone } from '../../../core/model/zone.ts'
import type { WaterParts } from '../../section/useWater.ts'
import type { PostBounds } from '../materials/zoneMaterials.ts'
import { scatterRaster, type WetUniforms } from '../materials/wetUniforms.ts'
import { wetBands } from './wetBands.ts'

/** Classes as the materials count them, driest first. */
const rank: Readonly<Record<WoodWetness, number>> = { 'dries-out': 0, 'wet-at-times': 1, 'stays-wet': 2 }
/** A byte for each class, as far apart as the materials read them. */
const byteOf: Readonly<Record<ScatterClass, number>> = { sound: 0, weak: 80, crumbly: 160, powder: 240 }

/** What works out wet wood; null while none is shown. */
type WetNow = Pick<WaterParts, 'dryPourOf' | 'moistureOf'> | null

/** Puts a spec's wet wood and dry pour into what the materials read. `water` null: the materials show none of it, and nothing is worked out. */
export function showWet(wet: WetUniforms, spec: PierSpec, zones: readonly Zone[], post: PostBounds | null, water: WetNow): void {
  const leaning = postOf(zones)?.leaning
  wet.uWet.value = water && post ? 1 : 0
  wet.uWetPour.value = 0
  if (!water) return
  const half = (post?.width ?? 0.14) / 2
  const { downhill } = spec.site
  wet.uWetSide.value.set(Math.cos(downhill), Math.sin(downhill), 1 / half, 0)
  wet.uWetLean.value.set(leaning ? shiftAt(leaning, 0) : 0, leaning ? Math.tan(leaning.lean) : 0)
  const { profile, groundline } = water.moistureOf(spec)
  const { uphill, axis, downhill: lower } = groundline.bands
  wet.uZoneFrom.value.set(uphill.from, axis.from, lower.from)
  wet.uZoneTo.value.set(uphill.to, axis.to, lower.to)
  const bands = wetBands(profile)
  const count = Math.min(bands.length, wet.uWetTo.value.length)
  wet.uWetCount.value = count
  for (let i = 0; i < count; i++) {
    const band = bands[i]
    if (!band) continue
    const { to, wetness, waterAndAir } = band
    wet.uWetTo.value[i]?.set(to.uphill, to.axis, to.downhill, rank[wetness] + (waterAndAir ? 0.5 : 0))
  }
  showPour(wet, spec, half, water)
}

function showPour(wet: WetUniforms, spec: PierSpec, half: number, { dryPourOf }: NonNullable<WetNow>): void {
  const pour = dryPourOf(spec)
  if (!pour) return
  wet.uWetPour.value = 1
  wet.uPour.value.set(half, spec.hole.diameter / 2, pour.to, pour.from)
  const texture = wet.uScatter.value
  const cells = texture.image.data as Uint8Array
  const { columns, rows } = scatterRaster
  const middle = columns / 2
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      // The uphill hand goes on where the downhill one ends, so that the two are not each other's mirror.
      const across = Math.abs(column + 0.5 - middle) / middle + (column < middle ? 1 : 0)
      const found = pour.classAt(across, (row + 0.5) / rows)
      cells[row * columns + column] = byteOf[found]
    }
  texture.needsUpdate = true
}
