import { readFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import { app as words } from '../../src/words/en/app.ts'
import { looking } from '../../src/words/en/looking.ts'
import { shelf as texts } from '../../src/words/en/shelf.ts'
import { type App, expect, test } from './app.ts'
import { seriousFindings } from './axe.ts'
import { parts } from './names.ts'

const wide = { width: 1280, height: 480 }

// What is kept, and what is said of it, does not depend on how the pier is drawn.
test.use({ graphics: false })

const inch = 0.0254

/** The shelf of a page, by what a person sees and hears. */
const shelfOf = (page: Page) => {
  const dialog = page.getByRole('dialog', { name: texts.title })
  const press = (name: string | RegExp) =>
    dialog
      .getByRole('button', { name, exact: typeof name === 'string' })
      .first()
      .click()
  return {
    dialog,
    press,
    open: () =>
      page
        .getByRole('button', { name: new RegExp(`^${words.actions.shelf}`) })
        .first()
        .click(),
    close: () => press(texts.close),
    piers: dialog.getByRole('region', { name: texts.list }).getByRole('listitem'),
    drafts: dialog.getByRole('region', { name: texts.drafts.title }).getByRole('listitem'),
    saved: dialog.getByText(texts.said.saved, { exact: true }),
    act: (action: string, name: string) => press(texts.about(action, name)),
  }
}

const setDepth = async (app: App, inches: number): Promise<void> => {
  await app.enter(parts(app.page).field('hole.depth'), `${inches} in`)
  await expect.poll(async () => (await app.spec()).hole.depth).toBeCloseTo(inches * inch, 12)
}
const depthIn = (page: Page): Promise<number> => page.evaluate(() => (window.pierglass?.document().spec.hole.depth ?? 0) / 0.0254)
const another = async (app: App): Promise<Page> => {
  const page = await app.page.context().newPage()
  await page.setViewportSize(wide)
  await page.goto('./?quality=light')
  await page.waitForFunction(() => window.pierglass?.ready() === true)
  return page
}
const start = async (app: App): Promise<ReturnType<typeof shelfOf>> => {
  await app.page.setViewportSize(wide)
  await app.open()
  return shelfOf(app.page)
}
const saveAs = async (app: App, name: string): Promise<void> => {
  const shelf = shelfOf(app.page)
  await app.enter(parts(app.page).pierName, name)
  await shelf.open()
  await shelf.press(texts.open.save)
  await expect(shelf.saved).toBeVisible()
}

/** Every record in the browser's own database, read past the page. */
const records = (page: Page): Promise<{ id: string; name: string; schema: number; revision: number; job: string }[]> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('pierglass')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const all = opening.result.transaction('piers').objectStore('piers').getAll()
          all.onsuccess = () => {
            opening.result.close()
            resolve(all.result)
          }
        }
      }),
  )
/** Puts a changed copy of the first record beside it, past the page. */
const plant = (page: Page, change: Readonly<Record<string, unknown>>): Promise<void> =>
  page.evaluate(
    (part) =>
      new Promise((resolve) => {
        const opening = indexedDB.open('pierglass')
        opening.onsuccess = () => {
          const writing = opening.result.transaction('piers', 'readwrite')
          const all = writing.objectStore('piers').getAll()
          all.onsuccess = () => writing.objectStore('piers').put({ ...all.result[0], ...part })
          writing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
        }
      }),
    change,
  )

