import { useId, useState } from 'react'
import type { FieldOf } from '../../../core/model/field.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { pickChoice } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useIsLooking, usePier, useSpec } from '../../hooks/usePier.ts'
import { fieldLabel } from '../../../facts/issueWords.ts'
import { FieldIssues, HelpButton } from './FieldNotes.tsx'
import { useWarnings } from './useEntry.ts'

/** What a choice is called; a choice without words is said as it stands. */
const choiceLabel = (path: string, choice: string | number): string => wordsOf('choices')[path]?.[String(choice)] ?? String(choice)

/** Two or three short choices stand side by side; more go into a list. */
export const ChoiceField = ({ field, help }: { field: FieldOf<'choice'>; help: string }) => {
  const id = useId()
  const [helpOpen, setHelpOpen] = useState(false)
  const system = usePier((state) => state.view.units)
  const isLooking = useIsLooking()
  const value = valueAt(useSpec(), field.path)
  const errors = usePier((state) => state.entries[field.path]?.issues)
  const warnings = useWarnings(field.path)
  const label = fieldLabel(field.path)
  const pick = (choice: string | number | null) => pickChoice(pierStore, field.path, choice)
  const names = field.choices.map((choice) => choiceLabel(field.path, choice))
  const isShort = !field.nullable && field.choices.length <= 3 && names.join('').length <= 26
  const described = `${id}-issues ${id}-help`
  return (
    <div
      className='field'
      data-bad={errors !== undefined || undefined}
      data-wide={(!isShort && names.some((name) => name.length > 18)) || undefined}
    >
      <div className='field-line'>
        {isShort ? (
          <span id={`${id}-label`} className='label'>
            {label}
          </span>
        ) : (
          <label htmlFor={id}>{label}</label>
        )}
        <HelpButton label={label} open={helpOpen} controls={`${id}-help`} onToggle={() => setHelpOpen(!helpOpen)} />
        {isShort ? (
          <div className='either' role='radiogroup' aria-labelledby={`${id}-label`} aria-describedby={described}>
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
              aria-describedby={described}
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
        )}
      </div>
      <p id={`${id}-help`} className='field-help quiet' hidden={!helpOpen}>
        {help}
      </p>
      <FieldIssues id={`${id}-issues`} errors={errors ?? []} warnings={warnings} system={system} />
    </div>
  )
}
