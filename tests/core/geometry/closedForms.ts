/** Named closed forms for single bodies. The swept zones use the general integrals of measure.ts; these are their independent check. */

/**
 * Upright cylinder under a plane that slopes `s` (rise over run) and lies `dc` above its bottom on the axis.
 * @param r radius [m], positive
 * @param dc height of the plane on the axis [m], positive
 * @param s slope of the plane, non-negative; from r s > dc on, the plane cuts the bottom
 * @returns volume [m3], side area [m2], wetted base area [m2]
 * Source: definition. Checked by: tests/external/plane-cut-solids
 */
export function cylinderUnderPlane(r: number, dc: number, s: number): Readonly<{ volume: number; side: number; base: number }> {
  if (dc >= r * s) return { volume: Math.PI * r * r * dc, side: 2 * Math.PI * r * dc, base: Math.PI * r * r }
  const c = -dc / (s * r)
  const theta = Math.acos(c)
  const half = Math.sqrt(1 - c * c)
  const base = r * r * (theta - c * half)
  return {
    volume: dc * base + (2 / 3) * s * r ** 3 * half ** 3,
    side: 2 * r * (dc * theta + s * r * Math.sin(theta)),
    base,
  }
}

/**
 * Frustum of a cone between radii `wide` and `narrow` [m] over height `h` [m].
 * @returns volume [m3], side area [m2], area of the flat ledge between the two radii [m2]
 * Source: definition. Checked by: tests/external/plane-cut-solids
 */
export function frustum(wide: number, narrow: number, h: number): Readonly<{ volume: number; side: number; ledge: number }> {
  return {
    volume: (Math.PI * h * (wide * wide + wide * narrow + narrow * narrow)) / 3,
    side: Math.PI * (wide + narrow) * Math.hypot(h, wide - narrow),
    ledge: Math.PI * Math.abs(wide * wide - narrow * narrow),
  }
}

/**
 * Crown shaped as a cone of height `h` over base radius `a` [m], less a post `w` by `d` [m] on its axis that stays inside it.
 * @returns volume [m3]: pi a^2 h / 3 - h (w d - (1/a) * integral of r over the rectangle)
 * Source: definition. Checked by: tests/external/plane-cut-solids
 */
export function coneCrownLessRect(a: number, h: number, w: number, d: number): number {
  const diagonal = Math.hypot(w, d)
  const firstMoment = (w * d * diagonal) / 6 + (w ** 3 * Math.asinh(d / w)) / 12 + (d ** 3 * Math.asinh(w / d)) / 12
  return (Math.PI * a * a * h) / 3 - h * (w * d - firstMoment / a)
}

/**
 * Crown shaped as a spherical cap of height `h` over base radius `a` [m].
 * @returns volume [m3], curved area [m2]
 * Source: definition. Checked by: tests/external/plane-cut-solids
 */
export function capCrown(a: number, h: number): Readonly<{ volume: number; area: number }> {
  return { volume: (Math.PI * h * (3 * a * a + h * h)) / 6, area: Math.PI * (a * a + h * h) }
}