test('[M12] a pier is saved, found after a reload, opened, renamed, copied, deleted and put back', async ({ app }) => {
  const shelf = await start(app)
  await setDepth(app, 50)
  await saveAs(app, 'Boat shelter')
  await shelf.act(texts.actions.words, 'Boat shelter')
  await shelf.dialog.getByRole('textbox', { name: texts.note, exact: true }).fill('north row')
  await shelf.press(texts.actions.keep)
  await expect(shelf.dialog.getByText('north row')).toBeVisible()
  await shelf.act(texts.actions.copy, 'Boat shelter')
  await expect(shelf.piers).toHaveCount(2)
  await shelf.dialog.getByRole('searchbox').fill('row copy')
  await expect(shelf.piers).toHaveCount(1)
  await shelf.dialog.getByRole('searchbox').fill('')
  await shelf.act(texts.actions.remove, texts.copyOf('Boat shelter'))
  await expect(shelf.piers).toHaveCount(1)
  await shelf.press(texts.actions.putBack)
  await expect(shelf.piers).toHaveCount(2)
  await shelf.close()
  await setDepth(app, 60)
  await app.page.reload()
  await app.ready()
  await shelf.open()
  await expect(shelf.piers).toHaveCount(2)
  await shelf.act(texts.actions.open, 'Boat shelter')
  await expect(shelf.dialog).toBeHidden()
  await expect.poll(() => depthIn(app.page)).toBeCloseTo(50, 9)
  await expect(app.page.getByText(words.notices['pier-set-aside'])).toBeVisible()
  await shelf.open()
  await expect(shelf.drafts).toHaveCount(1)
})

test('[M13] two tabs on one pier: the second saving asks, and both are kept', async ({ app }) => {
  const shelf = await start(app)
  await saveAs(app, 'Gate')
  await shelf.close()
  const page = await another(app)
  const other = shelfOf(page)
  await other.open()
  await other.act(texts.actions.open, 'Gate')
  await expect(other.dialog).toBeHidden()
  await setDepth(app, 52)
  await shelf.open()
  await shelf.press(texts.open.saveChanges)
  await expect(shelf.saved).toBeVisible()
  await expect(page.getByText(words.notices['changed-elsewhere'])).toBeVisible()
  const depth = parts(page).field('hole.depth')
  await depth.fill('58 in')
  await depth.press('Enter')
  await other.open()
  await other.press(texts.open.saveChanges)
  await expect(other.dialog.getByText(texts.conflict.changed)).toBeVisible()
  await expect(other.saved).toBeHidden()
  await other.press(texts.conflict.mineOver)
  await expect(other.saved).toBeVisible()
  await expect(other.piers).toHaveCount(1)
  await expect(other.drafts).toHaveCount(1)
  expect((await records(page)).map((record) => record.job)).toEqual([expect.stringContaining('58 in')])
})

test('[M14] a tab that dies while it writes leaves whole records and the pier', async ({ app, context }) => {
  const shelf = await start(app)
  await setDepth(app, 53)
  await saveAs(app, 'Before')
  // Many savings at once, none of them waited for; then the page is gone.
  const saveNew = shelf.dialog.getByRole('button', { name: texts.open.saveNew, exact: true })
  await saveNew.evaluate((button: HTMLButtonElement) => {
    for (let i = 0; i < 40; i++) button.click()
  })
  const death = app.page.waitForEvent('crash')
  const session = await context.newCDPSession(app.page)
  session.send('Page.crash').catch(() => undefined)
  await death
  const page = await another(app)
  expect(await depthIn(page)).toBeCloseTo(53, 9)
  const found = await records(page)
  expect(found.length).toBeGreaterThan(0)
  const next = shelfOf(page)
  await next.open()
  await expect(next.piers).toHaveCount(found.length)
  await expect(next.dialog.getByText(texts.damaged)).toHaveCount(0)
  await next.act(texts.actions.open, 'Before')
  await expect(next.dialog).toBeHidden()
})

