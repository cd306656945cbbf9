import { Mark } from '../kit/Mark.tsx'

type Untold = Readonly<{ name: string; why: string }>

/** Why rows of a table can't be verified: each reason once, behind all that it is true of. */
export const Whys = ({ rows }: Readonly<{ rows: readonly Untold[] }>) => {
  const whys = [...new Set(rows.map(({ why }) => why))]
  return whys.map((why) => {
    const names = rows.filter((row) => row.why === why).map(({ name }) => name)
    return (
      <p key={why} className='paper-whys'>
        <Mark name='unverified' /> <b>{names.join('; ')}:</b> {why}
      </p>
    )
  })
}
