import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate'
import type { Issue, Result } from '../core/model/issue.ts'
import type { PierDocument } from '../core/model/spec.ts'
import type { IssueCode } from '../core/spec/issueCodes.ts'
import { documentFromContent, linkContent } from '../core/spec/linkFields.ts'

/**
 * A link: one character of version, two of length, then the pier's content, deflated, with a CRC-32 behind it. Only A-Z a-z 0-9 - _
 * are used, so that no program that passes a link on has a reason to change it.
 */
const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
const version = '1'
const checkBytes = 4
const headLength = 3
const longest = alphabet.length ** 2 - 1

const refused = (code: IssueCode, facts: Partial<Issue> = {}): Result<PierDocument> => ({
  ok: false,
  issues: [{ code, severity: 'error', path: '', ...facts }],
})

/** The pier as the code of a link. Name and note are not in it. Throws when it would not fit, which no valid pier does. */
export function encodeLink(document: PierDocument): string {
  const content = deflateSync(strToU8(linkContent(document)), { level: 9 })
  const bytes = new Uint8Array(content.length + checkBytes)
  bytes.set(content)
  new DataView(bytes.buffer).setUint32(content.length, crc32(content))
  const code = toText(bytes)
  if (code.length > longest) throw new Error(`encodeLink: ${code.length} characters`)
  return `${version}${alphabet[code.length >> 6]}${alphabet[code.length & 63]}${code}`
}

/**
 * Reads the code of a link. White space, quote marks of mail programs and a stop after the end are overlooked; any other change is
 * named: cut off, of another version, a strange character, damaged, or not a pier.
 */
export function decodeLink(text: string): Result<PierDocument> {
  const code = unwrapped(text)
  if (code === '') return refused('link-too-short', { got: 0, limit: headLength })
  if (code[0] !== version) return refused('link-version', { got: code.slice(0, 1), limit: version })
  const odd = [...code].find((letter) => !alphabet.includes(letter))
  if (odd !== undefined) return refused('link-alphabet', { got: odd })
  const told = headLength + alphabet.indexOf(code.charAt(1)) * 64 + alphabet.indexOf(code.charAt(2))
  if (code.length < headLength || code.length < told)
    return refused('link-too-short', { got: code.length, limit: Math.max(told, headLength) })
  const bytes = code.length === told ? toBytes(code.slice(headLength)) : null
  if (bytes === null || bytes.length <= checkBytes) return refused('link-checksum')
  const content = bytes.subarray(0, bytes.length - checkBytes)
  const check = new DataView(bytes.buffer, content.length).getUint32(0)
  if (check !== crc32(content)) return refused('link-checksum')
  try {
    return documentFromContent(strFromU8(inflateSync(content)))
  } catch {
    return refused('link-content')
  }
}

/** What is left when programs have wrapped, quoted or percent-encoded a link. */
function unwrapped(text: string): string {
  const plain = text
    .slice(0, 4 * longest)
    .replace(/%(?:25)*([0-9a-f]{2})/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
  return plain
    .replace(/[\s>]/g, '')
    .replace(/^[#<("']+/, '')
    .replace(/[.,;:!?)"'\]]+$/, '')
}

function toText(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b, c] = bytes.subarray(i, i + 3)
    const word = (a << 16) | ((b ?? 0) << 8) | (c ?? 0)
    const letters = b === undefined ? 2 : c === undefined ? 3 : 4
    for (let k = 0; k < letters; k++) text += alphabet.charAt((word >> (18 - 6 * k)) & 63)
  }
  return text
}

/** The bytes; null for a length that no bytes have, or when spare bits are set: each link is written in one way only. */
function toBytes(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null
  const bytes: number[] = []
  for (let i = 0; i < text.length; i += 4) {
    const group = text.slice(i, i + 4)
    const word = [0, 1, 2, 3].reduce((sum, k) => (sum << 6) | Math.max(alphabet.indexOf(group.charAt(k)), 0), 0)
    if (group.length < 4 && (word & (group.length === 2 ? 0xffff : 0xff)) !== 0) return null
    bytes.push(...[(word >> 16) & 255, (word >> 8) & 255, word & 255].slice(0, group.length - 1))
  }
  return Uint8Array.from(bytes)
}

/** CRC-32 as in ISO/IEC/IEEE 8802-3 (polynomial 0x04C11DB7, reflected). Every change of up to 32 neighbouring bits is seen. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff
  for (const byte of bytes) {
    crc ^= byte
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0)
  }
  return (crc ^ 0xffffffff) >>> 0
}
