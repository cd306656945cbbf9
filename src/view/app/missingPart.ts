import type { PierStore } from '../../state/store.ts'

const key = 'pierglass.mended'

/** Has this very version of the page been opened again for a missing part before? Where that can't be known, yes. */
const isSecondTime = (version: string): boolean => {
  try {
    if (sessionStorage.getItem(key) === version) return true
    sessionStorage.setItem(key, version)
    return false
  } catch {
    return true
  }
}

const isThere = async (): Promise<boolean> => {
  try {
    return (await fetch(location.pathname, { method: 'HEAD', cache: 'no-store' })).ok
  } catch {
    return false
  }
}

/**
 * A part of the page that can't be had is most often one of an older version, gone from its host. The page is opened again, once, when
 * the pier lies in its note and the host answers; else what needs the part says that it failed.
 */
export const mendMissingPart = (store: PierStore, version: string, reload: () => void = () => location.reload()): void => {
  window.addEventListener('vite:preloadError', async () => {
    const isNoted = store.getState().notices.every(({ code }) => code !== 'storage-blocked' && code !== 'storage-full')
    if (isNoted && (await isThere()) && !isSecondTime(version)) reload()
  })
}
