import type { ReactNode } from 'react'
import type { Band, LifeResult } from '../../core/model/timeResult.ts'
import type { Seconds } from '../../core/units/quantity.ts'
import { lifeOf } from '../../state/timeDerived.ts'
import { wordsOf } from '../../words/index.ts'
import { useResult } from '../hooks/usePier.ts'
import { Bullets } from '../kit/Lists.tsx'
import { BandChart } from '../kit/BandChart.tsx'
import { listenToPlayer } from '../live/player.ts'
import { evidenceText, inspectionText, lackText } from '../../facts/lifeWords.ts'
import { yearsText, yearsOf } from '../../facts/timeWords.ts'

const last = 60
const [width, height] = [340, 48]
const x = (year: number): number => 42 + (Math.min(last, year) / last) * 288

/** The range of life as a bar over the years, the trade's figure as a broken line beside it, and the year on show. */
const LifeBar = ({ life: { estimated, ruleOfThumb }, at }: Readonly<{ life: LifeResult; at: number }>) => {
  const words = wordsOf('time').years
  const [low, high] = estimated ? [yearsOf(estimated.low), yearsOf(estimated.high)] : [0, 0]
  const thumb = yearsOf(ruleOfThumb.life)
  return (
    <svg className='drawing' viewBox={`0 0 ${width} ${height}`} role='img' aria-label={words.life}>
      <line className='line-ink' x1={x(0)} x2={x(last)} y1='30' y2='30' />
      {[0, 10, 20, 30, 40, 50, 60].map((year) => (
        <line key={year} className='line-ink' x1={x(year)} x2={x(year)} y1='27' y2='33' />
      ))}
      {estimated && <rect className='band' x={x(low)} y='12' width={Math.max(3, x(high) - x(low))} height='18' />}
      {estimated && high > last && <path className='fill-ink' d={`M${x(last)} 12l8 9l-8 9`} />}
      <line className='line-ink bold dashed' x1={x(thumb)} x2={x(thumb)} y1='6' y2='34' />
      <text x={x(thumb)} y='47' textAnchor='middle'>
        {words.thumbShort}
      </text>
      <line className='line-ink firm' x1={x(at)} x2={x(at)} y1='4' y2='36' />
    </svg>
  )
}

/** Years to come: a range of life, the share still sound as a band, the rows it rests on and those that disagree, what can be looked at. */
export const YearsPanel = ({ year }: Readonly<{ year: number }>) => {
  const words = wordsOf('time').years
  const life = lifeOf(useResult().spec)
  return (
    <div className='time-two'>
      <div className='stack'>
        <p className='lead'>{life.estimated ? `${words.life}: ${rangeText(life.estimated)}` : words.noRange}</p>
        {life.estimated && <LifeBar life={life} at={year} />}
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
        <List
          title={words.rests}
          lines={life.rows.length > 0 ? life.rows.map(evidenceText) : [life.reference ? words.own : words.noRange]}
        />
        <List title={words.beside} lines={life.beside.map(evidenceText)} />
        <List title={words.lacks} lines={life.lacks.map(lackText)} />
      </div>
    </div>
  )
}

/** Never one year: a range. */
const rangeText = ({ low, high }: Band<Seconds>): string => {
  const words = wordsOf('time').years
  return Number.isFinite(high) ? words.range(yearsText(low), yearsText(high)) : words.rangeOpen(yearsText(low))
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
