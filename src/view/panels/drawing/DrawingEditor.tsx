import { useId, useRef } from 'react'
import type { Field } from '../../../core/model/field.ts'
import { allFields } from '../../../core/spec/fields.ts'
import { type CalloutText, calloutTexts } from '../../../core/spec/edit.ts'
import { enterCalloutText } from '../../../state/actions/callout.ts'
import { switchPart } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { useIsLooking, useSpec } from '../../hooks/usePier.ts'
import { ChoiceField } from '../inputs/ChoiceField.tsx'
import { NumberField } from '../inputs/NumberField.tsx'
import { SwitchField } from '../inputs/SwitchField.tsx'
import './drawing.css'

const helpOf = (path: string): string => wordsOf('fields')[path as keyof Words['fields']].help
const isAllowance = (field: Field): boolean => field.path.startsWith('callout.tolerance.')

/** An item of the drawing. A box that is empty, or a list at its first line, says that it is not on the drawing. */
const Item = ({ field }: { field: Field }) => {
  if (field.type === 'choice') return <ChoiceField field={field} help={helpOf(field.path)} />
  if (field.type === 'number') return <NumberField field={field} help={helpOf(field.path)} none={wordsOf('drawing').inputs.notDrawn} />
  return null
}

/** Words of the paper itself; they stay on this machine and in the file. */
const PaperLine = ({ name, lines }: { name: CalloutText; lines?: number }) => {
  const id = useId()
  const value = useSpec().callout?.[name] ?? ''
  const isLooking = useIsLooking()
  const box = useRef<HTMLInputElement & HTMLTextAreaElement>(null)
  const enter = () => box.current && enterCalloutText(pierStore, name, box.current.value)
  const Box = lines === undefined ? 'input' : 'textarea'
  return (
    <div className='field stack tight'>
      <label htmlFor={id}>{wordsOf('drawing').inputs[name]}</label>
      <Box
        ref={box}
        key={value}
        id={id}
        className='box broad'
        rows={lines}
        readOnly={isLooking}
        maxLength={calloutTexts[name]}
        defaultValue={value}
        autoComplete='off'
        onBlur={enter}
        onKeyDown={(event) => lines === undefined && event.key === 'Enter' && enter()}
      />
    </div>
  )
}

/** What the permit drawing says of this pier, item by item. */
export const DrawingEditor = ({ path }: { path: string }) => {
  const { callout } = useSpec()
  const words = wordsOf('drawing').inputs
  const items = allFields.filter(({ path }) => path.startsWith('callout.'))
  return (
    <SwitchField
      path={path}
      label={wordsOf('fields').callout.label}
      help={wordsOf('fields').callout.help}
      on={callout !== null}
      onChange={(on) => switchPart(pierStore, path, on)}
    >
      <p className='quiet'>{words.said}</p>
      {items
        .filter((field) => !isAllowance(field))
        .map((field) => (
          <Item key={field.path} field={field} />
        ))}
      <h4 className='above small heavy'>{words.allowed}</h4>
      <p className='quiet'>† {words.practice}</p>
      {items.filter(isAllowance).map((field) => (
        <Item key={field.path} field={field} />
      ))}
      <h4 className='above small heavy'>{words.paper}</h4>
      <p className='quiet'>{words.staysHere}</p>
      <PaperLine name='number' />
      <PaperLine name='date' />
      <PaperLine name='notes' lines={3} />
    </SwitchField>
  )
}
