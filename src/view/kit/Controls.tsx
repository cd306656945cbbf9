import { type ComponentProps, type ReactNode, useRef } from 'react'

/** Does something on the page; never sends a form. */
export const Button = ({ className = 'button', ...rest }: ComponentProps<'button'>) => (
  <button type='button' className={className} {...rest} />
)

type SwitchProps = Omit<ComponentProps<'input'>, 'checked' | 'onChange'> & Readonly<{ isOn: boolean; onSwitch: (isOn: boolean) => void }>

/** On or off. */
export const Switch = ({ isOn, onSwitch, ...rest }: SwitchProps) => (
  <input
    className='switch'
    type='checkbox'
    role='switch'
    checked={isOn}
    aria-checked={isOn}
    onChange={(event) => onSwitch(event.target.checked)}
    {...rest}
  />
)

type FileButtonProps = Readonly<{ className?: string; kind?: string; onFile: (file: File) => void; children: ReactNode }>

/** Opens a job file through a hidden input, which every browser knows. The same file can be opened twice. */
export const FileButton = ({ className, kind, onFile, children }: FileButtonProps) => {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <Button className={className} onClick={() => input.current?.click()}>
        {children}
      </Button>
      <input
        ref={input}
        className='spoken'
        type='file'
        accept='.json,application/json'
        tabIndex={-1}
        aria-hidden='true'
        data-file={kind}
        onChange={(event) => {
          const file = event.target.files?.[0]
          event.target.value = ''
          if (file) onFile(file)
        }}
      />
    </>
  )
}
