import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from '../architecture/sourceFile.ts'

/** What the compiler says of a file that stands in no folder of the project. */
const complaintsOn = (text: string): string => {
  const folder = mkdtempSync(join(tmpdir(), 'planted-'))
  try {
    writeFileSync(join(folder, 'planted.ts'), text)
    const compilerOptions = { types: [], jsx: 'preserve' }
    writeFileSync(
      join(folder, 'tsconfig.json'),
      JSON.stringify({ extends: join(root, 'tsconfig.json'), compilerOptions, include: [join(folder, 'planted.ts')] }),
    )
    const { stdout, stderr } = spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder], {
      encoding: 'utf8',
    })
    return `${stdout}${stderr}`
  } finally {
    rmSync(folder, { recursive: true })
  }
}

const source = (path: string): string => join(root, 'src', path).replaceAll('\\', '/')

describe('[T5] a word that is missing does not compile', () => {
  it('says nothing of words that are all there', () => {
    expect(
      complaintsOn(`
        import { type Words, wordsOf } from '${source('words/index.ts')}'
        import { looking } from '${source('words/en/looking.ts')}'
        export const other: Words['looking'] = looking
        export const title = (): string => wordsOf('compare').title
      `),
    ).toBe('')
  })

  it('names each planted key: of another language, of a page, of a kind, of a check', () => {
    const complaints = complaintsOn(`
      import type { FillKind } from '${source('core/kinds/record.ts')}'
      import type { Check } from '${source('core/model/worked.ts')}'
      import { type Words, wordsOf } from '${source('words/index.ts')}'
      import { looking } from '${source('words/en/looking.ts')}'
      const { leave, ...rest } = looking
      export const other: Words['looking'] = rest
      export const title = (): string => wordsOf('compare').plantedTitle
      export const table = () => wordsOf('plantedSubject')
      export const steps: FillKind['steps'] = ['planted-step']
      export const cautions: FillKind['cautions'] = ['planted-caution']
      export const why: Check['why'] = 'planted-reason'
      export const id: Check['id'] = 'planted-check'
    `)
    for (const key of ["'leave'", 'plantedTitle', 'plantedSubject', 'planted-step', 'planted-caution', 'planted-reason', 'planted-check'])
      expect(complaints).toContain(key)
  })
})
