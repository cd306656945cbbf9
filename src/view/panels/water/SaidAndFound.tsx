import { claims } from '../../../core/engineering/tables/claims.ts'
import type { WoodTouch } from '../../../core/engineering/tables/contactWetness.ts'
import { compare } from '../../../text/en/compare.ts'
import { late } from '../../../text/late.ts'
import { rowOf } from '../answers/answerWords.ts'

/** A claim, the touches it speaks of, and the sentence that puts it right. */
const about: readonly Readonly<{ id: string; touches: readonly WoodTouch[]; trap: keyof typeof late.moisture.traps }>[] = [
  { id: 'concrete-rots-posts', touches: ['concrete', 'joint'], trap: 'trap-concrete-rots-posts' },
  { id: 'concrete-protects-posts', touches: ['concrete', 'joint'], trap: 'trap-concrete-protects-posts' },
  { id: 'gravel-drains-the-hole', touches: ['gravel', 'granular'], trap: 'trap-gravel-drains-the-hole' },
]

const Rows = ({ title, rows, empty }: { title: string; rows: readonly string[]; empty: string }) => (
  <>
    <h6>{title}</h6>
    {rows.length === 0 ? (
      <p>{empty}</p>
    ) : (
      <ul>
        {rows.map((row) => (
          <li key={row}>{row}</li>
        ))}
      </ul>
    )}
  </>
)

/** What the trade says of what touches this post, beside what was found and what was not. */
export const SaidAndFound = ({ touches }: { touches: readonly WoodTouch[] }) => {
  const words = late.moisture.said
  const shown = about.filter((one) => one.touches.some((touch) => touches.includes(touch)))
  if (shown.length === 0) return null
  return (
    <>
      <h4>{words.title}</h4>
      {shown.map(({ id, trap }) => {
        const claim = claims.find((one) => one.id === id)
        const found = (ids: readonly string[] = []) => ids.map((one) => rowOf<string>(compare.findings, one) ?? one)
        const missing = (claim?.missing ?? []).map((one) => rowOf<string>(compare.missing, one) ?? one)
        return (
          <details key={id} className='worked'>
            <summary>
              <span className='worked-name'>
                {words.trade}: “{rowOf<string>(compare.claims, id) ?? id}”
              </span>
            </summary>
            <div className='worked-body said'>
              <p>{late.moisture.traps[trap]}</p>
              <Rows title={words.forIt} rows={found(claim?.inFavour)} empty={words.nothing} />
              <Rows title={words.against} rows={found(claim?.against)} empty={words.nothing} />
              <Rows title={words.missing} rows={missing} empty={words.nothing} />
            </div>
          </details>
        )
      })}
    </>
  )
}
