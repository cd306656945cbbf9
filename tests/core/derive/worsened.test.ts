import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { report } from '../../../src/core/derive/report/report.ts'
import type { ToldCheck } from '../../../src/core/derive/report/status.ts'
import { costOfGain, worsened } from '../../../src/core/derive/report/worsened.ts'
import { whatIf } from '../../../src/core/derive/whatIf/whatIf.ts'
import type { Fact } from '../../../src/core/model/fact.ts'
import type { PierDocument } from '../../../src/core/model/spec.ts'
import { setField, setPart } from '../../../src/core/spec/edit.ts'
import { openingDocument } from '../../../src/core/spec/openingPier.ts'

const facts = ({ spec }: PierDocument): readonly Fact[] => report(derivePier(spec))
const changed = (made: ReturnType<typeof setPart>): PierDocument => (made.ok ? made.value : expect.fail(JSON.stringify(made.issues)))
const ids = (list: readonly ToldCheck[]) => list.map(({ id }) => id)
const before = facts(openingDocument)

describe('[C44] a change that raises one number says which others it makes worse', () => {
  it('a wider mouth holds more, and frost pulls harder on it', () => {
    const after = facts(changed(setPart(openingDocument, 'hole.flare', true)))
    expect(ids(costOfGain(before, after))).toContain('frost-jacking')
  })

  it('a change that worsens a check and raises nothing is worse, and no gain', () => {
    const after = facts(changed(setField(openingDocument, 'site.frostDepth', '60 in', 'us')))
    expect(ids(worsened(before, after))).toContain('frost-depth')
    expect(costOfGain(before, after)).toEqual([])
  })

  it('nothing is worse where nothing changed', () => expect(worsened(before, before)).toEqual([]))

  it('each change that is offered for the uplift says it too', () => {
    const offered = whatIf(openingDocument.spec)
    expect(offered.length).toBeGreaterThan(3)
    for (const { spec, worse } of offered) expect(ids(worse)).toEqual(ids(worsened(before, report(derivePier(spec)))))
    expect(offered.some(({ gain, worse }) => gain > 0 && worse.length > 0)).toBe(true)
  })
})
