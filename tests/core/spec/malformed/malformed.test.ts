import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { calcJob } from '../../../../src/cli/calcJob.ts'
import { issueCodes } from '../../../../src/core/spec/issueCodes.ts'
import { parseJob } from '../../../../src/core/spec/jobFile.ts'
import cases from './cases.json' with { type: 'json' }

type Case = Readonly<{
  why: string
  text?: string
  set?: Readonly<Record<string, unknown>>
  remove?: readonly string[]
  expect: readonly (readonly string[])[]
}>
type Tree = Record<string, unknown>

const good = readFileSync(new URL('good.json', import.meta.url), 'utf8')

const holderOf = (job: Tree, path: string): readonly [Tree, string] => {
  const steps = path.split('.')
  const last = steps.pop() ?? ''
  return [steps.reduce((node, step) => node[step] as Tree, job), last]
}

/** The good job with some keys set or removed, or a text of its own. */
const textOf = ({ text, set = {}, remove = [] }: Case): string => {
  if (text !== undefined) return text
  const job = JSON.parse(good) as Tree
  for (const path of remove) {
    const [holder, key] = holderOf(job, path)
    delete holder[key]
  }
  for (const [path, value] of Object.entries(set)) {
    const [holder, key] = holderOf(job, path)
    Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true })
  }
  return JSON.stringify(job)
}

const bad: readonly Case[] = cases
const sorted = (pairs: readonly (readonly (string | undefined)[])[]) => pairs.map((pair) => pair.join(' @ ')).sort()

describe('malformed jobs', () => {
  it('start from a good one', () => expect(parseJob(good).issues.filter((issue) => issue.severity === 'error')).toEqual([]))

  it('are many', () => expect(bad.length).toBeGreaterThanOrEqual(40))

  it.each(bad.map((one) => [one.why, one] as const))('%s: refused with exactly these issues, at these fields', (_, one) => {
    const read = parseJob(textOf(one))
    expect(read.ok).toBe(false)
    expect(sorted(read.issues.map((issue) => [issue.code, issue.path]))).toEqual(sorted(one.expect))
    for (const issue of read.issues) expect(issueCodes).toContain(issue.code)
  })

  it.each(bad.map((one) => [one.why, one] as const))('%s: the command says each on a line of its own and leaves with 1', (_, one) => {
    const { out, err, code } = calcJob(textOf(one))
    expect(code).toBe(1)
    expect(out).toBe('')
    const lines = err.split('\n').slice(0, -1)
    expect(lines).toHaveLength(one.expect.length)
    for (const [issueCode = '', path = ''] of one.expect) {
      expect(lines.some((line) => line.startsWith(`${path === '' ? 'job' : path}: `) && line.includes(`(${issueCode}`))).toBe(true)
    }
    expect(err).not.toMatch(/undefined|\[object/)
  })
})
