import { inflateSync, strFromU8 } from 'fflate'
import type { Issue, Result } from '../../core/model/issue.ts'
import { pierReader } from '../../core/documents/readPier.ts'
import type { PierDocument } from '../../core/model/spec.ts'
import type { IssueCode } from '../../core/spec/issueCodes.ts'
import { alphabet, checkBytes, crc32, headLength, longest, percentDecoded, version } from './link.ts'

type Refused = Extract<Result<never>, { ok: false }>
const refused = (code: IssueCode, facts: Partial<Issue> = {}): Refused => ({
  ok: false,
  issues: [{ code, severity: 'error', path: '', ...facts }],
})

/**
 * Reads the code of a link. White space, quote marks of mail programs and a stop after the end are overlooked; any other change is
 * named: cut off, of another version, a strange character, damaged, or not a document of this kind.
 * @param fromContent reads what the code of a version carries
 */
export function readLinkCode<D>(text: string, fromContent: (content: string, version: number) => Result<D>): Result<D> {
  const code = unwrapped(text)
  if (code === '') return refused('link-too-short', { got: 0, limit: headLength })
  const written = Number(code[0])
  if (!(written >= 1 && written <= Number(version))) return refused('link-version', { got: code.slice(0, 1), limit: version })
  const odd = /[^\w-]/u.exec(code)?.[0]
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
    return fromContent(strFromU8(inflateSync(content)), written)
  } catch {
    return refused('link-content')
  }
}

const fromPier = pierReader.fromLink ?? (() => refused('link-content'))
/** A pier from the code of its link. */
export const decodeLink = (text: string): Result<PierDocument> => readLinkCode(text, fromPier)

/** What is left when programs have wrapped, quoted or percent-encoded a link. */
function unwrapped(text: string): string {
  if (/^[\w-]+$/.test(text)) return text
  return percentDecoded(text.slice(0, 4 * longest))
    .replace(/[\s>]/g, '')
    .replace(/^[#<("']+/, '')
    .replace(/[.,;:!?)"'\]]+$/, '')
}

/** Value of each letter by its code; 0 for any other, which is refused before. */
const letterValue = new Uint8Array(128)
for (let i = 0; i < alphabet.length; i++) letterValue[alphabet.charCodeAt(i)] = i

/** The bytes; null for a length that no bytes have, or when spare bits are set: each link is written in one way only. */
function toBytes(text: string): Uint8Array | null {
  const spare = text.length % 4
  if (spare === 1) return null
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4))
  let at = 0
  for (let i = 0; i < text.length; i += 4) {
    let word = 0
    for (let k = 0; k < 4; k++) word = (word << 6) | (i + k < text.length ? (letterValue[text.charCodeAt(i + k)] ?? 0) : 0)
    for (let shift = 16; shift >= 0 && at < bytes.length; shift -= 8) bytes[at++] = (word >> shift) & 255
    const isLast = i + 4 >= text.length
    if (isLast && spare !== 0 && (word & (spare === 2 ? 0xffff : 0xff)) !== 0) return null
  }
  return bytes
}
