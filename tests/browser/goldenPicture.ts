import type { Page } from '@playwright/test'
import type { Triple } from '../seenColours.ts'

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

/** Two parts that are seen side by side, and the colours on either side of each place where a border is crossed, in linear light. */
export type Border = Readonly<{ parts: readonly [number, number]; crossings: readonly (readonly [Triple, Triple])[] }>

/**
 * The borders between parts, along rows and columns: colours are read 5 to 14 points from a border on each side, past the lines that
 * are drawn on it.
 */
export const bordersOf = async (page: Page, picture: Buffer, outlines: Buffer): Promise<readonly Border[]> => {
  await giveReader(page)
  return page.evaluate(
    async (given) => {
      const { readPoints } = window as unknown as Reader
      const [seen, of] = await Promise.all([readPoints(given.picture), readPoints(given.outlines)])
      const { width, height } = seen
      const light = Array.from({ length: 256 }, (_, k) => (k / 255 <= 0.04045 ? k / 255 / 12.92 : ((k / 255 + 0.055) / 1.055) ** 2.4))
      const found = new Map<string, { parts: [number, number]; crossings: [Triple, Triple][] }>()
      const [from, to] = [5, 14]
      const walk = (count: number, at: (i: number) => number): void => {
        const part = (i: number): number => Math.round((of.data[4 * at(i)] ?? 0) / given.step)
        const mean = (i: number, way: number): Triple => {
          const sum = [0, 0, 0]
          for (let k = from; k < to; k++)
            for (let c = 0; c < 3; c++) sum[c] = (sum[c] ?? 0) + (light[seen.data[4 * at(i + way * k) + c] ?? 0] ?? 0) / (to - from)
          return sum as unknown as Triple
        }
        for (let i = to; i + to < count; i++) {
          const [a, b] = [part(i), part(i + 1)]
          if (a === b || a === 0 || b === 0) continue
          const isWide = Array.from({ length: to }, (_, k) => part(i - k) === a && part(i + 1 + k) === b).every(Boolean)
          if (!isWide) continue
          const border = found.get(`${a} ${b}`) ?? { parts: [a, b], crossings: [] }
          found.set(`${a} ${b}`, border)
          border.crossings.push([mean(i, -1), mean(i + 1, 1)])
        }
      }
      for (let y = 0; y < height; y++) walk(width, (x) => y * width + x)
      for (let x = 0; x < width; x++) walk(height, (y) => y * width + x)
      return [...found.values()]
    },
    { picture: picture.toString('base64'), outlines: outlines.toString('base64'), step },
  )
}
