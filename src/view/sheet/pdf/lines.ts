/** One line of one piece of text as the page has set it, in pixels of the screen. All of it runs one way. */
export type SetLine = Readonly<{ text: string; left: number; right: number; top: number; height: number; fromRight: boolean }>

type Piece = Readonly<{ from: number; to: number; box: DOMRect; fromRight: boolean }>

/** Letters of the scripts that are written from the right, by their blocks in Unicode. */
const fromRight = '\\u0590-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc\\u{10800}-\\u{10fff}\\u{1e800}-\\u{1efff}'
const anyFromRight = new RegExp(`[${fromRight}]`, 'u')
/** Runs of such letters with the signs between them, and what stands before, between and after. */
const runs = new RegExp(`[${fromRight}](?:[^\\p{L}\\p{N}]*[${fromRight}])*|[^${fromRight}]+`, 'gu')

const boxesOf = (range: Range, node: Text, from: number, to: number): readonly DOMRect[] => {
  range.setStart(node, from)
  range.setEnd(node, to)
  return [...range.getClientRects()].filter(({ width }) => width > 0)
}

/** A word, or a part of it, where it stands in one box; else its letters one by one: the page has broken it. */
function inBoxes(range: Range, node: Text, from: number, text: string): readonly Piece[] {
  const boxes = boxesOf(range, node, from, from + text.length)
  const [box] = boxes
  if (!box) return []
  if (boxes.length === 1 || text.length === 1) return [{ from, to: from + text.length, box, fromRight: anyFromRight.test(text) }]
  return Array.from(text).flatMap((letter, i, all) => inBoxes(range, node, from + all.slice(0, i).join('').length, letter))
}

/** Words; where one runs both ways, its runs. */
function piecesOf(node: Text): readonly Piece[] {
  const range = document.createRange()
  return [...node.data.matchAll(/\S+/g)].flatMap(({ index, 0: word }) => {
    if (!anyFromRight.test(word) || boxesOf(range, node, index, index + word.length).length < 2) return inBoxes(range, node, index, word)
    return [...word.matchAll(runs)].flatMap((run) => inBoxes(range, node, index + run.index, run[0]))
  })
}

/**
 * The lines into which the page has broken a piece of text, with what each takes up. What runs from the right stands for itself, word by
 * word where the page has set it, and so does what follows it.
 */
export function linesOf(node: Text): readonly SetLine[] {
  const lines: Piece[][] = []
  for (const piece of piecesOf(node)) {
    const last = lines.at(-1)
    const before = last?.at(-1)
    const isSameWay = before !== undefined && !before.fromRight && !piece.fromRight
    if (last && isSameWay && Math.abs(before.box.top - piece.box.top) < 2 && piece.box.left >= before.box.left) last.push(piece)
    else lines.push([piece])
  }
  return lines.flatMap((pieces): SetLine[] => {
    const [first] = pieces
    const last = pieces.at(-1)
    if (!first || !last) return []
    const text = node.data.slice(first.from, last.to).replace(/\s+/g, ' ')
    const { left, top, height } = first.box
    return [{ text, left, right: last.box.right, top, height, fromRight: first.fromRight }]
  })
}
