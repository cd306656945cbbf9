import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { inTable, inTitles, merged, readTests } from './promises.ts'
import { root } from './sourceFile.ts'

const numbers = (clauses: readonly { number: string }[]): string[] => [...new Set(clauses.map(({ number }) => number))].sort()

describe('[A4] promises and tests', () => {
  const listed = inTable(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))
  const kept = readTests()

  it('name each other: none is only listed, none is only in a title (npm run promises mends the table)', () => {
    expect(kept.length).toBeGreaterThan(50)
    expect(listed).toHaveLength(numbers(listed).length)
    expect(numbers(kept)).toEqual(numbers(listed))
  })

  it('every fault that was found names the promise that holds it', () => {
    const [, section = ''] = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8').split(/^## Faults that were found.*$/m)
    const rows = [...(section.split(/^## /m)[0] ?? '').matchAll(/^\| (?!fault |---)(.*) \| ([^|]*) \|$/gm)]
    expect(rows.length).toBeGreaterThan(8)
    const known = numbers(kept)
    for (const [row, , held = ''] of rows) for (const number of held.split(', ')) expect(known, row).toContain(number)
  })

  it('are read from titles and rows, and put together', () => {
    const titles = inTitles('tests/a.test.ts', ['describe', 'it'].map((call, i) => `${call}('[Q${7 + i}] a thing')`).join('\n'))
    expect(titles).toEqual([
      { number: 'Q7', says: 'a thing', keptIn: 'tests/a' },
      { number: 'Q8', says: 'a thing', keptIn: 'tests/a' },
    ])
    const rows = inTable('| Q7 | Something better | `tests/b` |\n| Q9 | gone | `c` |\n| B | c |')
    expect(rows).toHaveLength(2)
    expect(merged(rows, titles).map(({ says }) => says)).toEqual(['Something better', 'A thing'])
  })
})
