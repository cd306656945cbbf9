import { type KeyboardEvent, useId, useRef, useState } from 'react'
import { pointAt } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { zoneName } from '../../section/nameWishes.ts'
import { usePier, useResult } from '../../hooks/usePier.ts'
import { formatText } from '../../../core/units/format.ts'

const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }

/** The parts as a list of buttons for keyboard and screen reader; the one in focus lights up in the picture. One stop for Tab, arrows inside. */
export function PartList() {
  const words = wordsOf('scene')
  const { zones } = useResult()
  const [at, setAt] = useState(0)
  const list = useRef<HTMLUListElement>(null)
  const hint = useId()
  const current = Math.min(at, zones.length - 1)
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = steps[event.key]
    const next =
      step !== undefined
        ? (current + step + zones.length) % zones.length
        : event.key === 'Home'
          ? 0
          : event.key === 'End'
            ? zones.length - 1
            : null
    if (event.key === 'Escape') pointAt(pierStore, null)
    if (next === null) return
    event.preventDefault()
    event.stopPropagation()
    setAt(next)
    list.current?.querySelectorAll('button')[next]?.focus()
  }
  return (
    <ul className='spoken part-list' ref={list} aria-label={words.parts} aria-describedby={hint}>
      {zones.map(({ id, label }, i) => (
        <li key={id}>
          <button
            type='button'
            tabIndex={i === current ? 0 : -1}
            onKeyDown={onKeyDown}
            onFocus={() => {
              setAt(i)
              pointAt(pierStore, id)
            }}
            onBlur={() => pointAt(pierStore, null)}
          >
            {zoneName(label)}
          </button>
        </li>
      ))}
      <li id={hint}>{words.partsHint}</li>
    </ul>
  )
}

/** Name, volume and weight of the part that is pointed at. Placed by whoever holds `register`. */
export function PartPlate({ register }: Readonly<{ register: (element: HTMLElement | null) => void }>) {
  const result = useResult()
  const pointedAt = usePier((state) => state.view.pointedAt)
  const units = usePier((state) => state.view.units)
  const zone = result.zones.find(({ id }) => id === pointedAt)
  const line = result.quantities.find(({ zones }) => pointedAt !== null && zones.includes(pointedAt))
  return (
    <div ref={register} className='part-plate panel' role='status' hidden={!zone}>
      {zone && (
        <>
          <strong>{zoneName(zone.label)}</strong>
          {line && line.volume.value > 0 && (
            <span>
              {formatText(line.volume.value, 'volume', units)} · {formatText(line.weight, 'weight', units)}
            </span>
          )}
        </>
      )}
    </div>
  )
}
