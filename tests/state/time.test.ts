import { describe, expect, it } from 'vitest'
import { lastDay, lastYear, momentAt, openStretch, placeOf, setPlaying, showMoment } from '../../src/state/actions/time.ts'
import { freshStore } from './freshStore.ts'

describe('the moment looked at', () => {
  it('is none until one is asked for, and nothing plays without one', () => {
    const store = freshStore()
    expect(store.getState().view.time).toBeNull()
    setPlaying(store, true)
    expect(store.getState().view.playing).toBe(false)
  })

  it('stays whole and within its stretch, whatever is asked', () => {
    expect(momentAt('month', 31.7)).toEqual({ stretch: 'month', day: lastDay })
    expect(momentAt('years', 12.9)).toEqual({ stretch: 'years', year: 12 })
    expect(momentAt('years', 900)).toEqual({ stretch: 'years', year: lastYear })
    for (const wild of [-3, Number.NaN, Number.NEGATIVE_INFINITY]) expect(placeOf(momentAt('build', wild))).toBe(0)
  })

  it('opens a stretch at its start and stops what played', () => {
    const store = freshStore()
    openStretch(store, 'month')
    setPlaying(store, true)
    expect(store.getState().view.playing).toBe(true)
    openStretch(store, 'years')
    expect(store.getState().view).toMatchObject({ time: { stretch: 'years', year: 0 }, playing: false })
    setPlaying(store, true)
    showMoment(store, null)
    expect(store.getState().view).toMatchObject({ time: null, playing: false })
  })

  it('[J3] is never part of undo, and the same moment again changes nothing', () => {
    const store = freshStore()
    showMoment(store, momentAt('years', 10))
    const before = store.getState()
    showMoment(store, momentAt('years', 10.4))
    expect(store.getState()).toBe(before)
    expect(store.temporal.getState().pastStates).toEqual([])
    expect(store.getState().document).toBe(freshStore().getState().document)
  })
})
