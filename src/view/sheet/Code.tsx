import { useMemo } from 'react'
import type { PierDocument } from '../../core/model/spec.ts'
import { linkTo } from '../../state/storage/address.ts'
import { wordsOf } from '../../words/index.ts'
import { isLocal, qrPath } from './qr.ts'

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
    <span className='paper-quiet'>
      {words.code.scan} {isLocal(location) && words.code.local} {words.code.notIn}
    </span>
  )
}
