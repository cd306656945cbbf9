import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { inTable, merged, readTests } from './promises.ts'
import { root } from './sourceFile.ts'

/** Brings the table of promises in DEVELOPERS.md up to the titles of the tests: new numbers come in, gone ones go, words stay. */
const path = join(root, 'DEVELOPERS.md')
const text = readFileSync(path, 'utf8')
const rows = merged(inTable(text), readTests()).map(({ number, says, keptIn }) => `| ${number} | ${says} | \`${keptIn}\` |`)
const lines = text.split('\n')
const isRow = (line: string): boolean => inTable(line).length > 0
const first = lines.findIndex(isRow)
const before = lines.slice(0, first)
const after = lines.slice(first).filter((line) => !isRow(line))
writeFileSync(path, [...before, ...rows, ...after].join('\n'))
console.log(`${rows.length} promises`)
