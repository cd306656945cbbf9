import { useEffect, useState } from 'react'
import { compareStore } from '../../state/compare.ts'
import { comparedPiers, type ComparedPier } from '../../state/compareSet.ts'
import { meantResult, seenDocument, shownDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { version } from '../../../package.json'
import { comparedPictures } from '../live/comparedPictures.ts'
import { pierMark } from '../section/paper/pierMark.ts'
import type { SectionAsk, SectionPlan } from '../section/paper/sectionPlan.ts'
import type { AppState } from '../../state/appState.ts'
import { today } from '../files/handOver.ts'
import { forgetWidths, lettersReady } from '../section/typeSize.ts'
import type { ComparedFigures } from './ComparedTable.tsx'
import type { PaperFacts } from './Paper.tsx'
import type { Figures } from './PierPages.tsx'
import { barFigure, bareFigures, legendFigure, planned, plannedTogether, sectionFigure } from './sheetSection.ts'

type One = Readonly<{
  kind: 'one'
  document: SectionAsk['document']
  result: SectionAsk['result']
  figures: Figures
  picture: string | null
}>
type Several = Readonly<{ kind: 'several'; piers: readonly ComparedPier[]; figures: ComparedFigures }>
export type SheetContent = Readonly<{ facts: PaperFacts }> & (One | Several)

/** Height of the picture over its width. */
const pictureShape = 57 / 42

/** The cutaway as it is seen; null where there is none. Its address has to be given back. */
async function pictureAddress(): Promise<string | null> {
  const canvas = document.querySelector<HTMLCanvasElement>('.cutaway canvas')
  if (!canvas || canvas.clientWidth < 2) return null
  try {
    const { pictureForPaper } = await import('../scene/capturePicture.ts')
    // In the shape of its frame, so that the pier is as large in it as can be.
    const width = 640
    const taken = await pictureForPaper(width, width * pictureShape)
    return taken && URL.createObjectURL(taken)
  } catch {
    return null
  }
}

/** Width of a section beside others [mm]: of a column of the table. */
const columnOf = (count: number): number => 152 / count - 1.6

/** What goes on every page; without a drawing no scale is told. */
const paperFacts = ({ document, date, view: { units } }: SectionAsk, plan: SectionPlan | undefined, view: string): PaperFacts => ({
  name: document.name === '' ? wordsOf('app').untitled : document.name,
  date,
  mark: pierMark(document),
  view,
  scale: plan?.words.scale.replace(/^\D+ (?=\d)/, '') ?? '',
  units,
})

function ofOne(ask: SectionAsk, picture: string | null): SheetContent {
  const { document, result } = ask
  const plan = planned(ask, { width: 136, height: 84 })
  return {
    kind: 'one',
    document,
    result,
    facts: paperFacts(ask, plan, plan.words.title),
    picture,
    figures: { section: sectionFigure(plan, 'sheet-0-'), legend: legendFigure([plan], 'sheet-legend-', 180), notes: plan.words.notes },
  }
}

function ofSeveral(piers: readonly ComparedPier[], own: SectionAsk, pictures: ComparedFigures['pictures'] = null): SheetContent {
  const asks = piers.flatMap(({ pier }): SectionAsk[] => (pier ? [{ ...own, document: pier.document, result: pier.result }] : []))
  const plans = plannedTogether(asks, { width: columnOf(piers.length), height: 56 })
  const labels = asks.map(({ document }) => wordsOf('fills')[document.spec.fill.kind].label)
  const drawn = bareFigures(plans, labels, 'sheet-', columnOf(piers.length))
  let next = 0
  const sections = piers.map(({ pier }) => (pier === null ? null : (drawn[next++] ?? null)))
  const [first] = plans
  return {
    kind: 'several',
    piers,
    figures: { sections, bar: first ? barFigure(first, 60) : '', legend: legendFigure(plans, 'sheet-legend-', 114), pictures },
    facts: paperFacts(own, first, wordsOf('sheet').compared),
  }
}

const askNow = (state: AppState): SectionAsk => ({
  document: shownDocument(state),
  result: meantResult(state),
  view: state.view,
  date: today(),
  version,
})

/** The sheet of the piers that are compared now. The page's letters have to be there. */
export const comparedSheet = (): SheetContent => {
  const state = pierStore.getState()
  return ofSeveral(comparedPiers(compareStore.getState(), state.document), askNow(state))
}

/** What the sheet shows: the pier as it stands, or those that are compared. Null until letters and picture are there. */
export const useSheet = (): SheetContent | null => {
  const [content, setContent] = useState<SheetContent | null>(null)
  useEffect(() => {
    let isGone = false
    let address: string | null = null
    const make = async () => {
      const state = pierStore.getState()
      const compared = compareStore.getState()
      await lettersReady()
      forgetWidths()
      const ask = askNow(state)
      if (compared.isOpen) {
        if (!isGone) setContent(ofSeveral(comparedPiers(compared, seenDocument(state)), ask, comparedPictures()))
        return
      }
      // The picture of a pier built wrong stands beside no numbers of the one that is meant.
      address = state.view.mistakes.length > 0 ? null : await pictureAddress()
      if (isGone) {
        if (address) URL.revokeObjectURL(address)
      } else setContent(ofOne(ask, address))
    }
    void make()
    return () => {
      isGone = true
      if (address) URL.revokeObjectURL(address)
    }
  }, [])
  return content
}
