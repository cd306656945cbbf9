import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium, type Page } from '@playwright/test'
import { findBrowser } from '../browser/findBrowser.ts'
import { environmentFor } from '../browser/launch.ts'
import { buildPages, type Look, looks, servePages } from './gpuPages.ts'
import type {} from './site/main.tsx'

/**
 * What a frame costs the graphics processor, by its own clock, beside the same triangles in a plain standard material with the same
 * light and shadow, in one run. `GPU_PAGES=folder` takes pages that were built before.
 */
const folder = process.env.GPU_PAGES ?? fileURLToPath(new URL('../../node_modules/.cache/gpu-bench', import.meta.url))
const rounds = 3
const framesEach = 120
const screen = { width: 1440, height: 900 } as const

type Frame = Readonly<{ time: number; draws: number; triangles: number }>
type Watch = { frames: Frame[]; disjoint: number }

/** Runs in the page before anything else: puts a timer round each frame and counts what it draws. */
const watchFrames = (): void => {
  const watch: Watch = { frames: [], disjoint: 0 }
  Object.assign(window, { watch })
  let gl: WebGL2RenderingContext | null = null
  let clock: { TIME_ELAPSED_EXT: number; GPU_DISJOINT_EXT: number } | null = null
  const waiting: { query: WebGLQuery; draws: number; triangles: number }[] = []
  let draws = 0
  let triangles = 0
  const realContext = HTMLCanvasElement.prototype.getContext
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
    const made = Reflect.apply(realContext, this, [kind, ...rest])
    if (kind === 'webgl2' && made && this.isConnected) {
      gl = made as WebGL2RenderingContext
      clock = gl.getExtension('EXT_disjoint_timer_query_webgl2')
      // Timers of a canvas that is gone are never read.
      waiting.length = 0
    }
    return made
  } as typeof realContext
  const count = (mode: number, points: number, times: number): void => {
    draws++
    if (mode === WebGL2RenderingContext.TRIANGLES) triangles += (points / 3) * times
  }
  const pen = WebGL2RenderingContext.prototype
  const { drawElements, drawArrays, drawElementsInstanced, drawArraysInstanced } = pen
  pen.drawElements = function (mode, points, ...rest) {
    count(mode, points, 1)
    drawElements.call(this, mode, points, ...rest)
  }
  pen.drawArrays = function (mode, first, points) {
    count(mode, points, 1)
    drawArrays.call(this, mode, first, points)
  }
  pen.drawElementsInstanced = function (mode, points, type, offset, times) {
    count(mode, points, times)
    drawElementsInstanced.call(this, mode, points, type, offset, times)
  }
  pen.drawArraysInstanced = function (mode, first, points, times) {
    count(mode, points, times)
    drawArraysInstanced.call(this, mode, first, points, times)
  }
  const collect = (): void => {
    while (gl && clock && waiting[0] && gl.getQueryParameter(waiting[0].query, gl.QUERY_RESULT_AVAILABLE)) {
      const done = waiting.shift()
      if (!done) break
      const nanoseconds = gl.getQueryParameter(done.query, gl.QUERY_RESULT) as number
      gl.deleteQuery(done.query)
      if (gl.getParameter(clock.GPU_DISJOINT_EXT)) watch.disjoint++
      else watch.frames.push({ time: nanoseconds / 1e6, draws: done.draws, triangles: done.triangles })
    }
  }
  const ask = window.requestAnimationFrame.bind(window)
  window.requestAnimationFrame = (draw) =>
    ask((time) => {
      collect()
      const query = gl && clock ? gl.createQuery() : null
      draws = triangles = 0
      if (gl && clock && query) gl.beginQuery(clock.TIME_ELAPSED_EXT, query)
      draw(time)
      if (!gl || !clock || !query) return
      gl.endQuery(clock.TIME_ELAPSED_EXT)
      if (draws > 0) waiting.push({ query, draws, triangles })
      else gl.deleteQuery(query)
    })
}

const rendererOf = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const gl = document.createElement('canvas').getContext('webgl2')
    const names = gl?.getExtension('WEBGL_debug_renderer_info')
    const hasClock = gl?.getExtension('EXT_disjoint_timer_query_webgl2') !== null
    return gl && names && hasClock ? String(gl.getParameter(names.UNMASKED_RENDERER_WEBGL)) : ''
  })

