import { describe, expect, it } from 'vitest'
import { textOf } from '../../src/export/textOf.ts'

describe('the text of a file', () => {
  it.each([
    ['UTF-16, low byte first', [0xff, 0xfe, 0x7b, 0x00, 0xac, 0x20]],
    ['UTF-16, high byte first', [0xfe, 0xff, 0x00, 0x7b, 0x20, 0xac]],
    ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, 0x7b, 0xe2, 0x82, 0xac]],
    ['UTF-8', [0x7b, 0xe2, 0x82, 0xac]],
  ])('is read by its byte order mark: %s', (_, bytes) => {
    expect(textOf(Uint8Array.from(bytes))).toBe('{€')
  })
})
