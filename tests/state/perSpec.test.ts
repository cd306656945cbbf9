import { describe, expect, it, vi } from 'vitest'
import { defaultSpec } from '../../src/core/spec/defaults.ts'
import { derived } from '../../src/state/derived.ts'
import { perSpec } from '../../src/state/perSpec.ts'

describe('what is worked out of a spec', () => {
  it('is worked out once for each object, also where nothing comes of it', () => {
    const derive = vi.fn(({ gives }: Readonly<{ gives: number | null }>) => gives)
    const of = perSpec(derive)
    const [one, none] = [{ gives: 1 }, { gives: null }]
    expect([of(one), of(none), of(one), of(none), of({ gives: 1 })]).toEqual([1, null, 1, null, 1])
    expect(derive).toHaveBeenCalledTimes(3)
  })

  it('is forgotten, the one that was not asked for longest first, where only a few are kept', () => {
    const derive = vi.fn(({ id }: Readonly<{ id: number }>) => ({ id }))
    const of = perSpec(derive, 2)
    const [a, b, c] = [{ id: 1 }, { id: 2 }, { id: 3 }]
    const first = of(a)
    of(b)
    expect(of(a)).toBe(first)
    of(c)
    expect(of(a)).toBe(first)
    expect(derive).toHaveBeenCalledTimes(3)
    of(b)
    expect(derive).toHaveBeenCalledTimes(4)
  })

  it('is the same result for the same spec', () => expect(derived(defaultSpec)).toBe(derived(defaultSpec)))
})
