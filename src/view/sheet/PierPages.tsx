import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import type { PierResult } from '../../core/model/result.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { sheet as words } from '../../text/en/sheet.ts'
import { Cautions, Depths, Issues, MainNumbers, OnTheDay, Quantities, Questions, Wood } from './blocks.tsx'
import { AgainstDrawing, LoadPath, OtherChecks } from './checkBlocks.tsx'
import { Codes } from './Code.tsx'
import { Drawn } from './Drawn.tsx'
import { gap, heightsOf, largestThatFits, letterSizes, room } from './letterSize.ts'
import { type Packed, packed } from './packed.ts'
import { Paper, type PaperFacts, PaperTitle } from './Paper.tsx'

export type Figures = Readonly<{ section: string; legend: string }>
type Props = Readonly<{
  document: PierDocument
  result: PierResult
  facts: PaperFacts
  figures: Figures
  picture: string | null
  sources: ReactNode
}>

/** A list of what to order that is short enough stands on the first page, under the picture. */
const isOrderFirst = ({ result, picture }: Pick<Props, 'result' | 'picture'>): boolean => picture !== null && result.quantities.length <= 5

/** The parts that follow the drawing, in the order in which they are read. */
const partsOf = ({ result, picture, sources }: Props): readonly ReactNode[] => [
  <LoadPath key='path' result={result} />,
  <AgainstDrawing key='drawing' result={result} />,
  ...(isOrderFirst({ result, picture }) ? [] : [<Quantities key='order' result={result} />]),
  <Wood key='wood' result={result} />,
  <OtherChecks key='checks' result={result} />,
  <Depths key='depths' result={result} />,
  ...(result.issues.length > 0 ? [<Issues key='issues' result={result} />] : []),
  <OnTheDay key='day' result={result} />,
  ...(picture === null ? [] : [<Questions key='ask' results={[result]} />]),
  sources,
]

type Laid = Readonly<{ pages: Packed; letter: number; count: number }>

/** One pier on two pages: the drawing, then everything that can be said of it. */
export const PierPages = (props: Props) => {
  const { document, result, facts, figures, picture } = props
  const ruler = useRef<HTMLDivElement>(null)
  const [laid, setLaid] = useState<Laid | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: laid out anew when what is measured has changed
  useLayoutEffect(() => {
    const element = ruler.current
    if (!element) return
    const layouts = letterSizes.map((letter) => {
      element.style.setProperty('--letter', `${letter}pt`)
      const pages = packed(heightsOf(element.children), room, gap)
      return { pages, letter, count: pages.length }
    })
    setLaid(largestThatFits(layouts, 1))
  }, [result, facts, picture])
  const parts = partsOf(props)
  const count = 1 + (laid?.pages.length ?? 0)
  return (
    <>
      <div ref={ruler} className='paper-ruler' aria-hidden='true'>
        {laid === null &&
          parts.map((part, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: parts keep their places
            <div key={i}>{part}</div>
          ))}
      </div>
      {laid && (
        <>
          <Paper facts={facts} at={1} of={count} letter={8.2}>
            <div className='paper-section'>
              <Drawn svg={figures.section} />
              <Codes piers={[{ document, name: facts.name }]} />
            </div>
            <div className='paper-under'>
              <div>
                <MainNumbers result={result} />
                <Cautions />
                <Drawn svg={figures.legend} className='paper-legend' />
              </div>
              <div>
                {picture ? (
                  <figure className='paper-picture'>
                    <img src={picture} alt={words.picture} />
                    <figcaption>{words.picture}</figcaption>
                  </figure>
                ) : (
                  <Questions results={[result]} />
                )}
                {isOrderFirst(props) && <Quantities result={result} />}
                <PaperTitle facts={facts} />
              </div>
            </div>
          </Paper>
          {laid.pages.map((columns, page) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
            <Paper key={page} facts={facts} at={page + 2} of={count} letter={laid.letter}>
              <div className='paper-columns'>
                {columns.map((column) => (
                  <div key={column[0]}>{column.map((i) => parts[i])}</div>
                ))}
              </div>
            </Paper>
          ))}
        </>
      )}
    </>
  )
}
