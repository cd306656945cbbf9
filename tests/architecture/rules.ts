import { type Import, type SourceFile, target } from './sourceFile.ts'
import { kitKnowsNoPier, walls } from './walls.ts'

export type Breach = string
/** `plant` is a file that breaks the rule: a guard that cannot fail guards nothing. */
export type Rule = Readonly<{
  name: string
  check: (file: SourceFile) => readonly Breach[]
  plant: readonly [path: string, text: string][]
}>

const tiers: readonly (readonly [folder: string, mayImport: readonly string[]])[] = [
  ['src/core/units', []],
  ['src/core/model', ['src/core/units']],
  ['src/core/fields', ['src/core/units', 'src/core/model']],
  ['src/core/geometry', ['src/core/units', 'src/core/model']],
  ['src/core/engineering', ['src/core/units', 'src/core/model']],
  ['src/core/kinds', ['src/core/units', 'src/core/model', 'src/core/fields', 'src/core/geometry', 'src/core/engineering']],
  ['src/core/spec', ['src/core/units', 'src/core/model', 'src/core/fields', 'src/core/geometry', 'src/core/engineering', 'src/core/kinds']],
  ['src/core/derive', ['src/core/units', 'src/core/model', 'src/core/geometry', 'src/core/engineering', 'src/core/kinds', 'src/core/spec']],
  [
    'src/core/documents',
    ['src/core/units', 'src/core/model', 'src/core/geometry', 'src/core/engineering', 'src/core/kinds', 'src/core/spec', 'src/core/derive'],
  ],
  ['src/core/uncertainty', ['src/core/']],
  ['src/words', []],
  ['src/state', ['src/core/']],
  ['src/facts', ['src/core/', 'src/words/']],
  ['src/export', ['src/core/', 'src/words/', 'src/facts/']],
  ['src/build', []],
  ['src/cli', ['src/core/', 'src/words/', 'src/export/']],
  ['src/view', ['src/core/', 'src/state/', 'src/words/', 'src/facts/', 'src/export/']],
]
/** Types alone may be read against the arrows, from these. */
const typesMayComeFrom: Readonly<Record<string, readonly string[]>> = {
  'src/core/model': ['src/core/engineering/', 'src/core/geometry/', 'src/core/fields/', 'src/core/spec/pier/'],
  'src/core/geometry': ['src/core/engineering/sources.ts'],
  'src/words': ['src/core/', 'src/state/'],
}

const within = (path: string, folders: readonly string[]): boolean =>
  folders.some((folder) => path === folder || path.startsWith(folder.endsWith('/') ? folder : `${folder}/`))
const found = (file: SourceFile, pattern: RegExp, text: string): Breach[] =>
  [...text.matchAll(pattern)].map((m) => `${file.path}:${text.slice(0, m.index).split('\n').length} ${m[0].trim()}`)
const badImports = (file: SourceFile, isBad: (wanted: Import, to: string | null) => boolean): Breach[] =>
  file.imports.filter((wanted) => isBad(wanted, target(file, wanted))).map((wanted) => `${file.path} imports ${wanted.from}`)
const isPackage = (from: string, ...names: string[]): boolean => names.some((name) => from === name || from.startsWith(`${name}/`))
const inCore = (file: SourceFile): boolean => file.path.startsWith('src/core/')

const arrows: Rule = {
  name: 'the tiers point one way',
  check: (file) => {
    const tier = tiers.find(([folder]) => within(file.path, [folder]))
    if (!tier) return file.path.startsWith('src/core/') ? [`${file.path} stands in no tier`] : []
    const [folder, mayImport] = tier
    return badImports(file, (wanted, to) => {
      if (to === null || within(to, [folder, ...mayImport])) return false
      if (wanted.typeOnly && within(to, typesMayComeFrom[folder] ?? [])) return false
      return !/\.(css|json|svg|woff2)$/.test(to)
    })
  },
  plant: [
    ['src/core/units/a.ts', "import { b } from '../derive/b.ts'"],
    ['src/core/model/a.ts', "import { surface } from '../geometry/surface.ts'"],
    ['src/core/geometry/a.ts', "import { kind } from '../kinds/index.ts'"],
    ['src/core/elsewhere/a.ts', ''],
    ['src/core/derive/b.ts', "import { simulate } from '../uncertainty/simulate.ts'"],
    ['src/state/a.ts', "import { App } from '../view/app/App.tsx'"],
    ['src/core/derive/a.ts', "export { store } from '../../state/store.ts'"],
    ['src/export/a.ts', "import { drawSection } from '../view/section/drawSection.ts'"],
  ],
}

