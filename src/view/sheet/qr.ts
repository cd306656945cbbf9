import { encode } from 'uqr'

/** A QR code as one path in modules, a quiet border of four modules round it; null when the text is too long for one. */
export function qrPath(text: string): Readonly<{ size: number; path: string }> | null {
  try {
    const { size, data } = encode(text, { ecc: text.length > 700 ? 'L' : 'M', border: 4 })
    const path = data
      .flatMap((row, y) =>
        row.flatMap((dark, x) => {
          if (!dark || row[x - 1]) return []
          let end = x
          while (row[end]) end++
          return [`M${x} ${y}h${end - x}v1h${x - end}z`]
        }),
      )
      .join('')
    return { size, path }
  } catch {
    return null
  }
}

/** Only a page that others can reach makes a code for other machines. */
export const isLocal = ({ protocol, hostname }: Pick<Location, 'protocol' | 'hostname'>): boolean =>
  !protocol.startsWith('http') || hostname === 'localhost' || hostname === '[::1]' || /^127\./.test(hostname)
