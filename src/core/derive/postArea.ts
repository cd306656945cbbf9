import { postSections } from '../engineering/tables/postSections.ts'
import type { PostSectionId } from '../model/spec.ts'
import { type SquareMetres, squareMetres } from '../units/quantity.ts'

/** Area of a post across its length. */
export function postArea(id: PostSectionId): SquareMetres {
  const { shape, width, depth } = postSections[id]
  return squareMetres(shape === 'round' ? (Math.PI * width ** 2) / 4 : width * depth)
}
