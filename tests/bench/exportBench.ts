import Module from 'manifold-3d'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { radians } from '../../src/core/units/quantity.ts'
import { dxfFile } from '../../src/export/drawing/dxf.ts'
import { resultCsv } from '../../src/export/numbers/resultCsv.ts'
import { resultJson } from '../../src/export/numbers/resultJson.ts'
import { glbFile } from '../../src/export/solid/glb.ts'
import { solidFile } from '../../src/export/solid/solidFile.ts'
import { solidParts } from '../../src/export/solid/solidParts.ts'
import { defaultView } from '../../src/state/defaultView.ts'
import { materials } from '../../src/words/en/materials.ts'
import type { Role } from '../../src/core/model/solid.ts'
import { sectionFlat } from '../../src/view/section/paper/sectionFlat.ts'
import { sectionPlan } from '../../src/view/section/paper/sectionPlan.ts'
import { sheetSvg } from '../../src/view/section/paper/sheetSvg.ts'
import { loadWords, subjects } from '../../src/words/index.ts'
import { benchPiers } from './piers.ts'
import { line, time } from './timing.ts'

/** Size and time of each file to take along, without the loading of libraries, next to what it is made from. */

const runs = { warmUp: 10, runs: 40 }
const names = Object.fromEntries(Object.entries(materials.roles).map(([role, { label }]) => [role, label])) as Record<Role, string>

export async function benchExports(): Promise<void> {
  await loadWords(subjects)
  const wasm = await Module()
  wasm.setup()
  console.log('files to take along (words measured by their letters, as there is no page)')
  for (const [name, spec] of Object.entries(benchPiers)) {
    const document: PierDocument = { ...defaultDocument, spec, name: 'bench' }
    const result = derivePier(spec)
    const ask = { document, result, view: defaultView, date: '2026-01-01', version: '0' }
    const plan = sectionPlan(ask)
    const parts = solidParts(result.zones)
    const words = { title: name, description: name, application: 'bench' }
    const solid = (format: 'stl' | '3mf') => solidFile(wasm, { format, parts, withPost: true, scale: 1, words, names })
    const glb = () =>
      glbFile({
        zones: result.zones,
        cut: { open: radians(1.9), facing: radians(0) },
        cutPost: false,
        nameOf: ({ label }) => label,
        title: name,
        generator: 'bench',
        notes: {},
      })
    const plain = resultJson(document, result, [])
    const files: readonly (readonly [what: string, make: () => string | Uint8Array])[] = [
      ['SVG page', () => sheetSvg(plan, null)],
      ['DXF', () => dxfFile(sectionFlat(plan, result, { cutPost: false, soil: true }), 'us')],
      ['STL, with post', () => solid('stl')],
      ['3MF, by material', () => solid('3mf')],
      ['CSV', () => resultCsv(plain)],
      ['JSON', () => JSON.stringify(resultJson(document, result, []), null, 2)],
    ]
    console.log(`${name}:`)
    console.log(
      line(
        '  the section planned: drawing and words',
        time(() => sectionPlan(ask), runs),
      ),
    )
    console.log(
      line(
        '  closed parts at 256 sides',
        time(() => solidParts(result.zones), runs),
      ),
    )
    for (const [what, make] of files) console.log(line(`  ${what}`, time(make, runs), `${(make().length / 1000).toFixed(1)} kB`))
    const start = performance.now()
    const bytes = await glb()
    console.log(
      `  ${'glTF, cut (one run)'.padEnd(44)} ${(performance.now() - start).toFixed(1).padStart(9)} ms   ${(bytes.length / 1000).toFixed(1)} kB`,
    )
  }
  console.log('')
}
