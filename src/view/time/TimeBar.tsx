import '../kit/parts.css'
import { type ComponentProps, type KeyboardEvent, Suspense, useEffect, useId, useRef, useState } from 'react'
import { createPortal } from 'react-dom'
import { momentAt, openStretch, placeOf, setPlaying, showMoment } from '../../state/actions/time.ts'
import type { Moment, Stretch } from '../../state/appState.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { player } from '../live/player.ts'
import { focusTimeButton, TimeButton } from './TimeButton.tsx'
import { TimeRule } from './TimeRule.tsx'
import { useSpokenMoment } from './useSpokenMoment.ts'
import { lazyPage } from '../lazyPage.tsx'
import './time.css'
import { Button } from '../kit/Controls.tsx'

const BuildPanel = lazyPage(() => import('./BuildPanel.tsx').then((module) => module.BuildPanel), ['build', 'steps', 'time'])
const MonthPanel = lazyPage(() => import('./MonthPanel.tsx').then((module) => module.MonthPanel), ['life', 'time'])
const YearsPanel = lazyPage(() => import('./YearsPanel.tsx').then((module) => module.YearsPanel), ['life', 'time'])

const AskFirst = lazyPage(() => import('./AskFirst.tsx').then((module) => module.AskFirst), ['questions', 'time'])

const stretches: readonly Stretch[] = ['build', 'month', 'years']
/** How far a page key goes. */
const strides: Readonly<Record<Stretch, number>> = { build: 1, month: 7, years: 10 }

const goBy = (by: number): void => {
  const { stretch, place, end } = player
  if (stretch === null) return
  setPlaying(pierStore, false)
  showMoment(pierStore, momentAt(stretch, Math.min(end, Math.max(0, Math.floor(place) + by))))
}

/** Keys with which a clicker darkens the screen. */
const darkens = ['b', 'B', '.']

const leave = (): void => {
  showMoment(pierStore, null)
  focusTimeButton()
}

/** What a key does; false when it is none of ours. A clicker sends page keys, arrows or Space. */
function press({ key, target }: KeyboardEvent): boolean {
  const { stretch } = player
  if (stretch === null) return false
  const isSlider = target instanceof HTMLInputElement && target.type === 'range'
  const isButton = target instanceof Element && target.closest('button, summary, a, input:not([type=range])') !== null
  if (key === 'Escape') leave()
  else if (key === 'PageDown' || (key === ' ' && !isButton)) goBy(strides[stretch])
  else if (key === 'PageUp') goBy(-strides[stretch])
  else if (isSlider && (key === 'ArrowRight' || key === 'ArrowUp')) goBy(1)
  else if (isSlider && (key === 'ArrowLeft' || key === 'ArrowDown')) goBy(-1)
  else if (isSlider && key === 'Home') goBy(-Number.MAX_SAFE_INTEGER)
  else if (isSlider && key === 'End') goBy(Number.MAX_SAFE_INTEGER)
  else return false
  return true
}

/** The strip under the picture while a moment is looked at. `withButton`: the way into it stands here, where no bar of views has it. */
export const TimeBar = ({ withButton }: Readonly<{ withButton: boolean }>) => {
  const time = usePier((state) => state.view.time)
  if (time) return <OpenBar time={time} />
  return withButton ? <TimeButton className='button time-open' /> : null
}

type SignProps = ComponentProps<'button'> & Readonly<{ d: string; label: string }>
const SignButton = ({ d, label, ...rest }: SignProps) => (
  <Button className='icon' aria-label={label} {...rest}>
    <svg className='sign' viewBox='0 0 20 20' aria-hidden='true'>
      <path d={d} />
    </svg>
  </Button>
)

