/** One line of one piece of text as the page has set it, in pixels of the screen. */
export type SetLine = Readonly<{ text: string; left: number; right: number; top: number; height: number }>

type Piece = Readonly<{ from: number; to: number; box: DOMRect }>

const boxesOf = (range: Range, node: Text, from: number, to: number): readonly DOMRect[] => {
  range.setStart(node, from)
  range.setEnd(node, to)
  return [...range.getClientRects()].filter(({ width }) => width > 0)
}

/** Words, or single letters of a word that the page has broken. */
function piecesOf(node: Text): readonly Piece[] {
  const range = document.createRange()
  return [...node.data.matchAll(/\S+/g)].flatMap((match): Piece[] => {
    const from = match.index
    const to = from + match[0].length
    const boxes = boxesOf(range, node, from, to)
    const [box] = boxes
    if (!box) return []
    if (boxes.length === 1) return [{ from, to, box }]
    return Array.from({ length: to - from }, (_, i) => {
      const [own] = boxesOf(range, node, from + i, from + i + 1)
      return own ? [{ from: from + i, to: from + i + 1, box: own }] : []
    }).flat()
  })
}

/** The lines into which the page has broken a piece of text, with what each takes up. */
export function linesOf(node: Text): readonly SetLine[] {
  const lines: Piece[][] = []
  for (const piece of piecesOf(node)) {
    const last = lines.at(-1)
    const before = last?.at(-1)
    if (last && before && Math.abs(before.box.top - piece.box.top) < 2 && piece.box.left >= before.box.left) last.push(piece)
    else lines.push([piece])
  }
  return lines.flatMap((pieces): SetLine[] => {
    const [first] = pieces
    const last = pieces.at(-1)
    if (!first || !last) return []
    const text = node.data.slice(first.from, last.to).replace(/\s+/g, ' ')
    return [{ text, left: first.box.left, right: last.box.right, top: first.box.top, height: first.box.height }]
  })
}