test('[M15] no room: it is told, nothing is called saved, what was saved stays, a file can be taken', async ({ app, context, baseURL }) => {
  const shelf = await start(app)
  const session = await context.newCDPSession(app.page)
  const origin = new URL(baseURL ?? '').origin
  // An empty store takes some 80 kB, so there is room for a few piers with long notes. Letters by chance do not pack.
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 260_000 })
  await saveAs(app, 'Before')
  await shelf.act(texts.actions.words, 'Before')
  const letters = Array.from({ length: 4000 }, () => String.fromCharCode(97 + Math.floor(Math.random() * 26))).join('')
  await shelf.dialog.getByRole('textbox', { name: texts.note, exact: true }).fill(letters)
  await shelf.press(texts.actions.keep)
  await expect(shelf.dialog.getByText(texts.said['words-kept'])).toBeVisible()
  const full = shelf.dialog.getByText(texts.trouble.full)
  const saveNew = shelf.dialog.getByRole('button', { name: texts.open.saveNew, exact: true })
  for (let i = 0; i < 40 && !(await full.isVisible()); i++) {
    await saveNew.click()
    await expect(shelf.saved.or(full)).toBeVisible()
  }
  await expect(full).toBeVisible()
  await expect(shelf.saved).toBeHidden()
  const before = await records(app.page)
  expect(before.length).toBeGreaterThan(0)
  await expect(shelf.piers).toHaveCount(before.length)
  await shelf.close()
  await setDepth(app, 57)
  await shelf.open()
  await shelf.press(texts.open.saveChanges)
  await expect(full).toBeVisible()
  await expect(shelf.saved).toBeHidden()
  expect(await records(app.page)).toEqual(before)
  const waiting = app.page.waitForEvent('download')
  await shelf.press(texts.files.thisPier)
  expect(readFileSync(await (await waiting).path(), 'utf8')).toContain('57 in')
  await session.send('Storage.overrideQuotaForOrigin', { origin })
  await shelf.press(texts.open.saveChanges)
  await expect(shelf.saved).toBeVisible()
  await expect(full).toBeHidden()
})

test('[M16] a damaged record and one of a newer version are explained, kept as they are, and can be taken along', async ({ app }) => {
  const shelf = await start(app)
  await saveAs(app, 'Good')
  await plant(app.page, { id: 'hurt', name: 'Hurt', job: '{"half":', changed: 1 })
  await plant(app.page, { id: 'later', name: 'Later', schema: 99, changed: 2, job: '{"in":"another form"}' })
  const before = await records(app.page)
  await shelf.close()
  await shelf.open()
  await expect(shelf.piers).toHaveCount(3)
  await expect(shelf.dialog.getByText(texts.newer)).toBeVisible()
  await expect(shelf.dialog.getByText(texts.damaged)).toBeVisible()
  for (const [name, found] of [
    ['Hurt', '{\\"half\\":'],
    ['Later', 'another form'],
  ] as const) {
    const waiting = app.page.waitForEvent('download')
    await shelf.act(texts.actions.saveFound, name)
    expect(readFileSync(await (await waiting).path(), 'utf8')).toContain(found)
  }
  expect(await records(app.page)).toEqual(before)
})

test('[M17] a newer page takes the store over: this one writes no more and says so', async ({ app }) => {
  const shelf = await start(app)
  await saveAs(app, 'Mine')
  const made = await app.page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open('pierglass', 2)
        opening.onsuccess = () => {
          resolve(opening.result.version)
          opening.result.close()
        }
      }),
  )
  expect(made).toBe(2)
  await expect(shelf.dialog.getByText(texts.trouble.newer)).toBeVisible()
  await expect(shelf.dialog.getByRole('button', { name: texts.open.saveNew })).toBeDisabled()
  await app.page.reload()
  await app.ready()
  await shelf.open()
  await expect(shelf.piers).toHaveCount(1)
  await expect(shelf.dialog.getByText(texts.trouble.newer)).toBeVisible()
})

test('[M18] a browser without a store says so, calls nothing saved, and keeps the draft of a pier that makes way', async ({ app }) => {
  await app.page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }))
  const shelf = await start(app)
  await shelf.open()
  await expect(shelf.dialog.getByText(texts.trouble.blocked)).toBeVisible()
  await shelf.close()
  await app.enter(parts(app.page).pierName, 'Passing')
  await setDepth(app, 62)
  await shelf.open()
  await shelf.press(texts.open.save)
  await expect(shelf.dialog.getByText(texts.said['in-memory'])).toBeVisible()
  await expect(shelf.dialog.getByText(texts.open.memory)).toBeVisible()
  await expect(shelf.saved).toBeHidden()
  await expect(shelf.piers).toHaveCount(1)
  await expect(shelf.dialog.getByText(texts.files.memory)).toBeVisible()
  await shelf.close()
  await app.page.getByRole('button', { name: words.actions.reset, exact: true }).click()
  await app.page.reload()
  await app.ready()
  await shelf.open()
  await expect(shelf.piers).toHaveCount(0)
  await expect(shelf.drafts).toHaveCount(1)
  await shelf.act(texts.actions.open, 'Passing')
  await expect.poll(() => depthIn(app.page)).toBeCloseTo(62, 9)
})

