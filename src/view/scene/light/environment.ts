import {
  BackSide,
  BoxGeometry,
  Color,
  Mesh,
  MeshBasicMaterial,
  PMREMGenerator,
  Scene,
  SphereGeometry,
  type Texture,
  type WebGLRenderer,
} from 'three'

const glow = (hex: string, strength: number): MeshBasicMaterial => {
  const material = new MeshBasicMaterial({ color: new Color(hex).multiplyScalar(strength) })
  material.toneMapped = false
  return material
}

/** A room of soft daylight of our own: pale walls, a bright skylight, a warm and a cool panel. Nothing is fetched. */
function daylightRoom(): Scene {
  const room = new Scene()
  const walls = new Mesh(new SphereGeometry(20, 24, 12), glow('#d9dde0', 0.75))
  ;(walls.material as MeshBasicMaterial).side = BackSide
  const panel = (w: number, h: number, d: number, x: number, y: number, z: number, hex: string, strength: number) => {
    const mesh = new Mesh(new BoxGeometry(w, h, d), glow(hex, strength))
    mesh.position.set(x, y, z)
    mesh.lookAt(0, 0, 0)
    room.add(mesh)
  }
  room.add(walls)
  panel(16, 16, 0.1, 0, 14, 0.01, '#ffffff', 3.4)
  panel(9, 9, 0.1, -12, 5, 8, '#fff0da', 3)
  panel(9, 9, 0.1, 13, 4, -2, '#d6e4f2', 1.6)
  const floor = new Mesh(new BoxGeometry(40, 0.1, 40), glow('#cfc8b8', 0.55))
  floor.position.y = -9
  room.add(floor)
  return room
}

/** Prefiltered environment made on this renderer. It dies with the drawing context and must be made again after a restore. */
export function makeEnvironment(renderer: WebGLRenderer): Readonly<{ texture: Texture; dispose(): void }> {
  const room = daylightRoom()
  const generator = new PMREMGenerator(renderer)
  const target = generator.fromScene(room, 0.03)
  generator.dispose()
  room.traverse((node) => {
    if (!(node instanceof Mesh)) return
    node.geometry.dispose()
    ;(node.material as MeshBasicMaterial).dispose()
  })
  return { texture: target.texture, dispose: () => target.dispose() }
}
