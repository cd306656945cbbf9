import { useEffect, useLayoutEffect } from 'react'
import type { Theme } from '../../state/appState.ts'
import { compareStore } from '../../state/compare.ts'
import { project } from '../../state/compareActions.ts'

/** While piers are projected the page is dark, whatever its own colours; leaving full screen ends it, and the other way round. */
export function useProjection(isOn: boolean, theme: Theme): void {
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = isOn ? 'dark' : theme
    return () => {
      document.documentElement.dataset.theme = theme
    }
  }, [isOn, theme])

  useEffect(() => {
    if (!isOn) return
    const onChange = () => {
      if (!document.fullscreenElement) project(compareStore, null)
    }
    document.addEventListener('fullscreenchange', onChange)
    return () => {
      document.removeEventListener('fullscreenchange', onChange)
      if (document.fullscreenElement) document.exitFullscreen().catch(() => undefined)
    }
  }, [isOn])
}
