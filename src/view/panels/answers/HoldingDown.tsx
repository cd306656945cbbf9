import type { Check } from '../../../core/model/worked.ts'
import { text } from '../../../text/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { CheckRow } from './CheckRow.tsx'

/** In the order in which a pull travels: from the post, through the connection and the concrete, into the ground. */
const links: readonly Check['group'][] = ['uplift-post', 'uplift-connection', 'uplift-concrete', 'uplift-soil']

/** Every link and every mechanism, counted or not. */
export const HoldingDown = () => {
  const { checks, uplift } = useResult()
  return (
    <>
      {links.map((group) => {
        const own = checks.filter((check) => check.group === group)
        if (own.length === 0) return null
        return (
          <div key={group} className='check-group'>
            <h4>{text.app.answers.groups[group]}</h4>
            {own.map((check) => (
              <CheckRow
                key={check.id}
                check={check}
                governs={check.id === uplift.governing}
                used={own.length > 1 && check.id === uplift.soil}
              />
            ))}
          </div>
        )
      })}
      <p className='quiet'>{text.app.answers.neverTwice}</p>
    </>
  )
}

const others: readonly Check['group'][] = ['frost', 'bearing', 'lateral', 'detail']

/** Checks that are not about uplift, but for those that stand beside the wood they are about. */
export const OtherChecks = () => {
  const { checks, exposure } = useResult()
  const shownAbove = exposure.standOff?.checks ?? []
  return others.map((group) => {
    const own = checks.filter((check) => check.group === group && !shownAbove.includes(check))
    if (own.length === 0) return null
    return (
      <div key={group} className='check-group'>
        <h4>{text.app.answers.groups[group]}</h4>
        {own.map((check) => (
          <CheckRow key={check.id} check={check} governs={false} />
        ))}
      </div>
    )
  })
}
