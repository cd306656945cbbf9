import type { Theme } from '../appState.ts'
import type { UnitSystem } from '../../core/units/quantity.ts'
import { setTheme, setUnits } from '../actions/view.ts'
import type { NoteStorage } from './note.ts'
import type { PierStore } from '../store.ts'

const key = 'pierglass.page'
const units: readonly UnitSystem[] = ['us', 'metric']
const themes: readonly Theme[] = ['paper', 'dark']

/** Units and page colours stay with the machine, not with the pier. Without storage they last as long as the page. */
export const keepPreferences = (store: PierStore, storage: NoteStorage | null): void => {
  try {
    const [system, theme] = (storage?.getItem(key) ?? '').split(' ')
    const knownUnits = units.find((one) => one === system)
    const knownTheme = themes.find((one) => one === theme)
    if (knownUnits) setUnits(store, knownUnits)
    if (knownTheme) setTheme(store, knownTheme)
  } catch {
    return
  }
  store.subscribe(({ view }, before) => {
    if (view.units === before.view.units && view.theme === before.view.theme) return
    try {
      storage?.setItem(key, `${view.units} ${view.theme}`)
    } catch {
      // The page goes on without; the note of the pier tells of full storage.
    }
  })
}