/** A browser that draws on a graphics processor and has its clock, with the processor's name; null where none is found. */
async function findGpu(): Promise<{ browser: Browser; name: string } | null> {
  const { CHROMIUM_PATH } = process.env
  // A browser that is named need not draw in software.
  const found = CHROMIUM_PATH ? { executablePath: CHROMIUM_PATH, env: {}, how: '' } : await findBrowser()
  for (const angle of ['vulkan', 'gl-egl', 'default']) {
    const flags = ['--no-sandbox', `--use-angle=${angle}`, '--ignore-gpu-blocklist', '--enable-features=Vulkan', '--disable-vulkan-surface']
    const browser = await chromium
      .launch({ executablePath: found.executablePath, args: [...flags, '--enable-webgl-draft-extensions'], env: environmentFor(found) })
      .catch(() => null)
    if (!browser) continue
    const page = await browser.newPage()
    const name = await rendererOf(page).catch(() => '')
    await page.close()
    if (name !== '' && !/swiftshader|llvmpipe|software|basic render/i.test(name)) return { browser, name: `${name} (${angle})` }
    console.log(`  --use-angle=${angle}: ${name || 'no WebGL2 context with timer queries'}`)
    await browser.close()
  }
  return null
}

type Scene = Readonly<{ name: string; piers: number; isSite: boolean }>
const scenes: readonly Scene[] = [
  { name: 'one pier', piers: 1, isSite: false },
  { name: 'four piers side by side', piers: 4, isSite: false },
  { name: 'a site of one pier', piers: 1, isSite: true },
  { name: 'a site of forty piers', piers: 40, isSite: true },
]

async function open(page: Page, address: string, look: Look, { piers, isSite }: Scene): Promise<void> {
  await page.goto(`${address}/${look}/${isSite ? `site/?piers=${piers}` : ''}`)
  if (isSite) {
    await page.waitForFunction(() => (window.site?.read()?.frames ?? 0) > 0, undefined, { timeout: 60_000 })
    return
  }
  await page.waitForFunction(() => window.pierglass?.ready() === true, undefined, { timeout: 60_000 })
  if (piers === 1) return
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Side by side', exact: true }).click()
  await page.waitForFunction(() => (window.pierglass?.rendererInfo()?.frames ?? 0) > 1)
}

/** Turns the picture by hand, to and fro, and reads what each frame cost. */
async function turn(page: Page, address: string, look: Look, scene: Scene): Promise<Watch> {
  await open(page, address, look, scene)
  await page.waitForTimeout(1500)
  const box = await page.locator('canvas').first().boundingBox()
  if (!box) throw new Error('there is no picture')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  const step = async (i: number): Promise<void> => {
    await page.mouse.move(x + 3 * (i % 2 === 0 ? 1 : -1), y)
    await page.evaluate(() => new Promise(requestAnimationFrame))
  }
  for (let i = 0; i < 20; i++) await step(i)
  await page.evaluate(() => (window as unknown as { watch: Watch }).watch.frames.splice(0))
  for (let i = 0; i < framesEach; i++) await step(i)
  await page.mouse.up()
  await page.waitForTimeout(300)
  return page.evaluate(() => (window as unknown as { watch: Watch }).watch)
}

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN

const gpu = await findGpu()
if (!gpu) console.log('No graphics processor with a clock was found: nothing is measured.')
else {
  if (!process.env.GPU_PAGES) await buildPages(folder)
  const { server, address } = await servePages(join(folder))
  console.log(`${gpu.name}, ${gpu.browser.version()}, ${screen.width} by ${screen.height} at two pixels a point`)
  const found = new Map<string, number>()
  for (const scene of scenes) {
    const times: Record<Look, number[]> = { ours: [], plain: [] }
    for (let round = 0; round < rounds; round++)
      for (const look of looks) {
        const context = await gpu.browser.newContext({ viewport: screen, deviceScaleFactor: 2, serviceWorkers: 'block' })
        const page = await context.newPage()
        // The runner names functions through a helper that the page has not.
        await page.addInitScript('globalThis.__name = (it) => it')
        await page.addInitScript(watchFrames)
        const { frames, disjoint } = await turn(page, address, look, scene)
        await context.close()
        const time = middle(frames.map((frame) => frame.time))
        times[look].push(time)
        const [draws, triangles] = [middle(frames.map((frame) => frame.draws)), middle(frames.map((frame) => frame.triangles))]
        const lost = disjoint > 0 ? `, ${disjoint} left out` : ''
        console.log(
          `  ${scene.name}, ${look.padEnd(5)}   ${time.toFixed(3)} ms   ${draws} draws   ${Math.round(triangles)} triangles   ${frames.length} frames${lost}`,
        )
      }
    const [ours, plain] = [middle(times.ours), middle(times.plain)]
    found.set(scene.name, ours)
    console.log(`${scene.name}: ${ours.toFixed(2)} ms, plain ${plain.toFixed(2)} ms, ${(ours / plain).toFixed(2)} times (aim: at most 1.5)`)
  }
  const ratio = (found.get('a site of forty piers') ?? Number.NaN) / (found.get('a site of one pier') ?? Number.NaN)
  console.log(`forty piers to one: ${ratio.toFixed(2)} times (aim: at most 2.5)`)
  server.close()
  await gpu.browser.close()
}
