import { readFileSync } from 'node:fs'
import jsQR from 'jsqr'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import '../everyWord.ts'
import { calcJob } from '../../src/cli/calcJob.ts'
import { type App, expect } from './app.ts'

export const openSheet = async ({ page }: App): Promise<void> => {
  await page.getByRole('button', { name: 'Sheet to print' }).first().click()
  await expect(page.locator('.paper').first()).toBeVisible()
}

const notes =
  'Concrete 4500 psi at 28 days, mixed before placing. Bar through the foot, both ends in concrete. No change without a letter. '

/** An example of a pier under a drawing that it misses wherever it can, with as long a name and as many notes as there may be. */
export const underDrawing = (name: string): string => {
  const job = JSON.parse(readFileSync(`public/examples/boat-shelter-${name}.json`, 'utf8')) as {
    name: string
    pier: Record<string, unknown>
  }
  job.name = `${job.name}, third post of the north row, at the back of the lot, as it was found on the day of the first visit`.slice(0, 120)
  job.pier.callout = {
    diameter: '26 in',
    depth: '90 in',
    strength: '4500 psi',
    mixed: 'yes',
    encasement: 'yes',
    barThrough: 'yes',
    barSize: '#6',
    section: '8x8',
    treatment: 'UC4C',
    bracket: 'no',
    uplift: '6000 lb',
    frostDepth: '80 in',
    soil: 'gravel',
    tolerance: { diameter: '0 in', depth: '0 in' },
    number: 'S-102, revision C, sheet 3 of 9',
    date: '2026-08-14',
    notes: notes.repeat(40).slice(0, 4000),
  }
  return JSON.stringify(job)
}

/** Of each page on the screen: what runs over it [px], its size [mm] and its smallest letter [pt]. */
export const pagesOf = ({ page }: App) =>
  page.locator('.paper').evaluateAll((papers) =>
    papers.map((paper) => {
      const body = paper.querySelector('.paper-body')
      const style = getComputedStyle(paper)
      const letters = [...paper.querySelectorAll('*')].flatMap((element) => {
        const isWords = [...element.childNodes].some(({ nodeType, textContent }) => nodeType === 3 && textContent?.trim())
        if (!isWords || element.localName === 'title' || element.closest('.spoken')) return []
        const scale = element instanceof SVGGraphicsElement ? (element.getScreenCTM()?.a ?? 1) : 1
        return [Number.parseFloat(getComputedStyle(element).fontSize) * scale * 0.75]
      })
      return {
        over: (body?.scrollHeight ?? 0) - (body?.clientHeight ?? 0),
        wide: (body?.scrollWidth ?? 0) - Number.parseFloat(style.width),
        width: (Number.parseFloat(style.width) * 25.4) / 96,
        height: (Number.parseFloat(style.height) * 25.4) / 96,
        letter: Math.min(...letters),
      }
    }),
  )

/** Words of each page, and the page's size in points. */
export const wordsOf = async (bytes: Buffer) => {
  const pdf = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false }).promise
  const pages: { text: string; width: number; height: number }[] = []
  for (let i = 1; i <= pdf.numPages; i++) {
    const page = await pdf.getPage(i)
    const { items } = await page.getTextContent()
    const [, , width = 0, height = 0] = page.view
    pages.push({ text: items.map((item) => ('str' in item ? item.str : '')).join(' '), width, height })
  }
  return pages
}

/** Letters alone: a reader of PDF may put spaces where a line was set apart. */
export const close = (text: string): string => text.replace(/\s+/g, '')

type Said = Readonly<{ text: Readonly<{ us: string }> }>
type Numbers = Readonly<{
  headlines: readonly Said[]
  checks: readonly Readonly<{ counted: string; allowable: Said | null; demand?: Said }>[]
  quantities: readonly Readonly<{ text: Readonly<Record<'volume' | 'weight', Readonly<{ us: string }>>> }>[]
  exposure: Readonly<{ lines: readonly Said[] }>
  uplift: Readonly<{ allowable_N: number | null; text: Readonly<{ us: string }> | null }>
}>

/** Main numbers of the job as the command line writes them. */
export const calc = (job: string): string[] => {
  const { out, code } = calcJob(job)
  expect(code).toBe(0)
  const { headlines, checks, quantities, exposure, uplift } = JSON.parse(out) as Numbers
  return [
    ...headlines.map(({ text }) => text.us),
    ...checks.flatMap(({ counted, allowable, demand }) =>
      counted === 'not counted' ? [] : [allowable, demand].flatMap((one) => one?.text.us ?? []),
    ),
    // Steel is too little for cubic feet: the page writes it in cubic inches.
    ...quantities.flatMap(({ text }) => (text.volume.us.startsWith('0.00 ') ? [text.weight.us] : [text.volume.us, text.weight.us])),
    ...exposure.lines.map(({ text }) => text.us),
    ...(uplift.text === null ? [] : [uplift.text.us]),
  ]
}

/** What the code on the first page of a PDF says, read from the page as it comes out of a printer of 200 dots an inch. */
export const scanned = async (bytes: Buffer): Promise<string | undefined> => {
  const pdf = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 }).promise
  const page = await pdf.getPage(1)
  const viewport = page.getViewport({ scale: 200 / 72 })
  const factory = pdf.canvasFactory as {
    create(width: number, height: number): { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D }
  }
  const { canvas, context } = factory.create(Math.floor(viewport.width), Math.floor(viewport.height))
  await page.render({ canvas, canvasContext: context, viewport }).promise
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height)
  return jsQR(new Uint8ClampedArray(data), width, height)?.data
}
