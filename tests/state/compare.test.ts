import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { claimsAbout, weighedClaims } from '../../src/core/derive/evidence.ts'
import { lifeEvidence } from '../../src/core/engineering/tables/lifeEvidence.ts'
import { comparedFirst, fillKinds } from '../../src/core/kinds/index.ts'
import type { FillId, PierDocument } from '../../src/core/model/spec.ts'
import { setChoice, setNumber, setPart } from '../../src/core/spec/edit.ts'
import { allFields } from '../../src/core/spec/fields.ts'
import { closeCompare, createCompareStore, type Pick as Picked, openCompare } from '../../src/state/compare.ts'
import {
  bringPiers,
  comparePiers,
  dropBrought,
  fixedOrder,
  movePick,
  setRowShown,
  showYear,
  togglePick,
} from '../../src/state/compareActions.ts'
import { inputRows } from '../../src/state/compareInputs.ts'
import { differingFirst, extremesOf, rowsFor, voices } from '../../src/state/compareRows.ts'
import { comparedDocuments, comparedPiers, firstPicks, picksOf } from '../../src/state/compareSet.ts'
import { derived } from '../../src/state/derived.ts'
import { metres } from '../../src/core/units/quantity.ts'
import { compare as words } from '../../src/words/en/compare.ts'
import { fills } from '../../src/words/en/fills.ts'
import { arbitraryPier } from '../arbitraryPier.ts'
import { soundDocument } from '../soundPier.ts'

const own = soundDocument
const with_ = (kind: FillId, document: PierDocument = own): PierDocument => {
  const changed = setChoice(document, 'fill.kind', kind)
  if (!changed.ok) throw new Error(JSON.stringify(changed.issues))
  return changed.value
}
/** Legs of a bracket so deep that upright bars are developed past them. */
const resultOf = (kind: FillId) => {
  const { spec } = with_(kind)
  const { support } = spec
  return derived(
    support.kind === 'bracket' ? { ...spec, support: { ...support, bracket: { ...support.bracket, embedment: metres(0.5) } } } : spec,
  )
}
const row = (id: string) => {
  const found = rowsFor([derived(own.spec)]).find((one) => one.id === id)
  if (!found) throw new Error(`no row ${id}`)
  return found
}

