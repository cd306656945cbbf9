import { useWindow } from '../hooks/useWindow.ts'
import { setCut } from '../../state/actions/view.ts'
import { closeCompare, compareStore } from '../../state/compare.ts'
import { project } from '../../state/compareActions.ts'
import { pierStore } from '../../state/store.ts'
import { takeView } from '../../state/actions/takeView.ts'
import { radians } from '../../core/units/quantity.ts'

const turnStep = Math.PI / 24

/** Turns the cut of every pier: -1 to the left, 1 to the right. */
export function turnCut(way: -1 | 1): void {
  const { open, facing } = pierStore.getState().view.cut
  setCut(pierStore, { open, facing: radians(facing - way * turnStep) })
}

const takesKeys = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.matches('input, select, textarea, [contenteditable]')
const takesSpace = (target: EventTarget | null): boolean => target instanceof HTMLElement && target.matches('button, summary, a, label')

type Steps = Readonly<{ count: number; toggleDark: () => void }>

/** What a key does; false when it is none of ours. Remotes act as keyboards: pages, arrows, `b` or a stop. */
function press(key: string, target: EventTarget | null, { count, toggleDark }: Steps): boolean {
  const { projected } = compareStore.getState()
  if (key === 'Escape') {
    const menu = document.querySelector<HTMLDetailsElement>('.cmp-menu[open]')
    if (menu) menu.open = false
    else if (projected === null) closeCompare(compareStore)
    else project(compareStore, null)
    return true
  }
  if (takesKeys(target)) return false
  if (key === 'ArrowLeft') turnCut(-1)
  else if (key === 'ArrowRight') turnCut(1)
  else if (key === 'Home') takeView(pierStore, 'section')
  else if (projected === null) return false
  else if (key === 'PageDown' || key === 'ArrowDown' || (key === ' ' && !takesSpace(target)))
    project(compareStore, Math.min(count - 1, projected + 1))
  else if (key === 'PageUp' || key === 'ArrowUp') project(compareStore, Math.max(0, projected - 1))
  else if (key === 'b' || key === 'B' || key === '.') toggleDark()
  else return false
  return true
}

/** Keys of the comparison, wherever the focus is. */
export const useCompareKeys = (steps: Steps): void =>
  useWindow({
    keydown: (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return
      if (press(event.key, event.target, steps)) event.preventDefault()
    },
  })
