import { app as words } from '../../src/words/en/app.ts'
import { expect, test } from './app.ts'
import { parts } from './names.ts'

test('[R8] without WebGL2 the drawn section and every number are there, with a plain notice', async ({ app }) => {
  await app.page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return /webgl/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest])
    } as typeof real
  })
  await app.open()
  await expect(app.page.getByText(words.notices['no-webgl'])).toBeVisible()
  await expect(parts(app.page).headlines).toContainText(/\d/)
  const section = app.page.getByRole('img', { name: /section/i }).first()
  await expect(section).toBeVisible()
  const before = await section.innerHTML()
  await app.enter(parts(app.page).field('hole.diameter'), '26 in')
  await expect.poll(() => section.innerHTML()).not.toBe(before)
  expect(await app.read('rendererInfo')).toBeNull()
})
