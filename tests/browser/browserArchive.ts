import { execFileSync } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { brotliDecompressSync } from 'node:zlib'
import type { FoundBrowser } from './launch.ts'

const cache = fileURLToPath(new URL('../../node_modules/.cache/browser', import.meta.url))

/** Folder and version of the packed browser, or null where it is not installed or cannot run. */
const packed = (): { folder: string; version: string } | null => {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null
  try {
    // The package shows no way to its own package.json, so it is looked up from its entry.
    let folder = dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium'))
    while (!existsSync(join(folder, 'package.json')) || !existsSync(join(folder, 'bin'))) {
      if (folder === dirname(folder)) return null
      folder = dirname(folder)
    }
    const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string }
    return { folder: join(folder, 'bin'), version }
  } catch {
    return null
  }
}

const fontSettings = (home: string): string => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${join(home, 'fonts')}</dir><dir>/usr/share/fonts</dir><cachedir>${join(home, 'font-cache')}</cachedir></fontconfig>
`

const unpackInto = (bin: string, home: string): void => {
  const plain = (name: string): Buffer => brotliDecompressSync(readFileSync(join(bin, name)))
  const untar = (name: string): void => {
    execFileSync('tar', ['-x', '--no-same-owner', '-C', home, '-f', '-'], { input: plain(name), maxBuffer: 1 << 28 })
  }
  mkdirSync(home, { recursive: true })
  for (const archive of ['al2023.tar.br', 'swiftshader.tar.br', 'fonts.tar.br']) untar(archive)
  writeFileSync(join(home, 'fonts.conf'), fontSettings(home))
  writeFileSync(join(home, 'chromium'), plain('chromium.br'))
  chmodSync(join(home, 'chromium'), 0o755)
}

/**
 * Unpacks the browser that comes as an optional package, with the libraries that a bare Linux lacks, into a cache under node_modules.
 * Done once: a second call finds it there. Null where the package is not installed or is not for this machine.
 */
export const unpackBrowser = (): FoundBrowser | null => {
  const from = packed()
  if (!from) return null
  const home = join(cache, from.version)
  if (!existsSync(join(home, 'chromium'))) {
    const halfDone = `${home}.${process.pid}`
    unpackInto(from.folder, halfDone)
    // The settings name their own folder, so they are written again where they come to rest.
    rmSync(home, { recursive: true, force: true })
    renameSync(halfDone, home)
    writeFileSync(join(home, 'fonts.conf'), fontSettings(home))
  }
  const libraries = [join(home, 'lib'), home, process.env.LD_LIBRARY_PATH].filter((path) => path !== undefined && path !== '')
  return {
    executablePath: join(home, 'chromium'),
    env: { LD_LIBRARY_PATH: libraries.join(':'), FONTCONFIG_FILE: join(home, 'fonts.conf') },
    how: `unpacked from @sparticuz/chromium ${from.version}`,
  }
}
