import { type ReactNode, useState } from 'react'
import { type FieldGroup, fieldGroups } from '../../../core/fields/node.ts'
import { visibleFields } from '../../../core/spec/fields.ts'
import { wordsOf } from '../../../words/index.ts'
import { useSpec } from '../../hooks/usePier.ts'
import { InputStep } from './InputStep.tsx'

const openAtFirst: readonly FieldGroup[] = ['hole', 'fill']

/** Prices of every method are entered in one table, among the answers. */
const prices = 'costs.prices.'

/**
 * Every input of this pier, from the ground up. Groups without an input for this pier are left out.
 * @param switches stand under the inputs where the page is narrow
 */
export const InputsPanel = ({ switches }: Readonly<{ switches: ReactNode }>) => {
  const fields = visibleFields(useSpec()).filter(({ path }) => !path.startsWith(prices))
  const [open, setOpen] = useState<readonly FieldGroup[]>(openAtFirst)
  const shown = fieldGroups.filter((group) => fields.some((field) => field.group === group))
  return (
    <section className='inputs scrolls' id='inputs' aria-label={wordsOf('app').panels.inputs} tabIndex={-1}>
      <h2 className='spoken'>{wordsOf('app').panels.inputs}</h2>
      {shown.map((group, i) => (
        <InputStep
          key={group}
          group={group}
          number={i + 1}
          fields={fields.filter((field) => field.group === group)}
          open={open.includes(group)}
          onToggle={(isOpen) =>
            setOpen((was) => (isOpen ? [...was.filter((one) => one !== group), group] : was.filter((one) => one !== group)))
          }
        />
      ))}
      <div className='only-narrow inputs-foot'>{switches}</div>
    </section>
  )
}
