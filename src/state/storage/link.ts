import { deflateSync, strToU8 } from 'fflate'
import type { AnyDocument, DocumentKind } from '../../core/documents/documentKind.ts'
import { pierKind } from '../../core/documents/pier.ts'
import type { PierDocument } from '../../core/model/spec.ts'

/**
 * A link's code: one character of version, two of length, then the document's content, deflated, with a CRC-32 behind it. Only A-Z a-z 0-9 - _
 * are used, so that no program that passes a link on has a reason to change it.
 */
export const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'
/** Version of the job file that a link is written beside. */
export const version = '2'
export const checkBytes = 4
export const headLength = 3
export const longest = alphabet.length ** 2 - 1

/** From here on a link is too long for chats and codes to scan: the values go in it, but not how they were typed [characters]. */
const longestTyped = 1500

/**
 * A document as the code of a link, as it was typed where that is short enough. Words and id are not in it. Throws when it would not fit,
 * which no valid pier does, and for a kind that no link carries.
 */
export function linkCode<D extends AnyDocument>(kind: DocumentKind<D>, document: D): string {
  if (!kind.link) throw new Error(`linkCode: no link carries a ${kind.id}`)
  const code = pack(kind.link.content(document))
  return code.length <= longestTyped ? code : pack(kind.link.content(kind.onlyTyped(document, [])))
}

export const encodeLink = (document: PierDocument): string => linkCode(pierKind, document)

function pack(text: string): string {
  const content = deflateSync(strToU8(text), { level: 9 })
  const bytes = new Uint8Array(content.length + checkBytes)
  bytes.set(content)
  new DataView(bytes.buffer).setUint32(content.length, crc32(content))
  const code = toText(bytes)
  if (code.length > longest) throw new Error(`encodeLink: ${code.length} characters`)
  return `${version}${alphabet[code.length >> 6]}${alphabet[code.length & 63]}${code}`
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

/** CRC-32 as in ISO/IEC/IEEE 8802-3 (polynomial 0x04C11DB7, reflected). Every change of up to 32 neighbouring bits is seen. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff
  for (const byte of bytes) {
    crc ^= byte
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0)
  }
  return (crc ^ 0xffffffff) >>> 0
}

/** Programs that pass a link on may each encode it once more. */
const mostEncodings = 8

/** Percent-encoding undone, however often it was done. */
export const percentDecoded = (text: string): string => {
  let plain = text
  for (let i = 0; i < mostEncodings && plain.includes('%'); i++)
    plain = plain.replace(/%([0-9a-f]{2})/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)))
  return plain
}
