import type { Issue } from '../../../core/model/issue.ts'
import type { UnitSystem } from '../../../core/units/quantity.ts'
import { wordsOf } from '../../../words/index.ts'
import { issueText } from '../../../facts/issueWords.ts'
import { Mark } from '../../kit/Mark.tsx'

/** The one line that explains an input, opened by the button beside its label. */
export const HelpButton = ({
  label,
  open,
  controls,
  onToggle,
}: {
  label: string
  open: boolean
  controls: string
  onToggle: () => void
}) => (
  <button type='button' className='help-button' aria-expanded={open} aria-controls={controls} onClick={onToggle}>
    <span aria-hidden='true'>?</span>
    <span className='spoken'>{wordsOf('app').fields.about(label)}</span>
  </button>
)

/** Why an entry was refused, and what to know about the value that stands. */
export const FieldIssues = (props: {
  id: string
  errors: readonly Issue[]
  warnings: readonly Issue[]
  kept?: string | undefined
  system: UnitSystem
}) => (
  <div id={props.id} aria-live='polite' className='field-issues'>
    {props.errors.map((issue) => (
      <p key={issue.code + issue.path} className='field-error problem mark-short'>
        <Mark name='short' />
        <span>{issueText(issue, props.system)}</span>
      </p>
    ))}
    {props.errors.length > 0 && props.kept !== undefined && <p className='field-kept quiet'>{props.kept}</p>}
    {props.warnings.map((issue) => (
      <p key={issue.code + issue.path} className='problem'>
        <Mark name='warning' />
        <span>{issueText(issue, props.system)}</span>
      </p>
    ))}
  </div>
)
