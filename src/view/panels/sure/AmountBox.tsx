import { useEffect, useId, useState } from 'react'
import { inputUnit, unitNames } from '../../../core/units/factors.ts'
import { parseQuantity } from '../../../core/units/parse.ts'
import type { QuantityKind } from '../../../core/units/quantity.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { boxText } from '../inputs/useEntry.ts'
import { issueText } from '../../../facts/issueWords.ts'
import { Mark } from '../../kit/Mark.tsx'

type Props = Readonly<{ label: string; value: number; quantity: QuantityKind; onEnter: (value: number) => void }>

/** A figure of a range. Enter or leaving the box enters it, Escape gives it up; a text that can't be read stays, with the reason. */
export const AmountBox = ({ label, value, quantity, onEnter }: Props) => {
  const id = useId()
  const { system } = useUnits()
  const settled = boxText(value, quantity, system)
  const [typed, setTyped] = useState<string | null>(null)
  const [problem, setProblem] = useState<string | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is dropped exactly when the value on show is another
  useEffect(() => {
    setTyped(null)
    setProblem(null)
  }, [settled])
  const enter = () => {
    if (typed === null) return
    const reading = parseQuantity(typed, quantity, inputUnit[system][quantity])
    if (reading.ok) {
      setTyped(null)
      setProblem(null)
      onEnter(reading.value)
    } else setProblem(issueText({ code: reading.code, severity: 'error', path: label, got: typed, limit: unitNames(quantity) }, system))
  }
  return (
    <div className='field-line ends' data-bad={problem !== null || undefined}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className='box'
        type='text'
        autoComplete='off'
        spellCheck={false}
        value={typed ?? settled}
        aria-invalid={problem !== null}
        aria-describedby={`${id}-problem`}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter()
          if (event.key === 'Escape') {
            setTyped(null)
            setProblem(null)
          }
        }}
        onBlur={enter}
      />
      <p id={`${id}-problem`} className='problem sure-help mark-short' aria-live='polite'>
        {problem !== null && (
          <>
            <Mark name='short' />
            <span>{problem}</span>
          </>
        )}
      </p>
    </div>
  )
}
