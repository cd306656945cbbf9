import { gzipSync } from 'node:zlib'
import fc from 'fast-check'
import { deflateSync, strToU8 } from 'fflate'
import { describe, expect, it } from 'vitest'
import type { PierDocument } from '../../src/core/model/spec.ts'
import { defaultDocument, defaultSpec } from '../../src/core/spec/defaults.ts'
import { writeJob } from '../../src/core/spec/jobFile.ts'
import { linkContent } from '../../src/core/spec/linkContent.ts'
import { crc32, encodeLink } from '../../src/state/storage/link.ts'
import { decodeLink } from '../../src/state/storage/readLink.ts'
import { arbitraryPier } from '../arbitraryPier.ts'
import versionOne from './links/version-1.json' with { type: 'json' }
import versionTwo from './links/version-2.json' with { type: 'json' }

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
/** What a link can say of a pier: nothing of name and note, of where values came from, and of kinds that are not in use. */
const nameless = (document: PierDocument): PierDocument => ({ ...document, origins: {}, otherKinds: [], name: '', note: '' })
const opened = (code: string): PierDocument => {
  const read = decodeLink(code)
  if (!read.ok) expect.fail(`${code}: ${JSON.stringify(read.issues)}`)
  return read.value
}
const codes = (code: string) => decodeLink(code).issues.map((issue) => issue.code)

describe('link', () => {
  it('of the first pier is short', () => {
    expect(linkContent(defaultDocument)).toBe('[]')
    expect(encodeLink(defaultDocument).length).toBeLessThan(16)
    expect(opened(encodeLink(defaultDocument))).toEqual(defaultDocument)
  })

  it('brings back every random pier to the last digit, and its file word for word, without name and note', () => {
    let longest = 0
    fc.assert(
      fc.property(arbitraryPier(), (document) => {
        const code = encodeLink(document)
        longest = Math.max(longest, code.length)
        const back = opened(code)
        expect(back.spec).toEqual(document.spec)
        expect(writeJob(back)).toBe(writeJob(nameless(document)))
        expect([...code].every((letter) => alphabet.includes(letter))).toBe(true)
        expect(encodeLink(back)).toBe(code)
      }),
      { numRuns: 400 },
    )
    expect(longest).toBeLessThan(1500)
  })

  it('says nothing of name and note', () => {
    const document = { ...defaultDocument, name: 'Lake place', note: 'ask about the slope' }
    expect(encodeLink(document)).toBe(encodeLink(defaultDocument))
  })

  it('changed in any one character is refused, or opens the same pier', () => {
    const samples = fc.sample(arbitraryPier(), { numRuns: 40, seed: 3 }).map(encodeLink)
    for (const code of samples) {
      const want = JSON.stringify(opened(code))
      for (let at = 0; at < code.length; at++) {
        for (const letter of [
          'A',
          '_',
          alphabet[(alphabet.indexOf(code.charAt(at)) + 1) % 64] ?? '',
          alphabet[alphabet.indexOf(code.charAt(at)) ^ 32] ?? '',
          '~',
        ]) {
          if (letter === code[at]) continue
          const read = decodeLink(code.slice(0, at) + letter + code.slice(at + 1))
          if (read.ok) expect(JSON.stringify(read.value)).toBe(want)
          else expect(read.issues[0]?.code).toMatch(/^link-/)
        }
      }
    }
  })

  it('cut off anywhere says that it is too short', () => {
    const code = encodeLink(fc.sample(arbitraryPier(), { numRuns: 1, seed: 5 })[0] ?? defaultDocument)
    for (let length = 0; length < code.length; length++) expect(codes(code.slice(0, length))).toEqual(['link-too-short'])
  })

  it('is read through what mail programs do to it', () => {
    const [document = defaultDocument] = fc.sample(arbitraryPier(), { numRuns: 1, seed: 11 })
    const code = encodeLink(document)
    const want = JSON.stringify(opened(code))
    const wrapped = code.replace(/.{20}/g, '$&\r\n> ')
    const percent = [...code].map((letter) => `%${letter.charCodeAt(0).toString(16)}`).join('')
    const twice = percent.replaceAll('%', '%25')
    for (const text of [` ${code} `, `${code}.`, `(${code})`, `<${code}>`, `"${code}"`, wrapped, percent, twice])
      expect(JSON.stringify(opened(text))).toBe(want)
  })

  it.each([
    ['', 'link-too-short'],
    ['3AA', 'link-version'],
    ['0AA', 'link-version'],
    ['2AA', 'link-checksum'],
    ['x', 'link-version'],
    ['1AA', 'link-checksum'],
    ['1AEabcd', 'link-checksum'],
    ['1A!abcd', 'link-alphabet'],
    ['1ZZabcd', 'link-too-short'],
  ])('%j is %s', (text, code) => expect(codes(text)).toEqual([code]))

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 300 }),
          fc.string({ maxLength: 300 }).map((text) => `1${text}`),
        ),
        (text) => !decodeLink(text).ok || text.length > 3,
      ),
      {
        numRuns: 2000,
      },
    )
  })

  it.each([
    ['no list', '{"hd":"20 in"}'],
    ['an unknown key', '["zz",1]'],
    ['a key twice', '["hd","20 in","hd","21 in"]'],
    ['half a pair', '["hd"]'],
    ['a list for a value', '["hd",[1]]'],
    ['a pier that cannot be built', '["hd","4 in"]'],
    ['a choice nobody has', '["fk","magic"]'],
    ['a reach into prototypes', '["__proto__",1]'],
    ['no JSON', 'hello'],
  ])('whole but with %s is refused as content', (_, content) => {
    const packed = deflateSync(strToU8(content))
    const bytes = new Uint8Array(packed.length + 4)
    bytes.set(packed)
    new DataView(bytes.buffer).setUint32(packed.length, crc32(packed))
    const text = Buffer.from(bytes).toString('base64url')
    const code = `1${alphabet[text.length >> 6]}${alphabet[text.length & 63]}${text}`
    expect(codes(code)[0]).toBe('link-content')
  })

  it('checks with CRC-32, as zlib computes it', () => {
    // "123456789" gives cbf43926: the check value that lists of such codes print (from memory). zlib writes the same into a gzip's last bytes.
    expect(crc32(strToU8('123456789')).toString(16)).toBe('cbf43926')
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const zipped = gzipSync(bytes)
        return crc32(bytes) === zipped.readUInt32LE(zipped.length - 8)
      }),
    )
  })
})

/** Links made by released versions. They open the same pier for ever: add a file with each version of the link, never change one. */
describe('links of every release', () => {
  it.each([...versionOne, ...versionTwo])('$code', ({ code, written, spec }) => {
    const read = opened(code)
    // What came into the document later is as in the pier that everybody starts from.
    expect(read.spec).toEqual({ ...defaultSpec, ...spec, post: { ...defaultSpec.post, ...spec.post } })
    expect(read.written).toEqual(written)
  })
})
