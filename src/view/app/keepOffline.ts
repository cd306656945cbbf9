import { notify } from '../../state/actions/notices.ts'
import type { PierStore } from '../../state/store.ts'
import { picture } from '../live/opening.ts'

/** Tells the keeper of the page's files which build this tab runs, for as long as it is open. */
const holdBuild = (script: string): void => {
  const locks = navigator.locks as LockManager | undefined
  void locks?.request(`pierglass.runs.${script}`, { mode: 'shared' }, () => new Promise<void>(() => undefined)).catch(() => undefined)
}

/**
 * Keeps the page's files in this browser, so that it opens without a network. A newer version is kept beside them and told; it takes
 * over when somebody asks for it, or when no tab is open any more. Where a browser can't do this the page works as long as its host does.
 * @param script address of the page's own script: each build has another
 */
export const keepOffline = async (store: PierStore, script: string): Promise<void> => {
  const { serviceWorker } = navigator
  if (!serviceWorker) return
  holdBuild(script)
  // The first picture has the network to itself.
  await picture.passed
  try {
    const registration = await serviceWorker.register(new URL('pageKeeper.js', document.baseURI), { updateViaCache: 'none' })
    const tell = (): void => {
      if (registration.waiting && serviceWorker.controller) notify(store, { code: 'newer-page' })
    }
    tell()
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell))
  } catch {
    // No secure address, or storage refused: nothing is kept and nothing is lost.
  }
}

/** Lets the newer version take over, and opens it. Other tabs go on as they are. */
export const openNewerPage = async (): Promise<void> => {
  const registration = await navigator.serviceWorker.getRegistration()
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
  if (registration?.waiting) registration.waiting.postMessage('take over')
  else location.reload()
}
