import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { sources } from '../../src/core/engineering/sources.ts'
import { has, parse } from './cases.ts'

const here = dirname(fileURLToPath(import.meta.url))
const folders = readdirSync(here, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []))
const overview = readFileSync(join(here, 'README.md'), 'utf8')
const read = (folder: string, file: string) => readFileSync(join(here, folder, file), 'utf8')

/** The overview's table: folder to source, count and standing. */
const lines = new Map(
  overview.split('\n').flatMap((line) => {
    const [, folder = '', ...rest] = line.split('|').map((cell) => cell.trim())
    return folder === '' ? [] : [[folder, rest] as const]
  }),
)

/** Published answers: filled cells of the columns whose name begins with "=". */
const answers = (folder: string): number =>
  readdirSync(join(here, folder))
    .filter((file) => file.endsWith('.csv'))
    .flatMap((file) => parse(read(folder, file)))
    .reduce((sum, row) => sum + Object.keys(row).filter((column) => column.startsWith('=') && has(row, column)).length, 0)

describe('the checks against the outside', () => {
  it('sees them all, and more answers than were asked for', () => {
    expect(folders.length).toBeGreaterThanOrEqual(60)
    const total = folders.reduce((sum, folder) => sum + answers(folder), 0)
    expect(total).toBeGreaterThanOrEqual(210)
    expect(overview).toContain(`Answers in all tables: ${total}.`)
  })

  it.each(folders)('%s has a source, a readme, a test and its line in the overview', (folder) => {
    expect(folder in sources).toBe(true)
    expect(existsSync(join(here, folder, 'check.test.ts'))).toBe(true)
    const [title = ''] = read(folder, 'README.md').split('\n')
    expect(lines.get(folder)?.slice(0, 2)).toEqual([title.slice(2), String(answers(folder))])
  })

  it('no folder claims more than its source record', () => {
    for (const folder of folders) {
      const standing = sources[folder as keyof typeof sources].standing
      if (standing === 'from memory') expect(read(folder, 'README.md'), folder).toContain('Standing: from memory')
    }
  })
})
