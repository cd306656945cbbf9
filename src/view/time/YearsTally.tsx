import { useMemo } from 'react'
import { tallyBy } from '../../state/goneBy.ts'
import { usePier, useResult } from '../hooks/usePier.ts'
import { Tally } from '../kit/Tally.tsx'

/** The tally of the year on show, at the upper left of the picture. */
export const YearsTally = () => {
  const { spec } = useResult()
  const year = usePier(({ view: { time } }) => (time?.stretch === 'years' ? time.year : null))
  const isWrong = usePier(({ view }) => view.mistakes.length > 0)
  const counts = useMemo(() => (year === null ? null : tallyBy(spec, year)), [spec, year])
  if (year === null) return null
  return (
    <div className='tally-place' data-low={isWrong || undefined}>
      <Tally counts={counts} year={year} />
    </div>
  )
}
