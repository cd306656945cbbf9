import { useId } from 'react'
import type { FieldOf } from '../../../core/model/field.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { pickChoice } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useIsLooking, usePier, useSpec } from '../../hooks/usePier.ts'
import { fieldLabel } from '../../../facts/issueWords.ts'
import { FieldFrame, notesOf } from './FieldNotes.tsx'
import { useWarnings } from './useEntry.ts'

/** What a choice is called; a choice without words is said as it stands. */
const choiceLabel = (path: string, choice: string | number): string => wordsOf('choices')[path]?.[String(choice)] ?? String(choice)

/** Two or three short choices stand side by side; more go into a list. */
export const ChoiceField = ({ field, help }: { field: FieldOf<'choice'>; help: string }) => {
  const id = useId()
  const isLooking = useIsLooking()
  const value = valueAt(useSpec(), field.path)
  const errors = usePier((state) => state.entries[field.path]?.issues)
  const warnings = useWarnings(field.path)
  const pick = (choice: string | number | null) => pickChoice(pierStore, field.path, choice)
  const names = field.choices.map((choice) => choiceLabel(field.path, choice))
  const isShort = !field.nullable && field.choices.length <= 3 && names.join('').length <= 26
  const control = isShort ? (
    <div className='either' role='radiogroup' aria-labelledby={`${id}-label`} aria-describedby={notesOf(id)}>
      {field.choices.map((choice, i) => (
        <label key={choice}>
          <input type='radio' name={id} disabled={isLooking} checked={choice === value} onChange={() => pick(choice)} />
          {names[i]}
        </label>
      ))}
    </div>
  ) : (
    <span className='list'>
      <select
        id={id}
        disabled={isLooking}
        value={value === null ? '' : String(value)}
        aria-describedby={notesOf(id)}
        onChange={(event) => pick(field.choices.find((choice) => String(choice) === event.target.value) ?? null)}
      >
        {field.nullable && <option value=''>{wordsOf('app').fields.notOnDrawing}</option>}
        {field.choices.map((choice, i) => (
          <option key={choice} value={String(choice)}>
            {names[i]}
          </option>
        ))}
      </select>
    </span>
  )
  return (
    <FieldFrame
      id={id}
      label={fieldLabel(field.path)}
      help={help}
      marks={{
        'data-bad': errors !== undefined || undefined,
        'data-wide': (!isShort && names.some((name) => name.length > 18)) || undefined,
      }}
      isGroup={isShort}
      control={control}
      errors={errors}
      warnings={warnings}
    />
  )
}
