import { showPanel } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { groupId } from '../inputs/FieldGroup.tsx'

/** Opens the inputs of the loads, wherever they are just now, and goes there. */
export const showLoads = (): void => {
  showPanel(pierStore, 'inputs')
  // The panel is in the page once the store has been heard.
  setTimeout(() => {
    const group = document.getElementById(groupId('loads'))
    if (!(group instanceof HTMLDetailsElement)) return
    group.open = true
    group.scrollIntoView({ block: 'start' })
    group.querySelector<HTMLElement>('input')?.focus()
  })
}
