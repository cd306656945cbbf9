import { Fragment, Suspense, useId, useState } from 'react'
import type { Check } from '../../../core/model/worked.ts'
import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { usePointing } from '../../hooks/usePointing.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { EstimateMark } from '../loadPath/EstimateMark.tsx'
import { Mark } from '../Mark.tsx'
import { answerWords, verdictOf } from './words.ts'
import { lazyPage } from '../../lazyPage.tsx'
import './checks.css'

const LinkPad = lazyPage(
  () => import('../loadPath/LinkPad.tsx').then((module) => module.LinkPad),
  ['answers', 'glossary', 'loadPath', 'reasons', 'terms', 'verifiable'],
)
const choiceWord = (path: string, choice: string): string => wordsOf('choices')[path]?.[choice] ?? choice

/** What is asked and what is there, as numbers or as the choices of a field. */
const useSides = (check: Check): readonly [asked: string, there: string] => {
  const { say } = useUnits()
  if (check.choice) return [choiceWord(check.choice.path, check.choice.asked), choiceWord(check.choice.path, check.choice.is)]
  const side = (one: Check['demand'] | null) => (one ? say(one.value, one.quantity) : '')
  return [side(check.demand), check.counted === 'not counted' ? '' : side(check.allowable)]
}

const CheckLines = ({ check, isEstimate }: { check: Check; isEstimate: boolean }) => {
  const id = useId()
  const [open, setOpen] = useState(false)
  const pointing = usePointing(check.where, open)
  const [asked, there] = useSides(check)
  const { mark, word } = verdictOf(check)
  const { label, plain } = answerWords(check.id)
  return (
    <tbody className='row check-row' {...pointing}>
      <tr>
        <th scope='row'>
          <button type='button' className='check-head' aria-expanded={open} aria-controls={id} onClick={() => setOpen(!open)}>
            <Mark name={mark} />
            <span>{label}</span>
          </button>
        </th>
        <td className='number'>{asked}</td>
        <td className='number'>{there}</td>
        <td className='number'>{check.ratio === undefined ? '' : check.ratio.toFixed(2)}</td>
      </tr>
      <tr>
        <td colSpan={4} className='check-says'>
          <span className={`mark-${mark}`}>{word}.</span> <EstimateMark shown={isEstimate} /> {plain}
        </td>
      </tr>
      <tr hidden={!open}>
        <td colSpan={4} id={id} className='check-work'>
          {open && (
            <Suspense>
              <LinkPad check={check} />
            </Suspense>
          )}
        </td>
      </tr>
    </tbody>
  )
}

/** In the order in which people ask: does it sink, does it lean, does frost lift it, and the details. */
const groups: readonly Check['group'][] = ['bearing', 'lateral', 'frost', 'detail']
/** Groups that hold a load against the pier, which may be an estimate. */
const ofLoads: readonly Check['group'][] = ['bearing', 'lateral']

/** Checks that are not about uplift, but for those that stand beside the wood they are about. */
export const OtherChecks = () => {
  const words = wordsOf('app').answers
  const { checks, exposure, demand } = useResult()
  const shownAbove = exposure.standOff?.checks ?? []
  return (
    <table className='checks'>
      <thead>
        <tr>
          <th scope='col'>{words.check}</th>
          <th scope='col'>{words.asked}</th>
          <th scope='col'>{words.there}</th>
          <th scope='col'>{words.ratio}</th>
        </tr>
      </thead>
      {groups.map((group) => {
        const own = checks.filter((check) => check.group === group && !shownAbove.includes(check))
        if (own.length === 0) return null
        return (
          <Fragment key={group}>
            <tbody className='checks-group'>
              <tr>
                <th colSpan={4} scope='colgroup'>
                  {words.groups[group]}
                </th>
              </tr>
            </tbody>
            {own.map((check) => (
              <CheckLines
                key={check.id}
                check={check}
                isEstimate={demand.isEstimate && check.demand !== undefined && ofLoads.includes(group)}
              />
            ))}
          </Fragment>
        )
      })}
    </table>
  )
}
