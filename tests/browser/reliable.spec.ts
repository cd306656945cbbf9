import { expect, test } from './app.ts'
import { parts } from './names.ts'

test('[R1] three hundred edits leave geometry and memory where they were', async ({ app }) => {
  await app.open()
  const slider = parts(app.page).slider('hole.diameter')
  const heap = await app.page.context().newCDPSession(app.page)
  const heapUsed = async (): Promise<number> => {
    await heap.send('HeapProfiler.collectGarbage')
    return (await heap.send('Runtime.getHeapUsage')).usedSize
  }
  // Moved from within the page, a picture drawn between any two: a hand is no quicker.
  const edit = (times: number): Promise<void> =>
    slider.evaluate(async (input: HTMLInputElement, count) => {
      const frame = () => new Promise((done) => requestAnimationFrame(done))
      const diameter = () => window.pierglass?.document().spec.hole.diameter
      for (let i = 0; i < count; i++) {
        const before = diameter()
        if (i % 2 === 0) input.stepUp()
        else input.stepDown()
        input.dispatchEvent(new Event('input', { bubbles: true }))
        input.dispatchEvent(new Event('change', { bubbles: true }))
        await frame()
        if (diameter() === before) throw new Error(`edit ${i} did not take`)
      }
    }, times)
  await edit(40)
  await app.stillness()
  const before = await app.renderer()
  const heapBefore = await heapUsed()
  await edit(300)
  await app.stillness()
  const after = await app.renderer()
  expect(after.frames).toBeGreaterThan(before.frames + 100)
  expect(after.geometries).toBe(before.geometries)
  expect(after.textures).toBe(before.textures)
  expect(after.programs).toBe(before.programs)
  expect((await heapUsed()) - heapBefore).toBeLessThan(8_000_000)
})

test('[R2] a lost drawing context comes back with the same picture', async ({ app }) => {
  await app.open()
  const before = await app.picture()
  const lose = () =>
    app.page
      .locator('canvas')
      .first()
      .evaluate((canvas: HTMLCanvasElement) => {
        const ending = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context')
        // A context can be given back when the page has heard of its loss.
        canvas.addEventListener('webglcontextlost', () => setTimeout(() => ending?.restoreContext()), { once: true })
        ending?.loseContext()
      })
  const { frames } = await app.renderer()
  await lose()
  await expect.poll(async () => (await app.read('rendererInfo'))?.frames ?? 0).toBeGreaterThan(frames)
  expect(await app.isSamePicture(await app.picture(), before)).toBe(true)
})

test('[R3] a hidden tab draws nothing', async ({ app }) => {
  await app.openWithClock()
  await app.page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true })
    Object.defineProperty(document, 'hidden', { value: true, configurable: true })
    document.dispatchEvent(new Event('visibilitychange'))
  })
  const { frames } = await app.renderer()
  const slider = parts(app.page).slider('hole.diameter')
  await slider.focus()
  for (let i = 0; i < 5; i++) await slider.press('ArrowRight')
  await app.page.clock.runFor(600)
  expect((await app.renderer()).frames).toBe(frames)
  await app.page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'visible', configurable: true })
    Object.defineProperty(document, 'hidden', { value: false, configurable: true })
    document.dispatchEvent(new Event('visibilitychange'))
  })
  await app.page.clock.runFor(600)
  expect((await app.renderer()).frames).toBeGreaterThan(frames)
})

test('[R4] a picture at rest costs nothing', async ({ app }) => {
  await app.openWithClock()
  const { frames } = await app.renderer()
  await app.page.clock.runFor(1500)
  expect((await app.renderer()).frames).toBe(frames)
})

test('[R15] a hand that turns the picture gets one frame a move, and none once it lets go', async ({ app }) => {
  await app.page.setViewportSize({ width: 640, height: 480 })
  await app.open('', '')
  await app.stillness()
  const box = await parts(app.page).canvas.boundingBox()
  if (!box) throw new Error('there is no picture')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await app.page.mouse.move(x, y)
  await app.page.mouse.down()
  const { frames } = await app.renderer()
  const moves = 40
  for (let i = 1; i <= moves; i++) {
    await app.page.mouse.move(x + 3 * i, y)
    await app.page.evaluate(() => new Promise(requestAnimationFrame))
  }
  const turned = (await app.renderer()).frames
  await app.page.mouse.up()
  await app.stillness()
  const rested = (await app.renderer()).frames
  // A move that comes within the frame of another has none of its own. The first hand on it may draw one more.
  expect(turned - frames).toBeGreaterThan(moves / 2)
  expect(turned - frames).toBeLessThanOrEqual(moves + 2)
  // Names are laid out anew where it rests.
  expect(rested - turned).toBeLessThanOrEqual(3)
})

test.describe('without a 3D picture', () => {
  test.use({ graphics: false })

  test('[R5] markup in a name is shown as it was typed', async ({ app }) => {
    await app.open()
    const name = '<img src=x onerror="document.title=\'hit\'"><b>pier</b>'
    const field = parts(app.page).pierName
    await app.enter(field, name)
    await expect.poll(async () => (await app.read('document')).name).toBe(name)
    // Markup would have been made into elements by the second frame.
    await app.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))
    expect(await app.page.locator('img[src="x"]').count()).toBe(0)
    expect(await app.page.title()).not.toBe('hit')
  })

  test('[R6] what was on the page comes back after the browser died', async ({ app, context }) => {
    await app.open()
    await app.enter(parts(app.page).field('hole.depth'), '61 in')
    await expect.poll(async () => (await app.spec()).hole.depth).toBeCloseTo(61 * 0.0254, 12)
    const spec = await app.spec()
    // The old page gets no chance to say goodbye; the new one opens without the link.
    const death = app.page.waitForEvent('crash')
    const session = await context.newCDPSession(app.page)
    session.send('Page.crash').catch(() => undefined)
    await death
    const next = await context.newPage()
    await next.goto('./?quality=light')
    await next.waitForFunction(() => window.pierglass?.ready() === true)
    expect(await next.evaluate(() => window.pierglass?.document().spec)).toEqual(spec)
  })

  test('[R7] a damaged link opens nothing else in its place', async ({ app }) => {
    await app.open()
    const spec = await app.spec()
    await app.enter(parts(app.page).field('hole.diameter'), '22 in')
    await expect.poll(() => new URL(app.page.url()).hash.length).toBeGreaterThan(3)
    const hash = new URL(app.page.url()).hash
    await app.page.evaluate(() => localStorage.clear())
    await app.page.goto('about:blank')
    await app.open(`${hash.slice(0, -2)}`)
    await expect(app.page.getByText('The link is damaged')).toBeVisible()
    expect(await app.spec()).toEqual(spec)
  })
})
