import { readFileSync } from 'node:fs'
import type { Locator } from '@playwright/test'
import { app as appWords } from '../../src/words/en/app.ts'
import { compare as words } from '../../src/words/en/compare.ts'
import { entrances } from '../../src/words/en/entrances.ts'
import { fills } from '../../src/words/en/fills.ts'
import { type App, expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'

const button = (app: App, name: string): Locator => app.page.getByRole('button', { name, exact: true })
const method = (app: App, name: string): Locator => app.page.getByRole('checkbox', { name, exact: true })
const region = (app: App): Locator => app.page.getByRole('region', { name: words.picture, exact: true })

/** Opens the page and the comparison, and waits for its picture. */
const compare = async (app: App, query?: string): Promise<void> => {
  await app.open('', query)
  await button(app, entrances.compare.open).click()
  await expect(region(app)).toBeVisible()
  await expect.poll(() => app.page.locator('canvas').count()).toBe(1)
  await expect.poll(async () => (await app.read('rendererInfo')) !== null).toBe(true)
  await app.stillness()
}

/** The same in a browser without WebGL2: for what stands beside the picture. */
const compareSections = async (app: App): Promise<void> => {
  await app.open()
  await button(app, entrances.compare.open).click()
  await expect(app.page.getByRole('img', { name: words.sections }).locator('svg > svg')).toHaveCount(4)
}

/** The picture of each column, cut out of the one canvas. */
const columns = async (app: App, count: number): Promise<Buffer[]> => {
  await app.stillness()
  const box = await region(app).boundingBox()
  if (!box) throw new Error('there is no picture')
  const whole = (await app.page.screenshot({ clip: box })).toString('base64')
  const shots = await app.page.evaluate(
    async ({ source, parts }) => {
      const image = new Image()
      image.src = `data:image/png;base64,${source}`
      await image.decode()
      const canvas = document.createElement('canvas')
      const width = image.width / parts
      canvas.width = Math.floor(width) - 4
      canvas.height = image.height
      return Array.from({ length: parts }, (_, i) => {
        canvas.getContext('2d')?.drawImage(image, -Math.round(i * width) - 2, 0)
        return canvas.toDataURL('image/png').split(',')[1] ?? ''
      })
    },
    { source: whole, parts: count },
  )
  return shots.map((shot) => Buffer.from(shot, 'base64'))
}

test.use({ viewport: { width: 1280, height: 560 } })

test('[Y6] four piers stand on one canvas, and the page comes back as it was left', async ({ app }) => {
  await app.open()
  const before = { spec: await app.spec(), picture: await app.picture() }
  await button(app, entrances.compare.open).click()
  await expect(region(app)).toBeVisible()
  await expect.poll(async () => (await app.read('rendererInfo')) !== null).toBe(true)
  await expect(app.page.locator('canvas')).toHaveCount(1)
  await expect(app.page.getByRole('columnheader')).toHaveCount(5)
  await expect(app.page.getByRole('main')).toHaveCount(1)
  await app.page.keyboard.press('Escape')
  await expect(region(app)).toHaveCount(0)
  await expect(app.page.locator('canvas')).toHaveCount(1)
  await app.ready()
  await expect(button(app, entrances.compare.open)).toBeFocused()
  expect(await app.spec()).toEqual(before.spec)
  await button(app, entrances.compare.open).blur()
  expect(await app.isSamePicture(await app.picture(), before.picture)).toBe(true)
})

test('[Y7] cut and view go in step in every column', async ({ app }) => {
  await compare(app)
  const before = { cut: await app.read('cutState'), pictures: await columns(app, 4) }
  for (let i = 0; i < 4; i++) await app.page.keyboard.press('ArrowRight')
  expect((await app.read('cutState')).facing).not.toBeCloseTo(before.cut.facing, 3)
  const turned = await columns(app, 4)
  for (let i = 0; i < 4; i++) expect(await app.isSamePicture(turned[i] as Buffer, before.pictures[i] as Buffer), `column ${i}`).toBe(false)
  for (let i = 0; i < 4; i++) await app.page.keyboard.press('ArrowLeft')
  const back = await columns(app, 4)
  for (let i = 0; i < 4; i++) expect(await app.isSamePicture(back[i] as Buffer, before.pictures[i] as Buffer), `column ${i}`).toBe(true)
})

test('[Y7] one pier twice gives one picture twice, and moving a column moves its picture', async ({ app }) => {
  await compare(app)
  for (const id of ['dry-bag-at-foot', 'dry-full-height'] as const) await method(app, fills[id].label).uncheck()
  const [own, bracket] = await columns(app, 2)
  await button(app, words.column.right(fills['mixed-full-height'].label)).click()
  await expect(app.page.getByText(words.order.moved)).toBeVisible()
  const moved = await columns(app, 2)
  expect(await app.isSamePicture(moved[1] as Buffer, own as Buffer)).toBe(true)
  expect(await app.isSamePicture(moved[0] as Buffer, bracket as Buffer)).toBe(true)
  expect(await app.isSamePicture(moved[0] as Buffer, moved[1] as Buffer)).toBe(false)
})

test('[Y8] two hundred switches of methods leave what the picture holds where it was', async ({ app }) => {
  await compare(app)
  // Large enough for columns side by side, and quick to draw two hundred times: two of them, and three with one that is switched.
  await app.page.setViewportSize({ width: 760, height: 400 })
  for (const id of ['dry-bag-at-foot', 'dry-full-height'] as const) await method(app, fills[id].label).uncheck()
  const boxes = await Promise.all((['mixed-collar', 'flowable-fill'] as const).map((id) => method(app, fills[id].label).elementHandle()))
  // Switched from within the page, a picture drawn between any two: a hand is no quicker.
  const switchOne = (times: number): Promise<void> =>
    app.page.evaluate(
      async ({ boxes: both, times: count }) => {
        const frame = () => new Promise((done) => requestAnimationFrame(done))
        for (let i = 0; i < count; i++) {
          const box = both[Math.floor(i / 2) % 2]
          if (!(box instanceof HTMLInputElement)) throw new Error('no box')
          box.click()
          await frame()
          if (box.checked !== (i % 2 === 0)) throw new Error(`switch ${i} did not take`)
        }
      },
      { boxes, times },
    )
  await switchOne(8)
  await app.stillness()
  const before = await app.renderer()
  await switchOne(200)
  await app.stillness()
  const after = await app.renderer()
  expect(after.frames).toBeGreaterThan(before.frames + 20)
  expect(after.geometries).toBe(before.geometries)
  expect(after.textures).toBe(before.textures)
  expect(after.programs).toBe(before.programs)
})

test('[Y9] four piers orbit on one canvas, frame after frame', async ({ app }) => {
  await app.page.addInitScript(() => {
    const ask = window.requestAnimationFrame.bind(window)
    const spent: number[] = []
    Object.assign(window, { spent })
    window.requestAnimationFrame = (draw) =>
      ask((time) => {
        const start = performance.now()
        draw(time)
        spent.push(performance.now() - start)
      })
  })
  await compare(app)
  const box = await region(app).boundingBox()
  if (!box) throw new Error('there is no picture')
  const read = (): Promise<number[]> => app.page.evaluate(() => (window as unknown as { spent: number[] }).spent.splice(0))
  await app.page.mouse.move(box.x + 200, box.y + 150)
  await app.page.mouse.down()
  await read()
  const { frames } = await app.renderer()
  for (let i = 1; i <= 60; i++) {
    await app.page.mouse.move(box.x + 200 + 4 * i, box.y + 150 + (i % 20))
    await app.page.evaluate(() => new Promise(requestAnimationFrame))
  }
  const spent = (await read()).sort((a, b) => a - b)
  await app.page.mouse.up()
  const drawn = (await app.renderer()).frames - frames
  expect(drawn).toBeGreaterThan(5)
  // Callbacks in which nothing was drawn are left out: the longest ones are the frames.
  const ofFrames = spent.slice(-drawn)
  const middle = ofFrames[Math.floor(ofFrames.length / 2)] ?? Number.NaN
  test
    .info()
    .annotations.push({ type: 'script in a frame of four piers', description: `${middle.toFixed(2)} ms at the median of ${drawn}` })
})

test.describe('the table, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[Y10] what differs, what counts and what nobody can tell stand in the table', async ({ app }) => {
    await compareSections(app)
    const table = app.page.getByRole('table')
    const holds = table.locator('[data-row="holds-down"]')
    await expect(holds.getByText(appWords.verdicts.unverified, { exact: true })).toHaveCount(3)
    await expect(holds.getByText(/^[\d,]+ lb/)).toHaveCount(1)
    await expect(table.getByText(words.table.noEnds)).toBeVisible()
    await expect(table.getByText(words.table.best)).toHaveCount(1)
    await expect(table.getByText(words.table.instead(fills['mixed-full-height'].label)).first()).toBeVisible()
    const rows = app.page.locator('summary').filter({ hasText: new RegExp(`^${words.view.rows}`) })
    await rows.click()
    await app.page.getByRole('checkbox', { name: words.rows.hole.label, exact: true }).uncheck()
    await expect(table.getByText(words.rows.hole.why)).toHaveCount(0)
    await app.page.getByRole('radio', { name: words.view.orders['differing-first'] }).check()
    await app.page.keyboard.press('Escape')
    await expect(app.page.getByRole('radio', { name: words.view.orders.fixed })).toHaveCount(0)
    const said = table.locator('details').filter({ hasText: words.claims['dry-mix-is-as-good-as-mixed'] }).first()
    await said.locator('summary').click()
    await expect(said.getByText(words.findings['dry-mix-trial'])).toBeVisible()
  })
})