const packages: Rule = {
  name: 'packages stay where they belong',
  check: (file) =>
    badImports(file, ({ from }, to) => {
      if (to !== null) return false
      if (inCore(file)) {
        if (from === 'zod') return !file.path.startsWith('src/core/spec/')
        if (from === 'earcut') return !file.path.startsWith('src/core/geometry/')
        return true
      }
      if (isPackage(from, 'three', '@react-three/fiber', '@react-three/drei')) return !file.path.startsWith('src/view/scene/')
      if (isPackage(from, 'react', 'react-dom')) return !file.path.startsWith('src/view/')
      if (isPackage(from, 'zustand', 'zundo')) return !within(file.path, ['src/state', 'src/view'])
      if (isPackage(from, 'vite')) return !file.path.startsWith('src/build/')
      if (from.startsWith('node:')) return !within(file.path, ['src/cli', 'src/build'])
      if (isPackage(from, 'manifold-3d', '@gltf-transform/core', '@tarikjabiri/dxf')) return !file.path.startsWith('src/export/')
      if (isPackage(from, 'jspdf', 'svg2pdf.js')) return !file.path.startsWith('src/view/sheet/pdf/')
      return false
    }),
  plant: [
    ['src/core/derive/a.ts', "import { z } from 'zod'"],
    ['src/view/sheet/a.ts', "import { jsPDF } from 'jspdf'"],
    ['src/core/geometry/a.ts', "import type { Vector3 } from 'three'"],
    ['src/view/panels/a.tsx', "import { Vector3 } from 'three'"],
    ['src/view/panels/b.tsx', "import { Canvas } from '@react-three/fiber'"],
    ['src/view/compare/a.tsx', "import { View } from '@react-three/drei/web/View'"],
    ['src/state/a.ts', "import { useMemo } from 'react'"],
    ['src/core/spec/a.ts', "import { create } from 'zustand'"],
    ['src/view/app/a.ts', "import { readFileSync } from 'node:fs'"],
    ['src/view/export/a.ts', "import Module from 'manifold-3d'"],
    ['src/state/b.ts', "import { Document } from '@gltf-transform/core'"],
  ],
}

/** Packages the picture is written with: asked for in package.json, in an exact version, and imported by the scene. */
const scenePackages = ['three', '@react-three/fiber', '@react-three/drei']
export const unusedInScene = (dependencies: Readonly<Record<string, string>>, files: readonly SourceFile[]): readonly Breach[] => {
  const scene = files.filter(({ path }) => path.startsWith('src/view/scene/')).flatMap(({ imports }) => imports)
  return scenePackages.flatMap((name) => {
    const version = dependencies[name]
    if (version === undefined || !/^\d+\.\d+\.\d+$/.test(version)) return [`package.json asks for no exact version of ${name}`]
    return scene.some(({ from, typeOnly }) => !typeOnly && isPackage(from, name)) ? [] : [`the scene does not use ${name}`]
  })
}

const sceneApart: Rule = {
  name: 'the scene is only loaded late',
  check: (file) =>
    file.path.startsWith('src/view/scene/')
      ? []
      : badImports(file, (wanted, to) => to?.startsWith('src/view/scene/') === true && !wanted.typeOnly && !wanted.dynamic),
  plant: [['src/view/panels/a.tsx', "import { Scene } from '../scene/Scene.tsx'"]],
}

const viewsAskSelectors: Rule = {
  name: 'views and state call no formula',
  check: (file) =>
    within(file.path, ['src/view', 'src/state'])
      ? badImports(
          file,
          (wanted, to) =>
            to !== null && !wanted.typeOnly && to.startsWith('src/core/engineering/') && to !== 'src/core/engineering/sources.ts',
        )
      : [],
  plant: [['src/view/panels/a.tsx', "import { dowelYield } from '../../core/engineering/dowelYield.ts'"]],
}

