import { useEffect, useRef, useState } from 'react'
import { useWindow } from '../hooks/useWindow.ts'
import { wordsOf } from '../../words/index.ts'
import { Pages } from './Pages.tsx'
import { type PaperName, takePaper, usualPaper } from './paperSize.ts'
import { usePdf } from './usePdf.ts'
import { useSheet } from './useSheet.ts'
import { Button } from '../kit/Controls.tsx'

/** The wider paper, and what stands on both sides of it [px]. */
const paper = (215.9 * 96) / 25.4
const beside = 34

const shareNow = (): number => Math.min(1, Math.max(0.1, (document.documentElement.clientWidth - beside) / paper))

/** How much smaller a page has to be drawn to be seen over its whole width, and whether it is. */
const useFit = () => {
  const [share, setShare] = useState(shareNow)
  const [isFitted, setFitted] = useState(true)
  useWindow({ resize: () => setShare(shareNow()) })
  return { share, isNarrow: share < 1, isFitted: isFitted && share < 1, toggle: () => setFitted((fitted) => !fitted) }
}

const papers: readonly PaperName[] = ['letter', 'a4']

/** Everything of the page but the sheet is out of reach, and comes back as it was left. */
const useAlone = (own: React.RefObject<HTMLElement | null>): void =>
  useEffect(() => {
    const before = document.activeElement
    const others = [...document.body.children].filter((element) => element !== own.current && !element.hasAttribute('inert'))
    for (const element of others) element.setAttribute('inert', '')
    own.current?.querySelector('button')?.focus({ preventScroll: true })
    return () => {
      for (const element of others) element.removeAttribute('inert')
      if (before instanceof HTMLElement) before.focus({ preventScroll: true })
    }
  }, [own])

/** The sheet as it comes out of the printer, over the whole page. */
export const SheetView = ({ onClose }: Readonly<{ onClose: () => void }>) => {
  const words = wordsOf('sheet')
  const own = useRef<HTMLElement>(null)
  const [paper, setPaper] = useState<PaperName>(() => usualPaper(navigator.language))
  const content = useSheet()
  const pdf = usePdf(own, paper, content?.facts.name ?? '')
  const fit = useFit()
  useAlone(own)
  useEffect(() => takePaper(paper), [paper])
  useEffect(() => {
    // Keys of what lies behind stay away from the sheet.
    const element = own.current
    const onKeyDown = (event: KeyboardEvent) => {
      event.stopPropagation()
      if (event.key === 'Escape') onClose()
    }
    element?.addEventListener('keydown', onKeyDown)
    return () => element?.removeEventListener('keydown', onKeyDown)
  }, [onClose])
  const print = async () => {
    await document.fonts?.ready
    await Promise.all([...(own.current?.querySelectorAll('img') ?? [])].map((image) => image.decode().catch(() => undefined)))
    window.print()
  }
  return (
    // A press on the paper keeps the keyboard here.
    <main
      ref={own}
      className='paperwork'
      tabIndex={-1}
      data-paper={paper}
      data-fitted={(fit.isFitted && !pdf.isBusy) || undefined}
      style={{ '--fit': fit.share } as React.CSSProperties}
      aria-busy={content === null}
    >
      <header className='paperwork-head panel under-heavy line'>
        <Button onClick={onClose}>
          <span aria-hidden='true'>‹ </span>
          {words.close}
        </Button>
        <h1 className='heavy'>{words.title}</h1>
        <fieldset className='line wide'>
          <legend className='spoken'>{words.paper}</legend>
          {papers.map((one) => (
            <label key={one}>
              <input type='radio' name='paper' checked={paper === one} onChange={() => setPaper(one)} />
              <span>{words.sizes[one]}</span>
            </label>
          ))}
        </fieldset>
        <Button disabled={content === null} onClick={() => void print()}>
          {words.print}
        </Button>
        <Button disabled={content === null} aria-disabled={pdf.isBusy} onClick={() => void pdf.make()}>
          {words.pdf}
        </Button>
        {fit.isNarrow && (
          <Button aria-pressed={!fit.isFitted} onClick={fit.toggle}>
            {words.fullSize}
          </Button>
        )}
        <p className='quiet' role='status'>
          {pdf.words}
        </p>
        <p className='quiet'>
          {fit.isFitted ? words.fitted : words.help} {words.full}
        </p>
      </header>
      <div className='paperwork-pages'>{content ? <Pages content={content} /> : <p role='status'>{words.loading}</p>}</div>
    </main>
  )
}
