import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesUnder, root } from './sourceFile.ts'

const inTable = (text: string): string[] => [...text.matchAll(/^\| ([A-Z]\d+) \|/gm)].map((m) => m[1] ?? '')
const inTitles = (text: string): string[] =>
  [...text.matchAll(/(?:describe|it|test)(?:\.\w+)?\(\s*[`']\[([A-Z]\d+)\]/g)].map((m) => m[1] ?? '')
const sorted = (numbers: Iterable<string>): string[] => [...new Set(numbers)].sort()

describe('[A4] promises and tests', () => {
  const listed = inTable(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))
  const tests = filesUnder('tests', ['.test.ts', '.test.tsx', '.spec.ts'])
  const kept = tests.flatMap((path) => inTitles(readFileSync(join(root, path), 'utf8')))

  it('name each other: none is only listed, none is only in a title', () => {
    expect(tests.length).toBeGreaterThan(40)
    expect(listed).toHaveLength(new Set(listed).size)
    expect(sorted(kept)).toEqual(sorted(listed))
  })

  it('are told apart', () => {
    expect(inTitles(['describe', 'it'].map((call, i) => `${call}('[Q${7 + i}] a thing')`).join('\n'))).toEqual(['Q7', 'Q8'])
    expect(inTable('| Q7 | a thing |\n| B | c |')).toEqual(['Q7'])
  })
})
