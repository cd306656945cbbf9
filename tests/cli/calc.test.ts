import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { sources } from '../../src/core/engineering/sources.ts'
import { fillKinds } from '../../src/core/kinds/index.ts'
import { jobJsonSchema } from '../../src/core/spec/schema.ts'
import { calcJob } from '../../src/cli/calcJob.ts'
import { close } from '../close.ts'

const folder = new URL('../../public/examples/', import.meta.url)
const examples = readdirSync(folder).map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const)
const example = (name: string): string => examples.find(([one]) => one === name)?.[1] ?? ''

type Tree = Readonly<{ [key: string]: unknown }>
const resultOf = (text: string): Tree => {
  const { out, err, code } = calcJob(text)
  expect(err).toBe('')
  expect(code).toBe(0)
  return JSON.parse(out) as Tree
}
const list = (value: unknown): readonly Tree[] => value as readonly Tree[]

/** Calls `see` with every number of a result and where it stands. */
function numbers(node: unknown, see: (value: number, path: string) => void, path = ''): void {
  if (typeof node === 'number') see(node, path)
  else if (typeof node === 'object' && node !== null) for (const [key, value] of Object.entries(node)) numbers(value, see, `${path}.${key}`)
}

describe('calc', () => {
  it('has an example for every way to fill', () => {
    const kinds = new Set(examples.map(([, text]) => (JSON.parse(text) as { pier: { fill: { kind: string } } }).pier.fill.kind))
    expect([...kinds].sort()).toEqual(fillKinds.map((kind) => kind.id).sort())
    expect(examples.length).toBeGreaterThanOrEqual(7)
  })

  it.each(examples)('%s: water, mix and years, each with source and standing', (_, text) => {
    const { time, sources: known } = resultOf(text) as { time: Record<'moisture' | 'mix' | 'life', Tree>; sources: Tree }
    expect(Object.keys(time)).toEqual(['moisture', 'mix', 'life', 'cost'])
    for (const part of [time.moisture, time.mix, time.life])
      for (const id of part.sources as string[]) expect(Object.keys(known)).toContain(id)
    const profile = list(time.moisture.profile)
    expect(profile.length).toBeGreaterThan(2)
    for (const one of profile) {
      expect(one).toMatchObject({
        standing: 'assumed here',
        text: expect.stringMatching(/: .+, .+ air$/),
        why: expect.stringMatching(/\.$/),
      })
      expect((one.sources as string[]).length).toBeGreaterThan(0)
    }
    const top = time.moisture.top as Tree
    expect(list(top.line).at(-1)).toMatchObject({ r_m: expect.any(Number), y_m: expect.any(Number) })
    expect(top.path).toMatchObject({ end: expect.stringMatching(/^(?:post|ground)$/) })
    numbers(time, (value) => expect(Number.isFinite(value)).toBe(true))
  })

  it.each(examples)('%s: a whole result', (_, text) => {
    const result = resultOf(text)
    expect(Object.keys(result)).toEqual([
      'status',
      'name',
      'note',
      'cautions',
      'changed',
      'issues',
      'headlines',
      'spec',
      'written',
      'depths',
      'hole',
      'zones',
      'quantities',
      'demand',
      'checks',
      'uplift',
      'exposure',
      'callout',
      'time',
      'sources',
    ])
    expect(list(result.zones).length).toBeGreaterThan(3)
    expect(list(result.quantities).length).toBeGreaterThan(0)
    expect(list(result.checks).length).toBeGreaterThan(3)
    expect(JSON.stringify(result)).not.toMatch(/corners|positions|"vertices"/)
  })

  it.each(examples)('%s: zones below grade and what is left empty add up to the hole', (_, text) => {
    const result = resultOf(text)
    const hole = result.hole as Readonly<{ volume_m3: number; void_m3: number }>
    const sum = list(result.zones).reduce((total, zone) => total + ((zone.inHole_m3 as number | undefined) ?? 0), hole.void_m3)
    close(sum, hole.volume_m3, { abs: 0, rel: 1e-9 })
  })

  it.each(examples)('%s: every source that is named is there in full, and every number is finite', (_, text) => {
    const { out } = calcJob(text)
    expect(out).not.toMatch(/NaN|Infinity|undefined|: null,\n\s*"text": "/)
    const result = JSON.parse(out) as Tree
    const records = result.sources as Readonly<Record<string, unknown>>
    const named = [...out.matchAll(/"sources": \[([^\]]*)\]/g)].flatMap(([, ids = '']) => ids.match(/[\w-]+/g) ?? [])
    expect(named.length).toBeGreaterThan(10)
    for (const id of named) expect(records[id]).toEqual(sources[id as keyof typeof sources])
  })

  it('gives the same pier in two spellings the same result to 1e-9', () => {
    const us = resultOf(example('boat-shelter-mixed.json'))
    const metric = resultOf(example('boat-shelter-mixed-metric.json'))
    const wanted = new Map<string, number>()
    numbers(us, (value, path) => wanted.set(path, value))
    expect(wanted.size).toBeGreaterThan(200)
    let seen = 0
    numbers(metric, (value, path) => {
      close(value, wanted.get(path) ?? Number.NaN, { abs: 1e-12, rel: 1e-9 }, path)
      seen++
    })
    expect(seen).toBe(wanted.size)
  })

  it('puts warnings into the result, with a message in both systems and their sources', () => {
    const { issues, sources: records } = resultOf(example('boat-shelter-dry-pour.json')) as Readonly<{
      issues: readonly Tree[]
      sources: Tree
    }>
    const frost = issues.find((issue) => issue.code === 'frost-below-bearing')
    expect(frost).toMatchObject({ severity: 'warning', path: 'hole.depth', quantity: 'length' })
    expect(String(frost?.message)).toMatch(/in = .* m/)
    expect(records).toHaveProperty('ibc-1809-5')
    expect(issues.every((issue) => issue.severity === 'warning')).toBe(true)
  })

  it('holds the pier against its drawing and says who decides', () => {
    const { callout } = resultOf(example('boat-shelter-bag-at-foot.json')) as Readonly<{ callout: Tree }>
    expect(callout).toMatchObject({ overall: 'not as drawn', checked: 13 })
    expect(callout.note).toContain('not an inspection')
    const strength = list(callout.items).find((item) => item.id === 'strength')
    expect(strength).toMatchObject({
      verdict: "can't be verified",
      set: null,
      drawn: { unit: 'Pa', text: { us: '3,000 psi', metric: '20.7 MPa' } },
    })
    expect(strength?.verify).toEqual(['Have three cores drilled from the hardened mix and tested.'])
    expect(resultOf(example('boat-shelter-mixed.json')).callout).toBeNull()
  })

  it('always says the cautions', () => {
    for (const [, text] of examples) expect(JSON.stringify(resultOf(text).cautions)).toContain('licensed engineer')
  })
})

