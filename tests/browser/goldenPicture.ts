import type { Page } from '@playwright/test'

/** A point of two pictures differs when a colour is off by more than this, of 255. */
const tolerance = 12
/** Levels of red from part to part in a picture of outlines; no part is 0. */
const step = 8

/** What differs between two pictures: the share of all points, and of the points inside each part's outline, in the order of the parts. */
export type Difference = Readonly<{ whole: number; parts: readonly number[] }>

/** Puts what reads pixels into the page: works there on names `window.readPoints`. */
const giveReader = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const read = async (base64: string): Promise<ImageData> => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
      const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
      const context = new OffscreenCanvas(image.width, image.height).getContext('2d')
      if (!context) throw new Error('no canvas to read a picture with')
      context.drawImage(image, 0, 0)
      return context.getImageData(0, 0, image.width, image.height)
    }
    Object.assign(window, { readPoints: read })
  })

type Reader = Readonly<{ readPoints(base64: string): Promise<ImageData> }>

/** Compares two pictures of one size. `outlines` says which part is seen at each point, as `outlinesOf` writes it. */
export const differenceOf = async (page: Page, seen: Buffer, kept: Buffer, outlines: Buffer): Promise<Difference> => {
  await giveReader(page)
  return page.evaluate(
    async (given) => {
      const { readPoints } = window as unknown as Reader
      const [a, b, of] = await Promise.all([readPoints(given.seen), readPoints(given.kept), readPoints(given.outlines)])
      if (a.width !== b.width || a.height !== b.height) return { whole: 1, parts: [1] }
      const inside: number[] = []
      const off: number[] = []
      let all = 0
      for (let i = 0; i < a.data.length; i += 4) {
        const part = Math.round((of.data[i] ?? 0) / given.step)
        inside[part] = (inside[part] ?? 0) + 1
        if (![0, 1, 2].some((k) => Math.abs((a.data[i + k] ?? 0) - (b.data[i + k] ?? 0)) > given.tolerance)) continue
        all++
        off[part] = (off[part] ?? 0) + 1
      }
      const parts = Array.from(inside, (count, part) => (count ? (off[part] ?? 0) / count : 0)).slice(1)
      return { whole: (4 * all) / a.data.length, parts }
    },
    { seen: seen.toString('base64'), kept: kept.toString('base64'), outlines: outlines.toString('base64'), tolerance, step },
  )
}

/** The parts in flat tones: a part is seen where lighting it up changes the picture. `lit` holds a picture for each part in turn. */
export const outlinesOf = async (page: Page, plain: Buffer, lit: readonly Buffer[]): Promise<Buffer> => {
  await giveReader(page)
  const made = await page.evaluate(
    async (given) => {
      const { readPoints } = window as unknown as Reader
      const base = await readPoints(given.plain)
      const out = new ImageData(base.width, base.height)
      for (let i = 3; i < out.data.length; i += 4) out.data[i] = 255
      for (const [n, picture] of given.lit.entries()) {
        const { data } = await readPoints(picture)
        for (let i = 0; i < data.length; i += 4)
          if ([0, 1, 2].some((k) => Math.abs((data[i + k] ?? 0) - (base.data[i + k] ?? 0)) > 3)) out.data[i] = given.step * (n + 1)
      }
      const canvas = document.createElement('canvas')
      canvas.width = base.width
      canvas.height = base.height
      canvas.getContext('2d')?.putImageData(out, 0, 0)
      return canvas.toDataURL('image/png').replace(/^[^,]*,/, '')
    },
    { plain: plain.toString('base64'), lit: lit.map((picture) => picture.toString('base64')), step },
  )
  return Buffer.from(made, 'base64')
}
