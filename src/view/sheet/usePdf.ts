import { useState } from 'react'
import { flushSync } from 'react-dom'
import { version } from '../../../package.json'
import { fileName } from '../../export/fileName.ts'
import { wordsOf } from '../../words/index.ts'
import { saveFile } from '../files/handOver.ts'
import type { PaperName } from './paperSize.ts'

type Said = Readonly<{ isBusy: boolean; words: string }>

/** Makes a PDF of the pages in `own` and hands it to the browser; what makes it is fetched when it is first asked for. */
export const usePdf = (own: React.RefObject<HTMLElement | null>, paper: PaperName, name: string) => {
  const words = wordsOf('sheet')
  const [said, setSaid] = useState<Said>({ isBusy: false, words: '' })
  const make = async () => {
    if (said.isBusy) return
    // Pages stand at their full size from here on.
    flushSync(() => setSaid({ isBusy: true, words: words.pdfMaking }))
    try {
      const { sheetPdf } = await import('./pdf/sheetPdf.ts')
      await document.fonts?.ready
      const papers = [...(own.current?.querySelectorAll('.paper') ?? [])]
      const blob = await sheetPdf(papers, { paper, title: name, madeWith: `${wordsOf('app').name} ${version}` })
      const file = { name: fileName(name === wordsOf('app').untitled ? '' : name, 'sheet', 'pdf'), blob }
      saveFile(file)
      setSaid({ isBusy: false, words: words.pdfMade(file.name) })
    } catch {
      setSaid({ isBusy: false, words: words.pdfFailed })
    }
  }
  return { ...said, make }
}
