import { useEffect, useId } from 'react'
import { lettingGo } from '../../../core/derive/lettingGo.ts'
import { setPull } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { usePier, useResult, useUnits } from '../../hooks/usePier.ts'
import { answerWords } from '../../../facts/answerWords.ts'
import type { PullPath } from '../../../core/derive/report/pullPath.ts'
import { usePulling, wantsStill } from './usePulling.ts'
import { Button } from '../../kit/Controls.tsx'
const places = 200
/** The slider goes a little past where the path lets go, and past what is asked. */
const past = 1.1

/** How the link that governs would let go, once the pull has reached what it holds. Said aloud only then. */
const Outcome = ({ chain, pull, holds }: { chain: PullPath; pull: number; holds: number }) => {
  const words = wordsOf('loadPath').raise
  const result = useResult()
  const { say } = useUnits()
  const [link = ''] = chain.whole.restsOn
  const name = answerWords(link).label
  const found = pull >= holds ? lettingGo(result, link) : null
  return (
    <>
      {!found && <p className='quiet'>{words.holds(say(pull, 'force'), name)}</p>}
      <div role='status'>
        {found && (
          <div className='lets-go small'>
            <p>
              <strong>{words.letsGo(say(holds, 'force'), name)}</strong> {wordsOf('loadPath').lettingGo[found.how]}
            </p>
            <p className='quiet'>{words.illustrative}</p>
          </div>
        )}
      </div>
    </>
  )
}

/** A pull on the post that is no load of the pier: by hand, or by itself. Each bar of the chart fills with it. */
export const RaiseUplift = ({ chain }: { chain: PullPath }) => {
  const words = wordsOf('loadPath').raise
  const id = useId()
  const { say } = useUnits()
  const pull = usePier((state) => state.view.pull)
  const { holds, asked } = chain
  const { isRunning, run, stop } = usePulling(holds)
  useEffect(() => {
    if (holds === null) setPull(pierStore, null)
  }, [holds])
  if (holds === null) return <p className='quiet'>{words.none}</p>
  const most = past * Math.max(holds, asked ?? 0)
  const move = (place: number) => {
    stop()
    setPull(pierStore, (most * place) / places)
  }
  return (
    <div className='raise'>
      <div className='raise-line line'>
        <Button onClick={isRunning ? stop : run}>{isRunning ? words.pause : wantsStill() ? words.end : words.play}</Button>
        <label htmlFor={id} className='spoken'>
          {words.slider}
        </label>
        <input
          id={id}
          className='slider'
          type='range'
          min={0}
          max={places}
          step={1}
          value={Math.round(((pull ?? 0) / most) * places)}
          aria-valuetext={say(pull ?? 0, 'force')}
          onChange={(event) => move(Number(event.target.value))}
        />
        <output htmlFor={id} className='number strong'>
          {say(pull ?? 0, 'force')}
        </output>
      </div>
      {pull === null ? (
        <p className='quiet'>{words.help}</p>
      ) : (
        <>
          <Outcome chain={chain} pull={pull} holds={holds} />
          <Button
            className='button plain'
            onClick={() => {
              stop()
              setPull(pierStore, null)
            }}
          >
            {words.off}
          </Button>
        </>
      )}
    </div>
  )
}
