import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { parse } from 'csv-parse/sync'
import DxfParser from 'dxf-parser'
import { strFromU8, unzipSync } from 'fflate'
import { validateBytes } from 'gltf-validator'
import '../everyWord.ts'
import { calcJob } from '../../src/cli/calcJob.ts'
import { enclosedVolume, welded } from '../../src/export/solid/plainMesh.ts'
import { app as words } from '../../src/words/en/app.ts'
import { takeAlong as exporting } from '../../src/words/en/takeAlong.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import type { FileId } from '../../src/view/export/fileWish.ts'
import { unpairedEdges } from '../meshFacts.ts'
import { type App, expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'
import { parts } from './names.ts'

const wide = { width: 1280, height: 800 }
type Taken = Readonly<{ name: string; bytes: Buffer }>

const openList = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: entrances.takeAlong, exact: true }).first().click()
  await expect(page.getByRole('dialog', { name: entrances.takeAlong })).toBeVisible()
}
const press = (page: Page, id: FileId): Promise<void> =>
  page.getByRole('button', { name: `${exporting.files[id].action} ${exporting.files[id].kind}`, exact: true }).click()

/** Asks for one file and waits until it is on the disk. */
const take = async ({ page }: App, id: FileId): Promise<Taken> => {
  const waiting = page.waitForEvent('download')
  await press(page, id)
  const download = await waiting
  const bytes = readFileSync(await download.path())
  const taken = { name: download.suggestedFilename(), bytes }
  await expect(page.getByRole('dialog').getByRole('status')).toContainText(taken.name)
  return taken
}

const opened = async (app: App): Promise<void> => {
  await app.page.setViewportSize(wide)
  await app.open()
  await app.enter(parts(app.page).pierName, 'Boat shelter, <b>north</b> row')
  await expect.poll(async () => (await app.read('document')).name).toContain('north')
}

/** Size, and how far light and dark lie apart, of a PNG as the browser decodes it. */
const pictureFacts = (page: Page, bytes: Buffer) =>
  page.evaluate(
    async (address) => {
      const image = new Image()
      image.src = address
      await image.decode()
      const canvas = document.createElement('canvas')
      canvas.width = image.width
      canvas.height = image.height
      const context = canvas.getContext('2d')
      context?.drawImage(image, 0, 0)
      const data = context?.getImageData(0, 0, image.width, image.height).data ?? new Uint8ClampedArray()
      let [sum, squares] = [0, 0]
      for (let i = 0; i < data.length; i += 4) {
        sum += data[i] ?? 0
        squares += (data[i] ?? 0) ** 2
      }
      const count = data.length / 4
      return { width: image.width, height: image.height, variance: squares / count - (sum / count) ** 2 }
    },
    `data:image/png;base64,${bytes.toString('base64')}`,
  )

