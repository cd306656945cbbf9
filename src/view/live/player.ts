import { momentAt, lastDay, lastYear, placeOf, setPlaying, showMoment } from '../../state/actions/time.ts'
import type { AppState, Stretch } from '../../state/appState.ts'
import { pierStore, type PierStore } from '../../state/store.ts'
import { offerTime } from './probe.ts'

/** Steps, days or years to a second of playing. */
const speeds: Readonly<Record<Stretch, number>> = { build: 1 / 3.2, month: 2, years: 4 }
/** Without motion it goes on by this much at a time [steps, days, years], and stands still as long as a reader needs [ms]. */
const leaps: Readonly<Record<Stretch, number>> = { build: 1, month: 7, years: 5 }
const standing = 1600
/** A frame that took longer counts as this long [s]: a tab that was away does not leap. */
const longest = 0.5

const wantsStill = (): boolean => typeof matchMedia === 'function' && matchMedia('(prefers-reduced-motion: reduce)').matches

/**
 * Lets the moment on show move on. Between two frames it only adds to a number and tells its hearers; the store hears of whole
 * steps, days and years. Frames come from the picture while one stands, else from the browser.
 */
export class Player {
  /** Place in the stretch: step, day or year, between whole ones while it plays. */
  place = 0
  stretch: Stretch | null = null
  private lastStep = 0
  isRunning = false
  /** Less motion is wished for: it goes on in leaps, and frames that others ask for move nothing. */
  private isStill = false
  private before = -1
  private asked = 0
  private waiting: ReturnType<typeof setTimeout> | undefined
  private pump: (() => void) | null = null
  private readonly hearers: ((place: number) => void)[] = []

  constructor(private readonly store: PierStore) {
    store.subscribe((state) => this.hear(state))
    this.hear(store.getState())
  }

  /** Last step of this pier. */
  setLastStep(last: number): void {
    this.lastStep = last
  }

  /** Last place of the stretch on show. */
  get end(): number {
    return this.stretch === 'build' ? this.lastStep : this.stretch === 'month' ? lastDay : lastYear
  }

  /** Called with each frame that is played. Returns what takes it back. */
  listen(hearer: (place: number) => void): () => void {
    this.hearers.push(hearer)
    return () => {
      this.hearers.splice(this.hearers.indexOf(hearer), 1)
    }
  }

  /** Whoever draws asks for frames in place of the browser, and calls `tick` in each; null hands it back. */
  setPump(pump: (() => void) | null): void {
    this.pump = pump
    if (this.isRunning) this.ask()
  }

  /** One frame, at `now` [ms]. */
  readonly tick = (now: number): void => {
    this.asked = 0
    if (!this.isRunning || this.isStill || this.stretch === null) return
    const passed = this.before < 0 ? 0 : Math.min(longest, (now - this.before) / 1000)
    this.before = now
    const whole = Math.floor(this.place)
    this.place = Math.min(this.end, this.place + passed * speeds[this.stretch])
    for (let i = 0; i < this.hearers.length; i++) this.hearers[i]?.(this.place)
    if (Math.floor(this.place) !== whole) showMoment(this.store, momentAt(this.stretch, this.place))
    if (this.place >= this.end) setPlaying(this.store, false)
    else if (this.isRunning) this.ask()
  }

  private hear({ view: { time, playing } }: AppState): void {
    const isOther = time?.stretch !== this.stretch
    this.stretch = time?.stretch ?? null
    if (time === null || isOther || !playing || Math.floor(this.place) !== placeOf(time)) this.place = time === null ? 0 : placeOf(time)
    if (playing && !this.isRunning) this.begin()
    else if (!playing && this.isRunning) this.stop()
  }

  private begin(): void {
    this.isRunning = true
    this.before = -1
    if (this.stretch !== null && this.place >= this.end) showMoment(this.store, momentAt(this.stretch, 0))
    this.isStill = wantsStill()
    if (this.isStill) this.waiting = setTimeout(this.leap, standing)
    else this.ask()
  }

  private stop(): void {
    this.isRunning = false
    clearTimeout(this.waiting)
    if (this.asked !== 0) cancelAnimationFrame(this.asked)
    this.asked = 0
  }

  private readonly leap = (): void => {
    if (!this.isRunning || this.stretch === null) return
    showMoment(this.store, momentAt(this.stretch, Math.min(this.end, this.place + leaps[this.stretch])))
    if (this.place >= this.end) setPlaying(this.store, false)
    else this.waiting = setTimeout(this.leap, standing)
  }

  private ask(): void {
    if (this.isStill) return
    if (this.pump) this.pump()
    else if (this.asked === 0) this.asked = requestAnimationFrame(this.tick)
  }
}

/** The one player of the running page. */
export const player = new Player(pierStore)
/** Tells of every place that is played; gives back how to be told no more. */
export const listenToPlayer = (told: (place: number) => void): (() => void) => player.listen(told)

offerTime(() => {
  const { time, playing } = pierStore.getState().view
  return { time, playing, place: player.place }
})
