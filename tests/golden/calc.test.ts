import { describe, expect, it } from 'vitest'
import { calcJob } from '../../src/cli/calcJob.ts'
import { exampleJobs, pricedJob, soundJob, strayJobs } from './piers.ts'
import { kept } from './kept.ts'
import { differences, read, rowOf, vocabulary, written } from './table.ts'

const result = (job: string): unknown => {
  const { out, err, code } = calcJob(job)
  if (code !== 0) throw new Error(err)
  return JSON.parse(out)
}

describe('[Z1] the numbers and words of every example and of 300 other piers are what they were', () => {
  const results = new Map([...exampleJobs, pricedJob(), ...strayJobs(), soundJob].map(([name, job]) => [name, result(job)]))
  const now = new Map([...results].map(([name, one]) => [name, rowOf(one)]))

  it('to twelve digits and to the letter', () => {
    const was = read(kept('calc/numbers.csv', written(now)))
    expect(was.size).toBeGreaterThanOrEqual(310)
    expect([...now].flatMap(([name, row]) => differences(name, row, was.get(name)))).toEqual([])
    expect([...was.keys()].filter((name) => !now.has(name))).toEqual([])
  })

  it('in the same words, whatever the numbers in them', () => {
    const words = vocabulary([...results.values()])
    expect(words.split('\n')).toEqual(kept('calc/words.txt', words).split('\n'))
  })

  const [[name, one] = ['', null]] = results
  const changedIn = (text: string): readonly string[] =>
    differences(name, rowOf(JSON.parse(text)), now.get(name)).map((line) => line.replace(/ was .*/, ''))

  it('has every name in use by some pier', () => {
    const columns = [...(now.get(name)?.keys() ?? [])]
    expect(columns.length).toBeGreaterThan(60)
    expect(columns.filter((column) => [...now.values()].every((row) => ['', '0'].includes(row.get(column) ?? '')))).toEqual([])
  })

  it('sees a number that moves in its ninth digit, a letter, a verdict, a formula, a source', () => {
    const text = JSON.stringify(one)
    const { volume_m3 } = (one as { hole: { volume_m3: number } }).hole
    expect(changedIn(text)).toEqual([])
    expect(changedIn(text.replace(`"volume_m3":${volume_m3}`, `"volume_m3":${volume_m3 * (1 + 1e-9)}`))).toEqual([`${name}: hole [m³]`])
    expect(changedIn(text.replace('licensed engineer', 'licenced engineer'))).toEqual([`${name}: words`])
    expect(changedIn(text.replace('"counted":"counted"', '"counted":"not counted"'))).toEqual([`${name}: verdicts`])
    expect(changedIn(text.replace('"formula":"V', '"formula":"W'))).toEqual([`${name}: formulas`])
    expect(changedIn(text.replace('International Building Code', 'International Building code'))).toEqual([`${name}: sources`])
    expect(changedIn(text.replaceAll('"standing":"read"', '"standing":"secondary"'))).not.toEqual([])
  })
})