describe('the commands', () => {
  const root = fileURLToPath(new URL('../../', import.meta.url))
  const run = (script: string, args: readonly string[], input: string | Buffer = '') =>
    spawnSync(process.execPath, ['--import', 'tsx', `src/cli/${script}.ts`, ...args], {
      cwd: root,
      input,
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    })

  it('calc reads a file, and standard input for -', () => {
    const fromFile = run('calc', ['public/examples/boat-shelter-mixed.json'])
    expect(fromFile.status).toBe(0)
    expect(fromFile.stdout).toBe(calcJob(example('boat-shelter-mixed.json')).out)
    const fromInput = run('calc', ['-'], example('boat-shelter-mixed.json'))
    expect([fromInput.status, fromInput.stdout]).toEqual([0, fromFile.stdout])
  }, 60_000)

  it('calc leaves with 1 and every issue on standard error, with 2 when it has nothing to read', () => {
    const bad = run('calc', ['-'], '{"pierglass":1,"pier":{}}')
    expect(bad.status).toBe(1)
    expect(bad.stdout).toBe('')
    expect(bad.stderr.split('\n').filter((line) => line.includes('(missing')).length).toBe(6)
    expect(run('calc', ['no-such-file.json']).status).toBe(2)
    expect(run('calc', []).status).toBe(2)
    expect(run('calc', ['public/examples'])).toMatchObject({ status: 2, stdout: '' })
    expect(run('calc', ['a', 'b']).stderr).toContain('usage')
  }, 60_000)

  it('[F8] calc reads UTF-16 as the page does, told by its byte order mark', () => {
    const text = example('boat-shelter-mixed.json')
    const little = Buffer.from(`\ufeff${text}`, 'utf16le')
    const wanted = calcJob(text).out
    for (const bytes of [little, Buffer.from(little).swap16(), Buffer.from(`\ufeff${text}`)]) {
      const { status, stdout } = run('calc', ['-'], bytes)
      expect([status, stdout]).toEqual([0, wanted])
    }
  }, 60_000)

  it('[F9] calc writes nothing raw that turns the direction of a line or steers a terminal', () => {
    const evil = 'x\u202e\u2066\u200f\u061c\u2028\u001b[2Jy'
    const bad = run('calc', ['-'], JSON.stringify({ pierglass: 1, pier: {}, [evil]: evil }))
    const away = run('calc', [`${evil}.json`.replace('\u001b', '\u0007')])
    for (const { stderr } of [bad, away]) {
      expect(stderr).toContain('x\\u202e\\u2066\\u200f\\u061c\\u2028\\u00')
      expect(stderr.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/u)
    }
  }, 60_000)

  it('calc ends quietly when its reader stops early', () => {
    const piped = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" --import tsx src/cli/calc.ts public/examples/boat-shelter-steep-bank.json | head -c 10`],
      { cwd: root, encoding: 'utf8' },
    )
    expect([piped.stdout.length, piped.stderr]).toEqual([10, ''])
  }, 60_000)

  it('schema prints the JSON Schema of a job', () => {
    const { status, stdout } = run('schema', [])
    expect(status).toBe(0)
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(jobJsonSchema())))
  }, 60_000)
})
