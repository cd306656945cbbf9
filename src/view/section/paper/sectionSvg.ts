import { roleColours } from '../../../export/roleColours.ts'
import type { Role } from '../../../core/model/solid.ts'
import type { SectionBody } from '../drawSection.ts'
import type { Hatch } from '../hatch.ts'
import { hatchTiles } from '../hatchTile.ts'
import type { LineStyle, Plate } from '../ink.ts'
import { inkStyles, lineAt } from '../plateLines.ts'
import { platePadding, type TypeSize } from '../typeSize.ts'
import { pixelsPerMillimetre } from './drawingScale.ts'
import type { SectionPlan } from './sectionPlan.ts'
import { svgElement, svgWords } from './svgText.ts'

export const ink = '#1b1f23'
export const softInk = '#4d5359'
const water = '#0072b2'

/** Widths of lines in millimetres on paper. */
export const lineWidth = { hatch: 0.13, fine: 0.18, seen: 0.25, tick: 0.35, cut: 0.5, ground: 0.7 } as const
/** A line's width in pixels. */
export const wide = (line: keyof typeof lineWidth): number => lineWidth[line] * pixelsPerMillimetre
const dash = (...millimetres: readonly number[]): string =>
  millimetres.map((length) => Math.round(length * pixelsPerMillimetre * 100) / 100).join(' ')

/** Share of the colour in a print tint; steel is drawn nearly solid, since it is too thin for marks. */
const tintShare: Readonly<Partial<Record<Role, number>>> = { bar: 0.85, steel: 0.85, wood: 0.3 }

/** The material's colour over white paper. */
export const tint = (role: Role): string => {
  const share = tintShare[role] ?? 0.22
  const channel = (from: number): string => {
    const value = Number.parseInt(roleColours[role].slice(from, from + 2), 16)
    return Math.round(255 + (value - 255) * share)
      .toString(16)
      .padStart(2, '0')
  }
  return `#${channel(1)}${channel(3)}${channel(5)}`
}

type Drawn = Exclude<Hatch, 'none'>
export const patternName = (hatch: Drawn): string => `marks-${hatch}`

const tileMarks = (hatch: Drawn): string[] => {
  const { strokes, dots } = hatchTiles[hatch]
  const lines = { fill: 'none', stroke: ink, 'stroke-width': lineWidth.hatch, 'stroke-linecap': 'round', 'stroke-linejoin': 'round' }
  return [...(strokes ? [svgElement('path', { d: strokes, ...lines })] : []), ...(dots ? [svgElement('path', { d: dots, fill: ink })] : [])]
}

/** The hatches that are used, as patterns. */
export const patterns = (used: Iterable<Drawn>): string =>
  svgElement(
    'defs',
    {},
    [...new Set(used)].map((hatch) => {
      const { width, height } = hatchTiles[hatch]
      return svgElement(
        'pattern',
        { id: patternName(hatch), patternUnits: 'userSpaceOnUse', width, height, patternTransform: `scale(${pixelsPerMillimetre})` },
        tileMarks(hatch),
      )
    }),
  )

/** How a material is shown: what lies under its marks, and its marks within an outline of corners. `key` is its own in the drawing. */
export type Paint = Readonly<{ ground(role: Role): string; marks(outline: string, hatch: Drawn, key: string): string }>

/** Marks as a pattern over the material's own tint. */
export const tinted: Paint = {
  ground: tint,
  marks: (outline, hatch) => svgElement('path', { d: outline, fill: `url(#${patternName(hatch)})` }),
}

const tileName = (hatch: Drawn): string => `marks-tile-${hatch}`

/** The tiles of the hatches that are used, for marks that are drawn one by one. */
export const tiles = (used: Iterable<Drawn>): string =>
  svgElement(
    'defs',
    {},
    [...new Set(used)].map((hatch) => svgElement('g', { id: tileName(hatch) }, tileMarks(hatch))),
  )

type Across = readonly [left: number, right: number]