test('[Y11] a projector gets a dark page, large letters, few words, and the keys of a remote', async ({ app }) => {
  await compare(app)
  await app.page.setViewportSize({ width: 1920, height: 1080 })
  await button(app, words.view.project).click()
  await expect(app.page.getByRole('heading', { level: 2 })).toHaveText(words.projector.rows['holds-down'])
  await expect(app.page.locator('canvas')).toHaveCount(1)
  const texts = await app.page.evaluate(() => {
    const found: { text: string; size: number }[] = []
    const walk = document.createTreeWalker(document.querySelector('main') as Node, NodeFilter.SHOW_TEXT)
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const holder = node.parentElement
      const text = node.textContent?.trim() ?? ''
      if (text !== '' && holder && !holder.closest('.spoken, svg, [aria-hidden]'))
        found.push({ text, size: Number.parseFloat(getComputedStyle(holder).fontSize) })
    }
    return found
  })
  expect(texts.length).toBeGreaterThanOrEqual(9)
  for (const { text, size } of texts) {
    expect(size, text).toBeGreaterThanOrEqual(28)
    expect(text.split(/\s+/).length, text).toBeLessThanOrEqual(8)
  }
  // Five labels: four names and what is asked.
  await expect(app.page.getByRole('heading')).toHaveCount(5)
  await app.page.keyboard.press('PageDown')
  await expect(app.page.getByRole('heading', { level: 2 })).toHaveText(words.projector.rows.links)
  await app.page.keyboard.press('PageUp')
  await expect(app.page.getByRole('heading', { level: 2 })).toHaveText(words.projector.rows['holds-down'])
  const cut = await app.read('cutState')
  await app.page.keyboard.press('b')
  const dark = app.page.getByRole('button', { name: words.projector.dark })
  await expect(dark).toHaveCSS('background-color', 'rgb(0, 0, 0)')
  await app.page.keyboard.press('.')
  await expect(dark).toHaveCount(0)
  expect(await app.read('cutState')).toEqual(cut)
  await button(app, words.projector.leave).click()
  await expect(button(app, words.close)).toBeVisible()
  expect(await app.page.evaluate(() => document.documentElement.dataset.theme)).toBe('paper')
})

