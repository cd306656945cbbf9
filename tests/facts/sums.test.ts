import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import { deriveMix } from '../../src/core/derive/mix/deriveMix.ts'
import { deriveMoisture } from '../../src/core/derive/moisture/deriveMoisture.ts'
import { inConcreteAbove } from '../../src/core/derive/report/placedFacts.ts'
import { factsOf, report } from '../../src/core/derive/report/report.ts'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { parseQuantity } from '../../src/core/units/parse.ts'
import { toSI, type UnitId } from '../../src/core/units/factors.ts'
import type { QuantityKind, UnitSystem } from '../../src/core/units/quantity.ts'
import { unitsFor } from '../../src/core/units/reader.ts'
import { resultJson } from '../../src/export/numbers/resultJson.ts'
import { said } from '../../src/facts/said.ts'
import { arbitraryPier } from '../arbitraryPier.ts'

/** A printed figure [SI], and by how much its last digit may be off: half of it. */
type Printed = Readonly<{ value: number; half: number }>
/** Figures of a thousand and more have four digits, others three; lengths in inches are in eighths, under an inch in sixteenths. */
function printed(text: string, kind: QuantityKind): Printed {
  const read = parseQuantity(text, kind)
  if (!read.ok) expect.fail(`${text} can not be read`)
  const [, figure = '', unit = ''] = /^-?([\d.,\u202f /]*\d) ?(\D.*)$/.exec(text) ?? []
  const id = unit.replace('²', '2').replace('³', '3') as UnitId
  const digits = figure.replace(/[^\d.]/g, '')
  const [whole = '', decimals] = digits.split('.')
  const step =
    unit === 'in' ? 1 / 8 : decimals === undefined ? 10 ** Math.max(0, whole.length - (whole.length > 3 ? 4 : 3)) : 10 ** -decimals.length
  return { value: read.value, half: toSI(step, id) / 2 }
}
const addsUp = (what: string, kind: QuantityKind, total: string, parts: readonly string[]): void => {
  const [sum, ...all] = [total, ...parts].map((text) => printed(text, kind))
  if (!sum) expect.fail(what)
  const room = sum.half + all.reduce((most, { half }) => most + half, 0)
  const found = all.reduce((most, { value }) => most + value, 0)
  expect(Math.abs(found - sum.value), `${what}: ${parts.join(' + ')} is not ${total}`).toBeLessThanOrEqual(room * (1 + 1e-6) + 1e-12)
}

const systems: readonly UnitSystem[] = ['us', 'metric']
const seeded = (check: (document: PierDocument) => void): void => fc.assert(fc.property(arbitraryPier(), check), { numRuns: 200, seed: 10 })

describe('[Q4] figures that stand together add up as they are printed', () => {
  it('in the panels and on the sheet: wood by what touches it, what is poured, mass of dry mix, wood by class', () => {
    seeded(({ spec }) => {
      const facts = report(derivePier(spec))
      const { concrete } = deriveMix(spec)
      const { shares, wood } = deriveMoisture(spec)
      for (const system of systems) {
        const { say } = unitsFor(system)
        for (const { id, value, figures } of factsOf(facts, 'exposure', 'exposure-area', 'headline')) {
          const parts = figures.flatMap((one) => (one.id !== inConcreteAbove && one.value.as === 'number' ? [one.value] : []))
          if (value?.as === 'number' && parts.length > 0)
            addsUp(
              id,
              value.quantity,
              say(value.value, value.quantity),
              parts.map((part) => say(part.value, part.quantity)),
            )
        }
        if (concrete?.as === 'dry') {
          const { placed, extra, left, ordered } = concrete.mass
          addsUp(
            'mass',
            'weight',
            say(ordered, 'weight'),
            [placed, extra, left].map((one) => say(one, 'weight')),
          )
        }
        const all = say(wood.below + wood.above, 'area')
        if (shares.length > 0) {
          addsUp(
            'wood by class',
            'area',
            all,
            shares.map(({ area }) => say(area, 'area')),
          )
          addsUp(
            'wood below and above grade',
            'area',
            all,
            [wood.below, wood.above].map((one) => say(one, 'area')),
          )
        }
      }
    })
  })

  it('in calc: main numbers and the parts that went into them', () => {
    seeded((document) => {
      const json = JSON.parse(JSON.stringify(resultJson(document, derivePier(document.spec), []))) as {
        headlines: readonly Readonly<{
          id: string
          unit: string
          text: Record<UnitSystem, string>
          inputs: readonly Readonly<{ text: Record<UnitSystem, string> }>[]
        }>[]
      }
      for (const [id, kind] of [
        ['mix-volume', 'volume'],
        ['pier-weight', 'weight'],
      ] as const) {
        const found = json.headlines.find((one) => one.id === id) ?? expect.fail(id)
        if (found.inputs.length > 0)
          for (const system of systems)
            addsUp(
              id,
              kind,
              found.text[system],
              found.inputs.map((one) => one.text[system]),
            )
      }
    })
  })

  it('against a drawing: what is drawn and the difference give what is set, to the last digit', () => {
    let compared = 0
    seeded(({ spec }) => {
      const facts = factsOf(report(derivePier(spec)), 'drawing-item')
      for (const fact of facts)
        for (const system of systems) {
          const { value, limit, difference } = said(fact, unitsFor(system))
          if (fact.value?.as !== 'number' || fact.limit?.as !== 'number' || !/\d/.test(difference)) continue
          const { quantity } = fact.value
          const exact = fact.value.value - fact.limit.value
          if (fact.difference?.as !== 'number' || Math.abs(exact - fact.difference.value) > 1e-9) continue
          const of = (text: string) => parseQuantity(text, quantity, quantity === 'count' ? '1' : undefined)
          const [set, drawn, apart] = [of(value), of(limit), of(difference.replace('\u2212', '-').replace('+', ''))]
          if (!set.ok || !drawn.ok || !apart.ok) expect.fail(`${fact.id}: ${value}, ${limit}, ${difference}`)
          if (set.value === drawn.value) continue
          compared++
          // In whole numbers and fractions they add up to the letter; with decimals, within what these allow.
          const isWhole = ![value, limit, difference].join('').includes('.')
          const off = Math.abs(set.value - drawn.value - apart.value)
          if (isWhole)
            expect(off, `${fact.id}: ${value} less ${limit} is not ${difference}`).toBeLessThanOrEqual(1e-9 * Math.abs(drawn.value) + 1e-9)
          else addsUp(fact.id, quantity, value, [limit, difference.replace('\u2212', '-').replace('+', '')])
        }
    })
    expect(compared).toBeGreaterThan(20)
  })
})
