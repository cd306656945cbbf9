import { describe, expect, it, vi } from 'vitest'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { parseJob, writeJob } from '../../../src/core/spec/jobFile.ts'
import { largestText, textIssues } from '../../../src/core/spec/jobText.ts'
import { issueLine } from '../../../src/export/numbers/issueLine.ts'

const filled = (part: string, start = '', end = ''): string =>
  `${start}${part.repeat(Math.ceil((largestText - start.length - end.length) / part.length))}`.slice(0, largestText - end.length) + end

describe('[F6] a file is looked through in one pass, and no key stands in it twice unseen', () => {
  it.each([
    ['a text that is never closed', filled('\\"', '"')],
    ['nothing but quotes', filled('"')],
    ['quotes on lines of their own', filled('"\n')],
    ['a key, and blanks to the end', filled(' ', '{"a"')],
    ['keys with blanks between', filled('"a"          ', '{')],
    ['keys that stand twice', filled('"a":1,', '{', '"b":1}')],
    ['brackets that open and close', filled('[],', '[', '0]')],
    ['backslashes', filled('\\', '["')],
  ])('%s', (_, text) => {
    expect(text).toHaveLength(largestText)
    const looks = vi.spyOn(String.prototype, 'charCodeAt')
    textIssues(text)
    const steps = looks.mock.calls.length
    looks.mockRestore()
    // Fewer than half would mean that they were looked at in a way that this does not count.
    expect(steps).toBeGreaterThan(largestText / 2)
    expect(steps).toBeLessThan(3 * largestText)
  })

  it.each([0, 1, 40, 41, 5000])('a key followed by %i blanks is seen the second time', (count) => {
    const blanks = ' \t\r\n'.repeat(Math.ceil(count / 4)).slice(0, count)
    const job = writeJob(defaultDocument).replace('"piers": 1', `"piers"${blanks}: 1, "piers"${blanks}: 1`)
    expect(parseJob(job).issues).toMatchObject([{ code: 'duplicate-key', path: 'piers' }])
  })

  it.each(['1e400', '-1e400'])('%s is told as a number too big to work with', (number) => {
    const { issues } = parseJob(writeJob(defaultDocument).replace('"piers": 1', `"piers": ${number}`))
    expect(issues).toEqual([{ code: 'not-finite', severity: 'error', path: 'piers' }])
    for (const issue of issues) expect(issueLine(issue)).not.toMatch(/null|should be/)
  })
})
