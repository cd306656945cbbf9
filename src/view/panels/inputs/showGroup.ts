import type { FieldGroup } from '../../../core/model/field.ts'
import { showPanel } from '../../../state/actions/view.ts'
import { pierStore } from '../../../state/store.ts'
import { groupId } from './FieldGroup.tsx'

/** Opens one step of the inputs, wherever they are just now, and goes there. */
export const showGroup = (group: FieldGroup): void => {
  showPanel(pierStore, 'inputs')
  // The panel is in the page once the store has been heard.
  setTimeout(() => {
    const details = document.getElementById(groupId(group))
    const panel = document.getElementById('inputs')
    if (!(details instanceof HTMLDetailsElement) || !panel) return
    details.open = true
    // The panel scrolls, never the page.
    panel.scrollTop += details.getBoundingClientRect().top - panel.getBoundingClientRect().top
    details.querySelector<HTMLElement>('summary')?.focus({ preventScroll: true })
  })
}
