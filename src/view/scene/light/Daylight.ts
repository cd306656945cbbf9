import { Color, DirectionalLight, Group, HemisphereLight } from 'three'
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
 * after `askForShadows`: whoever changes what casts them asks.
 */
export class Daylight {
  readonly root = new Group()
  private readonly sun = new DirectionalLight('#fff9f0', 2.5)
  private readonly sky = new HemisphereLight('#eef2f5', '#cbc5ba', 1.3)

  private readonly room = skyProbe(roomShare)
  private skyLight = 1.3

  constructor() {
    this.sun.castShadow = true
    this.sun.shadow.mapSize.set(2048, 2048)
    this.sun.shadow.bias = -0.0004
    this.sun.shadow.normalBias = 0.006
    this.sun.shadow.radius = 3.2
    this.sun.shadow.autoUpdate = false
    this.root.add(this.sun, this.sun.target, this.sky, this.room)
  }

  /** `facing` plan angle of the cut; `reach` radius [m] of all that may cast a shadow about (0, `middle`, 0). */
  aim(facing: number, reach: number, middle: number): void {
    const azimuth = facing + sunAside
    const level = Math.cos(sunUp)
    const far = reach * 3
    this.sun.position.set(Math.cos(azimuth) * level * far, middle + Math.sin(sunUp) * far, Math.sin(azimuth) * level * far)
    this.sun.target.position.set(0, middle, 0)
    const { camera } = this.sun.shadow
    camera.left = camera.bottom = -reach
    camera.right = camera.top = reach
    camera.near = far - reach * 1.6
    camera.far = far + reach * 1.8
    camera.updateProjectionMatrix()
    this.askForShadows()
  }

  setTheme(isDark: boolean): void {
    this.sun.intensity = isDark ? 2.35 : 2.5
    this.skyLight = isDark ? 1.1 : 1.3
    this.setShadows(this.sun.castShadow)
    this.sky.groundColor = new Color(isDark ? '#a39d92' : '#cbc5ba')
  }

  /** Without shadows there is no light of the room either: the sky makes up for it. */
  setShadows(on: boolean): void {
    this.sun.castShadow = on
    this.room.visible = on
    this.sky.intensity = on ? this.skyLight : this.skyLight * 1.7
  }

  /** What casts shadows has changed. */
  askForShadows(): void {
    this.sun.shadow.needsUpdate = true
  }

  dispose(): void {
    this.sun.dispose()
    this.sky.dispose()
  }
}