test.describe('drawings and models, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[E10] drawings: each is saved, named after the pier, and read', async ({ app }) => {
    await opened(app)
    await openList(app.page)
    const svg = await take(app, 'svg')
    expect(svg.name).toBe('boat-shelter-b-north-b-row-section.svg')
    const text = svg.bytes.toString('utf8')
    expect(text).toContain('data:font/woff2;base64,')
    // The file opens by itself, in a page without our style sheet or policy, and is not blank.
    const alone = await app.page.context().newPage()
    const seen = await alone.evaluate((source) => {
      const page = new DOMParser().parseFromString(source, 'image/svg+xml')
      return {
        isBroken: page.querySelector('parsererror') !== null,
        words: [...page.querySelectorAll('text')].map((one) => one.textContent),
      }
    }, text)
    expect(seen.isBroken).toBe(false)
    expect(seen.words).toContain('Boat shelter, <b>north</b> row')
    expect(seen.words.some((line) => /^\d{4}-\d\d-\d\d$/.test(line ?? ''))).toBe(true)
    await alone.setContent(`<img src="data:image/svg+xml;base64,${svg.bytes.toString('base64')}" style="height:600px">`)
    const shown = await pictureFacts(alone, await alone.screenshot())
    expect(shown.variance).toBeGreaterThan(400)
    await alone.close()

    const dxf = await take(app, 'dxf')
    const drawing = new DxfParser().parseSync(dxf.bytes.toString('utf8'))
    expect(drawing?.header.$INSUNITS).toBe(1)
    expect(drawing?.entities.filter(({ layer }) => layer === exporting.layers.concrete)).toHaveLength(1)
  })

  test('[E11] models: valid, closed, and of the volume on the page', async ({ app }) => {
    await opened(app)
    const { zones } = await app.read('result')
    const filled = zones.filter(({ role }) => role === 'concrete').reduce((sum, zone) => sum + zone.volume.value, 0)
    await openList(app.page)
    const glb = await take(app, 'glb')
    const { issues } = (await validateBytes(new Uint8Array(glb.bytes))) as { issues: { numErrors: number; numWarnings: number } }
    expect(issues).toMatchObject({ numErrors: 0, numWarnings: 0 })

    await app.page.getByLabel(exporting.choices.scale).selectOption({ label: exporting.choices.oneTo(10) })
    await app.page.getByLabel(exporting.choices.withPost).uncheck()
    const stl = await take(app, 'stl')
    const view = new DataView(stl.bytes.buffer, stl.bytes.byteOffset, stl.bytes.byteLength)
    const count = view.getUint32(80, true)
    expect(stl.bytes.length).toBe(84 + 50 * count)
    const positions = Float32Array.from({ length: 9 * count }, (_, i) =>
      view.getFloat32(84 + 50 * Math.floor(i / 9) + 12 + 4 * (i % 9), true),
    )
    const body = welded({ positions, indices: Uint32Array.from({ length: 3 * count }, (_, i) => i) })
    const empty = { normals: new Float32Array(body.positions.length), outsideCount: 0, outline: new Float32Array() }
    expect(unpairedEdges({ ...body, ...empty })).toBe(0)
    expect(Math.abs((enclosedVolume(body) * 1e-6) / filled - 1)).toBeLessThan(1e-3)

    await app.page.getByLabel(exporting.choices.withPost).check()
    const threeMf = await take(app, 'threeMf')
    const model = strFromU8(unzipSync(new Uint8Array(threeMf.bytes))['3D/3dmodel.model'] ?? new Uint8Array())
    expect(model.match(/<object /g)).toHaveLength(3)
    expect(model).toContain('&lt;b&gt;north&lt;/b&gt;')
  })
})

test('[E12] pictures: as wide as asked, not blank, with and without words', async ({ app }) => {
  await opened(app)
  await openList(app.page)
  await app.page.getByLabel(exporting.choices.width).selectOption({ label: exporting.choices.pixels('1,280') })
  const named = await take(app, 'png')
  await app.page.getByLabel(exporting.choices.withWords).uncheck()
  const plain = await take(app, 'png')
  const canvas = await app.page.locator('.cutaway canvas').boundingBox()
  for (const { bytes } of [named, plain]) {
    const facts = await pictureFacts(app.page, bytes)
    expect(facts.width).toBe(1280)
    expect(Math.abs(facts.height - (1280 * (canvas?.height ?? 0)) / (canvas?.width ?? 1))).toBeLessThan(2)
    expect(facts.variance).toBeGreaterThan(200)
  }
  expect(await app.differing(named.bytes, plain.bytes)).toBeGreaterThan(2000)
  // A picture beyond what a canvas can hold comes smaller, in the same shape.
  await app.page.getByLabel(exporting.choices.width).selectOption({ label: exporting.choices.pixels('3,840') })
  const large = await pictureFacts(app.page, (await take(app, 'png')).bytes)
  expect(large.width * large.height).toBeLessThanOrEqual(16_777_216)
})

/** Where two results differ: in a key, in a word, or in a number by more than a billionth. */
const alike = (a: unknown, b: unknown, path = ''): string[] => {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9 * Math.max(1e-6, Math.abs(b)) ? [] : [path]
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b ? [] : [path]
  const keys = new Set([...Object.keys(a), ...Object.keys(b)])
  return [...keys].flatMap((key) => alike(Reflect.get(a, key), Reflect.get(b, key), `${path}.${key}`))
}

test.describe('numbers, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[E13] numbers: the same that the command line prints', async ({ app }) => {
    await opened(app)
    const saving = app.page.waitForEvent('download')
    await app.page.getByRole('button', { name: words.actions.save, exact: true }).click()
    const job = readFileSync(await (await saving).path(), 'utf8')
    await openList(app.page)
    const json = await take(app, 'json')
    const [ours, theirs] = [json.bytes.toString('utf8'), calcJob(job).out].map((text) => JSON.parse(text) as Record<string, unknown>)
    // How sizes were typed is known to the file alone, which spells out those that were never typed.
    expect(alike({ ...ours, written: 0 }, { ...theirs, written: 0 })).toEqual([])
    expect(alike({ a: [1, { b: 'x' }] }, { a: [1.001, { b: 'y' }] })).toHaveLength(2)
    const csv = await take(app, 'csv')
    const rows = parse(csv.bytes, { bom: true, columns: true }) as Record<string, string>[]
    const told = JSON.parse(json.bytes.toString('utf8')) as { headlines: { id: string; value: number }[] }
    for (const { id, value } of told.headlines)
      expect(Number(rows.find(({ group, where }) => group === 'headlines' && where === id)?.value)).toBe(value)
  })
})

