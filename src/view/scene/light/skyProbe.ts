import { Color, LightProbe, SphericalHarmonics3, Vector3 } from 'three'

/** A pane of the room of daylight: where its middle is and how wide and high it is [m], its colour, how bright. It faces the pier. */
type Pane = Readonly<{ at: readonly [number, number, number]; wide: number; high: number; colour: string; strength: number }>

const panes: readonly Pane[] = [
  { at: [0, 14, 0.01], wide: 16, high: 16, colour: '#ffffff', strength: 3.4 },
  { at: [-12, 5, 8], wide: 9, high: 9, colour: '#fff0da', strength: 3 },
  { at: [13, 4, -2], wide: 9, high: 9, colour: '#d6e4f2', strength: 1.6 },
  { at: [0, -9, 0.01], wide: 40, high: 40, colour: '#cfc8b8', strength: 0.55 },
]
const wall = { colour: '#d9dde0', strength: 0.75 } as const
const samples = 1500
const up = new Vector3(0, 1, 0)

/** What the pier sees of the room in one direction. */
function seen(way: Vector3): Color {
  for (const { at, wide, high, colour, strength } of panes) {
    const middle = new Vector3(...at)
    const facing = middle.clone().normalize()
    const ahead = way.dot(facing)
    if (ahead <= 0) continue
    const place = way.clone().multiplyScalar(middle.length() / ahead)
    const right = new Vector3().crossVectors(up, facing).normalize()
    const isOn = Math.abs(place.dot(right)) < wide / 2 && Math.abs(place.dot(new Vector3().crossVectors(facing, right))) < high / 2
    if (isOn) return new Color(colour).multiplyScalar(strength)
  }
  return new Color(wall.colour).multiplyScalar(wall.strength)
}

/** Soft daylight from all sides, from a room of our own: pale walls, a bright skylight, a warm and a cool pane. `share`: how much of it falls. */
export function skyProbe(share: number): LightProbe {
  const sh = new SphericalHarmonics3()
  const basis = new Array<number>(9).fill(0)
  const way = new Vector3()
  for (let i = 0; i < samples; i++) {
    // Directions spread evenly over the sphere, in a spiral.
    const y = 1 - (2 * i + 1) / samples
    const level = Math.sqrt(1 - y * y)
    way.set(level * Math.cos(2.399963 * i), y, level * Math.sin(2.399963 * i))
    SphericalHarmonics3.getBasisAt(way, basis)
    const { r, g, b } = seen(way)
    basis.forEach((value, k) => {
      sh.coefficients[k]?.add(new Vector3(r, g, b).multiplyScalar((value * 4 * Math.PI) / samples))
    })
  }
  return new LightProbe(sh, share)
}
