import { type PullPath, linksOf } from '../../../core/derive/report/pullPath.ts'
import { countingVerdict, markOf } from '../../../core/derive/report/verdict.ts'
import type { Fact } from '../../../core/model/fact.ts'
import type { SayNumber } from '../../../core/units/reader.ts'
import { rowIn } from '../../../facts/firstWords.ts'
import { nameOf, verdictWords } from '../../../facts/said.ts'
import { showPanel } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { MarkedWord } from '../../kit/Mark.tsx'
import { Button } from '../../kit/Controls.tsx'
import { groupId } from '../inputs/InputStep.tsx'

/** No more digits than a ratio deserves; but near 1 it is not rounded onto it. */
const shareWords = (ratio: number, say: SayNumber): string => {
  const words = wordsOf('loadPath')
  if (ratio > 1) return words.times(String(Number(ratio.toPrecision(ratio < 1.1 ? 3 : 2))))
  return words.ratio(ratio > 0.99 ? say(ratio, 'ratio', { unit: '%' }) : `${Math.round(100 * ratio)}%`)
}

/** Opens the inputs of the loads, wherever they are just now, and goes there. */
const showLoads = (): void => {
  showPanel(pierStore, 'inputs')
  // The panel is in the page once the store has been heard.
  setTimeout(() => {
    const group = document.getElementById(groupId('loads'))
    if (!(group instanceof HTMLDetailsElement)) return
    group.open = true
    group.scrollIntoView({ block: 'start' })
    group.querySelector<HTMLElement>('input')?.focus()
  })
}

/** What is asked, and how much of the path that takes; nothing of the kind where a needed link is not counted. The verdict is the title block's. */
export const ChainSummary = ({ chain }: { chain: PullPath }) =>
  chain.holds === null ? <Unverified chain={chain} /> : <Asked chain={chain} />

const Asked = ({ chain: { asked, whole } }: { chain: PullPath }) => {
  const { say } = useUnits()
  const words = wordsOf('loadPath')
  if (asked === null)
    return (
      <p className='chain-summary line wide small'>
        <span>{words.noDemand}</span>
        <Button onClick={showLoads}>{words.enterLoads}</Button>
      </p>
    )
  if (asked <= 0) return <p className='chain-summary stack tight small'>{words.noNetUplift}</p>
  return (
    <div className='chain-summary stack tight small'>
      <p>
        {wordsOf('app').answers.askedFor[whole.isEstimate ? 'estimated' : 'entered'](say(asked, 'force'))}
        {whole.ratio !== null && ` · ${shareWords(whole.ratio, say)}`}
      </p>
      {whole.isEstimate && <p className='quiet'>{words.estimateNote}</p>}
    </div>
  )
}

/** What would make a link verifiable; '' where nothing is known that would. */
export const wouldVerify = ({ reason }: Fact): string => rowIn<string>(wordsOf('verifiable'), reason ?? '') ?? ''

const Unverified = ({ chain }: { chain: PullPath }) => {
  const words = wordsOf('loadPath')
  const uncounted = linksOf(chain).filter(({ id }) => chain.whole.restsOn.includes(id))
  const ways = [...new Map(uncounted.map((link) => [wouldVerify(link), link])).entries()].filter(([how]) => how !== '')
  return (
    <div className='chain-summary stack tight small'>
      <p>{words.unverifiedHelp}</p>
      {ways.length > 0 && (
        <>
          <h4 className='flat'>{words.verifiable}</h4>
          <ul className='bullets'>
            {ways.map(([how, link]) => (
              <li key={how}>
                <strong>{nameOf(link)}:</strong> {how}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

/** The marks of the chart that have no words beside them, with their words. */
export const ChartKey = ({ chain }: { chain: PullPath }) => {
  const links = linksOf(chain).filter(({ verdict }) => verdict !== 'falls short')
  const shown = (['counted', "engineer's judgement"] as const).filter((counted) => links.some((link) => link.counted === counted))
  return (
    <ul className='chart-key small'>
      {shown.map((counted) => (
        <li key={counted}>
          <MarkedWord
            name={markOf(countingVerdict(counted))}
            word={verdictWords({ group: 'uplift', verdict: countingVerdict(counted), reason: null })}
          />
        </li>
      ))}
    </ul>
  )
}