describe('[Y1] which piers stand side by side', () => {
  it('starts with the open pier, then the methods in their fixed order, its own left out', () => {
    for (const { id } of fillKinds) {
      const picks = firstPicks(with_(id))
      expect(picks[0]).toBe('own')
      expect(picks).toHaveLength(4)
      expect(picks.slice(1)).toEqual(
        comparedFirst
          .filter((one) => one !== id)
          .slice(0, 3)
          .map((one) => `method:${one}`),
      )
    }
  })

  it('keeps site, hole, post and drawing in every method', () => {
    const drawn = setPart(own, 'callout', true)
    if (!drawn.ok) throw new Error('no callout')
    for (const { pier } of comparedPiers(createCompareStore().getState(), drawn.value)) {
      expect(pier?.document.spec.site).toEqual(own.spec.site)
      expect(pier?.document.spec.hole).toEqual(own.spec.hole)
      expect(pier?.document.spec.post).toEqual(own.spec.post)
      expect(pier?.document.spec.callout).toEqual(drawn.value.spec.callout)
    }
  })

  it('sets a bar where a method is counted through one, of the drawn size, and nowhere else', () => {
    const bare = setPart(with_('dry-bag-at-foot'), 'bars', false)
    const drawn = bare.ok ? setPart(bare.value, 'callout', true) : bare
    const sized = drawn.ok ? setChoice(drawn.value, 'callout.barSize', '#6') : drawn
    if (!sized.ok) throw new Error('refused')
    const barOf = (document: PierDocument, id: FillId) =>
      comparedPiers({ picks: ['own', `method:${id}`], brought: [] }, document)[1]?.pier?.document.spec.bars
    expect(barOf(sized.value, 'mixed-full-height')?.size).toBe('#6')
    expect(barOf(bare.ok ? bare.value : own, 'mixed-full-height')).not.toBeNull()
    expect(barOf(sized.value, 'dry-full-height')).toBeNull()
    expect(barOf(sized.value, 'mixed-bracket-pier')).toBeNull()
    expect(comparedPiers({ picks: null, brought: [] }, sized.value)[0]?.pier?.document).toBe(sized.value)
  })

  it('works each method out once for a pier', () => {
    const store = createCompareStore()
    const first = comparedPiers(store.getState(), own).map(({ pier }) => pier?.result)
    expect(comparedPiers(store.getState(), own).map(({ pier }) => pier?.result)).toEqual(first)
    for (const [i, { pier }] of comparedPiers(store.getState(), own).entries()) expect(pier?.result).toBe(first[i])
  })

  it('holds between two and four, and puts a method that is added into its place', () => {
    const store = createCompareStore()
    const picks = () => picksOf(store.getState(), own)
    expect(togglePick(store, own, 'method:flowable-fill')).toBe(false)
    expect(togglePick(store, own, 'method:mixed-bracket-pier')).toBe(true)
    expect(togglePick(store, own, 'method:dry-bag-at-foot')).toBe(true)
    expect(picks()).toEqual(['own', 'method:dry-full-height'])
    expect(togglePick(store, own, 'own')).toBe(false)
    expect(togglePick(store, own, 'method:mixed-bracket-pier')).toBe(true)
    expect(picks()).toEqual(['own', 'method:mixed-bracket-pier', 'method:dry-full-height'])
  })

  it('moves a pier and goes back to the fixed order with the same piers', () => {
    const store = createCompareStore()
    movePick(store, own, 0, 1)
    expect(picksOf(store.getState(), own).slice(0, 2)).toEqual(['method:mixed-bracket-pier', 'own'])
    expect(store.getState().isMoved).toBe(true)
    movePick(store, own, 3, 1)
    expect(picksOf(store.getState(), own)).toHaveLength(4)
    fixedOrder(store)
    expect(picksOf(store.getState(), own)).toEqual(firstPicks(own))
    expect(store.getState().isMoved).toBe(false)
  })

  it('leaves out a method that has become the own one', () => {
    const store = createCompareStore()
    togglePick(store, own, 'method:dry-full-height')
    const bag = with_('dry-bag-at-foot')
    expect(picksOf(store.getState(), bag)).toEqual(['own', 'method:mixed-bracket-pier'])
  })

  it('takes piers from elsewhere, alone or beside the own one, and lays them aside again', () => {
    const store = createCompareStore()
    const saved = [with_('mixed-collar'), with_('flowable-fill')]
    expect(comparePiers(store, saved.slice(0, 1))).toBe(false)
    expect(comparePiers(store, saved)).toBe(true)
    expect(store.getState().isOpen).toBe(true)
    expect(comparedDocuments(store.getState(), own)).toEqual(saved)
    const other = createCompareStore()
    expect(bringPiers(other, own, saved)).toBe(1)
    expect(picksOf(other.getState(), own)).toEqual([...firstPicks(own).slice(0, 3), 'brought:0'])
    dropBrought(other, 0)
    expect(picksOf(other.getState(), own)).toEqual(firstPicks(own).slice(0, 3))
    expect(togglePick(other, own, 'brought:1')).toBe(true)
    expect(comparedDocuments(other.getState(), own).at(-1)).toEqual(saved[1])
  })

  it('tells why a method cannot be built here, with the field, and shows no pier for it', () => {
    let seen = 0
    fc.assert(
      fc.property(arbitraryPier(), (document) => {
        for (const { pick, pier, issues } of comparedPiers(
          { picks: fillKinds.map(({ id }): Picked => `method:${id}`), brought: [] },
          document,
        )) {
          if (pier) expect(issues).toEqual([])
          else {
            seen++
            expect(pick).not.toBe('own')
            expect(issues.length).toBeGreaterThan(0)
            for (const issue of issues) expect(allFields.some(({ path }) => path === issue.path)).toBe(true)
          }
        }
      }),
      { numRuns: 40, seed: 5 },
    )
    expect(seen).toBeGreaterThan(0)
  })

  it('opens and closes without losing what was picked', () => {
    const store = createCompareStore()
    movePick(store, own, 0, 1)
    const { picks } = store.getState()
    openCompare(store)
    closeCompare(store)
    expect(store.getState()).toMatchObject({ isOpen: false, picks, projected: null })
  })

  it('goes on at the year that was looked at, and else shows no wet wood', () => {
    const store = createCompareStore()
    openCompare(store, 30)
    expect(store.getState().year).toBe(30)
    showYear(store, 10)
    expect(store.getState().year).toBe(10)
    openCompare(store)
    expect(store.getState().year).toBeNull()
  })
})

