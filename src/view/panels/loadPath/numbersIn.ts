/** A symbol of a formula and the TeX of the number that stands for it. */
export type Replacement = Readonly<{ symbol: string; number: string }>

const tokensOf = (tex: string): string[] =>
  tex.match(/\\[a-zA-Z]+|\\.|[0-9]+(?:\.[0-9]+)?|\s+|./g)?.filter((token) => token.trim() !== '') ?? []

/** Commands that stand for no quantity: functions, signs, spaces and constants. */
const known = new Set(
  String.raw`\sin \cos \tan \arctan \ln \log \exp \min \max \sqrt \frac \tfrac \dfrac \left \right \cdot \times \le \ge \pi \big \Big \bigl \bigr \Bigl \Bigr \text \mathrm \quad \qquad`.split(
    ' ',
  ),
)
const spaces = new Set(['\\,', '\\;', '\\!', '\\:', '\\ ', '\\quad'])
const isName = (token: string): boolean => /^[a-zA-Z]$/.test(token) || (/^\\[a-zA-Z]+$/.test(token) && !known.has(token))
const isNumber = (token: string): boolean => /^[0-9]/.test(token)

/** One symbol with what hangs on it, and nothing done to it. */
const isSymbol = (left: string): boolean => {
  const tokens = tokensOf(left.replace(/[_^]\s*(?:\{[^}]*\}|\\[a-zA-Z]+|.)/g, '')).filter((token) => !spaces.has(token) && token !== "'")
  return tokens.length === 1 && isName(tokens[0] ?? '')
}

/** What follows a symbol and would make it another one: an index or a prime. */
const binds = new Set(['_', "'"])

type Piece = Readonly<{ kind: 'kept'; token: string } | { kind: 'number'; tex: string }>

/** Tokens with every symbol replaced; null when a name is left that no number is known for. */
function replaced(
  tokens: readonly string[],
  replacements: readonly (Replacement & Readonly<{ tokens: readonly string[] }>)[],
): Piece[] | null {
  const pieces: Piece[] = []
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at] ?? ''
    const fits = replacements.find(
      (one) => one.tokens.every((part, i) => tokens[at + i] === part) && !binds.has(tokens[at + one.tokens.length] ?? ''),
    )
    if (fits) {
      pieces.push({ kind: 'number', tex: fits.number })
      at += fits.tokens.length
    } else if (token === '\\mathrm' || token === '\\text') {
      const close = tokens.indexOf('}', at)
      if (close < 0) return null
      for (const part of tokens.slice(at, close + 1)) pieces.push({ kind: 'kept', token: part })
      at = close + 1
    } else if (isName(token)) return null
    else {
      pieces.push({ kind: 'kept', token })
      at++
    }
  }
  return pieces
}

/** Puts a times sign wherever two factors meet of which one is a number that was put in. */
function spelt(pieces: readonly Piece[]): string {
  let out = ''
  let open = false
  let afterNumber = false
  let inBars = false
  pieces.forEach((piece, i) => {
    const next = pieces[i + 1]
    if (piece.kind === 'number') {
      const isBase = next?.kind === 'kept' && next.token === '^'
      const tex = isBase || piece.tex.startsWith('-') ? `\\left(${piece.tex}\\right)` : piece.tex
      out += open ? `\\times ${tex}` : tex
      open = true
      afterNumber = true
      return
    }
    const { token } = piece
    if (spaces.has(token)) return
    const isBar = token === '|'
    if (isBar) inBars = !inBars
    const begins =
      isNumber(token) ||
      token === '(' ||
      token === '[' ||
      (isBar && inBars) ||
      /^\\(?:sqrt|t?frac|sin|cos|tan|arctan|ln|log|exp|min|max|pi|left)$/.test(token)
    out += begins && afterNumber && open ? `\\times ${token}` : `${token} `
    afterNumber = false
    const ends = isNumber(token) || [')', ']', '}', '\\pi'].includes(token) || (isBar && !inBars)
    open = ends && !['^', '_'].includes(lastKept(pieces, i))
    if (token === '}' || token === ')' || token === ']') afterNumber = true
  })
  return out.trim()
}

const lastKept = (pieces: readonly Piece[], before: number): string => {
  const piece = pieces[before - 1]
  return piece?.kind === 'kept' ? piece.token : ''
}

/**
 * The right side of a formula with numbers in the place of its symbols, as an engineer writes the second line of a calculation. Null
 * when that can't be: no equation, or a symbol in it that is itself worked out and has no number here.
 * @param formula TeX, "left = right"; what follows ",\quad" is a side condition and is left out
 * @param replacements symbols as they stand in the formula
 */
export function numbersIn(formula: string, replacements: readonly Replacement[]): string | null {
  const main = formula.split(/,\s*\\quad/)[0] ?? ''
  const equals = main.indexOf('=')
  if (equals < 0 || replacements.length === 0 || !isSymbol(main.slice(0, equals))) return null
  const right = main.slice(equals + 1).replace(/(?:\\[, ])?\s*\(\\mathrm\{[^}]*\}\)/g, '')
  if (/^\s*\\sum/.test(right)) return replacements.map((one) => one.number).join('+')
  const listed = replacements.map((one) => ({ ...one, tokens: tokensOf(one.symbol) })).sort((a, b) => b.tokens.length - a.tokens.length)
  const pieces = replaced(tokensOf(right), listed)
  return pieces === null || !pieces.some((piece) => piece.kind === 'number') ? null : spelt(pieces)
}
