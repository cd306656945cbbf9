import type { Moment, Stretch } from '../appState.ts'
import type { PierStore } from '../store.ts'

/** Last day of the first month, and last year looked at. */
export const lastDay = 28
export const lastYear = 60

/** Where a moment stands in its stretch: step from 0, day or year. */
export const placeOf = (moment: Moment): number =>
  moment.stretch === 'build' ? moment.step : moment.stretch === 'month' ? moment.day : moment.year

/** The moment at a place of a stretch, a whole one within its ends. Steps end where those of the pier do, which is for whoever shows them. */
export function momentAt(stretch: Stretch, place: number): Moment {
  const whole = Number.isFinite(place) ? Math.max(0, Math.floor(place)) : 0
  if (stretch === 'build') return { stretch, step: whole }
  return stretch === 'month' ? { stretch, day: Math.min(lastDay, whole) } : { stretch, year: Math.min(lastYear, whole) }
}

/** Looks at a moment; null looks at the pier as it stands, and stops. */
export const showMoment = (store: PierStore, time: Moment | null): void => {
  const { view } = store.getState()
  const before = view.time
  if (time === before || (time && before && time.stretch === before.stretch && placeOf(time) === placeOf(before))) return
  store.setState({ view: { ...view, time, playing: time !== null && view.playing } })
}

/** Opens a stretch at its start. */
export const openStretch = (store: PierStore, stretch: Stretch): void => {
  setPlaying(store, false)
  showMoment(store, momentAt(stretch, 0))
}

/** Lets the moment move on by itself, or holds it. Without a moment nothing moves. */
export const setPlaying = (store: PierStore, playing: boolean): void => {
  const { view } = store.getState()
  const next = playing && view.time !== null
  if (view.playing !== next) store.setState({ view: { ...view, playing: next } })
}
