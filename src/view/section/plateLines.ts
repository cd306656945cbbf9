import type { LineStyle, Plate } from './ink.ts'
import { captionSize, platePadding, type TypeSize } from './typeSize.ts'

/** Lines in the order in which they are drawn. */
export const inkStyles = [
  'weak',
  'crumbly',
  'powder',
  'damp',
  'wet',
  'open',
  'gone',
  'joint',
  'pond',
  'leader',
  'arc',
  'dimension',
  'tick',
  'frost',
  'zone',
  'rain',
  'water',
  'arrow',
  'drop',
  'dot',
  'disc',
  'eye',
] as const satisfies readonly LineStyle[]

/** Where a line of a plate stands, and how large: names all alike, the caption under a figure smaller. */
export function lineAt(
  { kind, lines }: Plate,
  i: number,
  size: TypeSize,
): Readonly<{ x: number; y: number; fontSize: number; fontWeight: number }> {
  const base = kind === 'name' ? size.name : size.figure
  const fontSize = i > 0 && kind !== 'name' ? captionSize(size.figure) : base
  const y = platePadding - 1 + base * 0.86 + (i === 0 || lines.length < 2 ? 0 : kind === 'name' ? base * 1.14 : fontSize * 1.1)
  return { x: platePadding, y, fontSize, fontWeight: kind !== 'name' && i === 0 ? 600 : 500 }
}
