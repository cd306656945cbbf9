import letterAddress from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?url'
import { fileName } from '../../export/fileName.ts'
import { meantResult, shownDocument } from '../../state/derived.ts'
import { forgetWidths, lettersReady } from '../section/typeSize.ts'
import type { FileWish } from './fileWish.ts'
import type { MadeFile } from '../files/handOver.ts'
import { inBase64 } from '../files/inBase64.ts'
import { sectionFlat } from '../section/paper/sectionFlat.ts'
import { sectionPlan, type SectionPlan } from '../section/paper/sectionPlan.ts'
import { sheetSvg } from '../section/paper/sheetSvg.ts'

/** The page's own letter, to go into a drawing; null when it can't be had, and the drawing does without. */
export const pageLetter = async (): Promise<string | null> => {
  try {
    const answer = await fetch(letterAddress)
    return answer.ok ? inBase64(new Uint8Array(await answer.arrayBuffer())) : null
  } catch {
    return null
  }
}

/** Words are measured with the page's letter, so it has to be there first. */
export const plannedSection = async ({ state, date, version }: FileWish): Promise<SectionPlan> => {
  await lettersReady()
  forgetWidths()
  return sectionPlan({ document: shownDocument(state), result: meantResult(state), view: state.view, date, version })
}

export const makeSvg = async (wish: FileWish): Promise<MadeFile> => {
  const svg = sheetSvg(await plannedSection(wish), await pageLetter())
  return { name: fileName(shownDocument(wish.state).name, 'section', 'svg'), blob: new Blob([svg], { type: 'image/svg+xml' }) }
}

export const makeDxf = async (wish: FileWish): Promise<MadeFile> => {
  const { dxfFile } = await import('../../export/drawing/dxf.ts')
  const { view } = wish.state
  const flat = sectionFlat(await plannedSection(wish), meantResult(wish.state), { cutPost: view.cutPost, soil: view.layers.soil })
  const text = dxfFile(flat, view.units)
  return { name: fileName(shownDocument(wish.state).name, 'section', 'dxf'), blob: new Blob([text], { type: 'image/vnd.dxf' }) }
}
