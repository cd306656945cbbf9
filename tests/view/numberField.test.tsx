// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { fieldAt } from '../../src/core/spec/fields.ts'
import type { Issue } from '../../src/core/model/issue.ts'
import { defaultDocument } from '../../src/core/spec/defaults.ts'
import { parseQuantity } from '../../src/core/units/parse.ts'
import { openDocument } from '../../src/state/actions/document.ts'
import { undo } from '../../src/state/actions/history.ts'
import { setUnits } from '../../src/state/actions/view.ts'
import { pierStore } from '../../src/state/store.ts'
import type { FieldOf } from '../../src/core/model/field.ts'
import { wordsOf } from '../../src/words/index.ts'
import { issueText } from '../../src/facts/issueWords.ts'
import { NumberField } from '../../src/view/panels/inputs/NumberField.tsx'
import { boxText } from '../../src/view/panels/inputs/useEntry.ts'
import { draw, leave, press, setValue } from './page.ts'

const path = 'hole.diameter'
const field = fieldAt(defaultDocument.spec, path) as FieldOf<'number'>
const inches = (): number => pierStore.getState().document.spec.hole.diameter / 0.0254
const past = (): number => pierStore.temporal.getState().pastStates.length

let view: Awaited<ReturnType<typeof draw>>
const box = (): HTMLInputElement => document.querySelector('input[type=text]') as HTMLInputElement
const slider = (): HTMLInputElement => document.querySelector('input[type=range]') as HTMLInputElement
const told = (): string => document.querySelector('.field-issues')?.textContent ?? ''
const type = (value: string): Promise<void> => view.act(async () => setValue(box(), value))
const key = (node: HTMLElement, name: string, more?: KeyboardEventInit): Promise<void> => view.act(async () => press(node, name, more))

beforeEach(async () => {
  openDocument(pierStore, defaultDocument)
  setUnits(pierStore, 'us')
  pierStore.temporal.getState().clear()
  view = await draw(<NumberField field={field} help='Width of the hole.' />)
})
afterEach(() => view.end())

