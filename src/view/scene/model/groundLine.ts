import type { Surface } from '../../../core/geometry/surface.ts'
import { heightAlong } from '../../../core/geometry/corner.ts'

/** The part of cut outlines that runs along grade, [n][2][3] metres: the ground line where it is cut. */
export function groundLine(outlines: readonly Float32Array[], grade: Surface): Float32Array {
  const out: number[] = []
  const onGrade = (x: number, y: number, z: number): boolean => {
    const r = Math.hypot(x, z)
    return Math.abs(y - (r === 0 ? grade.a : heightAlong(grade, r, x / r, z / r))) < 1e-5
  }
  for (const outline of outlines)
    for (let i = 0; i < outline.length; i += 6) {
      const [ax, ay, az, bx, by, bz] = outline.subarray(i, i + 6) as unknown as [number, number, number, number, number, number]
      if (onGrade(ax, ay, az) && onGrade(bx, by, bz)) out.push(ax, ay, az, bx, by, bz)
    }
  return Float32Array.from(out)
}
