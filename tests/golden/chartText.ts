import { shortened } from './kept.ts'

/** What is neither seen nor read: names for the stylesheet, for tests and for React. */
const unseen = new Set(['class', 'focusable'])

/** An element a line, ids by their order, so that neither a class nor an id that is called otherwise is a change. */
function written(element: Element, ids: Map<string, string>): string {
  const named = (value: string): string =>
    value
      .replace(/url\(#([^)]+)\)/g, (_, id: string) => `url(#${numbered(id, ids)})`)
      .replace(/^#(.+)$/, (_, id: string) => `#${numbered(id, ids)}`)
  const attributes = [...element.attributes]
    .filter(({ name }) => !unseen.has(name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map(({ name, value }) => ` ${name}="${escaped(name === 'id' ? numbered(value, ids) : named(value))}"`)
  const inside = [...element.childNodes]
    .filter((node) => !isUnused(node))
    .map((node) => (node instanceof Element ? written(node, ids) : escaped((node.textContent ?? '').trim())))
  const breaks = element.children.length > 0 ? '\n' : ''
  return `<${element.tagName}${attributes.join('')}>${breaks}${inside.join('')}</${element.tagName}>\n`
}
/** A pattern that lies ready for other charts and is not in this one. */
const isUnused = (node: Node): boolean =>
  node instanceof Element && node.tagName === 'pattern' && !node.closest('svg')?.outerHTML.includes(`url(#${node.id})`)
const numbered = (id: string, ids: Map<string, string>): string => {
  const known = ids.get(id) ?? `id-${ids.size + 1}`
  ids.set(id, known)
  return known
}
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;')

/** How high a chart stands in the file, where its own size says nothing. */
const rowHeight = 30

/** Marks of verdicts and little signs of buttons are no charts. */
const isSign = (svg: Element): boolean => ['0 0 16 16', '0 0 20 20', '0 0 12 12'].includes(svg.getAttribute('viewBox') ?? '')

/** Bars and marks that are no SVG, by the share of their chart at which they stand. */
const placedIn = (root: Element): string[] =>
  [...root.querySelectorAll('[style*="%"]')]
    .filter((element) => element.closest('svg') === null)
    .map((element) => `<desc>${escaped(element.getAttribute('style') ?? '')} ${escaped(element.textContent)}</desc>\n`)

/**
 * The charts in a part of the page as one file, one under the other, in lines. They are drawn in outline, as their colors are those of a
 * stylesheet. Null where there is no chart.
 */
export function chartsIn(root: Element): string | null {
  const charts = [...root.querySelectorAll('svg')].filter(
    (svg) => svg.parentElement?.closest('svg, button, summary') === null && !isSign(svg),
  )
  const placed = placedIn(root)
  if (charts.length + placed.length === 0) return null
  let top = 0
  const rows = charts.map((svg) => {
    const at = top
    top += Number(svg.getAttribute('viewBox')?.split(' ')[3]) || Number(svg.getAttribute('height')) || rowHeight
    return `<svg y="${at}">\n${written(svg, new Map())}</svg>\n`
  })
  const style = '<style>*{fill:none;stroke:#000;stroke-width:0.7px}text{fill:#000;stroke:none}</style>'
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="${top}">\n${style}\n`
  return shortened(`${head}${rows.join('')}${placed.join('')}</svg>\n`)
}
