import { useState } from 'react'
import { locale, wordsOf } from '../../words/index.ts'

import { canShare, type MadeFile, saveFile, shareFile } from '../files/handOver.ts'
import type { FileOutcome } from './useFileMaker.ts'
import { Button } from '../kit/Controls.tsx'

const kilobytes = (bytes: number): string => Math.max(1, Math.round(bytes / 1000)).toLocaleString(locale())

/** A file that is ready can be had again, or handed to another app, should the browser not have saved it. */
const SecondWay = ({ file }: { file: MadeFile }) => {
  const exporting = wordsOf('takeAlong')
  const [told, setTold] = useState<string | null>(null)
  return (
    <span className='line wide small above'>
      <span>{exporting.nothingCame}</span>
      <Button onClick={() => saveFile(file)}>{exporting.again}</Button>
      {canShare(file) && (
        <Button onClick={async () => setTold((await shareFile(file)) ? exporting.shared : exporting.notShared)}>{exporting.share}</Button>
      )}
      {told && <span>{told}</span>}
    </span>
  )
}

/** What came of the file last asked for, in words. */
export const Outcome = ({ outcome }: { outcome: FileOutcome | null }) => {
  const exporting = wordsOf('takeAlong')
  return (
    <div className='take-along-outcome panel broken-anywhere' role='status' data-kind={outcome?.kind}>
      {outcome?.kind === 'making' && <p>{exporting.making(exporting.files[outcome.id].kind)}</p>}
      {outcome?.kind === 'failed' && <p>{exporting.failed[outcome.id]}</p>}
      {outcome?.kind === 'made' && (
        <>
          <p>{exporting.made(outcome.file.name, exporting.size(kilobytes(outcome.file.blob.size)))}</p>
          <SecondWay key={outcome.file.name} file={outcome.file} />
        </>
      )}
    </div>
  )
}
