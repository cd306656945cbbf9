import { useDeferredValue } from 'react'
import type { BagMass, DryMix, MixedConcrete } from '../../../core/model/timeResult.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import type { SayNumber } from '../../../core/units/reader.ts'
import { mixOf } from '../../../state/timeDerived.ts'
import { wordsOf } from '../../../words/index.ts'
import { useSpec, useUnits } from '../../hooks/usePier.ts'
import { daysOf } from '../../../facts/timeWords.ts'
import { WeatherFlags } from '../../kit/WeatherFlags.tsx'
import { answerWords } from '../../../facts/answerWords.ts'
import { StandingMark } from '../../kit/Mark.tsx'
import { Numbers } from '../answers/WorkedDetails.tsx'
import { SourceList } from '../../kit/Sources.tsx'
import { SaidOf } from '../water/SaidAndFound.tsx'
import type { Worked } from '../../../core/model/worked.ts'
import { PlainTable, Pairs } from '../../kit/FactTable.tsx'
import { BandChart } from '../../kit/BandChart.tsx'
import './years.css'
const named = ({ id, standing }: Worked) => (
  <>
    {answerWords(id).label} <StandingMark standing={standing} />
  </>
)
const percent = (share: number) => `${Math.round(100 * share)}%`

const Mixed = ({ mix, spec }: { mix: MixedConcrete; spec: PierSpec }) => {
  const words = wordsOf('years').mix
  const time = wordsOf('time')
  const { loadDay, share, added, air } = mix
  const reached = loadDay && { low: daysOf(loadDay.low), high: daysOf(loadDay.high) }
  const day = (value: number) => String(Math.ceil(value - 1e-9))
  const [least, , most] = air.worked
  return (
    <>
      <BandChart
        name={words.curve}
        points={mix.gain.map((one) => ({ at: daysOf(one.age), ...one.share }))}
        last={28}
        every={7}
        unit={words.days}
        mark={{ share, from: reached?.low ?? null, to: reached?.high ?? null }}
      />
      <p className='lead'>
        {reached
          ? time.month.reached(percent(share), wordsOf('years').range(day(reached.low), day(reached.high)))
          : time.month.notReached(percent(share))}
      </p>
      <p>
        <strong>{time.month.call}</strong>
      </p>
      <p className='quiet'>{time.month.band}</p>
      {added.length > 0 && (
        <>
          <h4>{words.added}</h4>
          <Pairs of={added.map((one) => [named(one), one.id.startsWith('strength-left') ? percent(one.value) : one.value.toFixed(2)])} />
        </>
      )}
      <p className='quiet'>{wordsOf('life').traps['trap-three-hundred-drum-turns']}</p>
      <h4>{words.air}</h4>
      <p>
        {least && most ? words.airIs(`${(100 * least.value).toFixed(1)}%`, `${(100 * most.value).toFixed(1)}%`) : words.airNotAsked}
        {air.asked && spec.placing.air === 'no' && ` ${words.airMissing}`}
      </p>
    </>
  )
}

const bagsIn = ({ placed, bag }: BagMass) => (placed / bag).toFixed(1)

/** What lies in the hole, the extra and what is left of the last bag: together what is ordered. */
const massRows = (mass: BagMass, say: SayNumber) => {
  const words = wordsOf('years').mix
  const weight = (one: number) => say(one, 'weight')
  return [
    [words.placed(bagsIn(mass)), weight(mass.placed)],
    ...(mass.extra > 0 ? [[words.extra, weight(mass.extra)] as const] : []),
    ...(mass.left > 0 ? [[words.left, weight(mass.left)] as const] : []),
    [words.ordered(String(mass.each), mass.bagSize), weight(mass.ordered)],
  ] as const
}

const Dry = ({ mix }: { mix: DryMix }) => {
  const words = wordsOf('years').mix
  const life = wordsOf('life')
  const years = wordsOf('years')
  const time = wordsOf('time')
  const { say, system } = useUnits()
  const water = (volume: number) => say(volume, 'volume', { unit: system === 'us' ? 'gal' : 'L' })
  const { wetting, wetted } = mix
  return (
    <>
      <h4>{words.mass}</h4>
      <Pairs of={massRows(mix.mass, say)} />
      <h4>{words.needs(bagsIn(mix.mass))}</h4>
      <Pairs
        of={[
          ...mix.needs.map((one) => [named(one), water(one.value)] as const),
          ...(wetted === 'from-the-top' ? ([[words.poured, water(mix.poured)]] as const) : []),
        ]}
      />
      <p className='lead'>
        {wetting
          ? `${words.wetted(say(wetting.shortest.value, 'length'), say(wetting.longest.value, 'length'), say(mix.height, 'length'))} ${words.foot[wetting.reachesFoot]}`
          : wetted === 'by-the-ground'
            ? words.byGround
            : words.noWater}
      </p>
      <p className='quiet'>{life.traps['trap-more-water-fixes-dry-mix']}</p>
      <PlainTable
        className='columns'
        caption={words.layers}
        heads={[words.below, words.ratio, words.strength]}
        rows={mix.layers.map(({ from, to, ratio, strength }) => [
          years.range(say(mix.to - to, 'length'), say(mix.to - from, 'length')),
          ratio.high > 0 ? years.range(ratio.low.toFixed(1), ratio.high.toFixed(1)) : words.none,
          strength === null ? '–' : years.range(percent(strength.low), percent(strength.high)),
        ])}
      />
      <p className='quiet'>{words.picture}</p>
      <p className='quiet'>{life.traps['trap-gel-strength-is-no-constant']}</p>
      <h4>{words.trial}</h4>
      <p>
        {time.month.dry.trialText} <StandingMark standing={mix.trial.standing} />
      </p>
      <SaidOf id='dry-mix-never-hydrates' right={life.traps['trap-dry-mix-never-hydrates']} />
      <SaidOf id='dry-mix-is-as-good-as-mixed' right={time.month.dry.trialText} />
    </>
  )
}

/** What becomes of the mix of the pier on show; a drag does not wait for it. */
export const MixPanel = () => {
  const spec = useDeferredValue(useSpec())
  const { say } = useUnits()
  const { concrete, weather, worked, sources } = mixOf(spec)
  return (
    <div className='years stack small'>
      {concrete === null ? (
        <p>{wordsOf('time').month.none}</p>
      ) : concrete.as === 'mixed' ? (
        <Mixed mix={concrete} spec={spec} />
      ) : (
        <Dry mix={concrete} />
      )}
      <WeatherFlags flags={weather} say={say} />
      <Numbers of={worked} />
      <SourceList ids={sources} />
    </div>
  )
}
