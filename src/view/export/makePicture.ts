import { fileName } from '../../export/fileName.ts'
import type { Layer } from '../../state/appState.ts'
import { shownDocument } from '../../state/derived.ts'
import { wordsOf } from '../../words/index.ts'
import { family } from '../section/typeSize.ts'
import type { FileWish } from './fileWish.ts'
import type { MadeFile } from '../files/handOver.ts'
import { pageLetter, plannedSection } from './makeDrawing.ts'
import { overlaySvg } from './overlaySvg.ts'
import { ink } from '../section/paper/sectionSvg.ts'
import { bareSvg } from '../section/paper/sheetSvg.ts'

/** Browsers draw nothing on a canvas beyond this many pixels. */
const mostPixels = 16_777_216

type Size = Readonly<{ width: number; height: number }>

/** As wide as asked, in the shape of `shape`; smaller where a browser could not draw it. */
const sized = (width: number, shape: Size): Size => {
  const height = (width * shape.height) / shape.width
  const shrink = Math.min(1, Math.sqrt(mostPixels / (width * height)))
  return { width: Math.floor(width * shrink), height: Math.floor(height * shrink) }
}

/**
 * The cutaway as it is seen, or the drawn section where there is none, at the width asked for, with or without its words.
 * Rejects when the browser makes no file, or an empty one.
 */
export const makePng = async (wish: FileWish): Promise<MadeFile> => {
  const blob = (await cutaway(wish)) ?? (await section(wish))
  return { name: fileName(shownDocument(wish.state).name, 'picture', 'png'), blob }
}

/** Null when no 3D picture stands. */
async function cutaway({ choices }: FileWish): Promise<Blob | null> {
  const canvas = document.querySelector<HTMLCanvasElement>('.cutaway canvas')
  if (!canvas || canvas.clientWidth < 2) return null
  const shape = { width: canvas.clientWidth, height: canvas.clientHeight }
  const size = sized(choices.width, shape)
  const overlay = document.querySelector<SVGSVGElement>('.overlay svg')
  // Taken before the capture, which makes the overlay lay itself out anew.
  const words = choices.withWords && overlay ? overlaySvg(overlay, shape, await pageLetter()) : null
  const { capturePicture } = await import('../scene/capturePicture.ts')
  const taken = await capturePicture(size.width, size.height)
  if (!taken) return null
  const picture = await createImageBitmap(taken)
  const layers = [picture, ...(words === null ? [] : [await drawable(words)])]
  return painted({ width: picture.width, height: picture.height }, layers, choices.withWords ? picture.width / shape.width : null)
}

async function section(wish: FileWish): Promise<Blob> {
  const { state, choices } = wish
  const layers: Record<Layer, boolean> = choices.withWords ? state.view.layers : { ...state.view.layers, labels: false, dimensions: false }
  const plan = await plannedSection({ ...wish, state: { ...state, view: { ...state.view, layers } } })
  const size = sized(choices.width, plan.size)
  const scale = choices.withWords ? size.width / plan.size.width : null
  return painted(size, [await drawable(bareSvg(plan, await pageLetter()))], scale)
}

/** An SVG as something a canvas can draw. */
async function drawable(svg: string): Promise<HTMLImageElement> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }))
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    return image
  } finally {
    URL.revokeObjectURL(address)
  }
}

/** The layers one over another, and with words, at `scale` pixels to one of the page, the caution that goes with every number. */
async function painted({ width, height }: Size, layers: readonly CanvasImageSource[], scale: number | null): Promise<Blob> {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  try {
    const context = canvas.getContext('2d')
    if (!context) throw new Error('makePng: no canvas')
    for (const layer of layers) context.drawImage(layer, 0, 0, width, height)
    if (scale !== null) writeCaution(context, { width, height }, scale)
    if (isBlank(canvas)) throw new Error('makePng: the picture came out blank')
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'))
    if (!blob) throw new Error('makePng: the browser made no file')
    return blob
  } finally {
    // Some browsers keep the memory until the canvas is small.
    canvas.width = 0
  }
}

/** On a plate at the lower edge, small enough to fit. */
function writeCaution(context: CanvasRenderingContext2D, { width, height }: Size, scale: number): void {
  const { caution } = wordsOf('takeAlong').sheet
  const [margin, pad] = [8 * scale, 5 * scale]
  const room = width - 2 * margin - 2 * pad
  const letter = (size: number): void => {
    context.font = `500 ${size}px ${family}`
  }
  letter(13 * scale)
  const size = 13 * scale * Math.min(1, room / context.measureText(caution).width)
  letter(size)
  const plate = { width: context.measureText(caution).width + 2 * pad, height: size * 1.25 + 2 * pad }
  context.fillStyle = '#ffffff'
  context.fillRect(margin, height - margin - plate.height, plate.width, plate.height)
  context.fillStyle = ink
  context.fillText(caution, margin + pad, height - margin - pad - size * 0.3)
}

const sample = 48

/** One colour all over, or nothing at all. */
function isBlank(canvas: HTMLCanvasElement): boolean {
  const small = document.createElement('canvas')
  small.width = sample
  small.height = sample
  const context = small.getContext('2d')
  if (!context) return false
  context.drawImage(canvas, 0, 0, sample, sample)
  const { data } = context.getImageData(0, 0, sample, sample)
  let [low, high] = [255, 0]
  for (let i = 0; i < data.length; i += 4) {
    const light = ((data[i] ?? 0) + (data[i + 1] ?? 0) + (data[i + 2] ?? 0)) / 3
    low = Math.min(low, light)
    high = Math.max(high, light)
  }
  return high - low < 8
}
