import { type ReactNode, useId } from 'react'
import type { Issue } from '../../../core/model/issue.ts'
import type { KindText } from '../../../words/en/fills.ts'
import { useIsLooking, usePier } from '../../hooks/usePier.ts'
import { FieldIssues } from './FieldNotes.tsx'

/** One card for each kind: its picture, its name and a few words; the chosen one tells more. */
export const KindCards = <Id extends string>(props: {
  legend: string
  ids: readonly Id[]
  chosen: Id
  words: Readonly<Record<Id, KindText>>
  picture: (id: Id) => ReactNode
  onPick: (id: Id) => void
  errors: readonly Issue[]
  warnings: readonly Issue[]
}) => {
  const name = useId()
  const isLooking = useIsLooking()
  const system = usePier((state) => state.view.units)
  return (
    <fieldset className='field cards'>
      <legend className='spoken'>{props.legend}</legend>
      {props.ids.map((id) => (
        <label key={id} className='card'>
          <input
            type='radio'
            name={name}
            disabled={isLooking}
            checked={id === props.chosen}
            aria-labelledby={`${name}-${id}`}
            aria-describedby={`${name}-${id}-short`}
            onChange={() => props.onPick(id)}
          />
          <span className='card-picture'>{props.picture(id)}</span>
          <span className='card-words'>
            <span id={`${name}-${id}`} className='card-name'>
              {props.words[id].label}
            </span>
            <span id={`${name}-${id}-short`} className='card-short'>
              {props.words[id].short}
            </span>
          </span>
        </label>
      ))}
      <FieldIssues id={`${name}-issues`} errors={props.errors} warnings={props.warnings} system={system} />
    </fieldset>
  )
}
