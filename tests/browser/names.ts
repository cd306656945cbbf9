import { app as words } from '../../src/words/en/app.ts'
import { fields } from '../../src/words/en/fields.ts'
import { fills } from '../../src/words/en/fills.ts'
import type { Locator, Page } from '@playwright/test'
import type { FillId } from '../../src/core/model/spec.ts'
import type { FieldPath } from '../../src/core/spec/pier/pier.ts'

/** Parts of the page by the names that a person sees or hears: the tests read the same table as the page. */
export const parts = (page: Page) => ({
  field: (path: FieldPath): Locator => page.getByRole('textbox', { name: fields[path].label, exact: true }),
  slider: (path: FieldPath): Locator => page.getByRole('slider', { name: words.fields.slider(fields[path].label), exact: true }),
  fill: (id: FillId): Locator => page.getByRole('radio', { name: fills[id].label }),
  undo: page.getByRole('button', { name: words.actions.undo, exact: true }),
  redo: page.getByRole('button', { name: words.actions.redo, exact: true }),
  answers: page.getByRole('region', { name: words.panels.answers, exact: true }),
  headlines: page.getByRole('region', { name: words.panels.headlines, exact: true }),
  cautions: page.getByRole('region', { name: words.panels.notes, exact: true }),
  pierName: page.getByRole('textbox', { name: words.pierName, exact: true }),
  canvas: page.locator('canvas'),
})
