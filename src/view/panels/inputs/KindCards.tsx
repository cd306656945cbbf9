import { useId } from 'react'
import type { FieldOf } from '../../../core/model/field.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { pickChoice } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import type { KindText } from '../../../words/en/fills.ts'
import { useIsLooking, usePier, useSpec } from '../../hooks/usePier.ts'
import { fieldLabel } from '../../../facts/issueWords.ts'
import { FieldIssues } from './FieldNotes.tsx'
import { Pictogram, type Stamp } from './Pictogram.tsx'
import { useWarnings } from './useEntry.ts'

/** One card for each kind: its picture, its name and a few words. */
export const KindCards = (props: {
  field: FieldOf<'choice'>
  words: Readonly<Record<string, KindText>>
  picture: (id: string) => Stamp
}) => {
  const { path, choices } = props.field
  const name = useId()
  const isLooking = useIsLooking()
  const errors = usePier((state) => state.entries[path]?.issues)
  const chosen = valueAt(useSpec(), path)
  return (
    <fieldset className='field cards'>
      <legend className='spoken'>{fieldLabel(path)}</legend>
      {choices.map(String).map((id) => (
        <label key={id} className='card lights holds'>
          <input
            type='radio'
            name={name}
            disabled={isLooking}
            checked={id === chosen}
            aria-labelledby={`${name}-${id}`}
            aria-describedby={`${name}-${id}-short`}
            onChange={() => pickChoice(pierStore, path, id)}
          />
          <span className='card-picture'>
            <Pictogram drawing={props.picture(id)} />
          </span>
          <span className='row-name'>
            <span id={`${name}-${id}`} className='strong'>
              {props.words[id]?.label}
            </span>
            <span id={`${name}-${id}-short`} className='quiet'>
              {props.words[id]?.short}
            </span>
          </span>
        </label>
      ))}
      <FieldIssues id={`${name}-issues`} errors={errors} warnings={useWarnings(path)} />
    </fieldset>
  )
}
