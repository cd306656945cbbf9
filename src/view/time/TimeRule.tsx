import { type Ref, useEffect, useImperativeHandle, useRef } from 'react'
import { momentAt, setPlaying, showMoment } from '../../state/actions/time.ts'
import type { Stretch } from '../../state/appState.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { player } from '../live/player.ts'

/** A number stands at every so many marks. */
const numbered: Readonly<Record<Stretch, number>> = { build: 1, month: 7, years: 10 }

type Props = Readonly<{ stretch: Stretch; at: number; last: number; playing: boolean; line: string; ref: Ref<HTMLInputElement | null> }>

/** A rule with a mark for each step, day or year, and the slider on it. While it plays the slider moves with every frame. */
export const TimeRule = ({ stretch, at, last, playing, line, ref }: Props) => {
  const input = useRef<HTMLInputElement>(null)
  useImperativeHandle<HTMLInputElement | null, HTMLInputElement | null>(ref, () => input.current, [])
  useEffect(() => {
    if (!playing && input.current) input.current.valueAsNumber = at
  }, [playing, at])
  useEffect(
    () =>
      player.listen((place) => {
        if (input.current) input.current.valueAsNumber = place
      }),
    [],
  )
  const marks = Array.from({ length: last + 1 }, (_, i) => i)
  const shown = (i: number): string => String(stretch === 'build' ? i + 1 : i)
  return (
    <div className='time-rule holds'>
      <svg className='drawing time-marks' aria-hidden='true'>
        {marks.map((i) => {
          const x = `${(100 * i) / Math.max(1, last)}%`
          const isLong = i % numbered[stretch] === 0
          return (
            <g key={i} data-past={i <= at || undefined}>
              <line x1={x} x2={x} y1='0' y2={isLong ? 9 : 5} />
              {isLong && (
                <text x={x} y='24' textAnchor='middle'>
                  {shown(i)}
                </text>
              )}
            </g>
          )
        })}
      </svg>
      <input
        ref={input}
        type='range'
        aria-label={wordsOf('time').stretches[stretch]}
        aria-valuetext={line}
        min={0}
        max={Math.max(1, last)}
        step={playing ? 'any' : 1}
        defaultValue={at}
        onChange={(event) => {
          setPlaying(pierStore, false)
          showMoment(pierStore, momentAt(stretch, Math.round(event.currentTarget.valueAsNumber)))
        }}
      />
    </div>
  )
}
