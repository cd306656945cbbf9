import { pierFrame } from '../../../core/derive/pierFrame.ts'
import { pierZones } from '../../../core/derive/pierZones.ts'
import { sectionPolygons } from '../../../core/geometry/section.ts'
import { fillKinds } from '../../../core/kinds/index.ts'
import type { SectionPolygon } from '../../../core/model/solid.ts'
import type { BracketId, FillId, PierDocument } from '../../../core/model/spec.ts'
import { defaultDocument } from '../../../core/spec/defaults.ts'
import { setChoice } from '../../../core/spec/edit.ts'

/** A small section to draw: polygons in metres, and the window to draw them in. */
export type Pictogram = Readonly<{
  polygons: readonly SectionPolygon[]
  box: Readonly<{ x: number; y: number; width: number; height: number }>
}>

const picked = (document: PierDocument, path: string, choice: string): PierDocument => {
  const result = setChoice(document, path, choice)
  return result.ok ? result.value : document
}

const drawn = (document: PierDocument, low: number, high: number, half: number): Pictogram => ({
  polygons: sectionPolygons(pierZones(pierFrame(document.spec)), 0, { cutPost: false }),
  box: { x: -half, y: -high, width: 2 * half, height: high - low },
})

const onBracket = fillKinds.find((kind) => kind.support === 'bracket')
const pictures = new Map<string, Pictogram>()
const once = (key: string, make: () => Pictogram): Pictogram => {
  const known = pictures.get(key)
  if (known) return known
  const made = make()
  pictures.set(key, made)
  return made
}

/** The same starting pier, filled in each way: drawn from what the kind itself places. */
export const fillPictogram = (id: FillId): Pictogram =>
  once(`fill ${id}`, () => {
    const { diameter, depth } = defaultDocument.spec.hole
    return drawn(picked(defaultDocument, 'fill.kind', id), -1.08 * depth, 0.42 * depth, 1.05 * diameter)
  })

/** The top of a pier with each bracket. */
export const bracketPictogram = (id: BracketId): Pictogram =>
  once(`bracket ${id}`, () => {
    const { diameter } = defaultDocument.spec.hole
    const pier = onBracket ? picked(defaultDocument, 'fill.kind', onBracket.id) : defaultDocument
    return drawn(picked(pier, 'support.bracket.kind', id), -0.75 * diameter, 0.75 * diameter, 0.75 * diameter)
  })
