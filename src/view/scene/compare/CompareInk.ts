import type { Cut } from '../../../core/model/solid.ts'
import type { PierResult } from '../../../core/model/result.ts'
import type { Theme } from '../../../state/appState.ts'
import { annotate, type Annotated, type Say } from '../../section/annotate.ts'
import { columnTally } from '../../section/tallyRoom.ts'
import { typeSize } from '../../section/typeSize.ts'
import { drawWet } from '../../section/wetInk.ts'
import type { Frame } from '../camera/lens.ts'
import type { PierExtent } from '../camera/pierExtent.ts'
import { InkPainter } from '../overlay/InkPainter.ts'
import { facesOf, sightOf } from '../overlay/obstacles.ts'

/** Only what wets the wood: the columns are too narrow for names and lengths, which stand above and below them. */
const layers = { soil: true, labels: false, dimensions: false, water: false, frost: false, wetness: true } as const
/** No length is written here. */
const silent: Say = { length: () => '', slope: () => '' }
const noColumns = { left: 0, right: 0, top: 0, bottom: 0, taken: { left: [], right: [] } } as const

type Column = { readonly svg: SVGSVGElement; readonly painter: InkPainter; last: Annotated | null }
export type InkedPier = Readonly<{ result: PierResult; extent: PierExtent }>

/** The way of rain, the gap and the zone to watch over each column of the comparison. */
export class CompareInk {
  private readonly columns: Column[] = []

  constructor(private readonly holder: HTMLElement) {}

  /** Lays the ink of every column anew; while the picture moves words keep their places. Null for a column that stays bare. */
  draw(piers: readonly (InkedPier | null)[], frame: Frame, cut: Cut, theme: Theme, isMoving: boolean): void {
    while (this.columns.length < piers.length) this.columns.push(this.addColumn())
    for (const { svg } of this.columns.splice(piers.length)) svg.remove()
    const { width, height } = frame.viewport
    for (const [i, column] of this.columns.entries()) {
      const pier = piers[i] ?? null
      Object.assign(column.svg.style, { position: 'absolute', left: `${i * width}px`, width: `${width}px`, height: `${height}px` })
      const isSeen = pier !== null && facesOf(cut) !== null
      column.svg.style.visibility = isSeen ? '' : 'hidden'
      if (isSeen) this.lay(column, pier, frame, cut, theme, isMoving)
    }
  }

  clear(): void {
    for (const { svg } of this.columns.splice(0)) svg.remove()
  }

  private addColumn(): Column {
    const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg')
    this.holder.append(svg)
    return { svg, painter: new InkPainter(svg), last: null }
  }

  private lay(column: Column, { result, extent }: InkedPier, frame: Frame, cut: Cut, theme: Theme, isMoving: boolean): void {
    const { width, height } = frame.viewport
    const size = typeSize(theme, true)
    column.last = annotate({
      result,
      sight: { ...sightOf(frame, cut, extent, result.spec.hole.diameter / 2), isFlat: false },
      layers,
      drawWet,
      say: silent,
      size,
      isNarrow: true,
      wishes: [],
      columns: noColumns,
      sides: new Map(),
      bounds: { x: 4, y: 4, width: width - 8, height: height - columnTally - 4 },
      isInYears: true,
      kept: isMoving ? column.last : null,
    })
    column.painter.paint(column.last.ink, size)
  }
}
