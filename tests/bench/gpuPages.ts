import { createReadStream, existsSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { extname, join, normalize } from 'node:path'
import type { Plugin } from 'vite'

/** The page as it is, and the same page with every body and blade in a plain standard material: same triangles, light and shadow. */
export type Look = 'ours' | 'plain'
export const looks: readonly Look[] = ['ours', 'plain']

const plainSolid = `
import { MeshStandardMaterial } from 'three'
export const behindLines = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 }
export const solidMaterial = (family) =>
  new MeshStandardMaterial({ ...behindLines, color: { mineral: '#93754f', wood: '#c9a877', metal: '#8b9093' }[family] })
`

const plainLook = (): Plugin => ({
  name: 'plain-look',
  enforce: 'pre',
  load: (id) => (id.endsWith('/materials/solidMaterial.ts') ? plainSolid : null),
  transform: (code, id) => (id.endsWith('/light/Grass.ts') ? code.replaceAll('MeshLambertMaterial', 'MeshStandardMaterial') : null),
})

/** Builds both pages under `folder`. */
export async function buildPages(folder: string): Promise<void> {
  const { build } = await import('vite')
  for (const look of looks) {
    const outDir = join(folder, look)
    await build({ logLevel: 'error', plugins: look === 'plain' ? [plainLook()] : [], build: { outDir, emptyOutDir: true } })
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

/** Serves both pages; gives the address they lie under. */
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