test('[M19] a store that never answers keeps nobody waiting', async ({ app }) => {
  await app.page.addInitScript(() => {
    const { open } = IDBFactory.prototype
    IDBFactory.prototype.open = function (this: IDBFactory, name, version) {
      const request = open.call(this, name, version)
      request.addEventListener = () => undefined
      return request
    }
  })
  const shelf = await start(app)
  await shelf.open()
  await expect(shelf.dialog.getByText(texts.trouble.hanging)).toBeVisible()
  await shelf.close()
  await setDepth(app, 51)
})

test('[M20] a link is looked at beside the open pier, and taken with one touch; a damaged one opens nothing', async ({ app }) => {
  const shelf = await start(app)
  await setDepth(app, 66)
  await expect.poll(() => new URL(app.page.url()).hash.length).toBeGreaterThan(3)
  const link = new URL(app.page.url()).hash
  await saveAs(app, 'Linked')
  const before = await records(app.page)
  await shelf.close()
  await setDepth(app, 71)
  await expect.poll(() => new URL(app.page.url()).hash).not.toBe(link)
  await app.page.evaluate((hash) => {
    location.hash = hash
  }, link)
  await expect.poll(() => depthIn(app.page)).toBeCloseTo(66, 9)
  // It is only looked at: no box takes a value, and the open pier comes back with one touch.
  await expect(app.page.getByText(looking.title)).toBeVisible()
  await expect(parts(app.page).field('hole.depth')).toHaveJSProperty('readOnly', true)
  await app.page.getByRole('button', { name: looking.back, exact: true }).click()
  await expect(app.page.getByText(looking.title)).toBeHidden()
  await expect.poll(() => depthIn(app.page)).toBeCloseTo(71, 9)
  expect(await records(app.page)).toEqual(before)
  await app.page.evaluate((hash) => {
    location.hash = `${hash.slice(0, -3)}AAA`
  }, link)
  await expect(app.page.getByText(words.notices['link-damaged'])).toBeVisible()
  expect(await depthIn(app.page)).toBeCloseTo(71, 9)
  // In a tab of its own it leaves the first tab's pier alone too.
  const page = await app.page.context().newPage()
  await page.goto(`./?quality=light${link}`)
  await page.waitForFunction(() => window.pierglass?.ready() === true)
  expect(await depthIn(page)).toBeCloseTo(66, 9)
  // Taken, it can be changed, and the one before it waits under the saved piers.
  await page.getByRole('button', { name: looking.take, exact: true }).click()
  await expect(page.getByText(words.notices['pier-set-aside'])).toBeVisible()
  await expect(parts(page).field('hole.depth')).toHaveJSProperty('readOnly', false)
  await page.close()
  await app.page.reload()
  await app.ready()
  expect(await depthIn(app.page)).toBeCloseTo(71, 9)
})

/** Times each way of leaving is tried: a word lost on leaving is lost by chance. */
const runs = 20

for (const way of ['close', 'reload', 'navigate'] as const) {
  test(`[M21] what was typed a moment before is there again: ${way}`, async ({ app, context }) => {
    let { page } = app
    await page.setViewportSize(wide)
    await app.open()
    for (let i = 0; i < runs; i++) {
      const inches = 40 + i
      // Typed, and not even entered.
      await parts(page).field('hole.depth').fill(`${inches} in`)
      if (way === 'close') {
        await page.close({ runBeforeUnload: false })
        page = await context.newPage()
        await page.setViewportSize(wide)
        await page.goto('./?quality=light')
      } else if (way === 'reload') await page.reload()
      else {
        await page.goto('about:blank')
        await page.goto('./?quality=light')
      }
      await page.waitForFunction(() => window.pierglass?.ready() === true)
      expect(await depthIn(page), `${way} ${i}`).toBeCloseTo(inches, 9)
    }
  })
}

