import { type ReactNode, useId } from 'react'
import { useIsLooking, usePier } from '../../hooks/usePier.ts'
import { Switch } from '../../kit/Controls.tsx'
import { FieldFrame, notesOf } from './FieldNotes.tsx'
import { useWarnings } from './useEntry.ts'

type Props = Readonly<{ path: string; label: string; help: string; on: boolean; onChange: (on: boolean) => void; children?: ReactNode }>

/** An optional part: a switch, and its own inputs under it while it is on. */
export const SwitchField = ({ path, label, help, on, onChange, children }: Props) => {
  const id = useId()
  const isLooking = useIsLooking()
  const errors = usePier((state) => state.entries[path]?.issues)
  return (
    <FieldFrame
      id={id}
      label={label}
      help={help}
      className='field '
      marks={{ 'data-on': on || undefined }}
      control={<Switch id={id} isOn={on} disabled={isLooking} aria-describedby={notesOf(id)} onSwitch={onChange} />}
      errors={errors}
      warnings={useWarnings(path)}
    >
      {on && children && <div className='nested stack tight'>{children}</div>}
    </FieldFrame>
  )
}
