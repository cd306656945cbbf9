/// <reference types="vitest/config" />
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { gzipSync } from 'node:zlib'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin, transformWithOxc } from 'vite'
import { licenses } from './src/build/licenses.ts'

/** What the built page may do: run and fetch its own files, nothing else, from nowhere else. */
const contentPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'none'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/** The development server needs inline scripts to swap modules, so the policy is written into the built page only. */
const policyInPage = (): Plugin => ({
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy }, injectTo: 'head-prepend' },
    { tag: 'meta', attrs: { name: 'referrer', content: 'no-referrer' }, injectTo: 'head-prepend' },
  ],
})

/**
 * The letters of formulas come in three formats; every browser that runs this page reads the first. Of the page's own letters one file of
 * 60 kB would be fetched for the dagger alone, which any system has.
 */
const fewerLetters = (): Plugin => ({
  name: 'fewer-letters',
  enforce: 'pre',
  transform(code, id) {
    if (/katex[^/]*\.css$/.test(id)) return code.replace(/,url\([^)]*\.(?:woff|ttf)\) format\("[^"]*"\)/g, '')
    return /source-sans-3\/wght\.css$/.test(id) ? code.replace('U+2020,', '') : null
  },
})

/** The PDF writer can also draw a page's markup, with three packages that this page has no use for. */
const leftOut = ['canvg', 'dompurify', 'html2canvas']
const withoutMarkup = (): Plugin => ({
  name: 'without-markup',
  enforce: 'pre',
  resolveId: (id) => (leftOut.includes(id) ? `\0left-out:${id}` : null),
  load: (id) => (id.startsWith('\0left-out:') ? 'export default null' : null),
})

/** `public` is copied whole; the pictures in the README are no part of the page. */
const withoutReadmePictures = (): Plugin => ({
  name: 'without-readme-pictures',
  apply: 'build',
  writeBundle: ({ dir = 'dist' }) => rmSync(join(dir, 'readme'), { recursive: true, force: true }),
})

/** Every file under a folder, by its path from there, with forward slashes. */
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))

/** The page's files are kept by a worker of their own, which has to know them all: it is written when all others are there. */
const pageKeeper = (): Plugin => ({
  name: 'page-keeper',
  apply: 'build',
  writeBundle: {
    order: 'post',
    sequential: true,
    async handler({ dir = 'dist' }) {
      const source = 'src/view/app/pageKeeper.ts'
      // What speaks to the host is not handed out by it.
      const files = filesIn(dir)
        .filter((file) => file !== '_headers')
        .sort()
      const mark = createHash('sha256')
      for (const file of files) mark.update(file).update(readFileSync(join(dir, file)))
      const { code } = await transformWithOxc(readFileSync(source, 'utf8'), source)
      const asked = files.map((file) => (file === 'index.html' ? './' : file))
      const known = `const builtFiles = ${JSON.stringify(asked)}\nconst builtMark = '${mark.digest('hex').slice(0, 16)}'\n`
      writeFileSync(join(dir, 'pageKeeper.js'), known + code.replace(/^export \{\s*\};?\s*$/m, ''))
      this.info(`kept offline ${files.length} files`)
    },
  },
})

/** The drawn section is in it. */
const initialLimit = 200_000
const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB gzip`

/** Prints what a first visit loads before the picture, and what the picture adds; stops the build when the first outgrows its limit. */
const firstLoad = (): Plugin => ({
  name: 'first-load',
  apply: 'build',
  writeBundle(_, bundle) {
    const chunks = Object.values(bundle).filter((file) => file.type === 'chunk')
    const named = new Map(chunks.map((chunk) => [chunk.fileName, chunk]))
    const withImports = (fileName: string, seen = new Set<string>()): Set<string> => {
      if (seen.has(fileName)) return seen
      seen.add(fileName)
      for (const next of named.get(fileName)?.imports ?? []) withImports(next, seen)
      return seen
    }
    const weight = (files: Iterable<string>): number => {
      let sum = 0
      for (const file of files) sum += gzipSync(named.get(file)?.code ?? '').length
      return sum
    }
    const holdsThree = (fileName: string): boolean =>
      (named.get(fileName)?.moduleIds ?? []).some((id) => id.includes('/node_modules/three/'))

    const initial = new Set(chunks.filter((chunk) => chunk.isEntry).flatMap((chunk) => [...withImports(chunk.fileName)]))
    const scene = chunks.filter((chunk) => chunk.isDynamicEntry && [...withImports(chunk.fileName)].some(holdsThree))
    const sceneFiles = new Set(scene.flatMap((chunk) => [...withImports(chunk.fileName)]).filter((file) => !initial.has(file)))
    this.info(`first load   ${kilobytes(weight(initial))} of script in ${initial.size} files (limit ${kilobytes(initialLimit)})`)
    this.info(`3D picture   ${kilobytes(weight(sceneFiles))} of script in ${sceneFiles.size} files, loaded after it`)

    const page = bundle['index.html']
    const html = page?.type === 'asset' ? String(page.source) : ''
    const early = chunks.filter((chunk) => holdsThree(chunk.fileName) && (initial.has(chunk.fileName) || html.includes(chunk.fileName)))
    if (early.length > 0) this.error(`the 3D library is loaded at once: ${early.map((chunk) => chunk.fileName).join(', ')}`)
    if (weight(initial) > initialLimit) this.error(`the first load outgrew ${kilobytes(initialLimit)}`)
  },
})

/** Few files, since each costs a way to the host and back, and none that brings what its reader has no need of. */
const chunks = [
  // All that the page starts with: cut up by who else uses it, it would weigh 6 kB more.
  { name: 'page', tags: ['$initial' as const] },
  // What the 3D picture shares with parts that do without it: none of them brings 3D along.
  { name: 'water', test: /\/waterAndYears\.ts$/ },
  { name: 'beside', test: /\/(?:lettingGo|player|takeView|cutMeshes|useViewpoints)\.ts$/ },
  { name: 'picture', test: /\/src\/view\/scene\/(?!compare\/)|\/node_modules\/(?:three|@react-three|camera-controls)\// },
  { name: 'inputs', test: /\/src\/(?:view\/panels\/inputs\/|words\/en\/(?:brackets|choices|fields|fills|groups|issues)\.ts)/ },
]

const texts = licenses()

export default defineConfig({
  base: './',
  // A missing file is a 404, never the page in its place.
  appType: 'mpa',
  plugins: [react(), fewerLetters(), withoutMarkup(), policyInPage(), firstLoad(), texts.plugin, withoutReadmePictures(), pageKeeper()],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1600,
    reportCompressedSize: false,
    rolldownOptions: { output: { codeSplitting: { groups: chunks } } },
  },
  // A worker of its own file, which may load more.
  worker: { format: 'es', plugins: () => [texts.inWorkers()] },
  server: { host: '127.0.0.1' },
  preview: { host: '127.0.0.1', port: 4173, strictPort: false },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    setupFiles: ['tests/everyWord.ts'],
    environment: 'node',
    maxWorkers: 2,
    testTimeout: 120_000,
    restoreMocks: true,
    // As modules, so that the scene and its tests work with one and the same three.
    server: { deps: { inline: [/@react-three/] } },
    alias: { '@react-three/fiber': '@react-three/fiber/dist/react-three-fiber.esm.js' },
  },
})
