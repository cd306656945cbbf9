import { useState } from 'react'
import type { FieldGroup as GroupId } from '../../../core/model/field.ts'
import { visibleFields } from '../../../core/spec/fields.ts'
import { wordsOf } from '../../../words/index.ts'
import { useSpec } from '../../hooks/usePier.ts'
import { PageSwitches } from '../../app/PageSwitches.tsx'
import { FieldGroup } from './FieldGroup.tsx'

/** The order in which a pier is built. */
const order: readonly GroupId[] = ['site', 'hole', 'post', 'fill', 'steel', 'top', 'concrete', 'water', 'loads', 'drawing', 'years']
const openAtFirst: readonly GroupId[] = ['hole', 'fill']

/** Prices of every method are entered in one table, among the answers. */
const prices = 'costs.prices.'

/** Every input of this pier, from the ground up. Groups without an input for this pier are left out. */
export const InputsPanel = () => {
  const fields = visibleFields(useSpec()).filter(({ path }) => !path.startsWith(prices))
  const [open, setOpen] = useState<readonly GroupId[]>(openAtFirst)
  const shown = order.filter((group) => fields.some((field) => field.group === group))
  return (
    <section className='inputs' id='inputs' aria-label={wordsOf('app').panels.inputs} tabIndex={-1}>
      <h2 className='spoken'>{wordsOf('app').panels.inputs}</h2>
      {shown.map((group, i) => (
        <FieldGroup
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
      <div className='only-narrow inputs-foot'>
        <PageSwitches />
      </div>
    </section>
  )
}
