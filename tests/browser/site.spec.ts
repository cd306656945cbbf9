import type { Server } from 'node:http'
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import { buildSite, servePages } from '../bench/gpuPages.ts'
import type { SiteReading } from '../bench/site/main.tsx'

/** The page of a site with many piers is of the tests alone: it is built and served here. */
const folder = fileURLToPath(new URL('../../node_modules/.cache/site-page', import.meta.url))
let server: Server
let address = ''

test.beforeAll(async () => {
  await buildSite(folder)
  ;({ server, address } = await servePages(folder))
})
test.afterAll(() => server.close())

test.use({ viewport: { width: 480, height: 320 } })

test('[V17] forty piers are as many draws, buffers, textures and programs as one of each kind, through edits and to the end', async ({
  page,
}) => {
  const read = async (): Promise<SiteReading> => {
    const reading = await page.evaluate(() => {
      // The first frame after a change draws its shadows too.
      for (let i = 0; i < 2; i++) window.site?.draw()
      return window.site?.read() ?? null
    })
    if (reading === null) throw new Error('there is no picture')
    return reading
  }
  const held = ({ geometries, textures, programs }: SiteReading) => ({ geometries, textures, programs })
  await page.goto(`${address}/?piers=1`)
  await page.waitForFunction(() => (window.site?.read()?.frames ?? 0) > 0)
  const one = await read()
  await page.evaluate(() => window.site?.show(7))
  const seven = await read()
  await page.evaluate(() => window.site?.show(40))
  const forty = await read()
  test.info().annotations.push({ type: 'one, seven and forty piers', description: JSON.stringify({ one, seven, forty }) })
  // Seven have all materials there are: the others add none, and no draw.
  expect(forty.draws).toBe(seven.draws)
  expect(held(forty)).toEqual(held(seven))
  expect(forty.draws).toBeLessThan(2.5 * one.draws)
  expect(forty.triangles).toBeGreaterThan(10 * one.triangles)
  await page.evaluate(() => {
    for (let i = 0; i < 200; i++) {
      window.site?.edit(i % 40, (5 * i) % 12)
      if (i % 50 === 0) window.site?.draw()
    }
  })
  await expect.poll(async () => held(await read())).toEqual(held(forty))
  await page.evaluate(() => window.site?.show(1))
  await expect.poll(async () => held(await read())).toEqual(held(one))
  await page.evaluate(() => window.site?.leave())
  await expect.poll(() => page.evaluate(() => window.site?.read())).toMatchObject({ geometries: 0, textures: 0 })
})
