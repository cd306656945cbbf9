import { type ReactNode, Suspense } from 'react'
import type { Field } from '../../../core/model/field.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { switchPart, setValue } from '../../../state/actions/edit.ts'
import { sliderOf } from '../../../state/slider.ts'
import { pierStore } from '../../../state/store.ts'
import type { KindText } from '../../../words/en/fills.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { usePier, useSpec } from '../../hooks/usePier.ts'
import { lazyPage } from '../../lazyPage.tsx'
import { fieldLabel } from '../../../facts/issueWords.ts'
import { ChoiceField } from './ChoiceField.tsx'
import { KindCards } from './KindCards.tsx'
import { NumberField } from './NumberField.tsx'
import { bracketPictogram, fillPictogram, type Stamp } from './Pictogram.tsx'
import { SwitchField } from './SwitchField.tsx'

const helpOf = (path: string): string =>
  Object.hasOwn(wordsOf('fields'), path) ? wordsOf('fields')[path as keyof Words['fields']].help : ''

/** Long, and below the fold of every page. */
const LateDrawingEditor = lazyPage(() => import('../drawing/DrawingEditor.tsx').then((module) => module.DrawingEditor), ['drawing'])
const DrawingEditor = (props: { path: string }) => (
  <Suspense>
    <LateDrawingEditor {...props} />
  </Suspense>
)

/** Kinds are chosen from cards with a picture of each. */
const kinds: Readonly<Record<string, Readonly<{ words: () => Readonly<Record<string, KindText>>; picture: (id: string) => Stamp }>>> = {
  'fill.kind': { words: () => wordsOf('fills'), picture: fillPictogram },
  'support.bracket.kind': { words: () => wordsOf('brackets'), picture: bracketPictogram },
}

/** One field, by what it is: a number, a number that may be left out, a choice, or a part that may be left out. */
const OneField = ({ field, children }: { field: Field; children?: ReactNode }) => {
  const value = valueAt(useSpec(), field.path)
  const system = usePier((state) => state.view.units)
  const help = helpOf(field.path)
  const kind = kinds[field.path]
  if (field.path === 'callout') return <DrawingEditor path={field.path} />
  if (field.type === 'choice' && kind) return <KindCards field={field} words={kind.words()} picture={kind.picture} />
  if (field.type === 'choice') return <ChoiceField field={field} help={help} />
  if (field.type === 'part')
    return (
      <SwitchField
        path={field.path}
        label={fieldLabel(field.path)}
        help={help}
        on={value !== null}
        onChange={(on) => switchPart(pierStore, field.path, on)}
      >
        {children}
      </SwitchField>
    )
  if (!field.nullable) return <NumberField field={field} help={help} />
  const start = () => {
    const slider = sliderOf(field, system)
    return slider.valueAt(Math.round((slider.first * 3 + slider.last) / 4))
  }
  return (
    <SwitchField
      path={`${field.path}.met`}
      label={wordsOf('app').fields.present(fieldLabel(field.path))}
      help={help}
      on={value !== null}
      onChange={(on) => setValue(pierStore, field.path, on ? start() : null)}
    >
      <NumberField field={field} help={help} />
    </SwitchField>
  )
}

/** Fields of one group in order; those of an optional part stand inside it. */
const nested = (fields: readonly Field[]): ReactNode[] =>
  fields
    .filter((field) => !fields.some((part) => part.type === 'part' && field.path.startsWith(`${part.path}.`)))
    .map((field) => {
      const own = field.type === 'part' ? fields.filter((other) => other.path.startsWith(`${field.path}.`)) : []
      return (
        <OneField key={field.path} field={field}>
          {own.length > 0 ? nested(own) : null}
        </OneField>
      )
    })

/** Some inputs where they are needed, outside their step. */
export const Fields = ({ of }: { of: readonly Field[] }) => <>{nested(of)}</>
