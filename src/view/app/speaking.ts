import { useSyncExternalStore } from 'react'
import type { PierStore } from '../../state/store.ts'
import { languageSpoken, languages, locale, onLanguage, speak } from '../../words/index.ts'

/**
 * Speaks the language of the preference and follows it; or one that is made for tests, where the address asks for it by `?words=`. Resolves
 * once the words of the first page are there.
 */
export async function startSpeaking(store: PierStore, address: URL): Promise<void> {
  const asked = address.searchParams.get('words')
  if (asked !== null) {
    const { generatedLanguage } = await import('../../words/generated.ts')
    const made = generatedLanguage(asked)
    if (made) return speak(made)
  }
  const follow = async (): Promise<void> => {
    const { language } = store.getState().view
    if (language === languageSpoken()) return
    await speak(await languages[language]())
    document.documentElement.lang = locale()
  }
  store.subscribe(({ view }, before) => {
    if (view.language !== before.view.language) void follow()
  })
  return follow()
}

/** The language that is spoken: a page that is keyed by it is drawn anew in another. */
export const useLanguage = () => useSyncExternalStore(onLanguage, languageSpoken)
