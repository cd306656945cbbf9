import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { calcJob } from '../../../../src/cli/calcJob.ts'
import { derivePier } from '../../../../src/core/derive/derivePier.ts'
import { report } from '../../../../src/core/derive/report/report.ts'
import { statusOf } from '../../../../src/core/derive/report/status.ts'
import type { Result } from '../../../../src/core/model/issue.ts'
import type { PierDocument } from '../../../../src/core/model/spec.ts'
import { defaultDocument } from '../../../../src/core/spec/defaults.ts'
import { setField, setPart } from '../../../../src/core/spec/edit.ts'
import { parseJob, writeJob } from '../../../../src/core/spec/jobFile.ts'
import { linkContent } from '../../../../src/core/spec/linkContent.ts'
import { documentFromContent } from '../../../../src/core/spec/linkFields.ts'
import { originOf } from '../../../../src/core/spec/origins.ts'
import { fromSI } from '../../../../src/core/units/factors.ts'

const done = (result: Result<PierDocument>): PierDocument => (result.ok ? result.value : expect.fail(JSON.stringify(result.issues)))
const on = (document: PierDocument, path: string) => done(setPart(document, path, true))
const typed = (document: PierDocument, path: string, text: string) => done(setField(document, path, text, 'us'))
const demand = ({ spec }: PierDocument) => derivePier(spec).demand
const unasked = ({ spec }: PierDocument) => statusOf(report(derivePier(spec))).unneeded.map(({ id }) => id)
const pounds = (worked: Readonly<{ value: number }> | null) => worked && Math.round(fromSI(worked.value, 'lb'))

const loaded = on(defaultDocument, 'loads.entered')

describe('[C42] no load is held against a pier that nobody gave', () => {
  it('switched on, the loads are empty, ask nothing, and meet nothing', () => {
    expect(loaded.spec.loads.entered).toEqual({ uplift: null, gravity: null, lateral: null, lateralHeight: null })
    expect(demand(loaded).kind).toBeNull()
    expect(unasked(loaded)).toEqual(unasked(defaultDocument))
  })

  it.each(['uplift', 'gravity', 'lateral'] as const)('one that is given asks for itself alone, and none when it is emptied: %s', (one) => {
    const given = typed(loaded, `loads.entered.${one}`, '1,234 lb')
    const found = demand(given)
    for (const other of ['uplift', 'gravity', 'lateral'] as const) expect(pounds(found[other])).toBe(other === one ? 1234 : null)
    expect(originOf(given, `loads.entered.${one}`)).toBe('drawing')
    expect(demand(typed(given, `loads.entered.${one}`, '')).kind).toBeNull()
  })

  it('a nought is what people type for one that they do not know: it is not asked, and has no tick', () => {
    const nought = ['uplift', 'gravity', 'lateral'].reduce((document, one) => typed(document, `loads.entered.${one}`, '0'), loaded)
    expect(demand(nought).kind).toBeNull()
    expect(unasked(nought)).toEqual(expect.arrayContaining(['bearing-gross', 'lateral-embedment']))
  })

  it('uses the design uplift of the drawing where none is entered with the loads', () => {
    const drawn = typed(on(defaultDocument, 'callout'), 'callout.uplift', '1,800 lb')
    expect(pounds(demand(drawn).uplift)).toBe(1800)
    const both = on(drawn, 'loads.entered')
    expect(pounds(demand(both).uplift)).toBe(1800)
    expect(pounds(demand(typed(both, 'loads.entered.uplift', '900')).uplift)).toBe(900)
    expect(demand(on(drawn, 'loads.estimate')).isEstimate).toBe(true)
  })

  it('loads that are on and empty leave an estimate in place', () => {
    expect(demand(on(loaded, 'loads.estimate')).isEstimate).toBe(true)
  })

  it('goes through file and link as it is, in figures and in gaps', () => {
    const some = typed(loaded, 'loads.entered.gravity', '3 kip')
    expect(done(parseJob(writeJob(some))).spec).toEqual(some.spec)
    expect(done(documentFromContent(linkContent(some))).spec).toEqual(some.spec)
    const left = JSON.parse(writeJob(some)) as { pier: { loads: { entered: Record<string, unknown> } } }
    left.pier.loads.entered = {}
    expect(done(parseJob(JSON.stringify(left))).spec.loads.entered).toEqual(loaded.spec.loads.entered)
  })
})

describe('[F11] an older file or link says what has moved, and why', () => {
  /** As the first version wrote it with loads switched on: it filled in all but the uplift, which a person typed. */
  const old = (origins?: object) => {
    const job = JSON.parse(writeJob(loaded)) as { pierglass: number; origins?: object; pier: { loads: object } }
    const entered = { uplift: '950 lb', gravity: '4000 lb', lateral: '400 lb', lateralHeight: '96 in' }
    return JSON.stringify({
      ...job,
      pierglass: 1,
      ...(origins ? { origins } : {}),
      pier: { ...job.pier, loads: { entered, estimate: null } },
    })
  }
  const codes = (text: string) =>
    parseJob(text)
      .issues.filter(({ severity }) => severity === 'changed')
      .map(({ code }) => code)

  it('tells of loads that the page put in, which keep their figures and are assumed', () => {
    const read = done(parseJob(old()))
    expect(pounds(demand(read).gravity)).toBe(4000)
    expect(originOf(read, 'loads.entered.gravity')).toBe('assumed')
    expect(originOf(read, 'loads.entered.uplift')).toBe('drawing')
    expect(codes(old())).toContain('loads-filled-in')
  })

  it('not where somebody gave them, and never of a file of this version', () => {
    const given = { 'loads.entered.gravity': 'drawing', 'loads.entered.lateral': 'drawing', 'loads.entered.lateralHeight': 'drawing' }
    expect(codes(old(given))).not.toContain('loads-filled-in')
    expect(codes(writeJob(done(parseJob(old()))))).toEqual([])
  })

  it('lists what concerns this pier alone', () => {
    expect(codes(old())).not.toContain('dry-mix-mass')
    expect(codes(old())).not.toContain('weak-concrete')
    expect(codes(old().replace('"strength":"3500 psi"', '"strength":"2000 psi"'))).toContain('weak-concrete')
  })

  it('a link too, by the version it begins with', () => {
    const content = linkContent(typed(defaultDocument, 'concrete.strength', '2000 psi'))
    const said = (version: number) => documentFromContent(content, version).issues.map(({ code }) => code)
    expect(said(1)).toContain('weak-concrete')
    expect(said(2)).not.toContain('weak-concrete')
  })

  it('calc says it in words, beside the issues', () => {
    const { changed, issues } = JSON.parse(calcJob(old()).out) as { changed: string[]; issues: { code: string }[] }
    expect(changed.find((text) => text.startsWith('Loads: '))).toMatch(/Empty what you did not enter\.$/)
    expect(issues.map(({ code }) => code)).not.toContain('loads-filled-in')
  })

  it('the first released file opens with what it held', () => {
    const text = readFileSync(new URL('../../spec/released/version-1.json', import.meta.url), 'utf8')
    expect(parseJob(text).ok).toBe(true)
    expect(codes(text)).toContain('years-by-evidence')
  })
})
