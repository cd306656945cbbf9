import { describe, expect, it } from 'vitest'
import { leastOpenPressure, leastRoofPush, roofPush, workedRoofPush } from '../../../src/core/engineering/loads/roofPush.ts'
import { workedLeewardReaction, workedWindwardReaction } from '../../../src/core/engineering/loads/roofReactions.ts'
import type { Metres, Pascals, Radians } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at } from '../cases.ts'

const frame = { span: at<Metres>(24, 'ft'), bay: at<Metres>(12, 'ft'), overhang: at<Metres>(0, 'ft'), angle: Math.atan(4 / 12) as Radians }
const psf = (value: number) => at<Pascals>(value, 'psf')

describe('sideways push on a roof of 24 ft span, 12 ft bay, 4 in 12: rise 4 ft, outline 48 ft2', () => {
  it('two slopes push against each other: 48 (34.22 - 14.38) = 952 lb by hand', () => {
    const push = roofPush({ ...frame, slopes: 'two', windward: psf(-14.38), leeward: psf(-34.22) })
    close(push, at(48 * (34.22 - 14.38), 'lb'), { abs: 0, rel: 1e-12 })
  })
  it('one slope takes both halves: 48 (34.22 + 14.38)', () => {
    const push = roofPush({ ...frame, slopes: 'one', windward: psf(-14.38), leeward: psf(-34.22) })
    close(push, at(48 * (34.22 + 14.38), 'lb'), { abs: 0, rel: 1e-12 })
  })
  it('least push: 16 psf on 48 ft2, on 96 ft2 for one slope', () => {
    const pressure = leastOpenPressure.value
    close(leastRoofPush({ ...frame, slopes: 'two', pressure }), at(768, 'lb'), { abs: 0, rel: 1e-12 })
    close(leastRoofPush({ ...frame, slopes: 'one', pressure }), at(1536, 'lb'), { abs: 0, rel: 1e-12 })
  })
  it('an even load on a level roof pushes nowhere', () => {
    expect(roofPush({ ...frame, angle: 0 as Radians, slopes: 'one', windward: psf(20), leeward: psf(20) })).toBe(0)
    expect(workedRoofPush({ ...frame, slopes: 'two', windward: psf(20), leeward: psf(20) }).value).toBe(0)
  })
})

describe('posts of a frame', () => {
  const loads = { ...frame, overhang: at<Metres>(2, 'ft'), windward: psf(12), leeward: psf(31) }
  it('each post by moments about the other: sides 14 ft wide with middles 5 ft inside and 5 ft from the ridge', () => {
    // Windward half: 12 psf x 12 ft x 14 ft at 5 ft from its own post; leeward half: 31 psf x 12 x 14 at 19 ft from the windward post.
    const [w, l] = [12 * 12 * 14, 31 * 12 * 14]
    close(workedLeewardReaction(loads).value, at((w * 5 + l * 19) / 24, 'lb'), { abs: 0, rel: 1e-12 })
    close(workedWindwardReaction(loads).value, at((w * 19 + l * 5) / 24, 'lb'), { abs: 0, rel: 1e-12 })
  })
})
