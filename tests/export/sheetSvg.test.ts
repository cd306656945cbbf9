// @vitest-environment jsdom
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sectionPolygons } from '../../src/core/geometry/section.ts'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { dxfFile } from '../../src/export/drawing/dxf.ts'
import { formatText } from '../../src/core/units/format.ts'
import type { UnitSystem } from '../../src/core/units/quantity.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { derived } from '../../src/state/derived.ts'
import { takeAlong as exporting } from '../../src/words/en/takeAlong.ts'
import { wordsOf } from '../../src/words/index.ts'
import { pierMark } from '../../src/view/section/paper/pierMark.ts'
import { paperScales } from '../../src/view/section/paper/drawingScale.ts'
import { sectionFlat } from '../../src/view/section/paper/sectionFlat.ts'
import { sectionPlan } from '../../src/view/section/paper/sectionPlan.ts'
import { sheetSvg } from '../../src/view/section/paper/sheetSvg.ts'
import { arbitraryPier } from '../arbitraryPier.ts'
import { close } from '../close.ts'
import { jobNamed, someJobs } from './someJobs.ts'

// Without a canvas the widths of words are guessed.
HTMLCanvasElement.prototype.getContext = () => null

const planOf = (document: PierDocument, units: UnitSystem = 'us', view = defaultView) =>
  sectionPlan({ document, result: derived(document.spec), view: { ...view, units }, date: '2026-01-02', version: '9.8.7' })

/** Parsed as strictly as a browser parses a file. */
const parsed = (svg: string): XMLDocument => {
  const page = new DOMParser().parseFromString(svg, 'image/svg+xml')
  expect(page.querySelector('parsererror')).toBeNull()
  return page
}
const writtenOn = (page: XMLDocument): string[] => [...page.querySelectorAll('text')].map((node) => node.textContent)

const numbers = (path: string): (readonly [number, number])[] =>
  [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const)
const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values)

