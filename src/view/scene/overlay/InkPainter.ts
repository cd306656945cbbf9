import { inkStyles as styles, lineAt } from '../../section/plateLines.ts'
import type { Ink, Plate } from '../../section/ink.ts'
import type { TypeSize } from '../../section/typeSize.ts'

const namespace = 'http://www.w3.org/2000/svg'

const element = <K extends keyof SVGElementTagNameMap>(name: K, className: string): SVGElementTagNameMap[K] => {
  const made = document.createElementNS(namespace, name)
  made.setAttribute('class', className)
  return made
}

type DrawnPlate = { group: SVGGElement; box: SVGRectElement; key: string }

/** Keeps one SVG in step with ink, without React: it moves what is there and makes or drops only what changed. */
export class InkPainter {
  private readonly lines: Record<string, [SVGPathElement, SVGPathElement]> = {}
  private readonly plates = new Map<string, DrawnPlate>()
  private readonly words: SVGGElement
  private lit: string | null = null

  constructor(svg: SVGSVGElement) {
    const root = element('g', 'ink')
    for (const style of styles) {
      const pair: [SVGPathElement, SVGPathElement] = [element('path', `ink-${style} casing`), element('path', `ink-${style}`)]
      this.lines[style] = pair
      root.append(...pair)
    }
    this.words = element('g', 'words')
    root.append(this.words)
    svg.replaceChildren(root)
  }

  paint({ paths, plates }: Ink, size: TypeSize): void {
    for (const style of styles)
      for (const path of this.lines[style] ?? []) if (path.getAttribute('d') !== paths[style]) path.setAttribute('d', paths[style])
    const left = new Set(this.plates.keys())
    for (const plate of plates) {
      left.delete(plate.id)
      this.place(plate, size)
    }
    for (const id of left) {
      this.plates.get(id)?.group.remove()
      this.plates.delete(id)
    }
  }

  /** Marks the name of a part that is pointed at. */
  setLit(id: string | null): void {
    if (this.lit !== null) this.plates.get(this.lit)?.group.removeAttribute('data-lit')
    this.lit = id
    if (id !== null) this.plates.get(id)?.group.setAttribute('data-lit', '')
  }

  private place(plate: Plate, size: TypeSize): void {
    const drawn = this.plates.get(plate.id) ?? this.make(plate)
    const key = `${plate.lines.join('\n')}|${plate.kind}|${size.name}|${size.figure}|${plate.width}`
    if (key !== drawn.key) {
      drawn.key = key
      drawn.box.setAttribute('width', String(plate.width))
      drawn.box.setAttribute('height', String(plate.height))
      drawn.group.replaceChildren(
        drawn.box,
        ...plate.lines.map((line, i) => {
          const text = element('text', '')
          const { x, y, fontSize, fontWeight } = lineAt(plate, i, size)
          text.setAttribute('x', String(x))
          text.setAttribute('y', String(y))
          text.setAttribute('font-size', String(fontSize))
          text.setAttribute('font-weight', String(fontWeight))
          text.textContent = line
          return text
        }),
      )
    }
    drawn.group.setAttribute('transform', `translate(${Math.round(plate.x * 2) / 2} ${Math.round(plate.y * 2) / 2})`)
  }

  private make(plate: Plate): DrawnPlate {
    const group = element('g', `plate plate-${plate.kind}`)
    const box = element('rect', '')
    box.setAttribute('rx', '2')
    if (plate.id === this.lit) group.setAttribute('data-lit', '')
    this.words.append(group)
    const drawn: DrawnPlate = { group, box, key: '' }
    this.plates.set(plate.id, drawn)
    return drawn
  }
}
