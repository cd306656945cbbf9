import { fileName } from '../../export/fileName.ts'
import type { SolidAnswer, SolidAsk } from '../../export/solid/solidAsk.ts'
import { solidParts } from '../../export/solid/solidParts.ts'
import { meantResult, shownDocument } from '../../state/derived.ts'
import { wordsOf } from '../../words/index.ts'
import type { Role } from '../../core/model/solid.ts'
import type { FileWish } from './fileWish.ts'
import type { MadeFile } from '../files/handOver.ts'

const titleOf = ({ state }: FileWish): string => shownDocument(state).name || wordsOf('app').untitled
const materialNames = () =>
  Object.fromEntries(Object.entries(wordsOf('materials').roles).map(([role, { label }]) => [role, label])) as Record<Role, string>

/** Ground and pier, cut as the picture is. */
export const makeGlb = async (wish: FileWish): Promise<MadeFile> => {
  const { glbFile } = await import('../../export/solid/glb.ts')
  const { state, date, version } = wish
  const { view } = state
  const zoneNames: Readonly<Record<string, string>> = wordsOf('zones')
  const native = new Set(['topsoil', 'soil', 'soil-lower'])
  const bytes = await glbFile({
    zones: meantResult(state).zones.filter(({ role }) => view.layers.soil || !native.has(role)),
    cut: view.cut,
    cutPost: view.cutPost,
    nameOf: ({ label }) => zoneNames[label] ?? label,
    title: titleOf(wish),
    generator: `${wordsOf('app').name} ${version}`,
    notes: { date, caution: wordsOf('takeAlong').sheet.caution },
  })
  return { name: fileName(shownDocument(state).name, 'pier', 'glb'), blob: new Blob([bytes], { type: 'model/gltf-binary' }) }
}

/** A file that takes longer than this will not come [ms]. */
const patience = 60_000

/** One worker for one file: what it loaded goes with it. */
const askWorker = (ask: SolidAsk): Promise<Uint8Array<ArrayBuffer>> =>
  new Promise<Uint8Array<ArrayBuffer>>((resolve, reject) => {
    const worker = new Worker(new URL('../../export/solid/solidWorker.ts', import.meta.url), { type: 'module' })
    const end = (act: () => void): void => {
      clearTimeout(timer)
      worker.terminate()
      act()
    }
    const timer = setTimeout(() => end(() => reject(new Error('the worker did not answer'))), patience)
    worker.onerror = (event) => {
      event.preventDefault()
      end(() => reject(new Error(event.message || 'the worker did not start')))
    }
    worker.onmessage = ({ data }: MessageEvent<SolidAnswer>) => end(() => (data.ok ? resolve(data.bytes) : reject(new Error(data.why))))
    worker.postMessage(ask)
  })

const makeSolid = async (wish: FileWish, format: SolidAsk['format'], type: string): Promise<MadeFile> => {
  const { state, choices, version } = wish
  const title = titleOf(wish)
  const bytes = await askWorker({
    format,
    parts: solidParts(meantResult(state).zones),
    withPost: choices.withPost,
    scale: choices.scale,
    names: materialNames(),
    words: { title, description: wordsOf('takeAlong').model.head(title, choices.scale), application: `${wordsOf('app').name} ${version}` },
  })
  return { name: fileName(shownDocument(state).name, 'pier', format), blob: new Blob([bytes], { type }) }
}

export const makeStl = (wish: FileWish): Promise<MadeFile> => makeSolid(wish, 'stl', 'model/stl')
export const makeThreeMf = (wish: FileWish): Promise<MadeFile> => makeSolid(wish, '3mf', 'model/3mf')
