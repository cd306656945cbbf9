import type { PostSectionId } from '../../model/spec.ts'
import type { Standing } from '../../model/worked.ts'
import { type Metres, metres } from '../../units/quantity.ts'
import { fromPrinted } from '../cited.ts'
import type { SourceId } from '../sources.ts'

/**
 * A post's dressed cross-section. `width` lies along x, `depth` along z; a round post has both equal to its diameter.
 * `plies` is 1 for a solid post; plies of a laminated one are stacked along `width`.
 */
export type PostSection = Readonly<{
  shape: 'rect' | 'round'
  width: Metres
  depth: Metres
  plies: number
  /** 'lumber' is dimension lumber, 'timber' 5x5 and larger, 'laminated' nailed plies of dimension lumber, 'pole' round. */
  make: 'lumber' | 'timber' | 'laminated' | 'pole'
  /** As printed, inches. */
  printed: Readonly<{ width: number; depth: number; unit: 'in' }>
  source: SourceId
  standing: Standing
}>

const section = (
  shape: PostSection['shape'],
  make: PostSection['make'],
  width: number,
  depth: number,
  plies: number,
  source: SourceId,
  standing: Standing,
): PostSection => ({
  shape,
  make,
  plies,
  source,
  standing,
  width: metres(fromPrinted(width, 'in')),
  depth: metres(fromPrinted(depth, 'in')),
  printed: { width, depth, unit: 'in' },
})
const sawn = (make: 'lumber' | 'timber', width: number, depth: number, standing: Standing) =>
  section('rect', make, width, depth, 1, 'nds-supplement-1b', standing)
const laminated = (plies: number, depth: number) =>
  section('rect', 'laminated', plies * 1.5, depth, plies, 'nds-supplement-1b', 'secondary')
const pole = (diameter: number) => section('round', 'pole', diameter, diameter, 1, 'assumption', 'assumed here')

/** Dressed sizes. Sawn: nominal less 1/2 in (2x8 plies 7-1/4 in). Poles: the diameter named is the diameter. */
export const postSections: Readonly<Record<PostSectionId, PostSection>> = {
  '4x4': sawn('lumber', 3.5, 3.5, 'secondary'),
  '4x6': sawn('lumber', 3.5, 5.5, 'secondary'),
  '6x6': sawn('timber', 5.5, 5.5, 'from memory'),
  '6x8': sawn('timber', 5.5, 7.5, 'from memory'),
  '8x8': sawn('timber', 7.5, 7.5, 'from memory'),
  '3-ply-2x6': laminated(3, 5.5),
  '4-ply-2x6': laminated(4, 5.5),
  '3-ply-2x8': laminated(3, 7.25),
  'round-6': pole(6),
  'round-7': pole(7),
  'round-8': pole(8),
  'round-9': pole(9),
  'round-10': pole(10),
}
