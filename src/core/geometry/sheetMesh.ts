import type { Cut, Mesh } from '../model/solid.ts'
import type { Sheet } from '../model/zone.ts'
import { cornerPoint } from './corner.ts'
import { MeshWriter } from './meshWriter.ts'
import { planAngles } from './planAngles.ts'

/**
 * One-sided mesh of a water or frost sheet, facing up, with the cut's sector left out. `outline` holds the two lines in
 * which the sheet meets the cut.
 */
export function sheetMesh(sheet: Sheet, cut: Cut, options: Readonly<{ segments: number; special: readonly number[] }>): Mesh {
  const angles = planAngles(options.special, cut, options.segments)
  const count = angles.theta.length
  const writer = new MeshWriter(2 * count, 6 * count)
  const [inner, outer] = sheet.corners
  const outline: number[] = []
  for (let k = 0; k < count; k++) {
    const c = angles.cos[k] ?? 1
    const s = angles.sin[k] ?? 0
    const [ri, yi] = cornerPoint(inner, c, s)
    const [ro, yo] = cornerPoint(outer, c, s)
    writer.vertex(ri * c, yi, ri * s, 0, 1, 0)
    writer.vertex(ro * c, yo, ro * s, 0, 1, 0)
    if (k > 0) {
      const base = 2 * k - 2
      writer.triangle(base, base + 2, base + 3, ri === 0)
      writer.triangle(base, base + 3, base + 1, false)
    }
    if (!angles.closed && (k === 0 || k === count - 1)) outline.push(ri * c, yi, ri * s, ro * c, yo, ro * s)
  }
  return writer.finish(writer.indexCount, outline)
}
