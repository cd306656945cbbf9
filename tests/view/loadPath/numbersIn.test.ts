import katex from 'katex'
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import type { Worked } from '../../../src/core/model/worked.ts'
import { soundDocument } from '../../soundPier.ts'
import { setChoice, setField, setPart } from '../../../src/core/spec/edit.ts'
import { fromSI } from '../../../src/core/units/factors.ts'
import { numbersIn } from '../../../src/view/panels/loadPath/numbersIn.ts'
import { padNumber, padSystem, padTex, padUnits, termNumber } from '../../../src/view/panels/loadPath/padUnits.ts'

type Edit = (document: PierDocument) => ReturnType<typeof setChoice>
const edited = (...edits: readonly Edit[]): PierDocument =>
  edits.reduce<PierDocument>((now, edit) => {
    const next = edit(now)
    if (!next.ok) throw new Error(JSON.stringify(next.issues))
    return next.value
  }, soundDocument)
const on =
  (path: string): Edit =>
  (document) =>
    setPart(document, path, true)
const type =
  (path: string, text: string): Edit =>
  (document) =>
    setField(document, path, text, 'us')
const pick =
  (path: string, choice: string): Edit =>
  (document) =>
    setChoice(document, path, choice)

const piers = [
  edited(
    on('loads.entered'),
    type('loads.entered.uplift', '800'),
    type('loads.entered.gravity', '4000'),
    type('loads.entered.lateral', '400'),
    type('loads.entered.lateralHeight', '8'),
  ),
  edited(on('hole.bell'), type('site.frostDepth', '12 in'), type('site.blows', '15'), on('loads.estimate')),
  edited(on('verticalBars'), type('bars.count', '2'), type('site.waterTable', '20 in')),
  edited(pick('fill.kind', 'mixed-bracket-pier'), pick('site.soil.kind', 'user'), type('hole.depth', '110 in')),
]
/** Every line of work of these piers, one of each name and formula. */
const lines: ReadonlyMap<string, Worked> = new Map(
  piers.flatMap((pier) => {
    const { checks, demand } = derivePier(pier.spec)
    const shown = [...checks.flatMap((check) => [...check.worked, check.allowable, check.demand ?? null]), ...demand.worked]
    return shown.filter((one) => one !== null).map((one) => [`${one.id} ${one.formula}`, one] as const)
  }),
)
const filled = (worked: Worked, system: 'us' | 'metric'): string | null => {
  const padIn = padSystem(worked, system)
  const units = padUnits(worked, padIn)
  return numbersIn(
    worked.formula,
    worked.inputs.map((term) => ({ symbol: term.symbol, number: padTex(termNumber(term, units, padIn)) })),
  )
}