describe('[P1] a number with a unit', () => {
  it('shows the value as the trade writes it, on box and slider', () => {
    expect(box().value).toBe('20 in')
    expect(slider().getAttribute('aria-valuetext')).toBe('20 in')
    expect([slider().min, slider().max, slider().value]).toEqual(['8', '48', '20'])
  })

  it.each([
    ['18', 18],
    [`1'-6"`, 18],
    ['0.508 m', 20],
    ['22 1/2', 22.5],
  ])('enters %s at Enter', async (typed, want) => {
    await type(typed)
    await key(box(), 'Enter')
    expect(inches()).toBeCloseTo(want, 9)
  })

  it('enters at leaving the box, once', async () => {
    await type('24')
    await view.act(async () => leave(box()))
    expect(inches()).toBeCloseTo(24, 9)
    expect(past()).toBe(1)
    expect(box().value).toBe('24 in')
  })

  it('keeps a bad entry in the box, names field, value and limit, and leaves the pier', async () => {
    await type('900 in')
    await key(box(), 'Enter')
    expect(box().value).toBe('900 in')
    expect(box().getAttribute('aria-invalid')).toBe('true')
    expect(inches()).toBeCloseTo(20, 9)
    expect(told()).toContain(wordsOf('fields')[path].label)
    expect(told()).toContain('900 in')
    expect(told()).toContain('48 in')
    const described = (box().getAttribute('aria-describedby') ?? '').split(' ').map((id) => document.getElementById(id))
    expect(described.every((node) => node !== null)).toBe(true)
    expect(described.map((node) => node?.textContent).join(' ')).toContain('48 in')
  })

  it('gives a bad entry up at Escape, and at undo', async () => {
    await type('900 in')
    await key(box(), 'Enter')
    await key(box(), 'Escape')
    expect([box().value, told()]).toEqual(['20 in', ''])
    await type('24')
    await key(box(), 'Enter')
    await type('900 in')
    await key(box(), 'Enter')
    await view.act(async () => undo(pierStore))
    expect([box().value, told()]).toEqual(['20 in', ''])
  })

  it.each([
    ['ArrowUp', {}, 31],
    ['ArrowDown', {}, 29],
    ['ArrowUp', { shiftKey: true }, 40],
    ['PageUp', {}, 40],
    ['PageDown', {}, 20],
  ] as const)('steps at %s %j, one undo step a press', async (name, more, want) => {
    await type('30')
    await key(box(), 'Enter')
    pierStore.temporal.getState().clear()
    await key(box(), name, more)
    expect(inches()).toBeCloseTo(want, 9)
    expect(past()).toBe(1)
  })

  it('stops at its bounds', async () => {
    for (let i = 0; i < 6; i++) await key(box(), 'PageUp')
    expect(inches()).toBeCloseTo(48, 9)
    expect(told()).toBe('')
  })

  it('follows the unit switch without changing the pier', async () => {
    const before = pierStore.getState().document
    await view.act(async () => setUnits(pierStore, 'metric'))
    expect(box().value).toBe('508 mm')
    expect(slider().max).toBe('121')
    await view.act(async () => setUnits(pierStore, 'us'))
    expect(box().value).toBe('20 in')
    expect(pierStore.getState().document).toBe(before)
  })

  it('drags by the slider as one step when it is let go', async () => {
    for (const place of ['21', '23', '26']) await view.act(async () => setValue(slider(), place))
    await view.act(async () => slider().dispatchEvent(new Event('change', { bubbles: true })))
    expect(inches()).toBeCloseTo(26, 9)
    expect(past()).toBe(1)
  })

  it('opens its one line of help by a button', async () => {
    const button = document.querySelector('.help-button') as HTMLButtonElement
    const help = document.getElementById(button.getAttribute('aria-controls') ?? '')
    expect(help?.hidden).toBe(true)
    await view.act(async () => button.click())
    expect(help?.hidden).toBe(false)
    expect(help?.textContent).toContain('8 in')
    expect(help?.textContent).toContain('48 in')
  })

  it('shows markup as text', async () => {
    await type('<img src=x onerror=alert(1)>')
    await key(box(), 'Enter')
    expect(document.querySelector('img')).toBeNull()
    expect(told()).toContain('<img')
  })

  it('tells an absurd value by its own bounds alone, in few digits', async () => {
    await type('1e99')
    await key(box(), 'Enter')
    expect(document.querySelectorAll('.field-error')).toHaveLength(1)
    expect(told()).toContain('48 in')
  })
})

describe('[P1] a value of a file that is no text', () => {
  it.each([[null], [true], [[1, 2]], [{}]])('%j is told, not thrown', (got) => {
    const issue = { code: 'not-a-choice', severity: 'error', path: 'fill.kind', got } as unknown as Issue
    expect(issueText(issue, 'us')).toContain(wordsOf('fields')['fill.kind'].label)
  })
})

describe('[P1] a number that is no length', () => {
  it('says what may be typed where nothing can be read', async () => {
    await view.end()
    view = await draw(<NumberField field={fieldAt(defaultDocument.spec, 'site.slope') as FieldOf<'number'>} help='' />)
    await type('abc')
    await key(box(), 'Enter')
    expect(told()).toContain(wordsOf('app').fields.between('0%', '50%'))
    expect(told()).not.toContain('18 in')
    await type('1e99')
    await key(box(), 'Enter')
    expect(told()).toContain('1e+99%')
  })

  it('has degrees by their sign, and reads them back', () => {
    for (const [value, quantity, said] of [
      [(18.43 * Math.PI) / 180, 'angle', '18.43°'],
      [5.5, 'temperature', '41.9 °F'],
    ] as const) {
      expect(boxText(value, quantity, 'us')).toBe(said)
      const read = parseQuantity(said, quantity)
      expect(read.ok && read.value).toBeCloseTo(value, 9)
    }
  })
})