test('[Y12] without WebGL2 the sections stand side by side', async ({ app }) => {
  await app.page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return /webgl/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
    } as typeof real
  })
  await app.open()
  await button(app, entrances.compare.open).click()
  const sections = app.page.getByRole('img', { name: words.sections })
  await expect(sections.locator('svg > svg')).toHaveCount(4)
  await expect(app.page.locator('canvas')).toHaveCount(0)
  const before = await sections.innerHTML()
  await app.page.keyboard.press('ArrowRight')
  await expect.poll(() => sections.innerHTML()).not.toBe(before)
})

test.describe('files, without a 3D picture', () => {
  test.use({ graphics: false })

  test('[Y13] a job file stands beside the others, and a broken one says why and changes nothing', async ({ app }) => {
    await compareSections(app)
    const chosen = app.page.waitForEvent('filechooser')
    await button(app, words.choose.open).click()
    await (await chosen).setFiles('public/examples/boat-shelter-bag-at-foot.json')
    await expect(app.page.getByRole('group', { name: words.saved }).getByRole('checkbox')).toBeChecked()
    await expect(app.page.getByRole('columnheader')).toHaveCount(5)
    const again = app.page.waitForEvent('filechooser')
    await button(app, words.choose.open).click()
    await (await again).setFiles({ name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from('{"format":') })
    await expect(app.page.getByText(words.choose.refused('broken.json'))).toBeVisible()
    await expect(app.page.getByRole('columnheader')).toHaveCount(5)
    const spec = await app.spec()
    await app.page.evaluate(
      (text) => {
        const dataTransfer = new DataTransfer()
        dataTransfer.items.add(new File([text], 'dropped.json', { type: 'application/json' }))
        document.querySelector('main')?.dispatchEvent(new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer }))
      },
      readFileSync('public/examples/boat-shelter-bag-at-foot.json', 'utf8'),
    )
    await expect(app.page.getByRole('group', { name: words.saved }).getByRole('checkbox')).toHaveCount(2)
    expect(await app.spec()).toEqual(spec)
  })
})

