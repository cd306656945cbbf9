import DxfParser, {
  type ICircleEntity,
  type IDxf,
  type IEntity,
  type ILineEntity,
  type ILwpolylineEntity,
  type ITextEntity,
} from 'dxf-parser'
import { describe, expect, it } from 'vitest'
import { sectionPolygons } from '../../src/core/geometry/section.ts'
import type { PierDocument } from '../../src/core/model/spec.ts'
import type { UnitSystem } from '../../src/core/units/quantity.ts'
import { dxfFile, dxfText } from '../../src/export/drawing/dxf.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { derived } from '../../src/state/derived.ts'
import { takeAlong as exporting } from '../../src/words/en/takeAlong.ts'
import { sectionFlat } from '../../src/view/section/paper/sectionFlat.ts'
import { sectionPlan } from '../../src/view/section/paper/sectionPlan.ts'
import { close } from '../close.ts'
import { jobNamed, someJobs } from './someJobs.ts'

const fileOf = (document: PierDocument, units: UnitSystem): string => {
  const result = derived(document.spec)
  const plan = sectionPlan({ document, result, view: { ...defaultView, units }, date: '2026-01-02', version: '0.0.0' })
  return dxfFile(sectionFlat(plan, result, { cutPost: false, soil: true }), units)
}

/** Read by dxf-parser, which has nothing to do with the writer. */
const read = (text: string): IDxf => {
  const drawing = new DxfParser().parseSync(text)
  if (!drawing) throw new Error('the drawing is not read')
  return drawing
}
const isA =
  <T extends IEntity>(...types: string[]) =>
  (entity: IEntity): entity is T =>
    types.includes(entity.type)
const outlines = ({ entities }: IDxf) => entities.filter(isA<ILwpolylineEntity>('LWPOLYLINE'))
const texts = ({ entities }: IDxf) => entities.filter(isA<ITextEntity>('TEXT'))

const areaOf = (points: readonly (readonly [number, number])[]): number =>
  Math.abs(
    points.reduce(
      (sum, [x, y], i) => sum + x * (points[(i + 1) % points.length]?.[1] ?? 0) - y * (points[(i + 1) % points.length]?.[0] ?? 0),
      0,
    ),
  ) / 2

const perMetre: Readonly<Record<UnitSystem, number>> = { us: 1 / 0.0254, metric: 1000 }
const roleLayers: ReadonlySet<string> = new Set(Object.values(exporting.layers))

describe('[E8] another program reads the drawing', () => {
  it.each(someJobs.flatMap(([name, document]) => (['us', 'metric'] as const).map((units) => [name, units, document] as const)))(
    '%s in %s: every outline closed, on its layer, with its area',
    (_, units, document) => {
      const drawing = read(fileOf(document, units))
      expect(drawing.header.$INSUNITS).toBe(units === 'us' ? 1 : 4)
      expect(drawing.header.$ACADVER).toBe('AC1021')
      const bodies = outlines(drawing).filter(({ layer }) => roleLayers.has(layer))
      const { zones, spec } = derived(document.spec)
      const polygons = sectionPolygons(zones, spec.site.downhill, { cutPost: false })
      expect(bodies.map(({ layer }) => layer)).toEqual(polygons.map(({ role }) => exporting.layers[role]))
      for (const [i, body] of bodies.entries()) {
        expect(body.shape, 'closed').toBe(true)
        const area = areaOf(body.vertices.map(({ x, y }) => [x / perMetre[units], y / perMetre[units]] as const))
        close(area, areaOf(polygons[i]?.points ?? []), { abs: 1e-7, rel: 1e-6 }, body.layer)
      }
      const layers = new Set(Object.keys(drawing.tables.layer.layers))
      for (const { layer } of drawing.entities) expect(layers.has(layer), layer).toBe(true)
    },
  )

  it('carries the figures of the drawing as text, in both systems', () => {
    const document = jobNamed('mixed')
    const said = (units: UnitSystem) => texts(read(fileOf(document, units))).map(({ text }) => text)
    expect(said('us')).toEqual(
      expect.arrayContaining([
        '26" Ø',
        '5\'-6"',
        '4\'-4"',
        '1 1/2" crown',
        'Mixed',
        'concrete',
        'Upright',
        'bars',
        'Scale 1/2" = 1\'-0" (1:24)',
      ]),
    )
    expect(said('metric')).toEqual(expect.arrayContaining(['660 Ø', '1676', '1321', 'Scale 1:20']))
    expect(said('us').join(' ')).toContain(exporting.sheet.caution)
  })

  it('writes capitals 2.5 mm high at its scale', () => {
    const figure = texts(read(fileOf(jobNamed('mixed'), 'us'))).find(({ text }) => text === '26" Ø')
    close((figure?.textHeight ?? 0) * 25.4, 2.5 * 24, { abs: 0, rel: 0.02 })
  })

  it('breaks dimension lines where a figure stands on them', () => {
    const drawing = read(fileOf(jobNamed('mixed'), 'us'))
    const figure = texts(drawing).find(({ text }) => text === '26" Ø')
    const across = drawing.entities
      .filter(isA<ILineEntity>('LINE'))
      .filter(({ layer }) => layer === exporting.otherLayers.dimensions)
      .filter(
        ({ vertices: [a, b] }) => a && b && a.y === b.y && figure && Math.abs(a.y - (figure.startPoint.y + figure.textHeight / 2)) < 3,
      )
    expect(across).toHaveLength(2)
  })

  it('marks every anchor with a dot', () => {
    const dots = read(fileOf(jobNamed('mixed'), 'us')).entities.filter(isA<ICircleEntity>('CIRCLE'))
    expect(dots.length).toBeGreaterThan(3)
  })

  it('a name stays a name: no code of the format, no second line', () => {
    for (const name of ['a\n0\nCIRCLE\n8\n0', '%%dx', 'x^J^Iy', '\\U+0041\\P', '<b>&amp;']) {
      const drawing = read(fileOf({ ...jobNamed('mixed'), name }, 'us'))
      const plain = read(fileOf({ ...jobNamed('mixed'), name: 'plain' }, 'us'))
      expect(drawing.entities.map(({ type }) => type)).toEqual(plain.entities.map(({ type }) => type))
      expect(texts(drawing).map(({ text }) => text)).toContain(`Pier: ${dxfText(name)}`)
    }
  })
})
