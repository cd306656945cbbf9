import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { filesUnder, root } from './sourceFile.ts'
import { ownLooks, styled, unknown, unused } from './styles.ts'

const read = (path: string) => ({ path, text: readFileSync(join(root, path), 'utf8') })
const sheets = filesUnder('src', ['.css']).map(read)
const views = filesUnder('src/view', ['.tsx', '.ts']).map(read)
const seekers = [...filesUnder('tests', ['.ts', '.tsx']), ...filesUnder('src/view', ['.ts', '.tsx', '.css'])].map(read)
/** Set by the library of formulas in what it makes. */
const foreign = /\.katex/
/** What draws things rather than words has colors and sizes of its own: materials, ink, paper, charts, what is read from afar. */
const drawn = [
  'tokens',
  'roles',
  'section',
  'scene',
  'sheet',
  'printPage',
  'compare',
  'parts',
  'drawn',
  'tally',
  'sure',
  'years',
  'time',
  'pad',
]
const pages = sheets.filter(({ path }) => !drawn.some((name) => path.endsWith(`/${name}.css`)))

describe('[A1] one kit of styles', () => {
  it('sees every stylesheet', () => {
    expect(sheets.length).toBeGreaterThan(20)
    expect(pages.length).toBeGreaterThan(8)
    expect(styled(sheets.map(({ text }) => text).join('\n')).size).toBeGreaterThan(200)
  })

  it('has no rule for a class that no element has', () => {
    expect(unused(sheets, views).filter((one) => !foreign.test(one))).toEqual([])
  })

  it('gives no element a class without a rule, but those that are looked for', () => {
    expect(unknown(sheets, views, seekers)).toEqual([])
  })

  it('colors and sizes of type are those of the page', () => {
    expect(pages.flatMap(ownLooks)).toEqual([])
  })

  it('finds a planted rule, a planted class and a planted color', () => {
    const view = { path: 'planted.tsx', text: `<p className='lead' /><p className={\`planted-\${kind} \${on ? 'lit-up' : ''}\`} />` }
    const sheet = { path: 'planted.css', text: '.lead { margin: 0; }\n.forgotten > .lead { color: #123456; font-size: 17px; }\n' }
    expect(unused([sheet], [view])).toEqual(['planted.css: .forgotten'])
    expect(unknown([sheet], [view], [])).toEqual(['planted.tsx: lit-up', 'planted.tsx: planted-'])
    expect(ownLooks(sheet)).toEqual(['planted.css: color: #123456', 'planted.css: font-size: 17px'])
  })
})
