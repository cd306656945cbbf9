import { mkdir, rm } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

const root = fileURLToPath(new URL('../..', import.meta.url))
/** Beside the packages, so that a bundle finds them. */
const folder = join(root, 'node_modules', '.bench')

/**
 * A module bundled as the page's own scripts are, and loaded. The runner that starts the benchmarks keeps the name of every function, at a
 * cost at each small one that is made: code that makes many runs two to three times slower in it than in the page.
 * @param entry file in this folder
 */
export async function bundled<T>(entry: string): Promise<T> {
  const outDir = join(folder, basename(entry, '.ts'))
  await mkdir(outDir, { recursive: true })
  try {
    await build({
      configFile: false,
      root,
      logLevel: 'error',
      build: { ssr: join('tests/bench', entry), outDir, target: 'es2022', minify: true },
      ssr: { target: 'node' },
    })
    return (await import(pathToFileURL(join(outDir, `${basename(entry, '.ts')}.js`)).href)) as T
  } finally {
    await rm(outDir, { recursive: true, force: true })
  }
}
