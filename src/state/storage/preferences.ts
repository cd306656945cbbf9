import type { LanguageId, Theme } from '../appState.ts'
import type { UnitSystem } from '../../core/units/quantity.ts'
import { setLanguage, setTheme, setUnits } from '../actions/view.ts'
import type { NoteStorage } from './note.ts'
import type { PierStore } from '../store.ts'

const key = 'pierglass.page'
const units: readonly UnitSystem[] = ['us', 'metric']
const themes: readonly Theme[] = ['paper', 'dark']
const languages: readonly LanguageId[] = ['en']

/** Units, page colours and language stay with the machine, not with the pier. Without storage they last as long as the page. */
export const keepPreferences = (store: PierStore, storage: NoteStorage | null): void => {
  try {
    const [system, theme, language] = (storage?.getItem(key) ?? '').split(' ')
    const knownUnits = units.find((one) => one === system)
    const knownTheme = themes.find((one) => one === theme)
    const knownLanguage = languages.find((one) => one === language)
    if (knownUnits) setUnits(store, knownUnits)
    if (knownTheme) setTheme(store, knownTheme)
    if (knownLanguage) setLanguage(store, knownLanguage)
  } catch {
    return
  }
  store.subscribe(({ view }, before) => {
    if (view.units === before.view.units && view.theme === before.view.theme && view.language === before.view.language) return
    try {
      storage?.setItem(key, `${view.units} ${view.theme} ${view.language}`)
    } catch {
      // The page goes on without; the note of the pier tells of full storage.
    }
  })
}
