import { Box3, Color, DirectionalLight, Group, HemisphereLight, Vector3 } from 'three'
import type { PlacedPier } from '../pier/placedPier.ts'
import { skyProbe } from './skyProbe.ts'

/** Sun: to the left of the reader who looks square on, and up [rad]. */
const sunAside = (38 * Math.PI) / 180
const sunUp = (47 * Math.PI) / 180

/** Plan direction to the sun over a cut, as long as a shadow is cast by 1 m of height. */
export const sunCast = (facing: number): readonly [number, number] => {
  const cast = 1 / Math.tan(sunUp)
  return [cast * Math.cos(facing + sunAside), cast * Math.sin(facing + sunAside)]
}

/** How much of the light of the room falls on the pier. */
const roomShare = 0.5

/**
 * One soft sun that goes round with the cut, so that cut faces never fall into black, and the sky's fill. Shadows are drawn anew only
 * where it is aimed: whoever changes what casts them aims it.
 */
export class Daylight {
  readonly root = new Group()
  private readonly sun = new DirectionalLight('#fff9f0', 2.5)
  private readonly sky = new HemisphereLight('#eef2f5', '#cbc5ba', 1.3)
  private readonly room = skyProbe(roomShare)

  constructor() {
    this.sun.castShadow = true
    this.sun.shadow.mapSize.set(2048, 2048)
    this.sun.shadow.bias = -0.0004
    this.sun.shadow.radius = 3.2
    this.sun.shadow.autoUpdate = false
    this.root.add(this.sun, this.sun.target, this.sky, this.room)
  }

  /** Over piers at their places, round with their cut; what they cast is drawn anew. */
  aim(places: readonly [PlacedPier, ...PlacedPier[]]): void {
    const [{ pier, turn }] = places
    const azimuth = pier.look.cut.facing + turn + sunAside
    const box = new Box3()
    for (const {
      at,
      pier: { extent },
    } of places) {
      const { half, bottom, groundTop, pierTop, postTop } = extent
      const top = Math.min(postTop, Math.max(groundTop, pierTop) + half)
      const reach = half * Math.SQRT2
      box.expandByPoint(new Vector3(at[0] - reach, at[1] + bottom, at[2] - reach))
      box.expandByPoint(new Vector3(at[0] + reach, at[1] + top, at[2] + reach))
    }
    const middle = box.getCenter(this.sun.target.position)
    // A block alone reaches from its axis to its corners; many stand in a rectangle.
    const { x, y, z } = box.getSize(new Vector3())
    const reach = (places.length > 1 ? Math.hypot(x, y, z) : Math.hypot(x, y)) * 0.51
    const level = Math.cos(sunUp)
    const far = reach * 3
    this.sun.position
      .set(Math.cos(azimuth) * level, Math.sin(sunUp), Math.sin(azimuth) * level)
      .multiplyScalar(far)
      .add(middle)
    const { camera } = this.sun.shadow
    camera.left = camera.bottom = -reach
    camera.right = camera.top = reach
    camera.near = far - reach * 1.6
    camera.far = far + reach * 1.8
    camera.updateProjectionMatrix()
    this.sun.shadow.normalBias = Math.max(0.006, 0.002 * reach)
    this.sun.shadow.needsUpdate = true
  }

  /** Without shadows there is no light of the room either: the sky makes up for it. */
  setTheme(isDark: boolean, hasShadow: boolean): void {
    this.sun.intensity = isDark ? 2.35 : 2.5
    this.sun.castShadow = hasShadow
    this.room.visible = hasShadow
    this.sky.intensity = (isDark ? 1.1 : 1.3) * (hasShadow ? 1 : 1.7)
    this.sky.groundColor = new Color(isDark ? '#a39d92' : '#cbc5ba')
  }

  dispose(): void {
    this.sun.dispose()
    this.sky.dispose()
  }
}
