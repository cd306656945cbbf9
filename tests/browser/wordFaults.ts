/** A word that is wrong on the page: what it says, where it stands, and what is wrong with it. */
export type Fault = Readonly<{ text: string; at: string; why: string }>

/**
 * Runs in the page: words that stick out of their box or of the page, or are cut off by it. Words for the ear alone and boxes that can be
 * scrolled are left out.
 */
export const outOfBounds = (): Fault[] => {
  const faults: Fault[] = []
  const slack = 1.5
  /** A line is taller than its letters. */
  const leading = 5
  const name = (node: Element): string =>
    [node, node.parentElement]
      .map((one) => (one ? `${one.tagName.toLowerCase()}.${String(one.getAttribute('class') ?? '')}` : ''))
      .join(' < ')
  const scrolls = (style: CSSStyleDeclaration, axis: 'overflowX' | 'overflowY'): boolean => /auto|scroll/.test(style[axis])
  const isForTheEar = (node: Element): boolean => {
    for (let one: Element | null = node; one; one = one.parentElement) {
      const style = getComputedStyle(one)
      if (style.clipPath.startsWith('inset') || /rect\((0px|1px)/.test(style.clip)) return true
      const box = one.getBoundingClientRect()
      if (style.position === 'absolute' && box.width <= 1 && box.height <= 1) return true
    }
    return false
  }
  const page = document.documentElement
  if (page.scrollWidth > page.clientWidth + slack)
    faults.push({ text: `${page.scrollWidth} over ${page.clientWidth}`, at: 'html', why: 'the page scrolls sideways' })
  const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  for (let node = words.nextNode(); node; node = words.nextNode()) {
    const text = (node.textContent ?? '').trim()
    const holder = node.parentElement
    if (text === '' || !holder || holder.closest('svg, script, style, option, .katex')) continue
    if (!holder.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || isForTheEar(holder)) continue
    const range = document.createRange()
    range.selectNodeContents(node)
    const rects = [...range.getClientRects()].filter((rect) => rect.width > 0)
    if (rects.length === 0) continue
    const left = Math.min(...rects.map((rect) => rect.left))
    const right = Math.max(...rects.map((rect) => rect.right))
    const top = Math.min(...rects.map((rect) => rect.top))
    const bottom = Math.max(...rects.map((rect) => rect.bottom))
    let scrolledX = false
    let scrolledY = false
    let isBox = true
    for (let box: Element | null = holder; box && box !== document.body; box = box.parentElement) {
      const style = getComputedStyle(box)
      if (style.display === 'inline' || style.display === 'contents') continue
      const { left: l, right: r, top: t, bottom: b } = box.getBoundingClientRect()
      const cuts = style.overflowX !== 'visible' || style.overflowY !== 'visible'
      if (!scrolledX && (isBox || style.overflowX === 'hidden' || style.overflowX === 'clip') && !scrolls(style, 'overflowX')) {
        if (right > r + slack || left < l - slack) {
          faults.push({ text: text.slice(0, 60), at: name(box), why: `out of its box by ${Math.round(Math.max(right - r, l - left))}` })
          break
        }
      }
      if (
        !scrolledY &&
        cuts &&
        (style.overflowY === 'hidden' || style.overflowY === 'clip') &&
        (bottom > b + leading || top < t - leading)
      ) {
        faults.push({ text: text.slice(0, 60), at: name(box), why: `cut off by ${Math.round(Math.max(bottom - b, t - top))}` })
        break
      }
      isBox = false
      scrolledX ||= scrolls(style, 'overflowX')
      scrolledY ||= scrolls(style, 'overflowY')
      if (style.position === 'fixed') break
    }
    if (!scrolledX && (right > innerWidth + slack || left < -slack))
      faults.push({ text: text.slice(0, 60), at: name(holder), why: 'out of the page' })
  }
  return faults
}

/**
 * Runs in the page while each letter of its words is an X: words of three letters or more that are none. Units come from the core; names
 * that somebody gave, and titles of sources, stay as they are in any language.
 */
export const untold = (): Fault[] => {
  const units = new Set([
    'psf',
    'psi',
    'pcf',
    'kip',
    'kips',
    'deg',
    'mph',
    'kPa',
    'MPa',
    'kNm',
    'mm²',
    'gal',
    'day',
    'days',
    'min',
    'yd³',
    'ksi',
    'lbf',
  ])
  const faults: Fault[] = []
  const look = (text: string | null, node: Element, why: string): void => {
    if (text === null || node.closest('script, style, noscript, .katex, [translate="no"]')) return
    const foreign = [...text.matchAll(/\p{L}{3,}/gu)].map((m) => m[0]).filter((word) => !/^X+$/i.test(word) && !units.has(word))
    if (foreign.length > 0)
      faults.push({
        text: text.trim().slice(0, 80),
        at: `${node.tagName.toLowerCase()}.${node.getAttribute('class') ?? ''}`,
        why: `${why}: ${foreign.slice(0, 3).join(', ')}`,
      })
  }
  const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  for (let node = words.nextNode(); node; node = words.nextNode())
    if (node.parentElement) look(node.textContent, node.parentElement, 'word')
  for (const node of document.querySelectorAll('[aria-label], [title], [placeholder], [alt], [aria-valuetext], [aria-roledescription]'))
    for (const key of ['aria-label', 'title', 'placeholder', 'alt', 'aria-valuetext', 'aria-roledescription'])
      look(node.getAttribute(key), node, key)
  return faults
}
