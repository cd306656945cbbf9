import type { ReactNode } from 'react'
import type { LifeResult } from '../../core/model/timeResult.ts'
import { lifeOf } from '../../state/timeDerived.ts'
import { wordsOf } from '../../words/index.ts'
import { useResult } from '../hooks/usePier.ts'
import { Bullets } from '../kit/Lists.tsx'
import { BandChart } from '../kit/BandChart.tsx'
import { listenToPlayer } from '../live/player.ts'
import { apartText, evidenceText, inspectionText, lackText, termiteText } from '../../facts/lifeWords.ts'
import { goneSentence, yearsText } from '../../facts/timeWords.ts'

/** Years to come: the share still sound as a band, the rows it rests on and those that disagree, what can be looked at. */
export const YearsPanel = ({ year }: Readonly<{ year: number }>) => {
  const words = wordsOf('time').years
  const life = lifeOf(useResult().spec)
  return (
    <div className='time-two'>
      <div className='stack'>
        <p className='lead'>{life.sound ? goneSentence(life.sound) : words.noRange}</p>
        {life.sound && (
          <BandChart
            name={words.curve}
            points={life.sound.map(({ year: at, share }) => ({ at, ...share }))}
            last={60}
            every={10}
            unit={words.unit}
            moment={{ at: year, listen: listenToPlayer }}
          />
        )}
        {life.sound && <p className='quiet'>{words.illustration}</p>}
        <p className='quiet'>
          {words.classes} {life.sound && life.buriedHazard !== 'none' && words.stripes}
        </p>
      </div>
      <div className='stack'>
        <Inspection life={life} />
        <h2>{words.thumb}</h2>
        <p>
          {words.thumbText(yearsText(life.ruleOfThumb.life))} {life.ruleOfThumb.applies ? words.against : words.thumbNot}
        </p>
        {life.rows.length > 0 && <p className='quiet'>{wordsOf('life').traps['trap-treated-posts-last-sixty-years']}</p>}
        <List title={words.rests} lines={life.rows.length > 0 ? life.rows.map(evidenceText) : [life.sound ? words.own : words.noRange]} />
        <List title={words.apart} lines={life.apart.map(apartText)} />
        <List title={words.lacks} lines={life.lacks.map(lackText)} />
        <List title={words.termites} lines={life.termites.map(termiteText)} />
      </div>
    </div>
  )
}

const Inspection = ({ life: { inspection } }: Readonly<{ life: LifeResult }>) => {
  const words = wordsOf('time').years
  return (
    <>
      <h2>{words.look}</h2>
      {inspection.first && (
        <p>
          {words.first(yearsText(inspection.first.low), yearsText(inspection.first.high))}
          {inspection.every !== null && ` ${words.every(yearsText(inspection.every))}`}
        </p>
      )}
      <List title={words.see} mark={<Eye isSeen />} lines={inspection.visible.map(inspectionText)} />
      <List title={words.cannot} mark={<Eye isSeen={false} />} lines={inspection.hidden.map(inspectionText)} />
    </>
  )
}

/** As it stands on the post in the picture. */
const Eye = ({ isSeen }: Readonly<{ isSeen: boolean }>) => (
  <svg className='sign time-eye' viewBox='0 0 22 22' aria-hidden='true'>
    <circle cx='11' cy='11' r='10.4' />
    <path d='M4 11Q11 2.6 18 11Q11 19.4 4 11M12.6 11a1.6 1.6 0 1 1-3.2 0a1.6 1.6 0 1 1 3.2 0' />
    {!isSeen && <path d='M4 18L18 4' />}
  </svg>
)

const List = ({ title, lines, mark }: Readonly<{ title: string; lines: readonly string[]; mark?: ReactNode }>) =>
  lines.length > 0 && (
    <>
      <h2>
        {mark}
        {title}
      </h2>
      <Bullets className='stack tight dashes' of={lines} />
    </>
  )
