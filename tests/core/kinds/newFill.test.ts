import { describe, expect, it } from 'vitest'
import { counting } from '../../../src/core/kinds/counting.ts'
import { fillKinds } from '../../../src/core/kinds/index.ts'
import { declareFill } from '../../../src/core/kinds/record.ts'
import { length, oneOf } from '../../../src/core/fields/makers.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import type { Result } from '../../../src/core/model/issue.ts'

/** A fill that nobody builds: concrete round the foot in one of two makes, gravel over it. It is here and in the list, and nowhere else. */
const madeUp = declareFill({
  id: 'made-up-fill',
  support: 'embedded',
  fields: {
    plug: length({ from: '4 in', to: '30 in', link: 'aa', silent: '10 in' }),
    make: oneOf(['first', 'second'], { link: 'ab', silent: 'first' }),
  },
  prices: { first: 'ac', replacement: 'ad' },
  lifts: (fill, site) => [
    { id: 'concrete', role: 'concrete', label: 'concrete', to: { kind: 'level', y: site.bottom + fill.plug } },
    { id: 'granular', role: 'granular', label: 'granular', to: { kind: 'grade' } },
  ],
  supply: { concrete: fillKinds[2].supply.concrete ?? 'ready-mix', granular: 'loose' },
  hasTop: false,
  counting: {
    weight: counting.fillWeight,
    sideFriction: counting.granularFriction,
    connection: counting.barInSoil,
    strength: counting.padStrength,
    sideways: counting.granularSideways,
  },
  lateralWidth: 'post',
  steps: ['drill', 'clean-out', 'place-base', 'set-and-brace', 'granular-in-lifts'],
  cautions: ['post-not-tied-to-pad'],
  sources: ['ibc-1807-3-3'],
})

/** The house as it is with one more line in the list: what reads the list is loaded after the line is in it. */
const house = async () => {
  const list: { push(kind: unknown): void } = fillKinds as unknown as { push(kind: unknown): void }
  if (!fillKinds.some((kind) => String(kind.id) === madeUp.id)) list.push(madeUp)
  const [fields, defaults, edit, jobFile, linkContent, linkFields, derivePier, deriveTime, schema, inputs] = await Promise.all([
    import('../../../src/core/spec/fields.ts'),
    import('../../../src/core/spec/defaults.ts'),
    import('../../../src/core/spec/edit.ts'),
    import('../../../src/core/spec/jobFile.ts'),
    import('../../../src/core/spec/linkContent.ts'),
    import('../../../src/core/spec/linkFields.ts'),
    import('../../../src/core/derive/derivePier.ts'),
    import('../../../src/core/derive/deriveTime.ts'),
    import('../../../src/core/spec/schema.ts'),
    import('../../../src/core/uncertainty/inputs.ts'),
  ])
  return { ...fields, ...defaults, ...edit, ...jobFile, ...linkContent, ...linkFields, ...derivePier, ...deriveTime, ...schema, ...inputs }
}
const done = (result: Result<PierDocument>): PierDocument => (result.ok ? result.value : expect.fail(JSON.stringify(result.issues)))

describe('[K2] a new way to fill the hole is a record and a line in the list', () => {
  it('its inputs stand where those of a fill stand, and its prices in the table of prices', async () => {
    const { allFields, visibleFields, defaultDocument, setChoice } = await house()
    const own = allFields.filter(({ path }) => /^fill\.(plug|make)$/.test(path))
    expect(own.map(({ path, group }) => [path, group])).toEqual([
      ['fill.plug', 'fill'],
      ['fill.make', 'fill'],
    ])
    expect(allFields.map(({ path }) => path)).toContain('costs.prices.made-up-fill.replacement')
    const pier = done(setChoice(defaultDocument, 'fill.kind', madeUp.id))
    const shown = visibleFields(pier.spec).map(({ path }) => path)
    expect(shown).toContain('fill.plug')
    expect(shown).not.toContain('fill.height')
    expect(visibleFields(defaultDocument.spec).map(({ path }) => path)).not.toContain('fill.plug')
  })

  it('it is chosen, set, drawn, counted and lived with', async () => {
    const { defaultDocument, setChoice, setField, derivePier, deriveTime, inputsOf } = await house()
    const pier = done(setField(done(setChoice(defaultDocument, 'fill.kind', madeUp.id)), 'fill.plug', '12 in', 'us'))
    expect(setField(pier, 'fill.plug', '40 in', 'us').issues.map(({ code }) => code)).toEqual(['above-maximum'])
    const result = derivePier(pier.spec)
    expect(result.zones.map(({ id }) => id)).toEqual(expect.arrayContaining(['concrete', 'granular', 'post']))
    expect(result.quantities.map(({ id }) => id)).toEqual(expect.arrayContaining(['concrete', 'granular']))
    expect(deriveTime(pier.spec).life).toBeDefined()
    expect(inputsOf(pier.spec).length).toBeGreaterThan(0)
  })

  it('file and link bring it back, and a file from before it opens as it did', async () => {
    const { defaultDocument, setChoice, setField, setPart, writeJob, parseJob, linkContent, documentFromContent, jobJsonSchema } =
      await house()
    const chosen = done(setChoice(done(setPart(defaultDocument, 'costs', true)), 'fill.kind', madeUp.id))
    const pier = done(setField(done(setChoice(chosen, 'fill.make', 'second')), 'fill.plug', '12 in', 'us'))
    expect(done(parseJob(writeJob(pier))).spec).toEqual(pier.spec)
    expect(linkContent(pier)).toBe(JSON.stringify(['fk', 'made-up-fill', 'ka', 1, 'aa', '12 in', 'ab', 'second']))
    expect(done(documentFromContent(linkContent(pier))).spec).toEqual(pier.spec)
    expect(JSON.stringify(jobJsonSchema())).toContain('made-up-fill')
    const old = JSON.parse(writeJob(done(setPart(defaultDocument, 'costs', true)))) as {
      pier: { costs: { prices: Record<string, unknown> } }
    }
    delete old.pier.costs.prices[madeUp.id]
    expect(done(parseJob(JSON.stringify(old))).spec.costs?.prices).toHaveProperty(madeUp.id, { first: null, replacement: null })
  })

  it('and keeps its own values while another is in use', async () => {
    const { defaultDocument, setChoice, setField } = await house()
    const pier = done(setField(done(setChoice(defaultDocument, 'fill.kind', madeUp.id)), 'fill.plug', '12 in', 'us'))
    const back = done(setChoice(done(setChoice(pier, 'fill.kind', 'mixed-bracket-pier')), 'fill.kind', madeUp.id))
    expect(back.spec).toEqual(pier.spec)
  })
})