describe('[Y2] inputs that differ', () => {
  it('are none for one pier twice', () => expect(inputRows([own.spec, own.spec])).toEqual([]))

  it('name the one field that was changed', () => {
    const wider = setNumber(own, 'hole.diameter', own.spec.hole.diameter + 0.1)
    if (!wider.ok) throw new Error('refused')
    const rows = inputRows([own.spec, wider.value.spec])
    expect(rows.map(({ path }) => path)).toEqual(['hole.diameter'])
    expect(rows[0]?.cells.map(({ differs }) => differs)).toEqual([false, true])
  })

  it('show what a method brings and drops, and a part that is there in one alone once', () => {
    const rows = inputRows([own.spec, with_('dry-bag-at-foot').spec])
    expect(rows.map(({ path }) => path)).toEqual(expect.arrayContaining(['fill.kind', 'fill.bags', 'top.shape']))
    // Where one has no place for an input, nothing of it was set differently.
    const marks = (path: string) => rows.find((row) => row.path === path)?.cells.map(({ differs }) => differs)
    expect([marks('fill.kind'), marks('fill.bags'), marks('top.shape')]).toEqual([
      [false, true],
      [false, false],
      [false, false],
    ])
    expect(rows.map(({ path }) => path)).not.toContain('placing.pattern')
    const barless = setPart(own, 'bars', false)
    if (!barless.ok) throw new Error('refused')
    expect(inputRows([own.spec, barless.value.spec]).map(({ path }) => path)).toEqual(['bars'])
    const bracket = with_('mixed-bracket-pier')
    expect(inputRows([barless.value.spec, bracket.spec]).map(({ path }) => path)).not.toContain('bars')
    expect(
      inputRows([own.spec, bracket.spec])
        .find(({ path }) => path === 'bars')
        ?.cells.map(({ differs }) => differs),
    ).toEqual([false, true])
  })

  it('are never missed: piers without a row of difference have equal results', () => {
    fc.assert(
      fc.property(arbitraryPier(), arbitraryPier(), (a, b) => {
        if (inputRows([a.spec, b.spec]).length > 0) return
        expect(derived(a.spec).uplift).toEqual(derived(b.spec).uplift)
      }),
      { numRuns: 60, seed: 2 },
    )
  })
})

