import type { ReactNode } from 'react'
import type { Field, FieldGroup } from '../../../core/model/field.ts'
import { showPanel } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useResult, useSpec, useUnits } from '../../hooks/usePier.ts'
import { Fields } from './Fields.tsx'
import { groupSummary } from './groupSummary.ts'

/** Which loads are held against the pier just now, over the inputs that they come from. */
const LoadsNote = () => {
  const words = wordsOf('app').loads
  const { demand, spec } = useResult()
  const { say } = useUnits()
  if (demand.kind === null) return <p className='group-note quiet'>{words.none}</p>
  if (demand.kind === 'entered') {
    const { entered, estimate } = spec.loads
    return <p className='group-note quiet'>{entered ? (estimate ? words.enteredFirst : words.entered) : words.fromDrawing}</p>
  }
  const parts = [
    demand.uplift && words.up(say(Math.max(0, demand.uplift.value), 'force')),
    demand.gravity && words.down(say(demand.gravity.value, 'force')),
    demand.lateral && words.sideways(say(demand.lateral.value, 'force')),
  ].filter((part) => part !== null)
  return (
    <p className='group-note quiet'>
      <span className='estimate-mark quiet unbroken'>{words.mark}</span> {parts.join(', ')}. {words.estimated}
    </p>
  )
}

/** What stands over the inputs of a step. */
const notes: Partial<Readonly<Record<FieldGroup, () => ReactNode>>> = { loads: LoadsNote }

/** Where a step stands in the page. */
export const groupId = (group: FieldGroup): string => `inputs-${group}`

/** A step of the building order: its number, its name, what is set, and its inputs while it is open. */
export const InputStep = (props: {
  group: FieldGroup
  number: number
  fields: readonly Field[]
  open: boolean
  onToggle: (open: boolean) => void
}) => {
  const spec = useSpec()
  const { say } = useUnits()
  const { label } = wordsOf('groups')[props.group]
  const Note = notes[props.group]
  return (
    <details
      id={groupId(props.group)}
      className='group under-fine'
      open={props.open}
      onToggle={(event) => props.onToggle(event.currentTarget.open)}
    >
      <summary className='lights ring-inside'>
        <span className='bubble centered heavy small' aria-hidden='true'>
          {props.number}
        </span>
        <h3>{label}</h3>
        <span className='group-summary grows quiet number'>
          {groupSummary[props.group](spec, say, (path) => props.fields.some((field) => field.path === path))}
        </span>
      </summary>
      <div className='group-fields stack tight'>
        {Note && <Note />}
        <Fields of={props.fields} />
      </div>
    </details>
  )
}

/** Opens one step of the inputs, wherever they are just now, and goes there. */
export const showGroup = (group: FieldGroup): void => {
  showPanel(pierStore, 'inputs')
  // The panel is in the page once the store has been heard.
  setTimeout(() => {
    const details = document.getElementById(groupId(group))
    const panel = document.getElementById('inputs')
    if (!(details instanceof HTMLDetailsElement) || !panel) return
    details.open = true
    // The panel scrolls, never the page.
    panel.scrollTop += details.getBoundingClientRect().top - panel.getBoundingClientRect().top
    details.querySelector<HTMLElement>('summary')?.focus({ preventScroll: true })
  })
}
