import { Suspense, useEffect, useId, useRef } from 'react'
import { lookFrom, openLink, pointAt } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { usePier } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { answerWords } from '../answers/words.ts'
import { Mark } from '../Mark.tsx'
import { Bar } from './Bar.tsx'
import type { ChainView, ChartLink } from './chainView.ts'
import type { ChartScale } from './chartScale.ts'
import { linkMark, linkWords, whyNot } from './linkWords.ts'
import { lazyPage } from '../../lazyPage.tsx'

/** The work is long and rarely asked for. */
const LinkPad = lazyPage(
  () => import('./LinkPad.tsx').then((module) => module.LinkPad),
  ['answers', 'glossary', 'loadPath', 'reasons', 'terms', 'verifiable'],
)

type Props = Readonly<{ link: ChartLink; scale: ChartScale; chain: ChainView; judged: string | null }>

/**
 * One link of the chart. Its head opens the work below it, marks its part in the cutaway and asks for a closer look; a part picked in the
 * cutaway opens it too.
 */
export const ChartLinkRow = ({ link, scale, chain, judged }: Props) => {
  const { check } = link
  const { say } = useUnits()
  const id = useId()
  const head = useRef<HTMLButtonElement>(null)
  const open = usePier((state) => state.view.openLink === check.id)
  const byHand = useRef(false)
  const pointing = usePointing(check.where, open)
  const why = whyNot(link)

  useEffect(() => {
    if (open && !byHand.current) head.current?.scrollIntoView?.({ block: 'nearest' })
    byHand.current = false
  }, [open])

  const toggle = () => {
    byHand.current = true
    openLink(pierStore, open ? null : check.id)
    if (open) return
    pointAt(pierStore, check.where[0] ?? null)
    lookFrom(pierStore, 'close-up')
  }
  return (
    <li className='link' data-place={link.place} data-governs={link.governs || undefined} {...pointing}>
      <button ref={head} type='button' className='link-head' aria-expanded={open} aria-controls={id} onClick={toggle}>
        <Mark name={linkMark(link)} />
        <span className='link-name'>{answerWords(check.id).label}</span>
        <span className='link-number'>{link.holds !== null && link.place !== 'bound' ? say(link.holds, 'force') : ''}</span>
        <span className='link-bar'>
          <Bar link={link} scale={scale} chain={chain} />
        </span>
        <span className='link-words'>
          {linkWords(link, chain, judged, say).map((word) => (
            <span key={word.text} className={word.isQuiet ? 'spoken' : 'link-word'}>
              <span className={word.tone === 'governs' ? 'governs' : word.tone && `mark-${word.tone}`}>{word.text}</span>{' '}
            </span>
          ))}
          {why !== '' && <span className='link-why'>{why}</span>}
        </span>
      </button>
      <div id={id} className='link-pad' hidden={!open}>
        {open && (
          <Suspense>
            <LinkPad check={check} isInPath={chain.allowable !== null} />
          </Suspense>
        )}
      </div>
    </li>
  )
}
