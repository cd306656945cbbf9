import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { fileName } from '../../src/export/fileName.ts'

describe('[E1] a file is named after its pier', () => {
  it.each([
    ['Boat shelter, north row', 'boat-shelter-north-row-section.svg'],
    ['', 'pier-section.svg'],
    ['  ///...  ', 'pier-section.svg'],
    ['../../etc/passwd', 'etc-passwd-section.svg'],
    ["The brother-in-law's way", 'the-brother-in-laws-way-section.svg'],
    ['Büro Süd 3', 'büro-süd-3-section.svg'],
    ['Опора №4', 'опора-4-section.svg'],
    ['CON', 'con-section.svg'],
    ['a\u202Egnp.exe', 'a-gnp-exe-section.svg'],
    ['<img src=x onerror=alert(1)>', 'img-src-x-onerror-alert-1-section.svg'],
    ['section', 'section.svg'],
  ])('%j', (name, want) => expect(fileName(name, 'section', 'svg')).toBe(want))

  it('a pier without a name gives a short name', () => expect(fileName('', 'pier', 'glb')).toBe('pier.glb'))

  it('whatever the name, a disk takes it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (name) => {
        const file = fileName(name, 'numbers', 'csv')
        expect(file).toMatch(/^[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}-]*\.csv$/u)
        expect([...file].length).toBeLessThanOrEqual(60 + '-numbers.csv'.length)
      }),
      { numRuns: 2000, seed: 5 },
    )
  })
})
