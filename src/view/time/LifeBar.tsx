import type { LifeResult } from '../../core/model/timeResult.ts'
import { wordsOf } from '../../words/index.ts'
import { yearsOf } from '../../facts/timeWords.ts'
const last = 60
const [width, height] = [340, 48]
const x = (year: number): number => 42 + (Math.min(last, year) / last) * 288

/** The range of life as a bar over the years, the trade's figure as a broken line beside it, and the year on show. */
export const LifeBar = ({ life: { estimated, ruleOfThumb }, at }: Readonly<{ life: LifeResult; at: number }>) => {
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
