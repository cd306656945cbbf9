import './sheet.css'
import { ComparedPages } from './ComparedPages.tsx'
import { PierPages } from './PierPages.tsx'
import { Sources } from './sourcesBlock.tsx'
import type { SheetContent } from './useSheet.ts'

/** The pages of a sheet, of one pier or of several. */
export const Pages = ({ content }: Readonly<{ content: SheetContent }>) => {
  if (content.kind === 'one') return <PierPages {...content} sources={<Sources key='sources' results={[content.result]} />} />
  const results = content.piers.flatMap(({ pier }) => pier?.result ?? [])
  return <ComparedPages {...content} sources={<Sources key='sources' results={results} />} />
}