describe('[E9] the drawing to print', () => {
  it.each(someJobs)('%s: stands alone, true to its scale', (_, document) => {
    const plan = planOf(document)
    const page = parsed(sheetSvg(plan, null))
    const svg = page.documentElement
    expect([svg.getAttribute('width'), svg.getAttribute('height')]).toEqual(['180mm', '254mm'])
    const pixels = Number(svg.getAttribute('viewBox')?.split(' ')[2]) / 180
    // One to so many, as it is written under the view.
    const written = writtenOn(page).find((words) => /^Scale .*1:/.test(words))
    const scale = Number(/1:(\d+)/.exec(written ?? '')?.[1])
    const { zones, spec } = derived(document.spec)
    const polygons = sectionPolygons(zones, spec.site.downhill, { cutPost: false })
    const drawn = [...page.querySelectorAll('g[data-zone]')]
    expect(drawn.map((node) => node.getAttribute('data-zone'))).toEqual(polygons.map(({ zone }) => zone))
    for (const [i, node] of drawn.entries()) {
      const points = numbers(node.querySelector('path')?.getAttribute('d') ?? '')
      const width = (extent(points.map(([x]) => x)) / pixels / 1000) * scale
      // Path data has tenths of a pixel.
      close(width, extent((polygons[i]?.points ?? []).map(([u]) => u)), { abs: ((0.11 / pixels) * scale) / 1000, rel: 0 })
    }
    const bar = page.querySelector('[data-part="scale-bar"]')
    const cells = [...(bar?.querySelectorAll('rect') ?? [])].map((node) => Number(node.getAttribute('width')))
    close(((cells[cells.length - 1] ?? 0) / pixels / 1000) * scale, plan.bar.step, { abs: 0.002, rel: 0 })
  })

  it.each(someJobs.flatMap(([name, document]) => (['us', 'metric'] as const).map((units) => [name, units, document] as const)))(
    '%s in %s: needs no other file and runs nothing',
    (_, units, document) => {
      const svg = sheetSvg(planOf(document, units), 'AAAA')
      const page = parsed(svg)
      expect(page.querySelectorAll('script, foreignObject, image, use, a')).toHaveLength(0)
      const links = [...svg.matchAll(/(?:href|src|url)\s*[=(]\s*["']?([^"')]+)/g)].map((m) => m[1] ?? '')
      expect(links.filter((link) => !link.startsWith('#') && !link.startsWith('data:font/woff2;base64,'))).toEqual([])
      const used = new Set([...svg.matchAll(/url\(#([\w-]+)\)/g)].map((m) => m[1]))
      for (const id of used) expect(page.getElementById(id ?? '')?.tagName).toBe('pattern')
      expect(svg).not.toMatch(/NaN|undefined|Infinity/)
    },
  )

  it('says what it is, whose, when, how sure, and in which units', () => {
    const document = { ...jobNamed('mixed'), name: 'North row' }
    const words = writtenOn(parsed(sheetSvg(planOf(document), null)))
    const { sheet } = exporting
    for (const wanted of [
      'North row',
      '2026-01-02',
      'Pierglass 9.8.7',
      pierMark(document),
      sheet.caution,
      sheet.status.toUpperCase(),
      sheet.lengths.us,
      sheet.postWhole,
      sheet.alongSlope,
    ])
      expect(words).toContain(wanted)
    const { hole } = document.spec
    const length = (value: number) => formatText(value, 'length', 'us', { style: 'sheet' })
    expect(words).toContain(`${length(hole.diameter)} Ø`)
    expect(words).toContain(length(hole.depth))
  })

  it('names in its legend every pattern that it uses, once', () => {
    for (const [, document] of someJobs) {
      const plan = planOf(document)
      const page = parsed(sheetSvg(plan, null))
      const legend = page.querySelector('[data-part="legend"]')
      const named = [...(legend?.querySelectorAll('text') ?? [])].slice(1).map((node) => node.textContent)
      const used = new Set(plan.drawing.bodies.map(({ hatch }) => hatch).filter((hatch) => hatch !== 'none'))
      expect(new Set(named).size).toBe(named.length)
      for (const hatch of used) expect(named).toContain(wordsOf('scene').patterns[hatch])
      expect(legend?.querySelectorAll('[fill^="url"]')).toHaveLength(used.size)
    }
  })

  it('markup and strange signs in a name are text', () => {
    const name = '<img src=x onerror=alert(1)> & "q" \u0007\uD800 end'
    const page = parsed(sheetSvg(planOf({ ...jobNamed('mixed'), name }), null))
    expect(page.querySelector('img')).toBeNull()
    expect(writtenOn(page)).toContain('<img src=x onerror=alert(1)> & "q"  end')
  })

  it('leaves out what the screen leaves out', () => {
    const bare = { ...defaultView, layers: { soil: true, labels: false, dimensions: false, water: false, frost: false, wetness: false } }
    const page = parsed(sheetSvg(planOf(jobNamed('mixed'), 'us', bare), null))
    expect(page.querySelectorAll('[data-part="section"] text')).toHaveLength(0)
  })

  it('another pier has another mark, the same pier the same', () => {
    const one = jobNamed('mixed')
    const other = { ...one, spec: { ...one.spec, hole: { ...one.spec.hole, depth: jobNamed('steep-bank').spec.hole.depth } } }
    expect(pierMark(one)).toMatch(/^[0-9A-F]{4}-[0-9A-F]{4}$/)
    expect(pierMark({ spec: { ...one.spec } })).toBe(pierMark(one))
    expect(pierMark(other)).not.toBe(pierMark(one))
  })

  it('is drawn to a scale of the drawing board for any pier that can be built', () => {
    const drawn = fc.sample(arbitraryPier(), { numRuns: 40, seed: 11 })
    const scales = new Set<string>()
    for (const [i, document] of drawn.entries()) {
      const units = i % 2 === 0 ? 'us' : 'metric'
      const plan = planOf(document, units)
      expect(sheetSvg(plan, null)).not.toMatch(/NaN|undefined|Infinity/)
      expect(paperScales(units)).toContain(plan.drawing.frame.perMetre)
      scales.add(plan.words.scale)
      const dxf = dxfFile(sectionFlat(plan, derived(document.spec), { cutPost: false, soil: true }), units)
      expect(dxf).not.toMatch(/NaN|undefined|Infinity/)
    }
    expect(scales.size).toBeGreaterThan(4)
  })
})
