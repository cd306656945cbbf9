import { describe, expect, it } from 'vitest'
import { withMistakes } from '../../src/core/derive/build/mistakes.ts'
import { derivePier } from '../../src/core/derive/derivePier.ts'
import { defaultSpec } from '../../src/core/spec/defaults.ts'
import { worseChecks } from '../../src/state/shown.ts'

describe('checks that a mistake takes over their limit', () => {
  const meant = derivePier(defaultSpec)
  const missedWith = (...ids: Parameters<typeof withMistakes>[1]) => worseChecks(meant, derivePier(withMistakes(defaultSpec, ids)))

  it('a post off plumb is out of line by more than drilled piers may be: two degrees to 1.5 %', () => {
    const plumb = missedWith('off-plumb').find(({ id }) => id === 'post-plumb')
    expect(plumb?.ratio).toBeCloseTo(Math.tan((2 * Math.PI) / 180) / 0.015, 9)
  })

  it('a short bar comes too little out of the post', () => {
    expect(missedWith('bar-too-short').map(({ id }) => id)).toContain('bar-outside-post')
  })

  it('nothing for the pier as it is meant, nor for what it misses already', () => {
    expect(worseChecks(meant, meant)).toEqual([])
    const bad = derivePier(withMistakes(defaultSpec, ['off-plumb', 'bar-too-short']))
    expect(worseChecks(bad, bad)).toEqual([])
  })
})
