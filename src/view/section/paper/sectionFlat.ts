import { heightAlong } from '../../../core/geometry/corner.ts'
import { sectionPolygons } from '../../../core/geometry/section.ts'
import { plane } from '../../../core/geometry/surface.ts'
import type { PierResult } from '../../../core/model/result.ts'
import type { Role } from '../../../core/model/solid.ts'
import type { FlatDrawing, FlatPoint, FlatShape, LayerStyle } from '../../../export/drawing/flatDrawing.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import type { LineStyle, Pixel, Plate } from '../ink.ts'
import { inkStyles, lineAt } from '../plateLines.ts'
import { outside } from './clipped.ts'
import { pixelsPerMillimetre } from './drawingScale.ts'
import { inkShapes } from './inkPaths.ts'
import type { SectionPlan } from './sectionPlan.ts'

/** Colours by the format's own table: ink for what is built, grey and earth tones for the ground, blue for water. */
const roleColour: Readonly<Record<Role, number>> = {
  topsoil: 36,
  soil: 34,
  'soil-lower': 8,
  backfill: 36,
  granular: 9,
  gravel: 9,
  mulch: 36,
  'dry-mix': 7,
  concrete: 7,
  'flowable-fill': 7,
  wood: 32,
  bar: 1,
  steel: 5,
}

/** The layer that each kind of line lies on. */
const inkLayer: Readonly<Record<LineStyle, keyof Words['takeAlong']['otherLayers']>> = {
  leader: 'names',
  dot: 'names',
  dimension: 'dimensions',
  arc: 'dimensions',
  tick: 'dimensions',
  arrow: 'dimensions',
  water: 'water',
  frost: 'frost',
  damp: 'water',
  wet: 'water',
  joint: 'water',
  zone: 'names',
  rain: 'water',
  drop: 'water',
  pond: 'water',
  open: 'names',
  gone: 'names',
  disc: 'names',
  eye: 'names',
  weak: 'water',
  crumbly: 'water',
  powder: 'water',
}

const isNative = (role: Role): boolean => role === 'topsoil' || role === 'soil' || role === 'soil-lower'
/** Height of a capital, as a share of the size of the page's letter. */
const capital = 0.66

/**
 * The planned section as lines and words in true size, axis at 0, finished grade at the axis at 0. Outlines come exact from the
 * core, each closed, on the layer of what it is made of; dimensions and names are those of the drawing, as lines and text.
 */
export function sectionFlat(plan: SectionPlan, result: PierResult, view: Readonly<{ cutPost: boolean; soil: boolean }>): FlatDrawing {
  const { drawing, rightAngle } = plan
  const { axis, grade, perMetre } = drawing.frame
  const { layers: roleLayers, otherLayers } = wordsOf('takeAlong')
  const place = ([x, y]: Pixel): FlatPoint => [(x - axis) / perMetre, (grade - y) / perMetre]
  const polygons = sectionPolygons(result.zones, rightAngle, { cutPost: view.cutPost }).filter(({ role }) => view.soil || !isNative(role))
  const roles = [...new Set(polygons.map(({ role }) => role))]
  const layers: LayerStyle[] = [
    ...roles.map((role): LayerStyle => ({ name: roleLayers[role], colour: roleColour[role], line: 'solid' })),
    { name: otherLayers.grade, colour: 7, line: 'solid' },
    { name: otherLayers.axis, colour: 8, line: 'chain' },
    { name: otherLayers.water, colour: 5, line: 'solid' },
    { name: otherLayers.frost, colour: 4, line: 'dashed' },
    { name: otherLayers.break, colour: 8, line: 'solid' },
    { name: otherLayers.dimensions, colour: 7, line: 'solid' },
    { name: otherLayers.names, colour: 7, line: 'solid' },
    { name: otherLayers.title, colour: 7, line: 'solid' },
  ]
  const shapes: FlatShape[] = [
    ...polygons.map(({ role, points }): FlatShape => ({ kind: 'line', layer: roleLayers[role], points, closed: true })),
    ...groundLines(result, plan),
    ...inkOf(plan, place),
    ...drawing.ink.plates.flatMap((plate) => words(plate, plan, place)),
    ...titleWords(plan),
  ]
  return { layers, shapes, paperMillimetre: pixelsPerMillimetre / perMetre }
}

