import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierResult } from '../../../src/core/model/result.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import type { Worked } from '../../../src/core/model/worked.ts'
import { parseJob } from '../../../src/core/spec/jobFile.ts'
import { fromSI, inputUnit } from '../../../src/core/units/factors.ts'
import type { QuantityKind } from '../../../src/core/units/quantity.ts'
import { numbersIn } from '../../../src/view/panels/loadPath/numbersIn.ts'
import { type PadUnits, padSystem, padUnits } from '../../../src/view/panels/loadPath/padUnits.ts'
import { ofEach } from '../../core/derive/manyPiers.ts'
import { texValue } from '../../texValue.ts'

/** Read off a table or a figure of their source by the inputs that stand beside them: no sum that a calculator could do. */
const readOff: ReadonlySet<string> = new Set([
  'along-ridge',
  'enclosed-leeward',
  'enclosed-windward',
  'free-roof-leeward',
  'free-roof-windward',
  'velocity-coefficient-table',
])

/** Cut by a limit that stands behind the formula, or rounded as the code writes it: the sum may come out beyond what is told. */
const bounded: Readonly<Record<string, 'not more' | 'not less' | 'whole percent'>> = {
  'beta-by-depth': 'not more',
  'cores-mean-share': 'whole percent',
  'cores-each-share': 'whole percent',
}

const examples = readdirSync('public/examples').flatMap((file) => {
  const job = parseJob(readFileSync(`public/examples/${file}`, 'utf8'))
  return job.ok ? [job.value.spec] : []
})

/** Every number that a pier shows its work for. */
const workOf = ({ checks, demand, headlines }: PierResult): readonly Worked[] =>
  [
    ...checks.flatMap((check) => [...check.worked, check.allowable, check.demand]),
    demand.uplift,
    demand.gravity,
    demand.lateral,
    ...demand.worked,
    ...demand.cases.flatMap((one) => one.worked),
    ...headlines,
  ].filter((one) => one !== null && one !== undefined)

/** A number in the unit of its line, to all its digits; angles in radians. */
const inLine = (value: number, quantity: QuantityKind, units: PadUnits, system: 'us' | 'metric'): number =>
  quantity === 'angle' || quantity === 'slope' || quantity === 'ratio' || quantity === 'count'
    ? value
    : fromSI(value, units[quantity] ?? inputUnit[system][quantity])

/** The sum of a line with all digits; null where the line has none. */
function sumOf(worked: Worked, system: 'us' | 'metric'): Readonly<{ got: number; want: number; tex: string }> | null {
  const padIn = padSystem(worked, system)
  const units = padUnits(worked, padIn)
  const tex = numbersIn(
    worked.formula,
    worked.inputs.map((term) => ({ symbol: term.symbol, number: `(${inLine(term.value, term.quantity, units, padIn)})` })),
  )
  if (tex === null) return null
  return { got: texValue(tex), want: inLine(worked.value, worked.quantity, units, padIn), tex }
}

/** What is wrong with a line, or null: somebody with a pocket calculator could not follow it. */
function wrongWith(worked: Worked, system: 'us' | 'metric'): string | null {
  const { id, formula, inputs } = worked
  if (inputs.length === 0) return formula.includes('=') ? `${id}: a formula without numbers, ${formula}` : null
  if (readOff.has(id)) return null
  let sum: ReturnType<typeof sumOf>
  try {
    sum = sumOf(worked, system)
  } catch (reason) {
    return `${id}: ${String(reason)}`
  }
  if (sum === null) return `${id}: no line of numbers, ${formula}`
  const { got, want, tex } = sum
  const near = Math.abs(got - want) <= 1e-6 * Math.abs(want) + 1e-7
  const bound = bounded[id]
  const within =
    bound === 'not more' || bound === 'not less' ? Number.isFinite(got) : bound === 'whole percent' && Math.abs(got - want) <= 0.0050001
  return near || within ? null : `${id}: ${formula} -> ${tex} = ${got}, and ${want} is told`
}

describe('a line of numbers, read', () => {
  it.each([
    [String.raw`2 \times 3+ 4`, 10],
    [String.raw`\frac{(6)\times (2)}{4}\,(2)^{1.5}`, 3 * 2 ** 1.5],
    [String.raw`\tfrac{\pi}{4}(2)^2`, Math.PI],
    [String.raw`\tfrac13 (6)-(1)-(1)`, 0],
    [String.raw`\max\left((1),\ 8 (2),\ 6\right)`, 16],
    [String.raw`\tan^2(45^\circ + (0)/2)`, 1],
    [String.raw`\left(\frac{2\times (4)}{(1)}\right)^{1/3}`, 2],
    [String.raw`\sqrt{(9)+ 16}\ge 12`, 5],
    [String.raw`|(2)-(5)|\times 2`, 6],
    [String.raw`\exp(-0.5\times (2))`, Math.exp(-1)],
  ] as const)('%s is %f', (tex, value) => expect(texValue(tex)).toBeCloseTo(value, 12))
  it.each(['x + 1', '(1', '1 )', ''])('%s can not be read', (tex) => expect(() => texValue(tex)).toThrow())
})

describe('[P9] every number can be followed with a pocket calculator', () => {
  const tell = (spec: PierSpec, seen: Map<string, string>, ids: Set<string>) => {
    for (const worked of workOf(derivePier(spec)))
      for (const system of ['us', 'metric'] as const) {
        ids.add(worked.id)
        const wrong = wrongWith(worked, system)
        if (wrong !== null && !seen.has(worked.id)) seen.set(worked.id, `${system}: ${wrong}`)
      }
  }

  it('of every example', () => {
    expect(examples.length).toBeGreaterThan(8)
    const seen = new Map<string, string>()
    const ids = new Set<string>()
    for (const spec of examples) tell(spec, seen, ids)
    expect([...seen.values()]).toEqual([])
    expect(ids.size).toBeGreaterThan(100)
  })

  it('of random piers, in either system: the line of numbers comes to what is told', () => {
    const seen = new Map<string, string>()
    const ids = new Set<string>()
    ofEach((spec) => tell(spec, seen, ids))
    expect([...seen.values()]).toEqual([])
    // Nothing is excused that does not turn up.
    expect([...readOff, ...Object.keys(bounded)].filter((id) => !ids.has(id))).toEqual([])
  })

  it('would tell a line that does not', () => {
    const line: Worked = {
      id: 'line',
      value: 3,
      quantity: 'length',
      formula: 'L = a + b',
      inputs: [
        { symbol: 'a', name: 'a', value: 1, quantity: 'length' },
        { symbol: 'b', name: 'b', value: 2, quantity: 'length' },
      ],
      sources: ['definition'],
      standing: 'definition',
    }
    expect(wrongWith(line, 'us')).toBeNull()
    expect(wrongWith({ ...line, value: 3.1 }, 'us')).toContain('is told')
    expect(wrongWith({ ...line, formula: 'L = a + c' }, 'us')).toContain('no line of numbers')
    expect(wrongWith({ ...line, inputs: [] }, 'us')).toContain('without numbers')
  })
})
