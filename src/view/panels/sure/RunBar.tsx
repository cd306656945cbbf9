import { useId, useState } from 'react'
import { greatestSeed } from '../../../core/uncertainty/randomNumbers.ts'
import { setSamples, setSeed, stopStudy, sureStore } from '../../../state/sure.ts'
import { wordsOf } from '../../../words/index.ts'
import { Mark } from '../../kit/Mark.tsx'
import { Button } from '../../kit/Controls.tsx'
import { wholeNumber } from './sureFigures.ts'
import { useSure } from './useSure.ts'

const choices = [2_000, 20_000, 100_000]

/** How many tries, from which seed, how far they are, and the way to stop them. */
export const RunBar = ({ isStale, onRun }: { isStale: boolean; onRun: () => void }) => {
  const sure = wordsOf('sure')
  const id = useId()
  const samples = useSure((state) => state.samples)
  const run = useSure((state) => state.run)
  const hasLast = useSure((state) => state.last !== null)
  const isRunning = run.kind === 'running'
  const said =
    run.kind === 'stopped'
      ? hasLast
        ? sure.run.stopped
        : sure.run.stoppedEmpty
      : run.kind === 'failed'
        ? sure.run.failed
        : isStale && !isRunning
          ? sure.run.stale
          : ''
  return (
    <div className='sure-part stack small'>
      <div className='line'>
        <label htmlFor={`${id}-tries`}>{sure.run.tries}</label>
        <span className='list'>
          <select id={`${id}-tries`} value={samples} onChange={(event) => setSamples(sureStore, Number(event.target.value))}>
            {choices.map((choice) => (
              <option key={choice} value={choice}>
                {wholeNumber(choice)}
              </option>
            ))}
          </select>
        </span>
        <SeedBox id={id} />
      </div>
      <div className='line'>
        <progress
          className='sure-progress'
          value={isRunning ? run.done : run.kind === 'done' ? samples : 0}
          max={samples}
          aria-label={sure.run.tries}
        />
        {isRunning ? (
          <Button onClick={() => stopStudy(sureStore)}>{sure.run.stop}</Button>
        ) : (
          <Button onClick={onRun}>{sure.run.again}</Button>
        )}
      </div>
      <p className='quiet' role='status'>
        {isRunning ? sure.run.progress(wholeNumber(run.done), wholeNumber(samples)) : said}
      </p>
    </div>
  )
}

const SeedBox = ({ id }: { id: string }) => {
  const sure = wordsOf('sure')
  const seed = useSure((state) => state.seed)
  const [typed, setTyped] = useState<string | null>(null)
  const [isBad, setIsBad] = useState(false)
  const take = (text: string) => {
    const isTaken = /^\d+$/.test(text.trim()) && setSeed(sureStore, Number(text))
    setIsBad(!isTaken)
    if (isTaken) setTyped(null)
  }
  return (
    <span className='sure-seed' data-bad={isBad || undefined}>
      <label htmlFor={`${id}-seed`}>{sure.run.seed}</label>
      <input
        id={`${id}-seed`}
        className='box'
        type='text'
        inputMode='numeric'
        autoComplete='off'
        value={typed ?? String(seed)}
        aria-invalid={isBad}
        aria-describedby={`${id}-seed-help`}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take(event.currentTarget.value)
          if (event.key === 'Escape') {
            setTyped(null)
            setIsBad(false)
          }
        }}
        onBlur={(event) => typed !== null && take(event.target.value)}
      />
      <Button onClick={() => take(String(seed === greatestSeed ? 0 : seed + 1))}>{sure.run.nextSeed}</Button>
      <span id={`${id}-seed-help`} className={isBad ? 'problem sure-help mark-short' : 'problem sure-help quiet'}>
        {isBad && <Mark name='short' />}
        {isBad ? sure.run.badSeed : sure.run.seedHelp}
      </span>
    </span>
  )
}