const OpenBar = ({ time }: Readonly<{ time: Moment }>) => {
  const words = wordsOf('time')
  const playing = usePier((state) => state.view.playing)
  const slider = useRef<HTMLInputElement>(null)
  const body = useRef<HTMLElement>(null)
  const keys = useId()
  const { stretch } = time
  const { last, line, spoken } = useSpokenMoment(time)
  const [isAsking, setAsking] = useState(false)
  const [isDark, setDark] = useState(false)
  player.setLastStep(last)
  useEffect(() => slider.current?.focus({ preventScroll: true }), [])
  // Whoever takes the picture away stops what plays in it.
  useEffect(() => () => setPlaying(pierStore, false), [])
  // biome-ignore lint/correctness/useExhaustiveDependencies: another stretch, or another step, is read from its top
  useEffect(() => {
    body.current?.scrollTo(0, 0)
  }, [stretch, stretch === 'build' && placeOf(time)])
  const at = Math.min(placeOf(time), player.end)
  const panel =
    time.stretch === 'build' ? <BuildPanel step={at} /> : time.stretch === 'month' ? <MonthPanel day={at} /> : <YearsPanel year={at} />
  return (
    <section
      className='time rings-inside panel over-heavy small'
      aria-label={words.title}
      aria-describedby={keys}
      onKeyDown={(event) => {
        if (event.ctrlKey || event.metaKey || event.altKey) return
        if (darkens.includes(event.key) || (isDark && event.key === 'Escape')) {
          setPlaying(pierStore, false)
          setDark(!isDark)
        } else if (!isDark && !press(event)) return
        event.preventDefault()
        event.stopPropagation()
      }}
    >
      <p id={keys} className='spoken'>
        {words.keys}
      </p>
      <div className='time-head under-fine'>
        <fieldset className='time-stretches' aria-label={words.which}>
          {stretches.map((one) => (
            <Button key={one} className='tab' aria-pressed={one === stretch} onClick={() => one !== stretch && openStretch(pierStore, one)}>
              {words.stretches[one]}
            </Button>
          ))}
        </fieldset>
        <SignButton
          className='icon left-fine'
          d='M7 7.2a3 3 0 1 1 4.6 2.6c-1 .7-1.6 1.2-1.6 2.6M10 15.4v.2'
          label={words.ask.first}
          title={words.ask.first}
          aria-pressed={isAsking}
          onClick={() => setAsking(!isAsking)}
        />
        <SignButton className='icon left-fine' d='M5 5L15 15M15 5L5 15' label={words.close} title={words.close} onClick={leave} />
      </div>
      <div className='time-run under-fine'>
        <Button className='icon time-play' aria-label={playing ? words.pause : words.play} onClick={() => setPlaying(pierStore, !playing)}>
          <svg className='sign' viewBox='0 0 20 20' aria-hidden='true'>
            <path className='sign-solid' d={playing ? 'M5 4H8.5V16H5ZM11.5 4H15V16H11.5Z' : 'M6 3.5L16.5 10L6 16.5Z'} />
          </svg>
        </Button>
        <SignButton d='M12.5 4.5L7 10L12.5 15.5' label={words.back[stretch]} disabled={at === 0} onClick={() => goBy(-1)} />
        <TimeRule ref={slider} stretch={stretch} at={at} last={player.end} playing={playing} line={line} />
        <SignButton d='M7.5 4.5L13 10L7.5 15.5' label={words.next[stretch]} disabled={at === player.end} onClick={() => goBy(1)} />
        <p className='time-place unbroken lead' aria-hidden='true'>
          {line}
        </p>
      </div>
      <p className='spoken' role='status'>
        {spoken}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and the keyboard scrolls it */}
      <section className='time-body scrolls stack wide' ref={body} tabIndex={0} aria-label={words.about}>
        <Suspense fallback={<p className='quiet'>{words.stretches[stretch]}</p>}>
          {isAsking ? <AskFirst moment={momentAt(time.stretch, at)}>{panel}</AskFirst> : panel}
        </Suspense>
      </section>
      {isDark &&
        createPortal(<button type='button' className='blackout' aria-label={words.dark} onClick={() => setDark(false)} />, document.body)}
    </section>
  )
}
