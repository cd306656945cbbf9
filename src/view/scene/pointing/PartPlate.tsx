import { formatText } from '../../../core/units/format.ts'
import { zoneName } from '../../section/nameWishes.ts'
import { usePier, useResult } from '../../hooks/usePier.ts'

/** Name, volume and weight of the part that is pointed at. Placed by whoever holds `register`. */
export function PartPlate({ register }: Readonly<{ register: (element: HTMLElement | null) => void }>) {
  const result = useResult()
  const pointedAt = usePier((state) => state.view.pointedAt)
  const units = usePier((state) => state.view.units)
  const zone = result.zones.find(({ id }) => id === pointedAt)
  const line = result.quantities.find(({ zones }) => pointedAt !== null && zones.includes(pointedAt))
  return (
    <div ref={register} className='part-plate' role='status' hidden={!zone}>
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
