import { describe, expect, it } from 'vitest'
import { english } from '../../src/words/en/index.ts'
import { common } from '../../src/words/index.ts'
import { readSources, type SourceFile, sourceFile, target } from './sourceFile.ts'

/** A part of the program that is fetched late, and the words that are named where it is. */
type Fetched = Readonly<{ by: string; part: string; named: readonly string[] }>

const late = new Set<string>(Object.keys(english.late).filter((subject) => !common.some((one) => one === subject)))
const first = new Set<string>(Object.keys(english.first))

const saidIn = (file: SourceFile): string[] =>
  file.path.startsWith('src/words/') ? [] : [...file.statements.matchAll(/\bwordsOf\('(\w+)'\)/g)].map((m) => m[1] ?? '')

const fetchedBy = (file: SourceFile): Fetched[] =>
  [
    ...file.statements
      .replace(/\s+/g, ' ')
      .matchAll(/\bimport\( ?'([^']+)' ?\)(?:\.then\( ?\(module\) => module\.\w+,? ?\))?(?:, ?\[([^\]]*)\])?/g),
  ].map((m) => ({
    by: file.path,
    part: target(file, { from: m[1] ?? '', typeOnly: false, dynamic: true }) ?? '',
    named: [...(m[2] ?? '').matchAll(/'(\w+)'/g)].map((name) => name[1] ?? ''),
  }))

/** Words that are said once a file has run: its own, and those of whatever it imports at once. */
function saidFrom(start: string, files: ReadonlyMap<string, SourceFile>): Set<string> {
  const seen = new Set<string>()
  const said = new Set<string>()
  const open = [start]
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    const file = files.get(path)
    if (!file || seen.has(path)) continue
    seen.add(path)
    for (const subject of saidIn(file)) said.add(subject)
    for (const wanted of file.imports) {
      const to = wanted.typeOnly || wanted.dynamic ? null : target(file, wanted)
      if (to !== null) open.push(to)
    }
  }
  return said
}

/** What is wrong with the words named at each late part of the page. */
function faults(sources: readonly SourceFile[]): string[] {
  const files = new Map(sources.map((file) => [file.path, file]))
  return sources
    .filter(({ path }) => !path.startsWith('src/words/'))
    .flatMap(fetchedBy)
    .flatMap(({ by, part, named }) => {
      const said = [...saidFrom(part, files)].filter((subject) => late.has(subject))
      return [
        ...said.filter((subject) => !named.includes(subject)).map((subject) => `${by} fetches ${part} without its words: ${subject}`),
        ...named.filter((subject) => !said.includes(subject)).map((subject) => `${by} fetches ${subject}, which ${part} never says`),
      ]
    })
}

/** Tables that are read while a file is loaded: what is read then stays in the language of that moment. */
const keptAtLoad = (file: SourceFile): string[] =>
  [...file.statements.matchAll(/^(?:export )?const [^\n=]*=[^\n]*\bwordsOf\('\w+'\)[^\n]*/gm)]
    .map((m) => m[0])
    .filter((line) => !line.includes('=>'))

const sources = readSources('src')

describe('[A1] words come with what says them', () => {
  it('names at each late part the words that it says, and no others', () => {
    expect(sources.flatMap(fetchedBy).length).toBeGreaterThan(30)
    expect(faults(sources)).toEqual([])
  })

  it('opens with the words that the page opens with', () => {
    const files = new Map(sources.map((file) => [file.path, file]))
    const said = saidFrom('src/view/app/main.tsx', files)
    expect([...said].filter((subject) => !first.has(subject))).toEqual([])
    expect([...first].filter((subject) => !said.has(subject))).toEqual([])
  })

  it('keeps no word from the time when a file was loaded', () => {
    expect(sources.flatMap(keptAtLoad)).toEqual([])
  })
})

describe('[A2] the guards on words can fail', () => {
  const page = sourceFile('src/view/a/Page.tsx', "import { part } from './part.ts'\nexport const Page = () => wordsOf('compare').title")
  const part = sourceFile('src/view/a/part.ts', "export const part = () => wordsOf('sheet').title")
  const door = (list: string): SourceFile =>
    sourceFile('src/view/a/door.ts', `const Late = lazyPage(() => import('./Page.tsx').then((module) => module.Page), [${list}])`)

  it('finds words that are not named, or named for nothing', () => {
    expect(faults([page, part, door("'compare', 'sheet'")])).toEqual([])
    expect(faults([page, part, door("'compare'")])).toHaveLength(1)
    expect(faults([page, part, door("'compare', 'sheet', 'time'")])).toHaveLength(1)
  })

  it('finds words that are kept', () => {
    expect(keptAtLoad(sourceFile('src/view/a.ts', "const words = wordsOf('compare').table"))).toHaveLength(1)
    expect(keptAtLoad(sourceFile('src/view/a.ts', "const title = (): string => wordsOf('compare').title"))).toEqual([])
  })
})
