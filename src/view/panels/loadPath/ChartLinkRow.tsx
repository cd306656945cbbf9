import { Suspense, useEffect, useId, useRef } from 'react'
import { type PullPath, holdsOf } from '../../../core/derive/report/pullPath.ts'
import { countingVerdict, markOf } from '../../../core/derive/report/verdict.ts'
import type { Fact } from '../../../core/model/fact.ts'
import { nameOf, said, verdictWords } from '../../../facts/said.ts'
import { lookFrom, openLink, pointAt } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { usePier, useUnits } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { Mark } from '../../kit/Mark.tsx'
import { Button } from '../../kit/Controls.tsx'
import { lazyPage } from '../../lazyPage.tsx'
import { LinkBar } from './LinkBar.tsx'
import type { ChartScale } from './chartScale.ts'

/** The work is long and rarely asked for. */
const FactPad = lazyPage(
  () => import('./FactPad.tsx').then((module) => module.FactPad),
  ['answers', 'drawing', 'glossary', 'loadPath', 'materials', 'reasons', 'terms', 'verifiable'],
)

type Props = Readonly<{ link: Fact; scale: ChartScale; chain: PullPath; judged: string | null }>

/** How a link counts, whether it is in use, whether it governs. What the key of the chart or the reason below says is only spoken. */
const LinkWords = ({ link, judged }: Pick<Props, 'link' | 'judged'>) => {
  const { say } = useUnits()
  const words = wordsOf('loadPath')
  const { below, governs } = wordsOf('app').answers
  const verdict = countingVerdict(link.counted ?? 'not counted')
  const place = link.link?.place
  if (place === 'bound')
    return (
      <span className='link-word'>
        <span className='mark-bound'>{words.noMoreThan(say(holdsOf(link) ?? 0, 'force'))}</span>{' '}
      </span>
    )
  return (
    <>
      {link.verdict === 'falls short' && (
        <span className='link-word'>
          <span className='mark-short'>{below[link.isEstimate ? 'estimated' : 'entered']}</span>{' '}
        </span>
      )}
      <span className='spoken'>
        <span className={`mark-${markOf(verdict)}`}>{verdictWords({ ...link, verdict })}</span>{' '}
      </span>
      {link.counted !== 'not counted' && place === 'spare' && <span className='link-word'>{words.spare} </span>}
      {link.counted !== 'not counted' && link.id === judged && <span className='link-word'>{words.byJudgement} </span>}
      {link.link?.governs && (
        <span className='link-word'>
          <span className='governs heavy'>{governs}</span>{' '}
        </span>
      )}
    </>
  )
}

/**
 * One link of the chart. Its head opens the work below it, marks its part in the cutaway and asks for a closer look; a part picked in the
 * cutaway opens it too.
 */
export const ChartLinkRow = ({ link, scale, chain, judged }: Props) => {
  const units = useUnits()
  const id = useId()
  const head = useRef<HTMLButtonElement>(null)
  const open = usePier((state) => state.view.openLink === link.id)
  const byHand = useRef(false)
  const pointing = usePointing(link.drawn, open)
  const holds = holdsOf(link)
  const { mark, why } = said(link, units)

  useEffect(() => {
    if (open && !byHand.current) head.current?.scrollIntoView?.({ block: 'nearest' })
    byHand.current = false
  }, [open])

  const toggle = () => {
    byHand.current = true
    openLink(pierStore, open ? null : link.id)
    if (open) return
    pointAt(pierStore, link.drawn[0] ?? null)
    lookFrom(pierStore, 'close-up')
  }
  return (
    <li className='link holds under-fine' data-place={link.link?.place} data-governs={link.link?.governs || undefined} {...pointing}>
      <Button ref={head} className='link-head ring-inside opens' aria-expanded={open} aria-controls={id} onClick={toggle}>
        {mark && <Mark name={mark} />}
        <span className='link-name strong'>{nameOf(link)}</span>
        <span className='link-number number strong'>{holds !== null && link.link?.place !== 'bound' ? units.say(holds, 'force') : ''}</span>
        <span className='link-bar'>
          <LinkBar link={link} scale={scale} chain={chain} />
        </span>
        <span className='link-words quiet whole-row'>
          <LinkWords link={link} judged={judged} />
          {link.counted === 'not counted' && why !== '' && <span className='block'>{why}</span>}
        </span>
      </Button>
      <div id={id} hidden={!open}>
        {open && (
          <Suspense>
            <FactPad fact={link} isInPath={chain.holds !== null} />
          </Suspense>
        )}
      </div>
    </li>
  )
}
