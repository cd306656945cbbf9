import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { setCalloutText, setField, setPart } from '../../src/core/spec/edit.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { allFields, visibleFields } from '../../src/core/spec/fields.ts'
import { fromSI, inputUnit } from '../../src/core/units/factors.ts'
import { alphabet, encodeLink } from '../../src/state/storage/link.ts'
import { decodeLink } from '../../src/state/storage/readLink.ts'
import { arbitraryWalk } from '../arbitraryPier.ts'

const opened = (code: string): PierDocument => {
  const read = decodeLink(code)
  if (!read.ok) expect.fail(`${code}: ${JSON.stringify(read.issues)}`)
  return read.value
}

/** Documents that differ, from seeded walks. */
const manyDocuments = (count: number, seed: number): readonly PierDocument[] => {
  const found = new Set<PierDocument>()
  for (const walk of fc.sample(arbitraryWalk(), { numRuns: count, seed })) {
    for (const document of walk) found.add(document)
    if (found.size >= count) break
  }
  return [...found].slice(0, count)
}

/** Every part on, and every number typed with as many digits as a box takes: worse than anybody would. */
const worst = (): PierDocument => {
  const settled = (document: PierDocument, result: ReturnType<typeof setPart>) => (result.ok ? result.value : document)
  let document = defaultDocument
  for (const field of allFields) if (field.type === 'part') document = settled(document, setPart(document, field.path, true))
  let dice = 1
  const digit = () => {
    dice = (dice * 48271) % 2147483647
    return dice % 10
  }
  const digits = () => Array.from({ length: 40 }, digit).join('')
  for (const field of visibleFields(document.spec)) {
    if (field.type !== 'number' || field.quantity === 'count') continue
    const unit = inputUnit.us[field.quantity]
    const middle = fromSI(field.min + (field.max - field.min) * 0.37, unit).toFixed(3)
    document = settled(document, setField(document, field.path, `${middle}${digits()} ${unit}`, 'us'))
  }
  return settled(document, setCalloutText(document, 'notes', 'x'.repeat(4000)))
}

describe('[M24] links by the thousand come back, and a changed one opens no other pier', () => {
  it('five thousand piers come back to the last bit', () => {
    const documents = manyDocuments(5000, 41)
    expect(documents).toHaveLength(5000)
    let longest = ''
    let typed = 0
    for (const document of documents) {
      const code = encodeLink(document)
      if (code.length > longest.length) longest = code
      const back = opened(code)
      expect(back.spec).toEqual(document.spec)
      // A text that says what a silent link means is not sent: it is written the same again.
      for (const [path, text] of Object.entries(back.written)) expect(document.written[path]).toBe(text)
      typed += Object.keys(back.written).length
    }
    // 2,953 bytes is all that a code holds (ISO/IEC 18004, version 40, level L, from memory).
    expect(longest.length).toBeLessThan(2300)
    expect(typed).toBeGreaterThan(5000)
  }, 600_000)

  it('the longest there can be stays within a code to scan, whatever is typed', () => {
    const document = worst()
    expect(Object.keys(document.written).length).toBeGreaterThan(30)
    const code = encodeLink(document)
    expect(code.length).toBeLessThanOrEqual(2300)
    const back = opened(code)
    expect({ ...back.spec, callout: null }).toEqual({ ...document.spec, callout: null })
    expect(back.spec.callout?.notes).toBe('')
  })

  /**
   * The check sees every change of up to 32 bits side by side, and a letter is six: each link is changed in each bit of each letter, every
   * tenth of them to every other letter. LONG_TESTS=1 takes every letter in all of them (2.6 million changed links).
   */
  it('two hundred links, each changed in each character, are refused or open the same pier', () => {
    const codes = manyDocuments(4000, 43)
      .filter((_, i) => i % 20 === 0)
      .map(encodeLink)
    expect(codes).toHaveLength(200)
    const strangers = ['%', '.', ' ', 'é']
    const everyLetter = [...alphabet, ...strangers]
    const oneBitOff = (letter: string) => [1, 2, 4, 8, 16, 32].map((bit) => alphabet.charAt(alphabet.indexOf(letter) ^ bit))
    let tried = 0
    for (const [i, code] of codes.entries()) {
      const isThorough = i % 10 === 0 || process.env.LONG_TESTS === '1'
      const want = JSON.stringify(opened(code))
      for (let at = 0; at < code.length; at++) {
        for (const letter of isThorough ? everyLetter : [...oneBitOff(code.charAt(at)), ...strangers]) {
          if (letter === code[at]) continue
          tried++
          const read = decodeLink(code.slice(0, at) + letter + code.slice(at + 1))
          if (read.ok) {
            if (JSON.stringify(read.value) !== want) expect.fail(`${code} at ${at} as ${letter} opens another pier`)
          } else if (!read.issues[0]?.code.startsWith('link-')) {
            expect.fail(`${code} at ${at} as ${letter}: ${read.issues[0]?.code}`)
          }
        }
      }
    }
    expect(tried).toBeGreaterThan(300_000)
  }, 600_000)
})
