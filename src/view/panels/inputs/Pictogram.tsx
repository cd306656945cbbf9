import { pierFrame } from '../../../core/derive/pierFrame.ts'
import { pierZones } from '../../../core/derive/pierZones.ts'
import { sectionPolygons } from '../../../core/geometry/section.ts'
import { fillKinds } from '../../../core/kinds/index.ts'
import type { SectionPolygon } from '../../../core/model/solid.ts'
import type { PierDocument } from '../../../core/model/spec.ts'
import { defaultDocument } from '../../../core/spec/defaults.ts'
import { setChoice } from '../../../core/spec/edit.ts'

/** A small section to draw: polygons in metres, and the window to draw them in. */
export type Stamp = Readonly<{
  polygons: readonly SectionPolygon[]
  box: Readonly<{ x: number; y: number; width: number; height: number }>
}>

const picked = (document: PierDocument, path: string, choice: string): PierDocument => {
  const result = setChoice(document, path, choice)
  return result.ok ? result.value : document
}

const drawn = (document: PierDocument, low: number, high: number, half: number): Stamp => ({
  polygons: sectionPolygons(pierZones(pierFrame(document.spec)), 0, { cutPost: false }),
  box: { x: -half, y: -high, width: 2 * half, height: high - low },
})

const onBracket = fillKinds.find((kind) => kind.support === 'bracket')
const pictures = new Map<string, Stamp>()
const once = (key: string, make: () => Stamp): Stamp => {
  const known = pictures.get(key)
  if (known) return known
  const made = make()
  pictures.set(key, made)
  return made
}

/** The same starting pier, filled in each way: drawn from what the kind itself places. */
export const fillPictogram = (id: string): Stamp =>
  once(`fill ${id}`, () => {
    const { diameter, depth } = defaultDocument.spec.hole
    return drawn(picked(defaultDocument, 'fill.kind', id), -1.08 * depth, 0.42 * depth, 1.05 * diameter)
  })

/** The top of a pier with each bracket. */
export const bracketPictogram = (id: string): Stamp =>
  once(`bracket ${id}`, () => {
    const { diameter } = defaultDocument.spec.hole
    const pier = onBracket ? picked(defaultDocument, 'fill.kind', onBracket.id) : defaultDocument
    return drawn(picked(pier, 'support.bracket.kind', id), -0.75 * diameter, 0.75 * diameter, 0.75 * diameter)
  })

/** A section the size of a stamp: what is placed, where, in the colours of the picture. */
export const Pictogram = ({ drawing }: { drawing: Stamp }) => {
  const { x, y, width, height } = drawing.box
  return (
    <svg
      className='pictogram'
      viewBox={`${x} ${y} ${width} ${height}`}
      preserveAspectRatio='xMidYMid slice'
      aria-hidden='true'
      focusable='false'
    >
      {drawing.polygons.map((polygon, i) => (
        <polygon
          // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is made once and never reordered
          key={i}
          className={`role-${polygon.role}`}
          points={polygon.points.map(([right, up]) => `${right.toFixed(4)},${(-up).toFixed(4)}`).join(' ')}
        />
      ))}
    </svg>
  )
}