test('[E14] without a 3D picture the drawn section is taken', async ({ app }) => {
  await app.page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext as (this: HTMLCanvasElement, kind: string, ...more: unknown[]) => unknown
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...more: unknown[]) {
      return kind.startsWith('webgl') ? null : real.call(this, kind, ...more)
    } as typeof HTMLCanvasElement.prototype.getContext
  })
  await opened(app)
  await openList(app.page)
  const facts = await pictureFacts(app.page, (await take(app, 'png')).bytes)
  expect(facts.width).toBe(1920)
  expect(facts.variance).toBeGreaterThan(200)
})

test('[E14] a lost drawing context gives the drawn section too, at once and after it is told', async ({ app }) => {
  await opened(app)
  await app.page.locator('.cutaway canvas').evaluate((canvas: HTMLCanvasElement) => {
    canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context')?.loseContext()
  })
  await openList(app.page)
  const atOnce = await take(app, 'png')
  await app.page.keyboard.press('Escape')
  await expect(app.page.getByRole('status').filter({ hasText: words.notices['scene-failed'] })).toBeVisible()
  await openList(app.page)
  const later = await take(app, 'png')
  for (const { bytes } of [atOnce, later]) {
    const facts = await pictureFacts(app.page, bytes)
    expect(facts.width).toBe(1920)
    // Words alone on white are some 60.
    expect(facts.variance).toBeGreaterThan(200)
  }
  await app.page.keyboard.press('Escape')
  await app.page.getByRole('button', { name: entrances.sheet.open, exact: true }).first().click()
  await expect(app.page.locator('.paper').first()).toBeVisible()
  await expect(app.page.locator('.paper-picture')).toHaveCount(0)
})

test('[E15] what fails is told, with a second way, and the page goes on', async ({ app }) => {
  await app.page.addInitScript(() => {
    HTMLCanvasElement.prototype.toBlob = (done) => {
      done(null)
    }
    window.Worker = class {
      constructor() {
        throw new Error('no workers here')
      }
    } as unknown as typeof Worker
    Object.assign(navigator, {
      canShare: () => true,
      share: () => Promise.reject(new DOMException('no', 'NotAllowedError')),
    })
  })
  await opened(app)
  await openList(app.page)
  const status = app.page.getByRole('dialog').getByRole('status')
  for (const id of ['png', 'stl', 'threeMf'] as const) {
    await press(app.page, id)
    await expect(status).toContainText(exporting.failed[id])
  }
  // The next file is made all the same, can be had twice, and a refused hand-over is told.
  await take(app, 'csv')
  const again = app.page.waitForEvent('download')
  await app.page.getByRole('button', { name: exporting.again }).click()
  expect((await again).suggestedFilename()).toMatch(/-numbers\.csv$/)
  await app.page.getByRole('button', { name: exporting.share }).click()
  await expect(status).toContainText(exporting.notShared)
  await app.page.keyboard.press('Escape')
  await expect(app.page.getByRole('dialog')).toHaveCount(0)
  await expect(app.page.getByRole('button', { name: entrances.takeAlong, exact: true }).first()).toBeFocused()
})

test.describe('the list, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[E18] axe finds nothing serious in the list, and the keyboard alone makes a file', async ({ app }) => {
    await opened(app)
    await app.page.getByRole('button', { name: entrances.takeAlong, exact: true }).first().focus()
    await app.page.keyboard.press('Enter')
    await expect(app.page.getByRole('dialog', { name: entrances.takeAlong })).toBeVisible()
    expect(await seriousFindings(app.page)).toEqual([])
    const table = app.page.getByRole('button', { name: `${exporting.files.csv.action} ${exporting.files.csv.kind}`, exact: true })
    for (let i = 0; i < 30 && !(await table.evaluate((node) => node === document.activeElement)); i++) await app.page.keyboard.press('Tab')
    const waiting = app.page.waitForEvent('download')
    await app.page.keyboard.press('Enter')
    expect((await waiting).suggestedFilename()).toMatch(/-numbers\.csv$/)
  })
})
