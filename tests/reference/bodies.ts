import Module, { type CrossSection, type Manifold, type ManifoldToplevel } from 'manifold-3d'

/**
 * Bodies of a general solid library (manifold-3d, an independent implementation of solid Booleans), in our frame:
 * y up, x and z level, plan angle from +x toward +z. Used as a reference in tests and as the rival in the benchmark.
 */
export type Kit = Readonly<{
  wasm: ManifoldToplevel
  /** Body of a profile [n][2] metres (r, y) turned about the axis, as a regular prism of `segments` sides with its corners on the circle. */
  turned: (profile: readonly (readonly [number, number])[]) => Manifold
  /** Upright box on the axis, `width` along x and `depth` along z, from y0 to y1. */
  box: (width: number, depth: number, y0: number, y1: number) => Manifold
  /** Everything of `body` below the plane y = a + gx x + gz z. */
  underPlane: (body: Manifold, a: number, gx: number, gz: number) => Manifold
  /** Everything below the cone y = a + m max(r, flatWithin), out to radius `reach` and down to `floor`. */
  underCone: (a: number, m: number, flatWithin: number, reach: number, floor: number) => Manifold
  /** Wedge of plan angles facing ± open/2, up to 300 degrees, out to `reach`, between two levels. */
  wedge: (open: number, facing: number, reach: number, y0: number, y1: number) => Manifold
  /** Round rod between two points. */
  rod: (from: readonly number[], to: readonly number[], diameter: number) => Manifold
  add: (a: Manifold, b: Manifold) => Manifold
  minus: (a: Manifold, b: Manifold) => Manifold
  and: (a: Manifold, b: Manifold) => Manifold
  keep: <T extends { delete(): void }>(thing: T) => T
  /** Frees everything made since the last call: wasm memory is not collected. */
  free: () => void
}>

let loading: Promise<ManifoldToplevel> | null = null
const load = async (): Promise<ManifoldToplevel> => {
  loading ??= Module().then((wasm) => {
    wasm.setup()
    return wasm
  })
  return loading
}

const degrees = (radians: number): number => (radians * 180) / Math.PI

export const solidKit = async (segments: number): Promise<Kit> => {
  const wasm = await load()
  const { Manifold: Solid, CrossSection: Flat } = wasm
  let made: { delete(): void }[] = []
  const keep = <T extends { delete(): void }>(thing: T): T => {
    made.push(thing)
    return thing
  }
  // The library turns about its own z and calls that up; a quarter turn about x brings (r, z) to our (r, y).
  const upright = (body: Manifold): Manifold => keep(body.rotate([-90, 0, 0]))
  const section = (points: readonly (readonly [number, number])[]): CrossSection =>
    keep(new Flat([points.map(([r, y]) => [r, y] as [number, number])]))

  const turned: Kit['turned'] = (profile) => upright(keep(section(profile).revolve(segments)))
  const box: Kit['box'] = (width, depth, y0, y1) => keep(keep(Solid.cube([width, y1 - y0, depth], true)).translate([0, (y0 + y1) / 2, 0]))
  const underPlane: Kit['underPlane'] = (body, a, gx, gz) => {
    const length = Math.hypot(gx, 1, gz)
    // trimByPlane keeps the side its normal points to.
    return keep(body.trimByPlane([gx / length, -1 / length, gz / length], -a / length))
  }
  const underCone: Kit['underCone'] = (a, m, flatWithin, reach, floor) =>
    turned([
      [0, floor],
      [reach, floor],
      [reach, a + m * reach],
      ...(flatWithin > 0 ? [[flatWithin, a + m * flatWithin] as const] : []),
      [0, a + m * flatWithin],
    ])
  const wedge: Kit['wedge'] = (open, facing, reach, y0, y1) => {
    const steps = Math.max(2, Math.ceil(open / 1))
    const fan = Array.from({ length: steps + 1 }, (_, i) => facing - open / 2 + (open * i) / steps)
    // Laid flat in (x, -z), so that standing it up about x turns -z back into z.
    const points: [number, number][] = [[0, 0], ...fan.map((t): [number, number] => [reach * Math.cos(t), -reach * Math.sin(t)])]
    const flat = keep(new Flat([points.reverse()]))
    return keep(upright(keep(flat.extrude(y1 - y0))).translate([0, y0, 0]))
  }
  const rod: Kit['rod'] = (from, to, diameter) => {
    const [dx = 0, dy = 0, dz = 0] = to.map((value, i) => value - (from[i] ?? 0))
    const length = Math.hypot(dx, dy, dz)
    const lying = keep(keep(Solid.cylinder(length, diameter / 2, diameter / 2, 24)).rotate([0, degrees(Math.acos(dz / length)), 0]))
    const aimed = keep(lying.rotate([0, 0, degrees(Math.atan2(dy, dx))]))
    return keep(aimed.translate([from[0] ?? 0, from[1] ?? 0, from[2] ?? 0]))
  }
  return {
    wasm,
    turned,
    box,
    underPlane,
    underCone,
    wedge,
    rod,
    keep,
    add: (a, b) => keep(a.add(b)),
    minus: (a, b) => keep(a.subtract(b)),
    and: (a, b) => keep(a.intersect(b)),
    free: () => {
      for (const thing of made) thing.delete()
      made = []
    },
  }
}
