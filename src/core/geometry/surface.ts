import { type Metres, metres } from '../units/quantity.ts'

/**
 * A height field about the axis: y(r, theta) = a + m r + r (gx cos theta + gz sin theta), theta in plan from +x toward +z.
 * Level: m = gx = gz = 0. Grade plane: m = 0. Cone on the axis: gx = gz = 0. `a` in metres, slopes in rise over run.
 * Inside `flatWithin` [m] a cone is cut off level: the landing under a bracket.
 */
export type Surface = Readonly<{ a: number; m: number; gx: number; gz: number; flatWithin?: number }>

export const level = (y: number): Surface => ({ a: y, m: 0, gx: 0, gz: 0 })
export const plane = (a: number, gx: number, gz: number): Surface => ({ a, m: 0, gx, gz })
/** Cone that has height `yRim` at radius `rim` and `yInner` at radius `inner`. */
export const cone = (rim: number, yRim: number, inner: number, yInner: number): Surface => {
  const m = (yRim - yInner) / (rim - inner)
  return { a: yRim - m * rim, m, gx: 0, gz: 0 }
}
/** The same surface moved straight up by `dy` [m]. */
export const raised = (surface: Surface, dy: number): Surface => ({ ...surface, a: surface.a + dy })

/** Height at radius r [m] and plan angle theta [rad]. */
export const heightAt = (s: Surface, r: number, theta: number): Metres =>
  metres(s.a + s.m * Math.max(r, s.flatWithin ?? 0) + r * (s.gx * Math.cos(theta) + s.gz * Math.sin(theta)))
