import { DxfWriter, LWPolylineFlags, point3d, TextHorizontalAlignment, TextVerticalAlignment, Units } from '@tarikjabiri/dxf'
import type { UnitSystem } from '../../core/units/quantity.ts'
import type { FlatDrawing, FlatPoint, FlatShape } from './flatDrawing.ts'

const perMetre: Readonly<Record<UnitSystem, number>> = { us: 1 / 0.0254, metric: 1000 }
const unitsOf: Readonly<Record<UnitSystem, Units>> = { us: Units.Inches, metric: Units.Millimeters }
/** Header value of the measuring system: English or metric line types and patterns. */
const measurement: Readonly<Record<UnitSystem, number>> = { us: 0, metric: 1 }

/** Dash lengths in millimetres on paper; a negative one is a gap. */
const lineTypes = {
  solid: null,
  dashed: { name: 'LONG-DASH', look: '__ __ __', dashes: [8, -2] },
  chain: { name: 'CHAIN', look: '____ _ ____', dashes: [10, -1.2, 1.5, -1.2] },
} as const

/** A flat drawing as a DXF file (version AC1021, UTF-8), in inches or in millimetres, one layer a name. */
export function dxfFile({ layers, shapes, paperMillimetre }: FlatDrawing, system: UnitSystem): string {
  const writer = new DxfWriter()
  const scale = perMetre[system]
  writer.setUnits(unitsOf[system])
  writer.setVariable('$MEASUREMENT', { 70: measurement[system] })
  for (const style of [lineTypes.dashed, lineTypes.chain])
    writer.addLType(
      style.name,
      style.look,
      style.dashes.map((dash) => round(dash * paperMillimetre * scale)),
    )
  for (const { name, colour, line } of layers) writer.addLayer(name, colour, lineTypes[line]?.name ?? 'Continuous')
  for (const shape of shapes) addShape(writer, shape, scale)
  const points = shapes.flatMap(pointsOf)
  const corner = (pick: (...values: number[]) => number) => {
    const [x, y] = [0, 1].map((k) => points.reduce((best, p) => pick(best, (p[k] ?? 0) * scale), (points[0]?.[k] ?? 0) * scale))
    return { 10: round(x ?? 0), 20: round(y ?? 0), 30: 0 }
  }
  writer.setVariable('$EXTMIN', corner(Math.min))
  writer.setVariable('$EXTMAX', corner(Math.max))
  return writer.stringify()
}

function addShape(writer: DxfWriter, shape: FlatShape, scale: number): void {
  const options = { layerName: shape.layer }
  const place = ([x, y]: FlatPoint) => point3d(round(x * scale), round(y * scale), 0)
  if (shape.kind === 'circle') {
    writer.addCircle(place(shape.centre), round(shape.radius * scale), options)
    return
  }
  if (shape.kind === 'text') {
    const at = place(shape.at)
    const isLeft = shape.align === 'left'
    writer.addText(at, round(shape.height * scale), dxfText(shape.text), {
      ...options,
      ...(isLeft
        ? {}
        : { horizontalAlignment: alignments[shape.align], verticalAlignment: TextVerticalAlignment.BaseLine, secondAlignmentPoint: at }),
    })
    return
  }
  const [from, to] = shape.points
  if (!from || !to) return
  if (shape.points.length === 2 && !shape.closed) {
    writer.addLine(place(from), place(to), options)
    return
  }
  writer.addLWPolyline(
    shape.points.map((point) => ({ point: place(point) })),
    { ...options, flags: shape.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
  )
}

const alignments = { middle: TextHorizontalAlignment.Center, right: TextHorizontalAlignment.Right } as const

const pointsOf = (shape: FlatShape): readonly FlatPoint[] =>
  shape.kind === 'line' ? shape.points : shape.kind === 'circle' ? [shape.centre] : [shape.at]

/** To a ten-thousandth of a micrometre or a hundred-thousandth of an inch: no exponent is ever written. */
const round = (value: number): number => Number(value.toFixed(6)) + 0

/**
 * Words as the format has them: one line, `^` spelled out, and none of its own codes, so that a name stays a name.
 */
export const dxfText = (text: string): string =>
  text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replaceAll('^', '^ ')
    .replaceAll('%%', '% %')
    .replaceAll('\\', '/')
