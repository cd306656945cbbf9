import { useEffect, useState } from 'react'
import { flushSync } from 'react-dom'
import { seenDocument } from '../../state/derived.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'
import { SectionView } from '../section/SectionView.tsx'
import '../section/waterAndYears.ts'
import './printPage.css'

/** What the browser's own print shows while no sheet is open: the section and all cautions, made the moment it is asked for. */
export const PrintPage = () => {
  const name = usePier((state) => seenDocument(state).name)
  const theme = usePier((state) => state.view.theme)
  const [isPrinting, setPrinting] = useState(false)
  useEffect(() => {
    // The browser takes the page as it is when this returns.
    const begin = () => {
      // Paper is white, whatever the page is.
      document.documentElement.dataset.theme = 'paper'
      flushSync(() => setPrinting(true))
    }
    const end = () => {
      document.documentElement.dataset.theme = theme
      setPrinting(false)
    }
    window.addEventListener('beforeprint', begin)
    window.addEventListener('afterprint', end)
    return () => {
      window.removeEventListener('beforeprint', begin)
      window.removeEventListener('afterprint', end)
    }
  }, [theme])
  if (!isPrinting) return null
  return (
    <section className='print-page' aria-label={wordsOf('app').print.title}>
      <h2>{name === '' ? wordsOf('app').name : name}</h2>
      <div className='print-section holds'>
        <SectionView />
      </div>
      <ul>
        {wordsOf('cautions').standing.map((caution) => (
          <li key={caution.id}>
            <strong>{caution.short}</strong> {caution.long}
          </li>
        ))}
      </ul>
      <p>{wordsOf('app').print.full}</p>
    </section>
  )
}
