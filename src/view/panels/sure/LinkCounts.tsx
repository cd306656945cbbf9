import { inThousand, outOf } from '../../../core/uncertainty/summary.ts'
import type { SpreadOfUplift } from '../../../core/uncertainty/sureResult.ts'
import { wordsOf } from '../../../words/index.ts'
import { answerWords } from '../../../facts/answerWords.ts'
import { withoutWords, wholeNumber } from './sureFigures.ts'

const total = 100
const perRow = 25
const cell = 8

/** A hundred boxes, the same for every row, of which some are filled. */
const Boxes = ({ filled, isHollow }: { filled: number; isHollow: boolean }) => (
  <svg
    className='drawing sure-boxes'
    viewBox={`0 0 ${perRow * cell} ${(total / perRow) * cell}`}
    role='img'
    aria-label={wordsOf('sure').links.spoken(filled)}
  >
    {Array.from({ length: total }, (_, i) => (
      <rect
        // biome-ignore lint/suspicious/noArrayIndexKey: boxes are all alike and never change places
        key={i}
        className={i >= filled ? 'fill-none line-edge' : isHollow ? 'fill-pale line-ink sure-without' : 'fill-ink line-ink'}
        x={(i % perRow) * cell + 1}
        y={Math.floor(i / perRow) * cell + 1}
        width={cell - 2}
        height={cell - 2}
      />
    ))}
  </svg>
)

/** Which link set the number, how often out of the same total. Tries without a number have rows of their own. */
export const LinkCounts = ({ result: { governing, without, study } }: { result: SpreadOfUplift }) => {
  const sure = wordsOf('sure')
  const rows = [
    ...governing.map(({ id, count }) => ({ id, count, name: answerWords(id).label, isHollow: false })),
    ...without.map(({ id, count }) => ({ id: `without ${id}`, count, name: withoutWords(id), isHollow: true })),
  ]
  const parts = outOf(
    total,
    rows.map(({ count }) => count),
  )
  return (
    <div className='sure-part stack small'>
      <h4 className='flat'>{sure.links.title}</h4>
      <p className='quiet'>{sure.links.plain}</p>
      <ul>
        {rows.map(({ id, count, name, isHollow }, i) => (
          <li key={id} className='stack tight ruled'>
            <span className='ends sure-sides'>
              <span>{name}</span>
              <span className='number strong'>{sure.inThousand(inThousand(count, study.samples), wholeNumber(study.samples))}</span>
            </span>
            <Boxes filled={parts[i] ?? 0} isHollow={isHollow} />
          </li>
        ))}
      </ul>
    </div>
  )
}
