import { derivePier } from '../derive/derivePier.ts'
import { sectionPolygons } from '../geometry/section.ts'
import type { PierDocument, PierSpec } from '../model/spec.ts'
import { parseJob } from '../spec/jobFile.ts'
import { documentFromContent } from '../spec/linkFields.ts'
import type { DocumentReader, SmallDrawing } from './documentKind.ts'

const millimeters = (value: number): number => Math.round(value * 1000) + 0

/** The pier cut along its fall, from below its bottom to a hand over grade. */
export const thumbnailOf = (spec: PierSpec): SmallDrawing => {
  const polygons = sectionPolygons(derivePier(spec).zones, spec.site.downhill, { cutPost: false })
  const { diameter, depth } = spec.hole
  const half = Math.max(1.05 * diameter, 0.55 * (spec.hole.bell?.diameter ?? 0), 0.5 * depth)
  const high = Math.min(0.42 * depth, Math.max(spec.post.heightAboveGrade, 0.2 * depth))
  return {
    box: [-half, -high, 2 * half, high + 1.08 * depth].map(millimeters) as [number, number, number, number],
    bodies: polygons.map(({ role, points }) => [role, points.flatMap(([right, up]) => [millimeters(right), millimeters(-up)])]),
  }
}

export const pierReader: DocumentReader<PierDocument> = {
  parse: parseJob,
  fromLink: documentFromContent,
  thumbnail: ({ spec }) => thumbnailOf(spec),
}