/** Tiles laid over an outline and cut at it: a browser prints patterns as blurred pictures, and these as lines. */
function tiled(outline: string, hatch: Drawn, key: string, [left, right]: Across): string {
  const corners = [...outline.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
  const wide = hatchTiles[hatch].width * pixelsPerMillimetre
  const high = hatchTiles[hatch].height * pixelsPerMillimetre
  const places = (axis: 0 | 1, size: number): number[] => {
    const ends = corners.map((corner) => (axis === 0 ? Math.max(left, Math.min(right, corner[0])) : corner[1]))
    const first = Math.floor(Math.min(...ends) / size)
    const count = Math.max(0, Math.ceil(Math.max(...ends) / size) - first)
    return Array.from({ length: count }, (_, i) => (first + i) * size)
  }
  const id = `marks-cut-${key}`
  return (
    svgElement('clipPath', { id }, [svgElement('path', { d: outline })]) +
    svgElement(
      'g',
      { 'clip-path': `url(#${id})` },
      places(0, wide).flatMap((x) =>
        places(1, high).map((y) =>
          svgElement('use', { href: `#${tileName(hatch)}`, transform: `translate(${round(x)} ${round(y)}) scale(${pixelsPerMillimetre})` }),
        ),
      ),
    )
  )
}

/**
 * Marks on white paper, and steel that is too thin for any in solid ink: nothing is told by a tint. Of a wide drawing only the part
 * between `left` and `right` is marked [px].
 */
export const bareWithin = (...across: Across): Paint => ({
  ground: (role) => (role === 'bar' || role === 'steel' ? softInk : '#ffffff'),
  marks: (outline, hatch, key) => tiled(outline, hatch, key, across),
})
export const bare: Paint = bareWithin(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)

const bodySvg = ({ key, path, outline, role, zone, hatch, cut }: SectionBody, paint: Paint): string =>
  svgElement('g', { 'data-zone': zone }, [
    svgElement('path', { d: path, fill: paint.ground(role) }),
    ...(hatch === 'none' ? [] : [paint.marks(path, hatch, key)]),
    svgElement('path', { d: outline, fill: 'none', stroke: ink, 'stroke-width': wide(cut ? 'cut' : 'seen'), 'stroke-linejoin': 'round' }),
  ])

export const lineStyles = {
  ground: { stroke: ink, 'stroke-width': wide('ground'), 'stroke-linecap': 'round' },
  water: { stroke: water, 'stroke-width': wide('tick') },
  frost: { stroke: ink, 'stroke-width': wide('seen'), 'stroke-dasharray': dash(8, 2) },
  break: { stroke: softInk, 'stroke-width': wide('fine') },
} as const

const inkStrokes: Readonly<Record<LineStyle, Readonly<Record<string, string | number>>>> = {
  leader: { stroke: ink, 'stroke-width': wide('fine'), fill: 'none' },
  dimension: { stroke: ink, 'stroke-width': wide('fine'), fill: 'none' },
  arc: { stroke: ink, 'stroke-width': wide('fine'), fill: 'none', 'stroke-dasharray': dash(3.2, 0.8) },
  tick: { stroke: ink, 'stroke-width': wide('tick'), fill: 'none' },
  frost: { stroke: ink, 'stroke-width': wide('seen'), fill: 'none' },
  dot: { fill: ink },
  arrow: { fill: ink },
  water: { fill: water },
  damp: { fill: water, 'fill-opacity': 0.35 },
  wet: { fill: water, 'fill-opacity': 0.75 },
  joint: { fill: water },
  zone: { stroke: ink, 'stroke-width': wide('tick'), fill: 'none' },
  rain: { stroke: water, 'stroke-width': wide('tick'), fill: 'none' },
  drop: { fill: water },
  pond: { fill: water, 'fill-opacity': 0.6 },
  open: { fill: '#ffffff', 'fill-opacity': 0.9, stroke: ink, 'stroke-width': wide('fine') },
  gone: { fill: ink },
  disc: { fill: '#ffffff', stroke: ink, 'stroke-width': wide('fine') },
  eye: { stroke: ink, 'stroke-width': wide('tick'), fill: 'none' },
  weak: { fill: '#ffffff', 'fill-opacity': 0.25 },
  crumbly: { fill: '#ffffff', 'fill-opacity': 0.5 },
  powder: { fill: '#ffffff', 'fill-opacity': 0.75 },
}

/** A plate hides what lies under its words. */
const plateSvg = (plate: Plate, size: TypeSize): string =>
  svgElement('g', { transform: `translate(${Math.round(plate.x * 10) / 10} ${Math.round(plate.y * 10) / 10})` }, [
    svgElement('rect', { width: plate.width, height: plate.height, rx: 2, fill: '#ffffff' }),
    ...plate.lines.map((line, i) => {
      const { fontSize, fontWeight, ...place } = lineAt(plate, i, size)
      const fill = plate.kind === 'water' ? '#005a8c' : ink
      return svgWords(line, { ...place, 'font-size': fontSize, 'font-weight': fontWeight, fill }, plate.width - 2 * platePadding)
    }),
  ])

/** The chain line on the pier's axis, 6 mm past what it belongs to. */
function axisLine({ drawing: { frame }, depth }: SectionPlan): string {
  const past = 6 * pixelsPerMillimetre
  const top = frame.grade - frame.top * frame.perMetre - past
  const foot = frame.grade + depth * frame.perMetre + past
  return svgElement('path', {
    d: `M${round(frame.axis)} ${round(top)}V${round(foot)}`,
    stroke: softInk,
    'stroke-width': wide('fine'),
    'stroke-dasharray': dash(10, 1.2, 1.5, 1.2),
  })
}
const round = (value: number): number => Math.round(value * 100) / 100

/** The section alone, in its own pixels: bodies, lines, names and dimensions. The patterns it uses must stand before it. */
export const sectionGroup = (plan: SectionPlan, paint: Paint = tinted): string => {
  const { drawing, type } = plan
  return svgElement('g', { 'data-part': 'section' }, [
    ...drawing.bodies.map((body) => bodySvg(body, paint)),
    ...drawing.lines
      .filter(({ path }) => path !== '')
      .map(({ style, path }) => svgElement('path', { d: path, fill: 'none', ...lineStyles[style] })),
    axisLine(plan),
    ...inkStyles
      .filter((style) => drawing.ink.paths[style] !== '')
      .map((style) => svgElement('path', { d: drawing.ink.paths[style], ...inkStrokes[style] })),
    ...drawing.ink.plates.map((plate) => plateSvg(plate, type)),
  ])
}

export const hatchesIn = ({ drawing }: SectionPlan): Drawn[] => drawing.bodies.flatMap(({ hatch }) => (hatch === 'none' ? [] : [hatch]))
