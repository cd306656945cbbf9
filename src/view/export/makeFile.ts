import { version } from '../../../package.json'
import type { AppState } from '../../state/appState.ts'
import type { FileChoices, FileId, FileWish } from './fileWish.ts'
import { type MadeFile, today } from '../files/handOver.ts'
import { withWords } from '../../words/index.ts'

type Maker = (wish: FileWish) => Promise<MadeFile>

/** Each maker comes in a chunk of its own, with the library that it needs, when it is first asked for. */
const makers: Readonly<Record<FileId, () => Promise<Maker>>> = {
  svg: async () => (await withWords(() => import('./makeDrawing.ts'), ['takeAlong'])).makeSvg,
  dxf: async () => (await withWords(() => import('./makeDrawing.ts'), ['takeAlong'])).makeDxf,
  glb: async () => (await withWords(() => import('./makeModel.ts'), ['materials', 'takeAlong'])).makeGlb,
  stl: async () => (await withWords(() => import('./makeModel.ts'), ['materials', 'takeAlong'])).makeStl,
  threeMf: async () => (await withWords(() => import('./makeModel.ts'), ['materials', 'takeAlong'])).makeThreeMf,
  png: async () => (await withWords(() => import('./makePicture.ts'), ['takeAlong'])).makePng,
  csv: async () =>
    (await withWords(() => import('./makeNumbers.ts'), ['answers', 'drawing', 'loads', 'materials', 'moisture', 'moved', 'reasons']))
      .makeCsv,
  json: async () =>
    (await withWords(() => import('./makeNumbers.ts'), ['answers', 'drawing', 'loads', 'materials', 'moisture', 'moved', 'reasons']))
      .makeJson,
}

/** Makes one file from the pier as it stands. Rejects when the browser can't. */
export const makeFile = async (id: FileId, state: AppState, choices: FileChoices): Promise<MadeFile> => {
  const make = await makers[id]()
  return make({ state, choices, date: today(), version })
}
