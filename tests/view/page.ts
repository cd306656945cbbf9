import { act, type ReactNode } from 'react'
import { createRoot } from 'react-dom/client'
import { vi } from 'vitest'

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })

/** Draws into the page of the test environment; every effect has happened and every late part is there when it returns. */
export const draw = async (node: ReactNode) => {
  const holder = document.body.appendChild(document.createElement('div'))
  const root = createRoot(holder)
  await act(async () => root.render(node))
  await act(() => vi.dynamicImportSettled())
  return {
    act,
    end: async () => {
      await act(async () => root.unmount())
      holder.remove()
    },
  }
}

/** Puts a value into an input the way a browser does, past React's own bookkeeping. */
export const setValue = (input: HTMLInputElement, value: string): void => {
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, value)
  input.dispatchEvent(new Event('input', { bubbles: true }))
}

export const press = (input: HTMLElement, key: string, more: KeyboardEventInit = {}): void => {
  input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more }))
  input.dispatchEvent(new KeyboardEvent('keyup', { key, bubbles: true, ...more }))
}

export const leave = (input: HTMLElement): void => {
  input.dispatchEvent(new FocusEvent('focusout', { bubbles: true }))
}
