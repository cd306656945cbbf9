import { describe, expect, it } from 'vitest'
import { cited, fromPrinted, printedUnits, toPrinted } from '../../../src/core/engineering/cited.ts'
import { showing, weakest } from '../../../src/core/engineering/showing.ts'
import { type SourceId, sources } from '../../../src/core/engineering/sources.ts'
import { standingOf } from '../../../src/core/engineering/sourceStandings.ts'
import { standingsInOrder } from '../../../src/core/model/worked.ts'

type Inputs = Readonly<{ a: number; b: number | null; name: string }>
const recipe = {
  id: 'sum',
  quantity: 'length',
  formula: ({ name }: Inputs) => `a + b\\ (${name})`,
  terms: { a: ['a', 'length'], b: ['b', 'length'] },
  sources: ['ibc-1806-2'],
} as const

describe('the standings of sources', () => {
  it.each(Object.entries(sources))('%s is as sources.ts has it', (id, { standing }) => {
    expect(standingOf(id as SourceId)).toBe(standing)
  })
})

describe('a number that shows its work', () => {
  const worked = showing({ ...recipe, of: ({ a, b }: Inputs) => a + (b ?? 0) })
  it('lists its numeric inputs in order, with symbol and quantity', () => {
    const shown = worked({ a: 1, b: 2, name: 'x' })
    expect(shown.value).toBe(3)
    expect(shown.formula).toBe('a + b\\ (x)')
    expect(shown.inputs).toEqual([
      { symbol: 'a', name: 'a', value: 1, quantity: 'length' },
      { symbol: 'b', name: 'b', value: 2, quantity: 'length' },
    ])
    expect(worked({ a: 1, b: null, name: '' }).inputs).toHaveLength(1)
  })
  it('stands no better than its weakest source, row or own standing', () => {
    expect(worked({ a: 1, b: 1, name: '' }).standing).toBe('secondary')
    expect(worked({ a: 1, b: 1, name: '' }, { standings: ['from memory', 'read'] }).standing).toBe('from memory')
    expect(worked({ a: 1, b: 1, name: '' }, { sources: ['assumption'] })).toMatchObject({
      standing: 'assumed here',
      sources: ['ibc-1806-2', 'assumption'],
    })
    expect(showing({ ...recipe, standing: 'definition', of: () => 1 })({ a: 1, b: 1, name: '' }).standing).toBe('secondary')
  })
  it('gives nothing where the function gives nothing', () => {
    expect(showing({ ...recipe, of: (): number | null => null })({ a: 1, b: 1, name: '' })).toBeNull()
  })
  it('orders standings', () => {
    expect(weakest()).toBe('definition')
    expect(weakest('read', 'definition')).toBe('read')
    expect(weakest(...standingsInOrder)).toBe('assumed here')
  })
})

describe('sources', () => {
  it.each(Object.entries(sources))('%s is complete', (_, source) => {
    expect(source.title).not.toBe('')
    expect(standingsInOrder).toContain(source.standing)
  })
})

describe('printed figures', () => {
  it('keep digits and unit beside the SI value, and convert back', () => {
    const figure = cited(3.5, 'in', 'definition', 'definition')
    expect(figure).toMatchObject({ printed: 3.5, unit: 'in', value: 0.0889 })
    for (const unit of Object.keys(printedUnits) as (keyof typeof printedUnits)[])
      expect(toPrinted(fromPrinted(7.25, unit), unit)).toBeCloseTo(7.25, 12)
  })
  it('units that only tables use', () => {
    expect(fromPrinted(4, 'qt')).toBeCloseTo(fromPrinted(1, 'gal'), 15)
    expect(fromPrinted(1, 'gal')).toBeCloseTo(0.003785411784, 15)
    expect(fromPrinted(1, 'mph')).toBeCloseTo(0.44704, 15)
    expect(fromPrinted(1, 'lb-ft')).toBeCloseTo(1.3558179483314, 12)
    expect(fromPrinted(1, 'lb/ft')).toBeCloseTo(14.5939029372064, 12)
    expect(fromPrinted(1, 'in4')).toBeCloseTo(0.0254 ** 4, 18)
  })
})