test('[M34] a reload at ten moments of an edit loses none of it', async ({ app }) => {
  const shelf = await start(app)
  const { field, slider, pierName, undo, redo } = parts(app.page)
  const type = (inches: number) => field('hole.depth').fill(`${inches} in`)
  const enter = async (inches: number) => {
    await type(inches)
    await field('hole.depth').press('Enter')
  }
  const drag = (isLetGo: boolean) =>
    slider('hole.diameter').evaluate((input: HTMLInputElement, done) => {
      input.stepUp()
      input.dispatchEvent(new Event('input', { bubbles: true }))
      if (done) input.dispatchEvent(new Event('change', { bubbles: true }))
      return new Promise((resolve) => requestAnimationFrame(() => resolve(null)))
    }, isLetGo)
  const wide = async (): Promise<number> => Math.round((await app.spec()).hole.diameter / inch)
  const was = await wide()
  const moments: readonly (readonly [moment: string, act: () => Promise<unknown>, depth: number, more?: () => Promise<void>])[] = [
    ['typed, and not entered', () => type(41), 41],
    ['typed, and no number', () => field('hole.depth').fill('5x'), 41],
    ['just entered', () => enter(42), 42],
    ['dragged, and not let go', () => drag(false), 42, async () => expect(await wide()).toBeGreaterThan(was)],
    ['let go', () => drag(true), 42, async () => expect(await wide()).toBeGreaterThan(was + 1)],
    [
      'undone',
      () =>
        enter(43)
          .then(() => enter(44))
          .then(() => undo.click()),
      43,
    ],
    [
      'done again',
      () =>
        enter(45)
          .then(() => undo.click())
          .then(() => redo.click()),
      45,
    ],
    ['named, and not entered', () => pierName.fill('Half named'), 45, async () => expect(pierName).toHaveValue('Half named')],
    ['saving', () => shelf.open().then(() => shelf.press(texts.open.save)), 45, async () => expect(pierName).toHaveValue('Half named')],
    ['made way for another', () => app.page.getByRole('button', { name: words.actions.reset, exact: true }).click(), 48],
  ]
  for (const [moment, act, depth, more] of moments) {
    await act()
    await app.page.reload()
    await app.ready()
    expect(await depthIn(app.page), moment).toBeCloseTo(depth, 9)
    await more?.()
  }
  // The one that made way is saved, or else it waits; it is never nowhere.
  await shelf.open()
  await expect(shelf.piers.or(shelf.drafts).filter({ hasText: 'Half named' })).toHaveCount(1)
})

