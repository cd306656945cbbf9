import { useEffect, useState } from 'react'
import { createPortal, flushSync } from 'react-dom'
import { forgetWidths, lettersReady } from '../section/typeSize.ts'
import { Pages } from './Pages.tsx'
import { takePaper, usualPaper } from './paperSize.ts'
import { comparedSheet, type SheetContent } from './useSheet.ts'

const paper = usualPaper(navigator.language)

/** What the browser's own print takes while piers are compared and no sheet is open: the sheet of all of them. */
export const ComparedPrint = () => {
  const [content, setContent] = useState<SheetContent | null>(null)
  useEffect(() => {
    void lettersReady().then(forgetWidths)
    let giveBack: (() => void) | null = null
    // The browser takes the page as it is when this returns.
    const begin = () => {
      if (document.querySelector('.paperwork:not(.paperwork-unseen)')) return
      giveBack = takePaper(paper)
      flushSync(() => setContent(comparedSheet()))
    }
    const end = () => {
      giveBack?.()
      giveBack = null
      setContent(null)
    }
    window.addEventListener('beforeprint', begin)
    window.addEventListener('afterprint', end)
    return () => {
      window.removeEventListener('beforeprint', begin)
      window.removeEventListener('afterprint', end)
      giveBack?.()
    }
  }, [])
  if (content === null) return null
  return createPortal(
    <div className='paperwork paperwork-unseen' data-paper={paper} aria-hidden='true'>
      <div className='paperwork-pages'>
        <Pages content={content} />
      </div>
    </div>,
    document.body,
  )
}