describe('[Y3] rows', () => {
  const four = (['mixed-full-height', 'mixed-bracket-pier', 'dry-bag-at-foot', 'dry-full-height'] as const).map(resultOf)

  it('mark no best and no worst where one pier has no number', () => {
    expect(four.map((result) => result.uplift.allowable === null)).toEqual([false, false, true, true])
    expect(extremesOf(row('holds-down'), four)).toEqual({ best: [], worst: [] })
  })

  it('mark them where all have one, by the end a reader wants', () => {
    const counted = four.slice(0, 2)
    const values = counted.map((result) => result.uplift.allowable ?? Number.NaN)
    const best = values.indexOf(Math.max(...values))
    expect(extremesOf(row('holds-down'), counted)).toEqual({ best: [best], worst: [1 - best] })
    // No wood below grade under a bracket; the bag stands deepest, on the bottom of the hole.
    expect(extremesOf(row('wood'), four)).toEqual({ best: [1], worst: [2] })
  })

  it('mark nothing where all are alike, where neither end is better, and beside a pier that cannot be built', () => {
    const twice = [four[0] ?? null, four[0] ?? null]
    expect(extremesOf(row('wood'), twice)).toEqual({ best: [], worst: [] })
    for (const id of ['hole', 'mix', 'weight', 'links', 'ask']) expect(extremesOf(row(id), four)).toEqual({ best: [], worst: [] })
    expect(extremesOf(row('wood'), [...four, null])).toEqual({ best: [], worst: [] })
  })

  it('come in one order, or with what differs most first, and lose nothing', () => {
    const fixed = rowsFor(four)
    const sorted = differingFirst(fixed, four)
    expect(new Set(sorted)).toEqual(new Set(fixed))
    const counts = sorted.map((one) => voices(one, four))
    expect(counts).toEqual([...counts].sort((a, b) => b - a))
    expect(voices(row('hole'), four)).toBe(1)
  })

  it('hold the drawing and the share of the load only when they are known', () => {
    expect(rowsFor(four).map(({ id }) => id)).not.toContain('drawing')
    expect(rowsFor(four).map(({ id }) => id)).not.toContain('load-used')
    const drawn = setPart(own, 'callout', true)
    const deep = drawn.ok ? setNumber(drawn.value, 'callout.depth', 1.5) : drawn
    const loaded = deep.ok ? setPart(deep.value, 'loads.entered', true) : deep
    const pulled = loaded.ok ? setNumber(loaded.value, 'loads.entered.uplift', 4000) : loaded
    if (!pulled.ok) throw new Error('refused')
    const ids = rowsFor([derived(pulled.value.spec)]).map(({ id }) => id)
    expect(ids).toContain('drawing')
    expect(ids).toContain('load-used')
  })

  it('are hidden and shown again', () => {
    const store = createCompareStore()
    setRowShown(store, 'hole', false)
    setRowShown(store, 'hole', false)
    expect(store.getState().hiddenRows).toEqual(['hole'])
    setRowShown(store, 'hole', true)
    expect(store.getState().hiddenRows).toEqual([])
  })
})

describe('[Y4] words and evidence', () => {
  it.each(fillKinds.map((kind) => [kind.id, kind] as const))('%s has a strength, a weakness, a source, and evidence', (id, kind) => {
    expect(fills[id].strength).not.toBe('')
    expect(fills[id].weakness).not.toBe('')
    expect(kind.sources.length).toBeGreaterThan(0)
    expect(words.inspect[id].open).not.toBe('')
    expect(words.replace[id]).not.toBe('')
  })

  it('every claim has words, both sides and what was not found', () => {
    for (const claim of weighedClaims) {
      expect(Object.keys(words.claims)).toContain(claim.id)
      for (const { id } of [...claim.inFavour, ...claim.against]) expect(Object.keys(words.findings)).toContain(id)
      for (const id of claim.missing) expect(Object.keys(words.missing)).toContain(id)
      expect(claim.inFavour.length + claim.against.length + claim.missing.length).toBeGreaterThan(0)
    }
  })

  it('the words of a finding carry the numbers of its row', () => {
    for (const { id, sample, watched, life } of lifeEvidence) {
      const sentence = Object.entries(words.findings).find(([key]) => key === id)?.[1]
      if (sentence === undefined) continue
      const printed = [sample?.count, sample?.failed, watched?.printed, life?.low.printed, life?.high?.printed]
      for (const number of printed) if (number != null) expect(sentence).toMatch(new RegExp(`(?<![\\d.])${number}(?![\\d.]*\\d)`))
    }
  })

  it('speak of what is in the pier', () => {
    const about = (kind: FillId) => claimsAbout(resultOf(kind)).map(({ id }) => id)
    expect(about('dry-full-height')).toContain('dry-mix-is-as-good-as-mixed')
    expect(about('mixed-full-height')).not.toContain('dry-mix-is-as-good-as-mixed')
    expect(about('mixed-full-height')).toContain('concrete-rots-posts')
    expect(about('mixed-bracket-pier')).not.toContain('concrete-rots-posts')
    expect(about('granular-on-pad')).toContain('gravel-drains-the-hole')
    for (const { id } of fillKinds) expect(about(id).length, id).toBeGreaterThan(0)
  })
})
