import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import { report } from '../../../src/core/derive/report/report.ts'
import { stands, statusOf } from '../../../src/core/derive/report/status.ts'
import { markOf } from '../../../src/core/derive/report/verdict.ts'
import { otherGroups } from '../../../src/core/model/fact.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { statusLine, statusParts } from '../../../src/facts/statusWords.ts'
import { soundPier } from '../../soundPier.ts'
import { ofEach } from './manyPiers.ts'
import { entered, plainPier, pound } from './pierOf.ts'

const facts = (spec: PierSpec) => report(derivePier(spec))
const ids = (spec: PierSpec, stand: (typeof stands)[number]) => statusOf(facts(spec))[stand].map(({ id }) => id)

/** A pier that nothing pulls on, and the same pulled, pressed and pushed beyond all that it holds. */
const { support, bars, verticalBars } = soundPier
const still: PierSpec = { ...plainPier, support, bars, verticalBars, loads: { entered: null, estimate: null } }
const loaded: PierSpec = { ...still, loads: entered({ uplift: pound(39000), gravity: pound(90000), lateral: pound(19000) }) }

describe('[C41] one line says how all checks stand', () => {
  it('counts each check once, under how its verdict says that it stands', () => {
    ofEach((spec) => {
      const said = facts(spec)
      const told = statusOf(said)
      const all = stands.flatMap((stand) => told[stand].map(({ group, id }) => `${group} ${id}`))
      expect(new Set(all).size).toBe(all.length)
      for (const group of [...otherGroups, 'stand-off'] as const)
        for (const fact of said.filter((one) => one.group === group)) {
          const mark = markOf(fact.verdict)
          if (mark !== 'short' && mark !== 'unverified') continue
          expect(told[mark].map(({ id }) => id)).toContain(fact.id)
        }
    })
  })

  it('names what falls short, whatever the uplift does', () => {
    expect(ids(loaded, 'short')).toEqual(expect.arrayContaining(['uplift', 'bearing-gross', 'lateral-embedment']))
    const shallow = { ...still, site: { ...still.site, frostDepth: plainPier.hole.depth * 1.2 } } as PierSpec
    expect(ids(shallow, 'short')).toContain('frost-depth')
    expect(statusLine(facts(shallow))).toMatch(/^2 fall short: Frost depth; /)
  })

  it('says that what nobody gave a load or a drawing for was not asked, and gives it no tick', () => {
    expect(ids(still, 'unneeded')).toEqual(expect.arrayContaining(['uplift', 'bearing-gross', 'lateral-embedment', 'drawing']))
    expect(ids(loaded, 'unneeded')).toEqual(['drawing'])
  })

  it("puts what can't be verified before what meets, with its links, and never counts it as met", () => {
    const bare = { ...loaded, bars: null }
    const [short, unverified, meets] = statusParts(facts(bare))
    expect([short?.stand, unverified?.stand, meets?.stand]).toEqual(['short', 'unverified', 'meets'])
    expect(unverified?.names).toContain('Uplift (Bar through the post)')
    expect(ids(bare, 'meets')).not.toContain('uplift')
  })

  it('names a link that holds less than the pull though another can not be verified', () => {
    expect(ids({ ...loaded, bars: null }, 'short')).toContain('friction-and-weight')
    expect(ids({ ...loaded, bars: null, loads: entered({ uplift: pound(10) }) }, 'short')).not.toContain('friction-and-weight')
  })

  it('is never read as leave to build', () => {
    ofEach((spec) => expect(statusLine(facts(spec))).toMatch(/ Not permission to build\.$/))
  })
})
