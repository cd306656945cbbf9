const functions: Readonly<Record<string, (...args: readonly number[]) => number>> = {
  '\\sin': Math.sin,
  '\\cos': Math.cos,
  '\\tan': Math.tan,
  '\\arctan': Math.atan,
  '\\exp': Math.exp,
  '\\ln': Math.log,
  '\\min': Math.min,
  '\\max': Math.max,
}
const close: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}', '|': '|' }

/**
 * Value of a sum in TeX with numbers in the place of its symbols, read as on a calculator: what follows a relation is left out, a unit
 * counts for nothing, `12^\circ` is an angle. Throws on what it can't read.
 */
export function texValue(tex: string): number {
  const tokens = (tex.split(/\\[gl]e(?![a-z])/)[0] ?? '')
    .replace(/\\mathrm\s*\{[^{}]*\}/g, ' ')
    .match(/\\[a-zA-Z]+|\\.|\d+(?:\.\d+)?(?:e[+-]?\d+)?|\S/g)
    ?.filter((token) => !/^\\(?:left|right|[,;!: ]|quad)$/.test(token))
  if (!tokens) throw new Error(`nothing to read in ${tex}`)
  let at = 0
  const peek = () => tokens[at] ?? ''
  const take = (want?: string): string => {
    const token = peek()
    if (want !== undefined && token !== want) throw new Error(`"${want}" wanted, "${token}" found at ${at} in ${tex}`)
    at++
    return token
  }
  const inside = (open: string): number[] => {
    take(open)
    const all = [sum()]
    while (peek() === ',') {
      take()
      all.push(sum())
    }
    take(close[open])
    return all
  }
  const only = (values: readonly number[]): number => {
    const [first] = values
    if (values.length !== 1 || first === undefined) throw new Error(`one value wanted in ${tex}`)
    return first
  }
  /** What a command or a power acts on: a group in braces, or one digit of a number. */
  const argument = (): number => {
    if (peek() === '{' || peek() === '(') return only(inside(peek()))
    const token = take()
    if (!/^\d/.test(token)) throw new Error(`no argument "${token}" in ${tex}`)
    if (token.length > 1) tokens.splice(at, 0, token.slice(1))
    return Number(token[0])
  }
  const power = (base: number): number => {
    if (peek() !== '^') return base
    take()
    if (peek() === '\\circ') {
      take()
      return (base * Math.PI) / 180
    }
    return base ** argument()
  }
  const item = (): number => {
    const token = peek()
    if (token in close) return power(token === '|' ? Math.abs(only(inside('|'))) : only(inside(token)))
    take()
    if (/^\d/.test(token)) return power(Number(token))
    if (token === '\\pi') return power(Math.PI)
    if (token === '\\sqrt') return power(Math.sqrt(argument()))
    if (/^\\[td]?frac$/.test(token)) {
      const top = argument()
      return power(top / argument())
    }
    const named = functions[token]
    if (!named) throw new Error(`"${token}" can't be read in ${tex}`)
    let raised = 1
    if (peek() === '^') {
      take()
      raised = argument()
    }
    return named(...(peek() === '(' || peek() === '[' ? inside(peek()) : [item()])) ** raised
  }
  const product = (): number => {
    let value = item()
    for (;;) {
      const token = peek()
      if (
        token === '' ||
        /^[+\-,)\]}]$/.test(token) ||
        (token === '|' && tokens.slice(0, at).filter((one) => one === '|').length % 2 === 1)
      )
        return value
      if (token === '/') {
        take()
        value /= item()
        continue
      }
      if (token === '\\times' || token === '\\cdot') take()
      value *= item()
    }
  }
  function sum(): number {
    let value = 0
    let sign = 1
    if (peek() === '-') {
      take()
      sign = -1
    }
    value = sign * product()
    while (peek() === '+' || peek() === '-') {
      const plus = take() === '+'
      value += plus ? product() : -product()
    }
    return value
  }
  const value = sum()
  if (at < tokens.length) throw new Error(`"${peek()}" left over in ${tex}`)
  return value
}