test('[Y14] axe finds nothing serious and nothing runs out, on a desk, a tablet and a phone', async ({ app }) => {
  await compare(app)
  for (const size of [
    { width: 1280, height: 800 },
    { width: 1024, height: 768 },
    { width: 390, height: 844 },
  ]) {
    await app.page.setViewportSize(size)
    await app.stillness()
    const which = `${size.width} x ${size.height}`
    expect(await seriousFindings(app.page), which).toEqual([])
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth), which).toBeLessThanOrEqual(size.width)
  }
  const second = app.page.getByRole('navigation', { name: words.column.which }).getByRole('button').nth(1)
  await second.click()
  await expect(app.page.getByRole('heading', { level: 3 })).toContainText(fills['mixed-bracket-pier'].label)
})

test.describe('touched', () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } })

  test('[Y15] everything that can be touched is large enough, and the next pier is a swipe away', async ({ app }) => {
    await compare(app)
    const small = await app.page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('main button, main summary, main select, main label')]
        .filter((node) => node.checkVisibility({ visibilityProperty: true }) && !node.matches('label:has(select)'))
        .map((node) => ({ name: node.textContent || node.ariaLabel, ...node.getBoundingClientRect().toJSON() }))
        .filter(({ width, height }) => Math.round(height) < 44 || Math.round(width) < 44)
        .map(({ name, width, height }) => `${name} ${width} x ${height}`),
    )
    expect(small).toEqual([])
    const scroller = app.page.getByRole('table').locator('..')
    expect(await scroller.evaluate((node) => node.scrollWidth - node.clientWidth)).toBeGreaterThan(300)
  })
})
