import { createReadStream, existsSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { extname, join, normalize } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'

/** The page as it is, and the same page with every body and blade in a plain standard material: same triangles, light and shadow. */
export type Look = 'ours' | 'plain'
export const looks: readonly Look[] = ['ours', 'plain']

const plainSolid = `
import { MeshStandardMaterial } from 'three'
const behindLines = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 }
export const solidMaterial = (family) =>
  new MeshStandardMaterial({ ...behindLines, color: { mineral: '#93754f', wood: '#c9a877', metal: '#8b9093' }[family] })
`

const plainLook = (): Plugin => ({
  name: 'plain-look',
  enforce: 'pre',
  load: (id) => (id.endsWith('/materials/solidMaterial.ts') ? plainSolid : null),
  transform: (code, id) => (id.endsWith('/light/Grass.ts') ? code.replaceAll('MeshLambertMaterial', 'MeshStandardMaterial') : null),
})

/** The page of a site with many piers, which is no part of what is built to be handed out. */
const sitePage = fileURLToPath(new URL('./site', import.meta.url))

export async function buildSite(outDir: string, plugins: Plugin[] = []): Promise<void> {
  const { build } = await import('vite')
  const target = 'es2022'
  await build({ configFile: false, logLevel: 'error', root: sitePage, base: './', plugins, build: { outDir, emptyOutDir: true, target } })
}

/** Builds the page and the site in both looks under `folder`. */
export async function buildPages(folder: string): Promise<void> {
  const { build } = await import('vite')
  for (const look of looks) {
    const plugins = look === 'plain' ? [plainLook()] : []
    await build({ logLevel: 'error', plugins, build: { outDir: join(folder, look), emptyOutDir: true } })
    await buildSite(join(folder, look, 'site'), plugins)
  }
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
}

/** Serves what lies in a folder; gives its address. */
export const servePages = (folder: string): Promise<{ server: Server; address: string }> =>
  new Promise((resolve) => {
    const server = createServer(({ url = '/' }, response) => {
      const path = normalize(new URL(url, 'http://localhost').pathname)
      const file = join(folder, path.endsWith('/') ? `${path}index.html` : path)
      response.writeHead(existsSync(file) ? 200 : 404, { 'content-type': types[extname(file)] ?? 'application/octet-stream' })
      if (existsSync(file)) createReadStream(file).pipe(response)
      else response.end()
    }).listen(0, '127.0.0.1', () => {
      const at = server.address()
      resolve({ server, address: `http://127.0.0.1:${typeof at === 'object' && at ? at.port : 0}` })
    })
  })
