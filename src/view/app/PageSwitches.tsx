import { useId } from 'react'
import type { Theme } from '../../state/appState.ts'
import type { UnitSystem } from '../../core/units/quantity.ts'
import { setTheme, setUnits } from '../../state/actions/view.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'

const Either = <T extends string>(props: { label: string; words: Readonly<Record<T, string>>; chosen: T; onPick: (one: T) => void }) => {
  const name = useId()
  return (
    <div className='either' role='radiogroup' aria-label={props.label}>
      {(Object.keys(props.words) as T[]).map((one) => (
        <label key={one}>
          <input type='radio' name={name} checked={one === props.chosen} onChange={() => props.onPick(one)} />
          {props.words[one]}
        </label>
      ))}
    </div>
  )
}

/** Units and page colours. */
export const PageSwitches = () => {
  const units = usePier((state) => state.view.units)
  const theme = usePier((state) => state.view.theme)
  return (
    <div className='page-switches line'>
      <Either<UnitSystem>
        label={wordsOf('app').unitsLabel}
        words={wordsOf('app').units}
        chosen={units}
        onPick={(one) => setUnits(pierStore, one)}
      />
      <Either<Theme>
        label={wordsOf('app').themeLabel}
        words={wordsOf('app').themes}
        chosen={theme}
        onPick={(one) => setTheme(pierStore, one)}
      />
    </div>
  )
}
