import { Suspense, useState } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { Mark } from '../../kit/Mark.tsx'
import { Button } from '../../kit/Controls.tsx'
import { lazyPage } from '../../lazyPage.tsx'

const IssueLines = lazyPage(() => import('../IssueLines.tsx').then((module) => module.IssueLines), [])

/** The general notes of the sheet: always in view, in full at a touch. */
export const CautionStrip = () => {
  const [open, setOpen] = useState(false)
  const { issues } = useResult()
  const words = wordsOf('app').strip
  return (
    <section className='strip panel' aria-label={wordsOf('app').panels.notes}>
      <Button className='strip-line ring-inside small' aria-expanded={open} onClick={() => setOpen(!open)}>
        {issues.length > 0 && (
          <span className='verdict heavy mark-short'>
            <Mark name='short' /> {words.count(issues.length)}
          </span>
        )}
        <span className='grows'>{words.standing}</span>
        <span className='strong underlined'>
          {open ? (
            words.less
          ) : (
            <>
              <span className='wide-word'>{words.more}</span>
              <span className='narrow-word'>{words.moreShort}</span>
            </>
          )}
        </span>
      </Button>
      {open && (
        <div className='strip-all stack wide small'>
          <Suspense>{issues.length > 0 && <IssueLines issues={issues} mark={<Mark name='warning' />} className='stack' />}</Suspense>
          <ul className='stack'>
            {wordsOf('cautions').standing.map((caution) => (
              <li key={caution.id}>
                <strong>{caution.short}</strong> {caution.long}
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  )
}
