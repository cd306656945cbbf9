import { useState } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { usePier, useResult } from '../../hooks/usePier.ts'
import { issueText } from '../../../facts/issueWords.ts'
import { Mark } from '../../kit/Mark.tsx'
import { Button } from '../../kit/Controls.tsx'

/** The general notes of the sheet: always in view, in full at a touch. */
export const CautionStrip = () => {
  const [open, setOpen] = useState(false)
  const system = usePier((state) => state.view.units)
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
          {issues.length > 0 && (
            <ul className='stack'>
              {issues.map((issue) => (
                <li key={issue.code + issue.path}>
                  <Mark name='warning' /> {issueText(issue, system)}
                </li>
              ))}
            </ul>
          )}
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
