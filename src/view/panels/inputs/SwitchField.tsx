import { type ReactNode, useId, useState } from 'react'
import { useIsLooking, usePier } from '../../hooks/usePier.ts'
import { FieldIssues, HelpButton } from './FieldNotes.tsx'
import { useWarnings } from './useEntry.ts'

/** An optional part: a switch, and its own inputs under it while it is on. */
export const SwitchField = (props: {
  path: string
  label: string
  help: string
  on: boolean
  onChange: (on: boolean) => void
  children?: ReactNode
}) => {
  const id = useId()
  const [helpOpen, setHelpOpen] = useState(false)
  const system = usePier((state) => state.view.units)
  const isLooking = useIsLooking()
  const errors = usePier((state) => state.entries[props.path]?.issues)
  const warnings = useWarnings(props.path)
  return (
    <div className='field field-part' data-on={props.on || undefined}>
      <div className='field-line'>
        <label htmlFor={id}>{props.label}</label>
        <HelpButton label={props.label} open={helpOpen} controls={`${id}-help`} onToggle={() => setHelpOpen(!helpOpen)} />
        <input
          id={id}
          className='switch'
          type='checkbox'
          role='switch'
          checked={props.on}
          disabled={isLooking}
          aria-checked={props.on}
          aria-describedby={`${id}-issues ${id}-help`}
          onChange={(event) => props.onChange(event.target.checked)}
        />
      </div>
      <p id={`${id}-help`} className='field-help quiet' hidden={!helpOpen}>
        {props.help}
      </p>
      <FieldIssues id={`${id}-issues`} errors={errors ?? []} warnings={warnings} system={system} />
      {props.on && props.children && <div className='nested stack tight'>{props.children}</div>}
    </div>
  )
}
