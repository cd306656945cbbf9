import { useMemo } from 'react'
import type { PierDocument } from '../../core/model/spec.ts'
import { linkTo } from '../../state/storage/address.ts'
import { wordsOf } from '../../words/index.ts'
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

const linkOf = (document: PierDocument): string | null => {
  try {
    return linkTo(document, location.href)
  } catch {
    return null
  }
}

/** One code with its name below it. */
export const OneCode = ({ document, name }: Readonly<{ document: PierDocument; name: string }>) => {
  const words = wordsOf('sheet')
  const code = useMemo(() => {
    const link = linkOf(document)
    return link === null ? null : qrPath(link)
  }, [document])
  if (code === null) return <p>{words.code.tooLong}</p>
  return (
    <svg className='paper-code' viewBox={`0 0 ${code.size} ${code.size}`} role='img' aria-label={words.code.label(name)}>
      <rect width={code.size} height={code.size} fill='#ffffff' />
      <path d={code.path} fill='#000000' shapeRendering='crispEdges' />
    </svg>
  )
}

/** What codes are for, and what they leave out. */
export const CodeWords = () => {
  const words = wordsOf('sheet')
  return (
    <span className='quiet'>
      {words.code.scan} {isLocal(location) && words.code.local} {words.code.notIn}
    </span>
  )
}
