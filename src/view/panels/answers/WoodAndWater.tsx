import { Suspense } from 'react'
import type { Contact } from '../../../core/model/kind.ts'
import type { ExposureLine } from '../../../core/model/result.ts'
import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { CheckRow } from './CheckRow.tsx'
import { isSame } from './sideWords.ts'
import { lazyPage } from '../../lazyPage.tsx'

const WaterPanel = lazyPage(
  () => import('../water/WaterPanel.tsx').then((module) => module.WaterPanel),
  ['answers', 'compare', 'glossary', 'moisture', 'reasons', 'terms'],
)

/** From the top down, as they mostly lie; the bar says how much, not where. */
const order: readonly Contact[] = ['air', 'native-soil', 'backfill', 'granular', 'flowable-fill', 'concrete', 'dry-mix', 'gravel']
const present = (by: ExposureLine['by']) =>
  order.flatMap((contact) => ((by[contact] ?? 0) > 1e-6 ? [[contact, by[contact] ?? 0] as const] : []))

const isAlike = (a: ExposureLine, b: ExposureLine): boolean =>
  isSame([a.belowGrade, b.belowGrade]) &&
  isSame([a.inConcreteAboveGrade, b.inConcreteAboveGrade]) &&
  order.every((contact) => isSame([a.by[contact] ?? 0, b.by[contact] ?? 0]))

const Side = ({ line, title, longest }: { line: ExposureLine; title: string; longest: number }) => {
  const { say } = useUnits()
  const parts = present(line.by)
  return (
    <div className='exposure-line'>
      <div className='exposure-head'>
        <h5>{title}</h5>
        <span className='number'>{say(line.belowGrade, 'length')}</span>
      </div>
      <div className='exposure-bar' aria-hidden='true'>
        {parts.map(([contact, length]) => (
          <span key={contact} className={`contact contact-${contact}`} style={{ width: `${(100 * length) / longest}%` }} />
        ))}
      </div>
      <p className='exposure-words'>
        {parts.map(([contact, length]) => `${wordsOf('materials').contacts[contact]} ${say(length, 'length')}`).join(', ')}
        {line.inConcreteAboveGrade > 1e-6 && ` · ${wordsOf('app').answers.aboveGrade(say(line.inConcreteAboveGrade, 'length'))}`}
      </p>
    </div>
  )
}

/** Each side by its name; sides that are alike, as on level ground, once. */
function told(lines: readonly ExposureLine[]): readonly Readonly<{ title: string; line: ExposureLine }>[] {
  const { sides } = wordsOf('app').answers
  const [up, middle, down] = (['uphill', 'axis', 'downhill'] as const).map((side) => lines.find((line) => line.side === side))
  if (!up || !middle || !down || !isAlike(up, down)) return lines.map((line) => ({ title: sides[line.side], line }))
  if (isAlike(up, middle)) return [{ title: sides.all, line: up }]
  return [
    { title: sides.faces, line: up },
    { title: sides.axis, line: middle },
  ]
}

/** How much wood is below grade, on which side, and what touches it. */
export const WoodAndWater = () => {
  const { exposure } = useResult()
  const { say } = useUnits()
  const longest = Math.max(...exposure.lines.map((line) => line.belowGrade), 1e-9)
  const words = wordsOf('app').answers
  const lines = told(exposure.lines)
  const areas = order.flatMap((contact) => ((exposure.area[contact] ?? 0) > 1e-9 ? [[contact, exposure.area[contact] ?? 0] as const] : []))
  return (
    <>
      {exposure.standOff ? (
        <>
          <p>{words.noWoodBelow}</p>
          {exposure.standOff.checks.map((check) => (
            <CheckRow key={check.id} check={check} />
          ))}
        </>
      ) : (
        <>
          {lines.map(({ title, line }) => (
            <Side key={title} line={line} title={title} longest={longest} />
          ))}
          <dl className='pairs'>
            <div>
              <dt>{words.woodArea}</dt>
              <dd>{say(exposure.areaBelowGrade, 'area')}</dd>
            </div>
            {areas.map(([contact, area]) => (
              <div key={contact} className='pair-sub'>
                <dt>{words.touching(wordsOf('materials').contacts[contact])}</dt>
                <dd>{say(area, 'area')}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      <Suspense fallback={<p className='quiet'>{wordsOf('moisture').loading}</p>}>
        <WaterPanel />
      </Suspense>
    </>
  )
}
