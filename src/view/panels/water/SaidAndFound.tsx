import { type Finding, weighedClaims } from '../../../core/derive/evidence.ts'
import type { WoodTouch } from '../../../core/engineering/tables/contactWetness.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { rowIn } from '../../../facts/firstWords.ts'
import { StandingMark } from '../../kit/Mark.tsx'

/** A claim, the touches it speaks of, and the sentence that puts it right. */
const about: readonly Readonly<{ id: string; touches: readonly WoodTouch[]; trap: keyof Words['moisture']['traps'] }>[] = [
  { id: 'concrete-rots-posts', touches: ['concrete', 'joint'], trap: 'trap-concrete-rots-posts' },
  { id: 'concrete-protects-posts', touches: ['concrete', 'joint'], trap: 'trap-concrete-protects-posts' },
  { id: 'gravel-drains-the-hole', touches: ['gravel', 'granular'], trap: 'trap-gravel-drains-the-hole' },
]

type Row = Readonly<{ id: string; says: string; standing?: Finding['standing'] }>

const Rows = ({ title, rows }: { title: string; rows: readonly Row[] }) => (
  <>
    <h5>{title}</h5>
    {rows.length === 0 ? (
      <p>{wordsOf('moisture').said.nothing}</p>
    ) : (
      <ul>
        {rows.map(({ id, says, standing }) => (
          <li key={id}>
            {says} {standing && <StandingMark standing={standing} />}
          </li>
        ))}
      </ul>
    )}
  </>
)

const found = (list: readonly Finding[]): Row[] =>
  list.map(({ id, standing }) => ({ id, says: rowIn<string>(wordsOf('compare').findings, id) ?? id, standing }))
const missed = (list: readonly string[]): Row[] => list.map((id) => ({ id, says: rowIn<string>(wordsOf('compare').missing, id) ?? id }))

/** One claim of the trade, folded: the sentence that puts it right, what speaks for it, what against, and what nobody found. */
export const SaidOf = ({ id, right }: { id: string; right: string }) => {
  const words = wordsOf('moisture').said
  const claim = weighedClaims.find((one) => one.id === id)
  if (!claim) return null
  return (
    <details className='worked'>
      <summary className='ends lines'>
        <span>
          {words.trade}: “{rowIn<string>(wordsOf('compare').claims, id) ?? id}”
        </span>
      </summary>
      <div className='worked-body stack said small'>
        <p>{right}</p>
        <Rows title={words.forIt} rows={found(claim.inFavour)} />
        <Rows title={words.against} rows={found(claim.against)} />
        <Rows title={words.missing} rows={missed(claim.missing)} />
      </div>
    </details>
  )
}

/** What the trade says of what touches this post, beside what was found and what was not. */
export const SaidAndFound = ({ touches }: { touches: readonly WoodTouch[] }) => {
  const shown = about.filter((one) => one.touches.some((touch) => touches.includes(touch)))
  if (shown.length === 0) return null
  return (
    <>
      <h4>{wordsOf('moisture').said.title}</h4>
      {shown.map(({ id, trap }) => (
        <SaidOf key={id} id={id} right={wordsOf('moisture').traps[trap]} />
      ))}
    </>
  )
}
