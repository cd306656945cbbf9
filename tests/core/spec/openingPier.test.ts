import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { report } from '../../../src/core/derive/report/report.ts'
import { statusOf } from '../../../src/core/derive/report/status.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { parseJob } from '../../../src/core/spec/jobFile.ts'
import { openingDocument } from '../../../src/core/spec/openingPier.ts'
import { originOf } from '../../../src/core/spec/origins.ts'
import { visibleFields } from '../../../src/core/spec/fields.ts'
import { validateSpec } from '../../../src/core/spec/validate.ts'
import { fromSI } from '../../../src/core/units/factors.ts'

const example = (name: string): PierSpec => {
  const read = parseJob(readFileSync(new URL(`../../../public/examples/boat-shelter-${name}.json`, import.meta.url), 'utf8'))
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return read.value.spec
}
const status = (spec: PierSpec) => statusOf(report(derivePier(spec)))
const ids = (told: readonly Readonly<{ id: string }>[]) => told.map(({ id }) => id)

const good = [
  ['opening', openingDocument.spec],
  ['mixed', example('mixed')],
  ['mixed-metric', example('mixed-metric')],
  ['bracket', example('bracket')],
] as const

describe('[C43] what a stranger starts from is good practice', () => {
  it.each(good)('%s: every check that is asked meets', (_, spec) => {
    const { short, unverified, meets } = status(spec)
    expect(ids(short)).toEqual([])
    expect(ids(unverified)).toEqual([])
    expect(meets.length).toBeGreaterThan(9)
    expect(validateSpec(spec).filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it.each(good)('%s: concrete of class F2, with air, bears below frost and sheds water', (_, spec) => {
    expect(fromSI(spec.concrete.strength, 'psi')).toBeGreaterThanOrEqual(4500 * (1 - 1e-9))
    expect(spec.placing.air).toBe('yes')
    expect(spec.top).toMatchObject({ shape: 'crowned' })
    expect(spec.verticalBars).not.toBeNull()
    expect(ids(status(spec).meets)).toEqual(expect.arrayContaining(['freeze-thaw', 'frost-depth']))
  })

  it.each(good.slice(1))('%s: uplift, bearing and the push sideways are asked', (_, spec) => {
    expect(ids(status(spec).unneeded)).toEqual(['drawing'])
  })

  it('nobody has given the opening pier: all of it is assumed, and no load is put in', () => {
    for (const { path } of visibleFields(openingDocument.spec)) expect(originOf(openingDocument, path), path).toBe('assumed')
    expect(openingDocument.spec.loads).toEqual({ entered: null, estimate: null })
  })
})
