import { type ReactNode, useId, useState } from 'react'
import { momentAt, setPlaying, showMoment } from '../../state/actions/time.ts'
import { setMistake } from '../../state/actions/view.ts'
import type { Moment } from '../../state/appState.ts'
import { shownSteps } from '../../state/shown.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { Dangers } from './Dangers.tsx'
import { type Asked, questionAt } from './questionAt.ts'
import { Button } from '../kit/Controls.tsx'

type Props = Readonly<{ moment: Moment; children: ReactNode }>

/** Shows in the picture what a guess was about. */
const show = ({ shows }: Asked, { stretch }: Moment): void => {
  if (shows === 'play') {
    showMoment(pierStore, momentAt(stretch, 0))
    setPlaying(pierStore, true)
  } else setMistake(pierStore, shows, true)
}

const takeBack = ({ shows }: Asked, { stretch }: Moment): void => {
  if (shows === 'play') {
    setPlaying(pierStore, false)
    showMoment(pierStore, momentAt(stretch, 0))
  } else setMistake(pierStore, shows, false)
}

/** Keeps back what there is to say of a moment until somebody has made a guess; then shows it, and can show it again. */
export const AskFirst = ({ moment, children }: Props) => {
  const words = wordsOf('time').ask
  const steps = usePier(shownSteps)
  const { spec } = useResult()
  const [guesses, setGuesses] = useState<Readonly<Record<string, number>>>({})
  const id = useId()
  const asked = questionAt(moment, steps, spec)
  if (asked === null) return children
  const { question, key, holds } = asked
  const guess = guesses[key]
  const step = moment.stretch === 'build' ? steps[moment.step] : undefined
  return (
    <>
      {/* Danger is never kept back. */}
      {step && guess === undefined && <Dangers step={step} />}
      <div className='stack time-ask under-fine'>
        <h2 id={id} className='lead heavy'>
          {question.ask}
        </h2>
        <ul className='line' aria-labelledby={id}>
          {question.options.map((option, i) => {
            const mark = guess === undefined ? null : i === holds ? words.holds : i === guess ? words.guessed : null
            return (
              <li key={option}>
                <Button
                  className='button lights'
                  aria-pressed={guess === i}
                  disabled={guess !== undefined}
                  data-holds={(guess !== undefined && i === holds) || undefined}
                  onClick={() => {
                    setGuesses({ ...guesses, [key]: i })
                    show(asked, moment)
                  }}
                >
                  {option}
                  {mark !== null && <strong> {mark}</strong>}
                </Button>
              </li>
            )
          })}
        </ul>
        {guess !== undefined && (
          <p className='line wide' role='status'>
            <strong>{question.look}</strong>
            <Button onClick={() => show(asked, moment)} hidden={asked.shows !== 'play'}>
              {words.again}
            </Button>
            <Button
              onClick={() => {
                const { [key]: _, ...others } = guesses
                setGuesses(others)
                takeBack(asked, moment)
              }}
            >
              {words.anew}
            </Button>
          </p>
        )}
      </div>
      {guess !== undefined && children}
    </>
  )
}
