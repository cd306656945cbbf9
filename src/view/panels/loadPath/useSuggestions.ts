import { useEffect, useState } from 'react'
import type { WhatIf } from '../../../core/derive/whatIf/whatIf.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { suggestionSteps, suggestionsKnown } from '../../../state/suggestions.ts'

/** Runs a task when the page has nothing better to do; gives back how to call it off. */
const whenIdle = (task: () => void): (() => void) => {
  if (typeof requestIdleCallback === 'function') {
    const asked = requestIdleCallback(task, { timeout: 1000 })
    return () => cancelIdleCallback(asked)
  }
  const asked = setTimeout(task, 50)
  return () => clearTimeout(asked)
}

/**
 * What each change would do to a pier; null until it has been worked out, in idle time, one change after another. `spec` is null while a
 * drag goes on, which is never made to wait.
 */
export const useSuggestions = (spec: PierSpec | null): readonly WhatIf[] | null => {
  const [, setDone] = useState<PierSpec | null>(null)
  useEffect(() => {
    if (spec === null || suggestionsKnown(spec) !== null) return
    const steps = suggestionSteps(spec)
    let callOff = (): void => undefined
    const next = (): void => {
      if (steps.next().done) setDone(spec)
      else callOff = whenIdle(next)
    }
    callOff = whenIdle(next)
    return () => callOff()
  }, [spec])
  return spec && suggestionsKnown(spec)
}
