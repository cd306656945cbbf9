import type { ReactNode, RefObject } from 'react'
import type { Viewpoint } from '../../state/appState.ts'
import { setCut } from '../../state/actions/view.ts'
import { closeCompare, compareStore } from '../../state/compare.ts'
import { project, setRowOrder, setRowShown, showYear } from '../../state/compareActions.ts'
import type { CompareRow } from '../../state/compareRows.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { radians } from '../../core/units/quantity.ts'
import { usePier } from '../hooks/usePier.ts'
import { useViewpoints } from '../hooks/useViewpoints.ts'
import { takeView } from '../../state/actions/takeView.ts'
import { useCompare } from './useCompare.ts'
import { turnCut } from './useCompareKeys.ts'
import { Button } from '../kit/Controls.tsx'
import { Select } from '../kit/Lists.tsx'

const degree = Math.PI / 180
const openings = [
  ['whole', 0],
  ['corner', 100],
  ['half', 180],
  ['open', 270],
] as const

/** Years to choose from, with the one on show. */
const years = [0, 10, 30, 60]
const noYear = -1
const yearsWith = (year: number | null): readonly number[] =>
  year === null || years.includes(year) ? years : [...years, year].sort((a, b) => a - b)

const Arrow = ({ way, label }: Readonly<{ way: -1 | 1; label: string }>) => (
  <Button className='icon framed' aria-label={label} title={label} onClick={() => turnCut(way)}>
    <svg viewBox='0 0 20 16' width='20' height='16' aria-hidden='true' focusable='false'>
      <path
        d={`M1.5 6.5a8.5 4.5 0 1 0 17 0a8.5 4.5 0 1 0-17 0${way < 0 ? 'M12 7.6 8.4 11l3.6 3.4' : 'M8 7.6 11.6 11 8 14.4'}`}
        fill='none'
        stroke='currentColor'
        strokeWidth='1.8'
      />
    </svg>
  </Button>
)

/** From where all piers are seen and how they are cut. */
export const Looks = () => {
  const words = wordsOf('compare')
  const scene = wordsOf('scene')
  const viewpoint = usePier((state) => state.view.viewpoint.name)
  const viewpoints = useViewpoints()
  const cut = usePier((state) => state.view.cut)
  const year = useCompare((state) => state.year)
  const openNow = Math.round(cut.open / degree)
  return (
    <div className='cmp-looks line tight small strong'>
      <Select<Viewpoint>
        label={words.view.look}
        value={viewpoint}
        of={viewpoints.map((name) => [name, scene.viewpoints[name]])}
        onPick={(name) => takeView(pierStore, name)}
      />
      <Select<number>
        label={words.view.cut}
        value={openings.find(([, degrees]) => degrees === openNow)?.[1] ?? ''}
        of={openings.map(([name, degrees]) => [degrees, scene.bar[name]])}
        onPick={(degrees) => setCut(pierStore, { open: radians(degrees * degree), facing: cut.facing })}
      />
      <Select<number>
        label={words.view.water}
        value={year ?? noYear}
        of={[[noYear, words.view.noWater], ...yearsWith(year).map((one) => [one, words.view.atYear(String(one))] as const)]}
        onPick={(one) => showYear(compareStore, one === noYear ? null : one)}
      />
      <Arrow way={-1} label={words.view.left} />
      <Arrow way={1} label={words.view.right} />
    </div>
  )
}

/** Which rows are shown, and in which order. */
const RowMenu = ({ rows }: Readonly<{ rows: readonly CompareRow[] }>) => {
  const words = wordsOf('compare')
  const hidden = useCompare((state) => state.hiddenRows)
  const order = useCompare((state) => state.rowOrder)
  const away = rows.filter(({ id }) => hidden.includes(id)).length
  return (
    <details className='menu holds cmp-menu'>
      <summary className='button'>
        {words.view.rows}
        {away > 0 && ` (${words.view.hidden(away)})`}
      </summary>
      <div className='menu-list panel stack'>
        <fieldset>
          <legend>{words.view.order}</legend>
          {(['fixed', 'differing-first'] as const).map((one) => (
            <label key={one} className='cmp-choice tick small'>
              <input type='radio' name='cmp-order' checked={order === one} onChange={() => setRowOrder(compareStore, one)} />
              <span>{words.view.orders[one]}</span>
            </label>
          ))}
        </fieldset>
        <fieldset>
          <legend>{words.view.shown}</legend>
          {rows.map(({ id }) => (
            <label key={id} className='cmp-choice tick small'>
              <input
                type='checkbox'
                checked={!hidden.includes(id)}
                onChange={(event) => setRowShown(compareStore, id, event.currentTarget.checked)}
              />
              <span>{words.rows[id].label}</span>
            </label>
          ))}
        </fieldset>
      </div>
    </details>
  )
}

/** Whole screen where the browser lets us; without it the page alone is filled. */
const fillScreen = (): void => {
  project(compareStore, 0)
  document.documentElement.requestFullscreen?.().catch(() => undefined)
}

type Props = Readonly<{ rows: readonly CompareRow[]; leave: RefObject<HTMLButtonElement | null>; tools: ReactNode }>

/** What is looked at and how, and the way back. */
export const CompareHead = ({ rows, leave, tools }: Props) => {
  const words = wordsOf('compare')
  return (
    <header className='cmp-head panel under-heavy line'>
      <Button ref={leave} onClick={() => closeCompare(compareStore)}>
        <span aria-hidden='true'>‹ </span>
        {words.close}
      </Button>
      <h2 className='heavy'>{words.title}</h2>
      <span className='spring' />
      <Looks />
      <RowMenu rows={rows} />
      {tools}
      <Button className='button cmp-project' onClick={fillScreen}>
        {words.view.project}
      </Button>
    </header>
  )
}