const endings: Rule = {
  name: 'imports carry their ending',
  check: (file) => badImports(file, (_, to) => to !== null && !/\.(ts|tsx|css|json|svg|woff2|md)$/.test(to)),
  plant: [['src/view/panels/a.tsx', "import { Panel } from './Panel'"]],
}

const purity: Rule = {
  name: 'the core is pure',
  check: (file) =>
    inCore(file)
      ? found(
          file,
          /\bMath\.random\b|\bnew Date\b|\bDate\.\w+|\bDate\(|\bglobalThis\b|\bwindow\b|\bdocument\.(?:body|createElement|querySelector|getElementById)\b|\b(?:local|session)Storage\b|\bindexedDB\b|\bfetch\(|\bperformance\.|\bprocess\.|\bconsole\.|\.toLocale\w+|\bIntl\./g,
          file.code,
        )
      : [],
  plant: [
    ['src/core/derive/a.ts', 'const a = Math.random()'],
    ['src/core/derive/b.ts', 'const b = new Date()'],
    ['src/core/derive/c.ts', 'const c = Date.now()'],
    ['src/core/derive/d.ts', 'const d = window.innerWidth'],
    ['src/core/derive/e.ts', "const e = document.createElement('p')"],
    ['src/core/derive/f.ts', "const f = (1).toLocaleString('en')"],
  ],
}

const noAny: Rule = {
  name: 'no any, no silenced compiler',
  check: (file) => [
    ...found(file, /(?::|\bas|<|,)\s*any\b(?!\s*:)|\bany\[\]/g, file.code),
    ...found(file, /@ts-(?:ignore|nocheck|expect-error)/g, file.text),
  ],
  plant: [
    ['src/core/derive/a.ts', 'const a: any = 1'],
    ['src/core/derive/b.ts', 'const b = c as any'],
    ['src/core/derive/c.ts', '// @ts-ignore\nconst d = 1'],
  ],
}

const isTable = (path: string): boolean =>
  path.startsWith('src/words/') || path.startsWith('src/core/engineering/tables/') || path === 'src/core/engineering/sources.ts'
const shortFiles: Rule = {
  name: 'no file over 300 lines, tables aside',
  check: (file) => (file.lines > 300 && !isTable(file.path) ? [`${file.path} has ${file.lines} lines`] : []),
  plant: [['src/core/derive/a.ts', 'const a = 1\n'.repeat(301)]],
}

const plainNames: Rule = {
  name: 'a file is named for its idea',
  check: (file) => (/(?:^|\/)(?:utils?|helpers?|misc|common)\.tsx?$/.test(file.path) ? [file.path] : []),
  plant: [['src/core/derive/utils.ts', '']],
}

const noKindCompared = (ids: readonly string[]): Rule => {
  const id = `'(?:${ids.join('|')})'`
  // 'flowable-fill' is a role of material as well as a kind; what something is made of may be asked anywhere.
  const compared = new RegExp(
    `(?<![!=]|\\brole\\s*)[!=]==?\\s*${id}|${id}\\s*[!=]==?|\\bcase\\s+${id}|\\bswitch\\s*\\([^)]*\\b(?:fill|bracket)\\.kind\\b`,
    'g',
  )
  return {
    name: 'a kind is compared nowhere but among the kinds',
    check: (file) => (file.path.startsWith('src/core/kinds/') ? [] : found(file, compared, file.statements)),
    plant: [
      ['src/core/derive/a.ts', "if (fill.kind === 'mixed-collar') go()"],
      ['src/view/panels/a.tsx', "switch (id) { case 'knife-plate': go() }"],
      ['src/state/a.ts', 'switch (spec.fill.kind) {}'],
    ],
  }
}

/** @param kinds ids of every fill and bracket */
export const rulesFor = (kinds: readonly string[]): readonly Rule[] => [
  arrows,
  walls,
  kitKnowsNoPier,
  packages,
  sceneApart,
  viewsAskSelectors,
  endings,
  purity,
  noAny,
  shortFiles,
  plainNames,
  noKindCompared(kinds),
]
