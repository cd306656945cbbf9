import { compareStore } from '../../state/compare.ts'
import { movePick, togglePick } from '../../state/compareActions.ts'
import { inputRows } from '../../state/compareInputs.ts'
import type { ComparedPier } from '../../state/compareSet.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import type { ShownPier } from './CompareTable.tsx'
import { pierName } from '../cells/pierName.ts'
import { Button } from '../kit/Controls.tsx'

const own = () => seenDocument(pierStore.getState())

const paths = { left: 'M10 2 4 8l6 6', right: 'M6 2l6 6-6 6', away: 'M3 3l10 10M13 3 3 13' } as const
const IconButton = (props: Readonly<{ shape: keyof typeof paths; label: string; disabled: boolean; onClick: () => void }>) => (
  <Button className='icon' aria-label={props.label} disabled={props.disabled} onClick={props.onClick}>
    <svg viewBox='0 0 16 16' width='16' height='16' aria-hidden='true' focusable='false'>
      <path d={paths[props.shape]} fill='none' stroke='currentColor' strokeWidth='1.8' />
    </svg>
  </Button>
)

/** In how many inputs that both have a pier is set otherwise than the first one that can be built; null for that one. */
function changesOf(compared: ComparedPier, all: readonly ComparedPier[]): string | null {
  const words = wordsOf('compare')
  if (compared.pier === null) return words.column.cannot
  const first = all.find(({ pier }) => pier !== null)
  if (!first?.pier || first === compared) return null
  const rows = inputRows([first.pier.document.spec, compared.pier.document.spec])
  // The plate names the method itself.
  const count = rows.filter(({ path, cells }) => path !== 'fill.kind' && cells[1]?.differs).length
  return count === 0 ? words.column.alike : words.column.differs(count)
}

/** A name plate over each pier, with what moves it or takes it away. */
export const Plates = ({ all, shown }: Readonly<{ all: readonly ComparedPier[]; shown: readonly ShownPier[] }>) => {
  const words = wordsOf('compare')
  return (
    <>
      {shown.map(({ compared, place }) => {
        const { title, tag } = pierName(compared)
        const changes = changesOf(compared, all)
        return (
          <div key={compared.pick} className='cmp-plate ends tight'>
            <h3 className='row-name grows heavy'>
              {title}
              {tag !== null && (
                <span className='two-lines small strong broken-anywhere' title={tag}>
                  {tag}
                </span>
              )}
              {changes !== null && <span className='quiet light'>{changes}</span>}
            </h3>
            <div className='line flush'>
              <IconButton
                shape='left'
                label={words.column.left(title)}
                disabled={place === 0}
                onClick={() => movePick(compareStore, own(), place, -1)}
              />
              <IconButton
                shape='right'
                label={words.column.right(title)}
                disabled={place === all.length - 1}
                onClick={() => movePick(compareStore, own(), place, 1)}
              />
              <IconButton
                shape='away'
                label={words.column.away(title)}
                disabled={all.length <= 2}
                onClick={() => togglePick(compareStore, own(), compared.pick)}
              />
            </div>
          </div>
        )
      })}
    </>
  )
}
