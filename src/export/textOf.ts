/** Encodings that a file's first bytes may tell. */
const marks = [
  { encoding: 'utf-16le', bytes: [0xff, 0xfe] },
  { encoding: 'utf-16be', bytes: [0xfe, 0xff] },
] as const

/** The text of a file: UTF-8, or UTF-16 where its byte order mark says so. The page and the command line read every file by this. */
export function textOf(bytes: Uint8Array): string {
  const told = marks.find((mark) => mark.bytes.every((byte, i) => bytes[i] === byte))
  return new TextDecoder(told?.encoding ?? 'utf-8').decode(bytes)
}
