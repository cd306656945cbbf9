import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { momentAt, openStretch, setPlaying, showMoment } from '../../../src/state/actions/time.ts'
import { Player } from '../../../src/view/live/player.ts'
import { freshStore } from '../../state/freshStore.ts'

/** Frames of a screen, drawn by hand. */
const screen = () => {
  let asked = 0
  let now = 1000
  return {
    pump: () => void asked++,
    /** Draws a frame `ms` later where one was asked for. */
    frame: (player: Player, ms: number): boolean => {
      if (asked === 0) return false
      asked = 0
      now += ms
      player.tick(now)
      return true
    },
  }
}

const still = (isStill: boolean): void => void vi.stubGlobal('matchMedia', () => ({ matches: isStill }))

describe('a moment that moves on by itself', () => {
  beforeEach(() => still(false))
  afterEach(() => {
    vi.unstubAllGlobals()
    vi.useRealTimers()
  })

  it('moves with the clock, not with the number of frames, and ends at the end', () => {
    const ends = [10, 50].map((ms) => {
      const store = freshStore()
      const player = new Player(store)
      const { pump, frame } = screen()
      player.setPump(pump)
      openStretch(store, 'years')
      setPlaying(store, true)
      for (let passed = -ms; passed < 5000; passed += ms) frame(player, ms)
      return player.place
    })
    expect(ends[0]).toBeCloseTo(ends[1] ?? 0, 6)
    expect(ends[0]).toBeCloseTo(20, 6)
  })

  it('tells the store of whole years alone, and its hearers of every frame', () => {
    const store = freshStore()
    const player = new Player(store)
    const { pump, frame } = screen()
    player.setPump(pump)
    openStretch(store, 'years')
    setPlaying(store, true)
    let told = 0
    let heard = 0
    store.subscribe(() => told++)
    const stop = player.listen(() => heard++)
    for (let i = 0; i <= 100; i++) frame(player, 10)
    expect(heard).toBe(101)
    expect(told).toBe(4)
    expect(store.getState().view.time).toEqual({ stretch: 'years', year: 4 })
    stop()
    frame(player, 10)
    expect(heard).toBe(101)
  })

  it('stops at the last day, asks for no frame more, and starts again from the first', () => {
    const store = freshStore()
    const player = new Player(store)
    const { pump, frame } = screen()
    player.setPump(pump)
    openStretch(store, 'month')
    setPlaying(store, true)
    for (let i = 0; i < 200; i++) frame(player, 100)
    expect(store.getState().view).toMatchObject({ time: { stretch: 'month', day: 28 }, playing: false })
    expect(frame(player, 100)).toBe(false)
    setPlaying(store, true)
    expect(store.getState().view.time).toEqual({ stretch: 'month', day: 0 })
  })

  it('follows the hand while it plays', () => {
    const store = freshStore()
    const player = new Player(store)
    const { pump, frame } = screen()
    player.setPump(pump)
    openStretch(store, 'years')
    setPlaying(store, true)
    frame(player, 10)
    showMoment(store, momentAt('years', 40))
    expect(player.place).toBe(40)
  })

  it('steps without motion where less of it is wished for', () => {
    vi.useFakeTimers()
    still(true)
    const store = freshStore()
    const player = new Player(store)
    let frames = 0
    player.setPump(() => frames++)
    openStretch(store, 'years')
    setPlaying(store, true)
    const seen: number[] = []
    store.subscribe(({ view: { time } }) => time?.stretch === 'years' && seen.push(time.year))
    vi.advanceTimersByTime(1600 * 3 + 10)
    for (const now of [1000, 1400, 1800]) player.tick(now)
    expect(seen).toEqual([5, 10, 15])
    expect(frames).toBe(0)
    setPlaying(store, false)
    vi.advanceTimersByTime(10_000)
    expect(store.getState().view.time).toEqual({ stretch: 'years', year: 15 })
  })
})