test('[M22] data that was cleared is missed, and a file brings it back', async ({ app, context, baseURL }) => {
  const shelf = await start(app)
  await saveAs(app, 'Kept')
  const waiting = app.page.waitForEvent('download')
  await shelf.press(texts.files.takeAll)
  const file = await (await waiting).path()
  const session = await context.newCDPSession(app.page)
  await session.send('Storage.clearDataForOrigin', { origin: new URL(baseURL ?? '').origin, storageTypes: 'indexeddb' })
  await shelf.close()
  await shelf.open()
  await expect(shelf.dialog.getByText(texts.missing(1))).toBeVisible()
  await shelf.dialog.locator('input[data-file=shelf]').setInputFiles(file)
  await expect(shelf.dialog.getByText(texts.imported(1, 0))).toBeVisible()
  await expect(shelf.piers).toHaveCount(1)
  await shelf.dialog
    .locator('input[data-file=shelf]')
    .setInputFiles({ name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') })
  await expect(shelf.dialog.getByText(texts.said['import-refused'])).toBeVisible()
  await expect(shelf.dialog.getByText(texts.issues['not-a-shelf'] ?? '')).toBeVisible()
  await expect(shelf.piers).toHaveCount(1)
})

test('[M23] markup in names and notes is text, the keyboard reaches all, and axe finds nothing serious', async ({ app }) => {
  const shelf = await start(app)
  await saveAs(app, '<img src=x onerror="document.title=1">')
  await expect(shelf.dialog.getByRole('heading', { name: '<img' }).first()).toBeVisible()
  expect(await app.page.locator('img[src="x"]').count()).toBe(0)
  expect(await seriousFindings(app.page, 'dialog.shelf')).toEqual([])
  const reached = new Set<string>()
  for (let i = 0; i < 14; i++) {
    await app.page.keyboard.press('Tab')
    reached.add(
      await app.page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? ''),
    )
  }
  for (const action of [texts.actions.open, texts.actions.copy, texts.actions.words, texts.actions.remove])
    expect(
      [...reached].some((name) => name.startsWith(`${action}:`)),
      action,
    ).toBe(true)
  await app.page.keyboard.press('Escape')
  await expect(shelf.dialog).toBeHidden()
})

test('[M35] the last copy is never dropped: the database is lost, and the note of the closed tab brings the pier back', async ({
  app,
  context,
  baseURL,
}) => {
  await start(app)
  await setDepth(app, 63)
  await saveAs(app, 'Last copy')
  await app.page.close()
  const next = await context.newPage()
  const session = await context.newCDPSession(next)
  await session.send('Storage.clearDataForOrigin', { origin: new URL(baseURL ?? '').origin, storageTypes: 'indexeddb' })
  await next.setViewportSize(wide)
  await next.goto('./?quality=light')
  await next.waitForFunction(() => window.pierglass?.ready() === true)
  // The new tab goes on with it; in another one it waits.
  expect(await depthIn(next)).toBeCloseTo(63, 9)
  const other = shelfOf(next)
  await other.open()
  await expect(other.dialog.getByText(texts.missing(1))).toBeVisible()
  await expect(other.dialog.getByText(texts.open.gone)).toBeVisible()
  await expect(other.dialog.getByText(texts.open.kept)).toBeHidden()
  await other.close()
  await next.getByRole('button', { name: words.actions.reset, exact: true }).click()
  await next.reload()
  await next.waitForFunction(() => window.pierglass?.ready() === true)
  await other.open()
  await expect(other.drafts).toHaveCount(1)
  await other.act(texts.actions.open, 'Last copy')
  await expect.poll(() => depthIn(next)).toBeCloseTo(63, 9)
  await other.open()
  await other.press(texts.open.save)
  await expect(other.saved).toBeVisible()
})

test('[M36] a file with a date beyond all bounds breaks nothing: its pier comes with a date that can be shown', async ({ app }) => {
  const shelf = await start(app)
  await saveAs(app, 'Good')
  const [good] = await records(app.page)
  const text = JSON.stringify({
    pierglassShelf: 1,
    piers: [
      { ...good, id: 'far', name: 'Far', made: 1e20, changed: 1e20, job: JSON.parse(good?.job ?? '') },
      { asFound: { ...good, id: 'found', name: 'Found', changed: 1e20 } },
    ],
  })
  const file = { name: 'far.json', mimeType: 'application/json', buffer: Buffer.from(text) }
  await shelf.dialog.locator('input[data-file=shelf]').setInputFiles(file)
  await expect(shelf.dialog.getByText(texts.imported(2, 0))).toBeVisible()
  await app.page.reload()
  await app.ready()
  await shelf.open()
  await expect(shelf.piers).toHaveCount(3)
  await expect(shelf.dialog.getByText(texts.damaged)).toBeVisible()
  const waiting = app.page.waitForEvent('download')
  await shelf.act(texts.actions.saveFound, 'Found')
  expect(readFileSync(await (await waiting).path(), 'utf8')).toContain('100000000000000000000')
})
