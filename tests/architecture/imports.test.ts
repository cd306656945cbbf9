import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { bracketKinds, fillKinds } from '../../src/core/kinds/index.ts'
import { folderRings, rings, unreached } from './cycles.ts'
import { exportedTwice } from './names.ts'
import { rulesFor, unusedInScene } from './rules.ts'
import { filesUnder, readSources, root, sourceFile } from './sourceFile.ts'
import { topLevelBreaches } from './topLevel.ts'

const read = (path: string): string => readFileSync(join(root, path), 'utf8')
const sources = readSources('src')
/** Ways of filling that are called after what is placed: such a word is a material too. */
const roles = new Set(['flowable-fill'])
const rules = rulesFor([...fillKinds, ...bracketKinds].map((kind) => kind.id))

/** Raised as the house grows: a guard that sees an empty folder is no guard. */
const atLeast = { 'src/core': 60, 'src/state': 8, 'src/view': 40, 'src/words': 8 }

/** Waits that end by a time, and prints; `until` waits for as long as a busy machine needs. */
const clockOrPrint = /\b(?:waitForTimeout|vi\.waitFor|console\.\w+)\(/
const testFiles = filesUnder('tests', ['.ts', '.tsx']).filter((path) => !path.startsWith('tests/bench/'))
const tools = ['tests/run.ts', 'tests/until.ts', 'tests/architecture/listPromises.ts', 'tests/browser/findBrowser.ts']

const starts = ['src/view/app/main.tsx', 'src/view/app/pageKeeper.ts', 'src/build/licenses.ts', 'src/cli/calc.ts', 'src/cli/schema.ts']
/** What the next kinds of document and checks of the post itself will call. */
const ready = ['src/core/documents/gate.ts', 'src/core/engineering/mix/cementInBag.ts', 'src/core/engineering/wood/columnStability.ts']

describe('[A1] the house keeps its shape', () => {
  it.each(Object.entries(atLeast))('sees enough files in %s', (folder, least) => {
    expect(sources.filter((file) => file.path.startsWith(`${folder}/`)).length).toBeGreaterThanOrEqual(least)
  })

  it.each(rules.map((rule) => [rule.name, rule] as const))('%s', (_, rule) => {
    expect(sources.flatMap((file) => rule.check(file))).toEqual([])
  })

  it.each(fillKinds.map((kind) => kind.id).filter((id) => !roles.has(id)))(
    '%s is named by its record, the lists of kinds, the first pier and its words',
    (id) => {
      const naming = sources.filter(({ text }) => text.includes(`'${id}'`)).map(({ path }) => path)
      const own = naming.filter((path) => path.startsWith('src/core/kinds/fill/'))
      expect(own).toHaveLength(1)
      const elsewhere = ['src/core/kinds/index.ts', 'src/core/spec/pier/pier.ts']
      expect(naming.filter((path) => path !== own[0] && !path.startsWith('src/words/') && !elsewhere.includes(path))).toEqual([])
    },
  )

  it('has no ring of files that import each other', () => {
    expect(rings(sources)).toEqual([])
  })

  it('has no ring of folders that import each other', () => {
    expect(folderRings(sources)).toEqual([])
  })

  it('has no file that only tests reach, but those that stand ready', () => {
    expect(unreached(sources, [...starts, ...sources.map(({ path }) => path).filter((path) => /[wW]orker\.ts$/.test(path))])).toEqual(ready)
  })

  it('exports no name twice', () => {
    expect(exportedTwice(sources)).toEqual([])
  })

  it('has no test that prints, or that waits by a clock', () => {
    expect(testFiles.filter((path) => !tools.includes(path) && clockOrPrint.test(read(path)))).toEqual([])
  })

  it('has nothing at its top but the listed files and folders', () => {
    expect(topLevelBreaches(root)).toEqual([])
  })

  it('writes the picture with the packages that package.json asks for', () => {
    const { dependencies } = JSON.parse(read('package.json')) as { dependencies: Record<string, string> }
    expect(unusedInScene(dependencies, sources)).toEqual([])
  })

  it('builds the core without a browser, a clock or a server', () => {
    const { compilerOptions } = JSON.parse(read('src/core/tsconfig.json')) as { compilerOptions: { lib: string[]; types: string[] } }
    expect(compilerOptions.lib).toEqual(['ES2022'])
    expect(compilerOptions.types).toEqual([])
  })
})

describe('[A2] every guard can fail', () => {
  const plants = rules.flatMap((rule) => rule.plant.map(([path, text]) => [rule.name, path, text, rule] as const))
  it.each(plants)('%s: %s', (_, path, text, rule) => {
    expect(rule.check(sourceFile(path, text))).not.toEqual([])
  })

  it('finds a planted ring', () => {
    const ring = [
      sourceFile('src/core/units/a.ts', "import { b } from './b.ts'"),
      sourceFile('src/core/units/b.ts', "import { c } from './c.ts'"),
      sourceFile('src/core/units/c.ts', "import { a } from './a.ts'"),
    ]
    expect(rings(ring)).toHaveLength(1)
    expect(rings(ring.slice(1))).toEqual([])
  })

  it('finds a planted ring of folders', () => {
    const [scene, time, hooks] = [
      sourceFile('src/view/scene/a.ts', "import type { B } from '../time/b.ts'"),
      sourceFile('src/view/time/b.ts', "const late = import('../hooks/c.ts')"),
      sourceFile('src/view/hooks/c.ts', "import { D } from '../scene/d.ts'"),
    ]
    expect(folderRings([scene, time, hooks])).toHaveLength(1)
    expect(folderRings([scene, time])).toEqual([])
  })

  it('finds a planted file that nothing reaches', () => {
    const page = sourceFile('src/view/app/main.tsx', "const late = import('./late.ts')")
    const [late, lost] = [sourceFile('src/view/app/late.ts', ''), sourceFile('src/view/app/lost.ts', '')]
    expect(unreached([page, late, lost], [page.path])).toEqual([lost.path])
  })

  it('finds a planted name that is exported twice', () => {
    const one = sourceFile('src/core/derive/a.ts', 'export const shown = 1')
    expect(exportedTwice([one, sourceFile('src/view/kit/b.ts', 'export type shown = 1')])).toHaveLength(1)
    expect(exportedTwice([one, sourceFile('src/view/kit/b.ts', 'const shown = 1')])).toEqual([])
  })

  it.each(['page.waitForTimeout', 'vi.waitFor', 'console.info'])('finds a planted %s in a test', (call) => {
    expect(clockOrPrint.test(`await ${call}(check)`)).toBe(true)
  })

  it.each(['bench', 'notes.md', 'vitest.config.ts', 'biome.json'])('finds a planted %s at the top', (name) => {
    expect(topLevelBreaches(root, [name])).toEqual([name])
  })

  it('finds a package of the picture that is not asked for, not exact or not used', () => {
    const given = { three: '1.2.3', '@react-three/fiber': '1.2.3', '@react-three/drei': '1.2.3' }
    const uses = (...names: string[]) => [sourceFile('src/view/scene/a.tsx', names.map((name) => `import { a } from '${name}'`).join('\n'))]
    const all = uses('three', '@react-three/fiber', '@react-three/drei/web/View')
    expect(unusedInScene(given, all)).toEqual([])
    expect(unusedInScene({ ...given, '@react-three/drei': '^1.2.3' }, all)).toHaveLength(1)
    expect(unusedInScene({ three: '1.2.3', '@react-three/fiber': '1.2.3' }, all)).toHaveLength(1)
    expect(unusedInScene(given, uses('three', '@react-three/fiber'))).toHaveLength(1)
  })

  it('leaves comments and strings alone', () => {
    const innocent = sourceFile('src/core/derive/a.ts', "// Math.random() is banned\nconst a = 'new Date as any'\n")
    expect(rules.flatMap((rule) => rule.check(innocent))).toEqual([])
  })
})

describe('[A3] nothing of the workshop is left in the work', () => {
  const texts = ['src', 'tests', 'public'].flatMap((folder) => filesUnder(folder, ['.ts', '.tsx', '.md', '.json', '.csv', '.css', '.html']))
  const own = ['README.md', 'DEVELOPERS.md', 'package.json', 'package-lock.json', 'index.html', 'vite.config.ts']
  const workshopPath = new RegExp(`(?<![\\w.])/(?:${['work', 'root', 'tmp'].join('|')})/`)

  it('names no folder of one machine', () => {
    expect([...texts, ...own].filter((path) => workshopPath.test(read(path)))).toEqual([])
    expect(workshopPath.test(`see /${'work'}/main`)).toBe(true)
  })

  it('records no registry in the lock file', () => {
    const lock = JSON.parse(read('package-lock.json')) as { packages: Record<string, { resolved?: string }> }
    expect(Object.keys(lock.packages).length).toBeGreaterThan(100)
    expect(Object.entries(lock.packages).filter(([, entry]) => entry.resolved !== undefined)).toEqual([])
  })
})
