import { useDeferredValue } from 'react'
import { lookedFor, zeroFailureRows } from '../../../core/derive/life/evidenceShown.ts'
import type { LifeResult, SoundByYear } from '../../../core/model/timeResult.ts'
import { visibleFields } from '../../../core/spec/fields.ts'
import { lifeOf } from '../../../state/timeDerived.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { useSpec } from '../../hooks/usePier.ts'
import { bandText, evidenceText, inspectionText, lackText, termiteText } from '../../../facts/lifeWords.ts'
import { goneOf100, goneSentence, yearsText } from '../../../facts/timeWords.ts'
import { PlainTable } from '../../kit/FactTable.tsx'
import { Bullets } from '../../kit/Lists.tsx'
import { Numbers } from '../answers/WorkedDetails.tsx'
import { SourceList } from '../../kit/Sources.tsx'
import { Fields } from '../inputs/Fields.tsx'
import { SaidOf } from '../water/SaidAndFound.tsx'
import { BandChart } from '../../kit/BandChart.tsx'
import { EvidenceBars, YearRule } from './EvidenceBars.tsx'
import './years.css'

const List = ({ title, lines }: Readonly<{ title: string; lines: readonly string[] }>) =>
  lines.length > 0 && (
    <>
      <h4>{title}</h4>
      <Bullets of={lines} />
    </>
  )

/** Rows in which none failed, and how many could fail without such a sample showing it. */
const zeroes = (life: LifeResult): readonly string[] =>
  zeroFailureRows(life).map(({ id, failed, sample }) => `${evidenceText(id)} ${wordsOf('life').zero(String(failed), String(sample))}`)

/** Years at which a band is told: soon ones where half may be gone by the tenth. */
const tellAt = (sound: SoundByYear): readonly number[] => ((sound[10]?.share.low ?? 1) < 0.5 ? [2, 5, 10] : [10, 30, 50])

/** Each treatment in its zone by itself: how many of a hundred are gone by some years. */
const Bands = ({ life: { bands, sound } }: Readonly<{ life: LifeResult }>) => {
  const words = wordsOf('years').life
  const years = sound === null ? [] : tellAt(sound)
  const cell = (of: SoundByYear, year: number) => {
    const gone = goneOf100(of, year)
    return gone === null ? words.notTold : wordsOf('years').range(gone.low, gone.high)
  }
  return (
    <PlainTable
      className='columns'
      caption={words.bands}
      heads={[words.treatment, ...years.map((year) => words.byYear(String(year)))]}
      rows={bands.map((band) => [bandText(band), ...years.map((year) => cell(band.sound, year))])}
    />
  )
}

const Climate = ({ life: { climate, buriedHazard } }: Readonly<{ life: LifeResult }>) => {
  const words = wordsOf('years').life
  const lifeWords = wordsOf('life')
  return (
    <>
      <h4>{words.climate}</h4>
      {buriedHazard === 'high' && <p>{lifeWords.hazard.buried}</p>}
      <p>{climate ? lifeWords.hazard.says(climate.index.value.toFixed(0), lifeWords.hazard[climate.hazard]) : words.noClimate}</p>
      {climate && <p className='quiet'>{lifeWords.traps['trap-rain-day-definition']}</p>}
    </>
  )
}

/** What may be said of the post's years: a range and what it rests on, the trade's figure beside it, what can be looked at. */
export const LifePanel = () => {
  const told = wordsOf('time').years
  const words = wordsOf('years').life
  const lifeWords = wordsOf('life')
  const spec = useDeferredValue(useSpec())
  const life = lifeOf(spec)
  const { inspection, ruleOfThumb } = life
  const set = Object.values(life.factors).some((factor) => factor !== 1)
  const inputs = visibleFields(spec).filter(({ path }) => path === 'life.reference' || path.startsWith('life.own'))
  return (
    <div className='years stack small'>
      <p className='lead'>{life.sound ? goneSentence(life.sound) : told.noRange}</p>
      {life.bands.length > 0 && <Bands life={life} />}
      <List title={told.lacks} lines={life.lacks.map(lackText)} />
      <Fields of={inputs} />
      <YearRule />
      <EvidenceBars title={words.rests} rows={life.rows.map((row) => ({ row }))} />
      <h4>{told.thumb}</h4>
      <p>
        {told.thumbText(yearsText(ruleOfThumb.life))} {ruleOfThumb.applies ? told.against : told.thumbNot}
      </p>
      <EvidenceBars title={life.bands.length > 0 ? told.apart : words.aboveGround} rows={life.apart} />
      <List title={told.termites} lines={life.termites.map(termiteText)} />
      <List title={words.zero} lines={zeroes(life)} />
      <SaidOf id='posts-in-wet-soil-last-ten-years' right={told.thumbText(yearsText(ruleOfThumb.life))} />
      <SaidOf id='treated-posts-last-sixty-years' right={lifeWords.traps['trap-treated-posts-last-sixty-years']} />
      {life.sound && (
        <>
          <BandChart
            name={words.sound}
            points={life.sound.map(({ year, share }) => ({ at: year, ...share }))}
            last={60}
            every={10}
            unit={words.unit}
          />
          <p className='quiet'>{words.soundNote}</p>
        </>
      )}
      <h4>{words.factors}</h4>
      <p>
        {!set && `${words.allOne} `}
        {lifeWords.traps['trap-factor-values-from-the-standard']}
      </p>
      <Climate life={life} />
      <List title={told.see} lines={inspection.visible.map(inspectionText)} />
      <List title={told.cannot} lines={inspection.hidden.map(inspectionText)} />
      {inspection.first && (
        <p>
          {told.first(yearsText(inspection.first.low), yearsText(inspection.first.high))}
          {inspection.every !== null && ` ${told.every(yearsText(inspection.every))}`}
        </p>
      )}
      <p className='quiet'>{lifeWords.traps['trap-stand-off-is-no-requirement']}</p>
      <List title={words.missing} lines={lookedFor.map((id) => lifeWords.notFound[id as keyof Words['life']['notFound']])} />
      <Numbers of={life.worked} />
      <SourceList ids={life.sources} />
    </div>
  )
}