/** Grade, water, frost and the axis, each from the core's own numbers. */
function groundLines({ spec, sheets }: PierResult, { drawing, rightAngle, depth }: SectionPlan): FlatShape[] {
  const { half, top, perMetre } = drawing.frame
  const { otherLayers } = wordsOf('takeAlong')
  const { slope, downhill, waterTable, frostDepth } = spec.site
  const surface = plane(0, -slope * Math.cos(downhill), -slope * Math.sin(downhill))
  const gradeAt = (u: number): number =>
    heightAlong(surface, Math.abs(u), Math.cos(rightAngle) * Math.sign(u), Math.sin(rightAngle) * Math.sign(u))
  const mouth = Math.max(spec.hole.diameter, spec.hole.flare?.diameter ?? 0) / 2
  const both = (layer: string, y: (u: number) => number): FlatShape[] =>
    [-1, 1].map((side) => ({
      kind: 'line',
      layer,
      closed: false,
      points: [mouth, half].map((u): FlatPoint => [side * u, y(side * u)]),
    }))
  const has = (id: 'water-table' | 'frost-line'): boolean => sheets.some((sheet) => sheet.id === id)
  const past = (6 * pixelsPerMillimetre) / perMetre
  return [
    ...both(otherLayers.grade, gradeAt),
    ...(waterTable !== null && has('water-table') ? both(otherLayers.water, () => -waterTable) : []),
    ...(has('frost-line') ? both(otherLayers.frost, (u) => gradeAt(u) - frostDepth) : []),
    {
      kind: 'line',
      layer: otherLayers.axis,
      closed: false,
      points: [
        [0, top + past],
        [0, -depth - past],
      ],
    },
  ]
}

/** Leaders, dimension lines, ticks and marks of the drawing; lines stop where a figure stands on them. */
function inkOf({ drawing }: SectionPlan, place: (pixel: Pixel) => FlatPoint): FlatShape[] {
  const { perMetre } = drawing.frame
  const { paths, plates } = drawing.ink
  const { otherLayers } = wordsOf('takeAlong')
  const breaks = drawing.lines.filter(({ style }) => style === 'break').map(({ path }) => [otherLayers.break, path] as const)
  return [...breaks, ...inkStyles.map((style) => [otherLayers[inkLayer[style]], paths[style]] as const)].flatMap(([layer, path]) =>
    inkShapes(path).flatMap((shape): FlatShape[] => {
      if (shape.kind === 'dot') return [{ kind: 'circle', layer, centre: place(shape.centre), radius: shape.radius / perMetre }]
      if (shape.closed) return [{ kind: 'line', layer, closed: true, points: shape.points.map(place) }]
      return shape.points.slice(1).flatMap((to, i): FlatShape[] =>
        outside(shape.points[i] ?? to, to, plates).map(([a, b]) => ({
          kind: 'line',
          layer,
          closed: false,
          points: [place(a), place(b)],
        })),
      )
    }),
  )
}

const capitalOf = (fontSize: number, perMetre: number): number => (capital * fontSize) / perMetre

/** Figures stand in the middle of their plates; names are set toward the drawing, so that another letter stays clear of the leader. */
function words(plate: Plate, { drawing, type }: SectionPlan, place: (pixel: Pixel) => FlatPoint): FlatShape[] {
  const { axis, perMetre } = drawing.frame
  const { otherLayers } = wordsOf('takeAlong')
  const isName = plate.kind === 'name'
  const isLeft = plate.x + plate.width / 2 < axis
  const align = !isName ? 'middle' : isLeft ? 'right' : 'left'
  const x = align === 'middle' ? plate.width / 2 : align === 'right' ? plate.width - 4 : 4
  return plate.lines.map((line, i): FlatShape => {
    const { y, fontSize } = lineAt(plate, i, type)
    const layer = isName ? otherLayers.names : plate.kind === 'water' ? otherLayers.water : otherLayers.dimensions
    return { kind: 'text', layer, at: place([plate.x + x, plate.y + y]), height: capitalOf(fontSize, perMetre), text: line, align }
  })
}

/** Title, scale, notes and the block, in one column under the drawing. */
function titleWords({ drawing, words: said }: SectionPlan): FlatShape[] {
  const { half, bottom, perMetre } = drawing.frame
  const millimetre = pixelsPerMillimetre / perMetre
  // Title and scale stand above already; empty fields are for a pen.
  const block = said.block
    .filter(([, value]) => value !== '' && value !== said.title && !said.scale.endsWith(value))
    .map(([label, value]) => `${label}: ${value}`)
  const lines = [said.title.toUpperCase(), said.scale, ...said.notes, ...block, said.status.toUpperCase(), said.caution]
  let y = bottom - 12 * millimetre
  return lines.map((text, i): FlatShape => {
    const height = (i === 0 ? 3.5 : 2.5) * millimetre
    const at: FlatPoint = [-half, y]
    y -= (i === 0 ? 6 : 4.4) * millimetre
    return { kind: 'text', layer: wordsOf('takeAlong').otherLayers.title, at, height, text, align: 'left' }
  })
}
