import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import { dropEntry } from '../../../state/actions/commit.ts'
import { commitDraft } from '../../../state/actions/draft.ts'
import { dragField } from '../../../state/actions/drag.ts'
import { editField } from '../../../state/actions/edit.ts'
import type { FieldOf } from '../../../core/model/field.ts'
import { sliderOf } from '../../../state/slider.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { fieldLabel } from '../../../facts/issueWords.ts'
import { useIsLooking } from '../../hooks/usePier.ts'
import { FieldFrame, notesOf } from './FieldNotes.tsx'
import { boxText, restingText, useEntry } from './useEntry.ts'

/** Steps that a key takes in the box. Shift and Page keys go ten at a time. */
const stepsOf = (event: KeyboardEvent): number => {
  const size = event.shiftKey || event.key.startsWith('Page') ? 10 : 1
  if (event.key === 'ArrowUp' || event.key === 'PageUp') return size
  if (event.key === 'ArrowDown' || event.key === 'PageDown') return -size
  return 0
}

/**
 * A number with a unit: a box that reads what people write, and a slider. Enter or leaving the box enters it; Escape gives it
 * up. A refused entry stays in the box with its reason; the picture keeps the last good pier. `none`: what an empty box means.
 */
export const NumberField = ({ field, help, none }: { field: FieldOf<'number'>; help: string; none?: string }) => {
  const id = useId()
  const entry = useEntry(field)
  const [isIn, setIsIn] = useState(false)
  const isLooking = useIsLooking()
  const range = useRef<HTMLInputElement>(null)
  const slider = sliderOf(field, entry.system)
  const label = fieldLabel(field.path)
  const place = entry.value === null ? slider.first : slider.placeOf(entry.value)

  // React's change event of a range is the browser's input event; letting go is the browser's change event.
  useEffect(() => {
    const letGo = () => commitDraft(pierStore)
    const node = range.current
    node?.addEventListener('change', letGo)
    return () => node?.removeEventListener('change', letGo)
  }, [])

  const enter = () => {
    if (entry.isTyping && entry.text !== entry.settled) editField(pierStore, field.path, entry.text)
    else if (entry.isTyping) giveUp()
  }
  const giveUp = () => {
    entry.setTyped(null)
    dropEntry(pierStore, field.path)
  }
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') enter()
    if (event.key === 'Escape') giveUp()
    const steps = stepsOf(event)
    if (steps === 0) return
    event.preventDefault()
    const next = Math.min(slider.last, Math.max(slider.first, place + steps))
    dragField(pierStore, field.path, slider.valueAt(next))
  }

  const bound = (value: number): string => restingText(boxText(value, field.quantity, entry.system, field.unit?.[entry.system]))
  const bounds = wordsOf('app').fields.between(bound(field.min), bound(field.max))
  const isBad = entry.errors.length > 0
  const box = (
    <input
      id={id}
      className='box'
      type='text'
      autoComplete='off'
      spellCheck={false}
      placeholder={none}
      readOnly={isLooking}
      value={isIn || entry.text !== entry.settled ? entry.text : entry.resting}
      title={entry.resting === entry.settled ? undefined : entry.settled}
      aria-invalid={isBad}
      aria-describedby={notesOf(id)}
      onChange={(event) => entry.setTyped(event.target.value)}
      onKeyDown={onKeyDown}
      onKeyUp={(event) => /^(Arrow|Page)(Up|Down)$/.test(event.key) && commitDraft(pierStore)}
      onFocus={() => setIsIn(true)}
      onBlur={() => {
        setIsIn(false)
        enter()
      }}
    />
  )
  const rule = (
    <input
      ref={range}
      className='slider'
      hidden={none !== undefined && entry.value === null}
      type='range'
      disabled={isLooking}
      min={slider.first}
      max={slider.last}
      step={1}
      value={place}
      aria-label={wordsOf('app').fields.slider(label)}
      aria-valuetext={entry.resting}
      onChange={(event) => dragField(pierStore, field.path, slider.valueAt(Number(event.target.value)))}
      onBlur={() => commitDraft(pierStore)}
    />
  )
  return (
    <FieldFrame
      id={id}
      label={label}
      help={`${help} ${bounds}`}
      marks={{ 'data-bad': isBad || undefined }}
      control={box}
      slider={rule}
      errors={entry.errors}
      warnings={entry.warnings}
      kept={entry.value === null ? wordsOf('app').fields.keptNone : wordsOf('app').fields.kept(entry.resting)}
    />
  )
}
