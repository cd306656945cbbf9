import type { DryMix, MixedConcrete } from '../../core/model/timeResult.ts'
import { mixOf } from '../../state/timeDerived.ts'
import { wordsOf } from '../../words/index.ts'
import { useResult, useUnits } from '../hooks/usePier.ts'
import { BandChart } from '../kit/BandChart.tsx'
import { PlainTable } from '../kit/FactTable.tsx'
import { listenToPlayer } from '../live/player.ts'
import { daysOf, percents } from '../../facts/timeWords.ts'
import { WeatherFlags } from '../kit/WeatherFlags.tsx'

/** The first month: strength as a band for concrete that was mixed; ranges down the height, and no curve, for mix placed dry. */
export const MonthPanel = ({ day }: Readonly<{ day: number }>) => {
  const { say } = useUnits()
  const mix = mixOf(useResult().spec)
  return (
    <>
      {mix.concrete === null ? (
        <p>{wordsOf('time').month.none}</p>
      ) : mix.concrete.as === 'mixed' ? (
        <Mixed mix={mix.concrete} day={day} />
      ) : (
        <Dry mix={mix.concrete} />
      )}
      <WeatherFlags flags={mix.weather} say={say} />
    </>
  )
}

const Mixed = ({ mix, day }: Readonly<{ mix: MixedConcrete; day: number }>) => {
  const words = wordsOf('time').month
  const points = mix.gain.map(({ age, share }) => ({ at: daysOf(age), ...share }))
  const { loadDay } = mix
  const [low, high] = loadDay ? [Math.ceil(daysOf(loadDay.low)), Math.ceil(daysOf(loadDay.high))] : [0, 0]
  const share = `${Math.round(mix.share * 100)}%`
  const reached = low === high ? String(low) : `${low} to ${high}`
  return (
    <div className='time-two'>
      <BandChart
        name={words.curve}
        caption={words.axis}
        points={points}
        last={28}
        every={7}
        unit={words.days}
        moment={{ at: day, listen: listenToPlayer }}
        mark={{ share: mix.share, from: loadDay && daysOf(loadDay.low), to: loadDay && daysOf(loadDay.high) }}
      />
      <div className='stack'>
        <p className='lead'>{loadDay ? words.reached(share, reached) : words.notReached(share)}</p>
        <p>
          <strong>{words.call}</strong>
        </p>
        <p className='quiet'>{words.band}</p>
        <p className='quiet'>{words.more}</p>
      </div>
    </div>
  )
}

const Dry = ({ mix }: Readonly<{ mix: DryMix }>) => {
  const words = wordsOf('time').month
  const { say } = useUnits()
  const depth = (y: number): string => say(mix.to - y, 'length')
  return (
    <div className='time-two'>
      <div className='stack'>
        <p className='lead'>{words.dry.title}</p>
        <p>{words.dry.why}</p>
        {mix.wetting && <p>{words.dry.wetting(say(mix.wetting.shortest.value, 'length'), say(mix.wetting.longest.value, 'length'))}</p>}
        <p>
          <strong>{words.dry.picture}</strong>
        </p>
        <h2>{words.dry.trial}</h2>
        <p className='quiet'>{words.dry.trialText}</p>
        <p className='quiet'>{wordsOf('life').traps['trap-more-water-fixes-dry-mix']}</p>
      </div>
      <PlainTable
        className='columns time-table'
        heads={[words.dry.depth, words.dry.ratio, words.dry.strength]}
        rows={mix.layers.map(({ from, to, ratio, strength }) => [
          `${depth(Math.max(from, to))} – ${depth(Math.min(from, to))}`,
          strength === null ? '–' : `${ratio.low.toFixed(1)}–${ratio.high.toFixed(1)}`,
          strength === null ? words.dry.noWater : percents(strength),
        ])}
      />
    </div>
  )
}
