/** A file with its text. */
type Text = Readonly<{ path: string; text: string }>

const withoutComments = (css: string): string => css.replace(/\/\*[\s\S]*?\*\//g, '')

/** Names of classes that a stylesheet has rules for. */
export const styled = (css: string): Set<string> =>
  new Set([...withoutComments(css).matchAll(/\.([a-zA-Z][\w-]*)(?=[^{};]*\{)/g)].map((match) => match[1] ?? ''))

/** What stands in quotes in each `className`, from its sign to the end of its text or braces. */
function spans(tsx: string): string[] {
  return [...tsx.matchAll(/\bclassName(?:=|: | = )(?=['{])/g)].map((match) => {
    const start = match.index + match[0].length
    if (tsx[start] === "'") return tsx.slice(start, tsx.indexOf("'", start + 1) + 1)
    let [end, depth] = [start, 0]
    do {
      if (tsx[end] === '{') depth++
      if (tsx[end] === '}') depth--
      end++
    } while (depth > 0 && end < tsx.length)
    return tsx.slice(start, end)
  })
}

/** Stands for the part of a name that is a value. */
const value = '…'

/** Texts in quotes, but those that something is compared with. */
const texts = (code: string): string[] =>
  [...code.matchAll(/([=!]== )?('[^'\n]*'|`[^`]*`)/g)].flatMap(([, compared, text = '']) => (compared ? [] : [text]))

/** Names of classes that an element gets, and beginnings of names of which the rest is a value. */
export function given(tsx: string): Readonly<{ names: Set<string>; stems: Set<string> }> {
  const quoted = spans(tsx).flatMap(texts)
  const inside = quoted.flatMap((text) => [...text.matchAll(/\$\{[^}]*\}/g)].flatMap(([code]) => texts(code)))
  const words = [...quoted, ...inside].flatMap((text) =>
    text
      .replace(/\$\{[^}]*\}/g, value)
      .replace(/['`]/g, '')
      .split(/\s+/),
  )
  return {
    names: new Set(words.filter((word) => /^[a-zA-Z][\w-]*$/.test(word) && !word.endsWith('-'))),
    stems: new Set(words.filter((word) => word.endsWith(`-${value}`)).map((word) => word.slice(0, -1))),
  }
}

/** Rules for a class that no element has. */
export function unused(sheets: readonly Text[], views: readonly Text[]): string[] {
  const all = views.map(({ text }) => given(text))
  const isGiven = (name: string): boolean =>
    all.some(({ names, stems }) => names.has(name) || [...stems].some((stem) => name.startsWith(stem)))
  return sheets.flatMap(({ path, text }) => [...styled(text)].filter((name) => !isGiven(name)).map((name) => `${path}: .${name}`))
}

/** Classes of elements that no stylesheet knows and that nothing looks for. */
export function unknown(sheets: readonly Text[], views: readonly Text[], seekers: readonly Text[]): string[] {
  const known = new Set(sheets.flatMap(({ text }) => [...styled(text)]))
  const sought = seekers.map(({ text }) => text).join('\n')
  const isKnown = (name: string): boolean => known.has(name) || new RegExp(`\\.${name}(?![\\w-])`).test(sought)
  return views.flatMap(({ path, text }) => {
    const { names, stems } = given(text)
    const lost = [...names].filter((name) => !isKnown(name))
    const empty = [...stems].filter((stem) => ![...known].some((name) => name.startsWith(stem)))
    return [...lost, ...empty].map((name) => `${path}: ${name}`)
  })
}

/** Colors and sizes of type that a stylesheet makes for itself instead of taking those of the page. */
export const ownLooks = ({ path, text }: Text): string[] =>
  [...withoutComments(text).matchAll(/(?<=[{;]\s*)([\w-]+):\s*([^;{}]+)(?=;)/g)].flatMap(([, property = '', set = '']) =>
    (property === 'font-size' && !/var\(--t\d\)|inherit/.test(set)) || /#[0-9a-f]{3,8}\b|\brgb|\bhsl/i.test(set)
      ? [`${path}: ${property}: ${set}`]
      : [],
  )
