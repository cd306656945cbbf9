import type { PostSide, WetStretch } from '../../../core/model/moistureResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { StandingMark } from '../../kit/Mark.tsx'

const sides: readonly PostSide[] = ['uphill', 'axis', 'downhill']

/** Stretches of one kind on all sides: what touches the wood, in what ground. */
type Kind = Readonly<{ key: string; first: WetStretch; length: Readonly<Record<PostSide, number>> }>

/** Kinds of stretch in the order in which they lie, top down, with their length on each side. */
export function kindsOf(profile: readonly WetStretch[]): Kind[] {
  const kinds = new Map<string, Kind>()
  for (const one of profile) {
    const key = [one.touch, one.wetness, one.ground, one.groundReason, one.reason].join(' ')
    const kind = kinds.get(key) ?? { key, first: one, length: { uphill: 0, axis: 0, downhill: 0 } }
    kinds.set(key, { ...kind, length: { ...kind.length, [one.side]: kind.length[one.side] + (one.to - one.from) } })
  }
  return [...kinds.values()].sort((a, b) => b.first.to - a.first.to)
}

const drops: Readonly<Record<WetStretch['wetness'], readonly number[]>> = {
  'dries-out': [1],
  'wet-at-times': [1, 2],
  'stays-wet': [1, 2, 3],
}

/** One, two or three drops: a class that is told apart without colour. */
export const Drops = ({ wetness }: { wetness: WetStretch['wetness'] }) => (
  <span className={`wet-drops wet-drops-${wetness}`} aria-hidden='true'>
    {drops[wetness].map((one) => (
      <span key={one} className='wet-drop' />
    ))}
  </span>
)

/** What touches the wood, top down, how wet it keeps it, and how long that stretch is on each side. */
export const WetnessList = ({ profile }: { profile: readonly WetStretch[] }) => {
  const { say } = useUnits()
  const words = wordsOf('moisture')
  return (
    <ol className='stack wet-list small'>
      {kindsOf(profile).map(({ key, first, length }) => (
        <li key={key} className='aside'>
          <div>
            <span className='block strong'>{words.touches[first.touch]}</span>
            <span className='block'>
              <Drops wetness={first.wetness} /> {words.withAir(words.wetness[first.wetness], words.oxygen[first.oxygen])}{' '}
              <StandingMark standing={first.standing} />
            </span>
          </div>
          <dl className='wet-sides'>
            {(sides.every((side) => Math.abs(length[side] - length.axis) < 1e-9) ? (['axis'] as const) : sides).map(
              (side, _, { length: shown }) => (
                <div key={side} className='line tight'>
                  <dt className='quiet'>{shown === 1 ? wordsOf('app').answers.sides.all : words.sides[side]}</dt>
                  <dd className='number'>{length[side] > 1e-6 ? say(length[side], 'length') : '–'}</dd>
                </div>
              ),
            )}
          </dl>
          <p className='quiet'>
            {words.reasons[first.reason] ?? first.reason}
            {first.groundReason !== 'ground-as-entered' && first.touch !== 'below-water' && (
              <> {words.inGround(words.ground[first.ground], words.groundReasons[first.groundReason])}</>
            )}
          </p>
        </li>
      ))}
    </ol>
  )
}
