import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import type { PierResult } from '../../core/model/result.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import { factsAbout } from '../../state/derived.ts'
import { wordsOf } from '../../words/index.ts'
import { StatusLine } from '../kit/StatusLine.tsx'
import { Block, Cautions, Issues, OnTheDay, Questions } from './blocks.tsx'
import { DrawingBlock, PathBlock, NumbersBlock, ChecksBlock, OrderBlock, WoodBlock } from './factBlocks.tsx'
import { CodeWords, OneCode } from './Code.tsx'
import { SvgDrawing } from './SvgDrawing.tsx'
import { gap, heightsOf, largestThatFits, letterSizes, room } from './letterSize.ts'
import { packed } from './packed.ts'
import { Paper, PaperColumns, type PaperFacts, PaperTitle, Ruled } from './Paper.tsx'
import { shared } from './shared.ts'

export type Figures = Readonly<{ section: string; legend: string; notes: readonly string[] }>
type Props = Readonly<{
  document: PierDocument
  result: PierResult
  facts: PaperFacts
  figures: Figures
  picture: string | null
  sources: ReactNode
}>

/** The parts under and after the drawing, in the order in which they are read. */
const partsOf = ({ result }: Props): readonly ReactNode[] => [
  <NumbersBlock key='numbers' result={result} />,
  <Cautions key='cautions' />,
  <OrderBlock key='order' result={result} />,
  <Questions key='ask' results={[result]} />,
  <PathBlock key='path' result={result} />,
  <WoodBlock key='wood' result={result} />,
  ...(result.issues.length > 0 ? [<Issues key='issues' result={result} />] : []),
  <DrawingBlock key='drawing' result={result} />,
  <ChecksBlock key='checks' result={result} />,
  <OnTheDay key='day' result={result} />,
]

/** The section, the pier as it was seen, its code, and what the marks mean. */
const Top = ({ document, result, facts, figures, picture }: Props) => {
  const words = wordsOf('sheet')
  return (
    <div className='paper-top'>
      <StatusLine facts={factsAbout(result)} />
      <div className='paper-section'>
        <SvgDrawing svg={figures.section} />
        <div className='paper-aside'>
          {picture && (
            <figure className='paper-picture'>
              <div>
                <img className='fills' src={picture} alt={words.picture} />
              </div>
              <figcaption className='quiet'>{words.picture}</figcaption>
            </figure>
          )}
          <Block title={words.code.title}>
            <OneCode document={document} name={facts.name} />
            {picture === null && <CodeWords />}
          </Block>
        </div>
      </div>
      <SvgDrawing svg={figures.legend} />
      <p className='quiet'>
        <b>{wordsOf('takeAlong').sheet.notes}:</b> {figures.notes.join(' ')}
      </p>
      {picture && (
        <p>
          <b>{words.code.title}:</b> <CodeWords />
        </p>
      )}
    </div>
  )
}

type Columns = readonly (readonly number[])[]
type Laid = Readonly<{ pages: readonly Columns[]; letter: number; count: number }>

/** Two columns under the drawing, then two over the sources; further pages only for what these can't hold. */
function layOut(element: HTMLElement, letter: number): Laid {
  element.style.setProperty('--letter', `${letter}pt`)
  const [top = 0, title = 0, sources = 0] = heightsOf(element.querySelectorAll('[data-ruler="top"] > *'))
  const heights = heightsOf(element.querySelector('[data-ruler="parts"]')?.children ?? [])
  const under = room - top - title - 2 * gap
  const over = room - sources - gap
  const rooms = [under, under, over, over]
  // The cautions stand with the main numbers wherever they can.
  const fitting = shared(heights, rooms, gap, 2) ?? shared(heights, rooms, gap)
  if (fitting) return { pages: [fitting.slice(0, 2), fitting.slice(2)], letter, count: 2 }
  const first = heights.findIndex((_, i) => shared(heights.slice(0, i + 1), [under, under], gap) === null)
  const begun = shared(heights.slice(0, first), [under, under], gap) ?? [[], []]
  const rest = packed(heights.slice(first), over, gap).map((columns) => columns.map((column) => column.map((i) => i + first)))
  return { pages: [begun, ...rest], letter, count: 1 + rest.length }
}

/** One pier on two pages: the drawing, then everything that can be said of it. */
export const PierPages = (props: Props) => {
  const { result, facts, picture, sources } = props
  const ruler = useRef<HTMLDivElement>(null)
  const [laid, setLaid] = useState<Laid | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: laid out anew when what is measured has changed
  useLayoutEffect(() => {
    const element = ruler.current
    if (element)
      setLaid(
        largestThatFits(
          letterSizes.map((letter) => layOut(element, letter)),
          2,
        ),
      )
  }, [result, facts, picture])
  const parts = partsOf(props)
  if (laid === null)
    return (
      <div ref={ruler} className='paper-ruler' aria-hidden='true'>
        <div data-ruler='top'>
          <Top {...props} />
          <PaperTitle facts={facts} />
          {sources}
        </div>
        <Ruled name='parts' parts={parts} />
      </div>
    )
  return laid.pages.map((columns, page) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a page is its place
    <Paper key={page} facts={facts} at={page + 1} of={laid.count} letter={laid.letter}>
      {page === 0 && <Top {...props} />}
      <PaperColumns columns={columns} parts={parts} />
      {page === 0 && <PaperTitle facts={facts} />}
      {page === laid.pages.length - 1 && sources}
    </Paper>
  ))
}
