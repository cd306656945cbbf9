import { useMemo } from 'react'
import type { PierDocument } from '../../core/model/spec.ts'
import { linkTo } from '../../state/addressBar.ts'
import { sheet as words } from '../../text/en/sheet.ts'
import { Block } from './blocks.tsx'
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

export type CodeOf = Readonly<{ document: PierDocument; name: string }>

/** Codes that reopen the piers of the sheet, what they hold and what they leave out. */
export const Codes = ({ piers }: Readonly<{ piers: readonly CodeOf[] }>) => (
  <Block title={words.code.title}>
    <div className='paper-codes' data-count={piers.length}>
      {piers.map(({ document, name }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a pier is its place
        <figure key={i}>
          <OneCode document={document} name={name} />
          {piers.length > 1 && <figcaption>{name}</figcaption>}
        </figure>
      ))}
      <div className='paper-codes-words'>
        <p>{words.code.scan}</p>
        {isLocal(location) && <p>{words.code.local}</p>}
        <p>{words.code.notIn}</p>
      </div>
    </div>
  </Block>
)
