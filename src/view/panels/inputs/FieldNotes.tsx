import { type ReactNode, useState } from 'react'
import { issueText } from '../../../facts/issueWords.ts'
import type { Issue } from '../../../core/model/issue.ts'
import { wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { Button } from '../../kit/Controls.tsx'
import { Mark } from '../../kit/Mark.tsx'

type IssuesProps = Readonly<{ id: string; errors?: readonly Issue[] | undefined; warnings?: readonly Issue[]; kept?: string | undefined }>

/** Why an entry was refused, and what to know about the value that stands. */
export const FieldIssues = ({ id, errors = [], warnings = [], kept }: IssuesProps) => {
  const { system } = useUnits()
  return (
    <div id={id} aria-live='polite' className='field-issues'>
      {errors.map((issue) => (
        <p key={issue.code + issue.path} className='field-error problem mark-short'>
          <Mark name='short' />
          <span>{issueText(issue, system)}</span>
        </p>
      ))}
      {errors.length > 0 && kept !== undefined && <p className='field-kept quiet'>{kept}</p>}
      {warnings.map((issue) => (
        <p key={issue.code + issue.path} className='problem'>
          <Mark name='warning' />
          <span>{issueText(issue, system)}</span>
        </p>
      ))}
    </div>
  )
}

type FrameProps = Omit<IssuesProps, 'id'> &
  Readonly<{
    /** Of the control. */
    id: string
    label: string
    /** The one line that explains it, opened by the button beside its label. */
    help: string
    /** Marks of the field for the style sheet. */
    marks?: Readonly<Record<`data-${string}`, true | undefined>>
    className?: string
    /** Is the control several, which the label names as a group? */
    isGroup?: boolean
    control: ReactNode
    /** Under its line. */
    slider?: ReactNode
    /** After all that is said of it. */
    children?: ReactNode
  }>

/** What the control of a field is described by. */
export const notesOf = (id: string): string => `${id}-issues ${id}-help`

/** An input with its label, its help and what is wrong with it. */
export const FieldFrame = ({ id, label, help, marks, className = 'field', isGroup, control, slider, children, ...issues }: FrameProps) => {
  const [isOpen, setOpen] = useState(false)
  return (
    <div className={className} {...marks}>
      <div className='field-line'>
        {isGroup ? (
          <span id={`${id}-label`} className='label'>
            {label}
          </span>
        ) : (
          <label htmlFor={id}>{label}</label>
        )}
        <Button className='help-button' aria-expanded={isOpen} aria-controls={`${id}-help`} onClick={() => setOpen(!isOpen)}>
          <span aria-hidden='true'>?</span>
          <span className='spoken'>{wordsOf('app').fields.about(label)}</span>
        </Button>
        {control}
      </div>
      {slider}
      <p id={`${id}-help`} className='field-help quiet' hidden={!isOpen}>
        {help}
      </p>
      <FieldIssues id={`${id}-issues`} {...issues} />
      {children}
    </div>
  )
}