describe('[P4] a formula with its numbers', () => {
  it.each([
    [
      String.raw`T_a = R + 0.6\,D`,
      [
        ['R', '156'],
        [String.raw`0.6\,D`, '1007'],
      ],
      '156+ 1007',
    ],
    [
      'R = R_u / F_S',
      [
        ['R_u', '213'],
        ['F_S', '2'],
      ],
      '213/ 2',
    ],
    [
      String.raw`D = \sum W'_i`,
      [
        ["W'_{1}", '10'],
        ["W'_{2}", '20'],
      ],
      '10+20',
    ],
    ['Z = 2 D', [['D', '3']], String.raw`2 \times 3`],
    [
      'Z = D D_f',
      [
        ['D', '3'],
        ['D_f', '4'],
      ],
      String.raw`3\times 4`,
    ],
    ['A = r^2', [['r', '3']], String.raw`\left(3\right)^ 2`],
    [
      'x = a - b',
      [
        ['a', '1'],
        ['b', '-2'],
      ],
      String.raw`1- \left(-2\right)`,
    ],
    [
      String.raw`T = 5\phi\,A\ (\mathrm{psi,\ in})`,
      [
        [String.raw`\phi`, '0.6'],
        ['A', '9'],
      ],
      String.raw`5 \times 0.6\times 9`,
    ],
  ] as const)('%s', (formula, numbers, want) => {
    expect(
      numbersIn(
        formula,
        numbers.map(([symbol, number]) => ({ symbol, number })),
      ),
    ).toBe(want)
  })

  it.each([
    [String.raw`d \ge t`, ['d', 't']],
    ['Z = D k', ['D']],
    ['Z = D', []],
    ['x = a^b', ['a']],
    [String.raw`\tan\varphi_r = 0.75\tan\varphi`, [String.raw`\varphi`]],
  ] as const)('is left out where it would be half a formula: %s', (formula, symbols) => {
    expect(
      numbersIn(
        formula,
        symbols.map((symbol) => ({ symbol, number: '1' })),
      ),
    ).toBeNull()
  })

  it('is good TeX in either system, for every line of work', () => {
    let count = 0
    for (const worked of lines.values())
      for (const system of ['us', 'metric'] as const) {
        const tex = filled(worked, system)
        for (const one of [worked.formula, ...(tex === null ? [] : [tex])]) {
          if (one === '') continue
          expect(() => katex.renderToString(one, { output: 'mathml', throwOnError: true }), one).not.toThrow()
          count++
        }
      }
    expect(lines.size).toBeGreaterThan(60)
    expect(count).toBeGreaterThan(2 * lines.size)
  })

  it('comes to the number that it stands under', () => {
    // Outside check: the library mathjs reads the line as a pocket calculator would. Numbers on the pad carry three figures.
    let checked = 0
    const missing: string[] = []
    for (const worked of lines.values()) {
      const tex = filled(worked, 'us')
      if (tex === null) {
        if (worked.inputs.length > 1) missing.push(`${worked.id}: ${worked.formula}`)
        continue
      }
      const sum: unknown = evaluate(asSum(tex))
      const got = typeof sum === 'number' && worked.quantity === 'angle' ? (sum * 180) / Math.PI : sum
      const unit = padUnits(worked, 'us')[worked.quantity]
      const want = Number(padNumber(worked.value, worked.quantity, padUnits(worked, 'us'), 'us').text.replace(/,/g, ''))
      expect(unit === undefined || Number.isFinite(fromSI(worked.value, unit))).toBe(true)
      if (typeof got !== 'number') throw new Error(`${worked.id}: ${tex}`)
      if (capped.has(worked.id)) continue
      expect(Math.abs(got - want), `${worked.id}: ${tex} = ${got}, and ${want} is told`).toBeLessThanOrEqual(0.02 * Math.abs(want) + 1e-6)
      checked++
    }
    expect(missing).toEqual([])
    expect(checked).toBeGreaterThan(40)
  })
})

/** A cap that stands behind the formula cuts these: 0.25 to 1.2. */
const capped: ReadonlySet<string> = new Set(['beta-by-depth'])

/** TeX of a filled line as a sum that mathjs reads. What follows a relation is a condition and is cut off. */
function asSum(tex: string): string {
  let sum = (tex.split(/\\[gl]e(?![a-z])/)[0] ?? '')
    .replace(/\{,\}/g, '')
    .replace(/\\,\\mathrm\{[^}]*\}(?:\^[23])?(?:\\mathrm\{[^}]*\})?/g, '')
    .replace(/\s*\\mathrm\s*\{[^}]*\}/g, '')
    .replace(/\^\\circ/g, ' deg')
    .replace(/\\,\\%/g, '/100')
    .replace(/\\(?:left|right|!|,)/g, '')
    .replace(/\\pi/g, ' pi ')
    .replace(/\\(?:times|cdot)/g, '*')
    .replace(/\\(sin|cos|tan)\s*([\d.]+ deg)/g, '$1($2)')
    .replace(/\|([^|]*)\|/g, 'abs($1)')
  for (let before = ''; before !== sum; ) {
    before = sum
    sum = sum
      .replace(/\\t?frac\s*\{([^{}]*)\}\s*\{([^{}]*)\}/g, '(($1)/($2))')
      .replace(/\\sqrt\s*\{([^{}]*)\}/g, 'sqrt($1)')
      .replace(/\^\s*\{([^{}]*)\}/g, '^($1)')
  }
  return sum
    .replace(/\\arctan/g, 'atan')
    .replace(/\\exp/g, 'exp')
    .replace(/\\min/g, 'min')
    .replace(/\\max/g, 'max')
    .replace(/min\s*\[/g, 'min(')
    .replace(/\[/g, '(')
    .replace(/\]/g, ')')
    .replace(/[{}]/g, '')
    .replace(/\)\s*\(/g, ')*(')
    .replace(/(\d)\s+\(/g, '$1*(')
}
