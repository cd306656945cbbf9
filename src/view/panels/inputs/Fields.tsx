import { type ReactNode, Suspense } from 'react'
import type { Field } from '../../../core/model/field.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import type { SayNumber } from '../../../core/units/reader.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { switchPart } from '../../../state/actions/edit.ts'
import { pierStore } from '../../../state/store.ts'
import type { KindText } from '../../../words/en/fills.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { useSpec, useUnits } from '../../hooks/usePier.ts'
import { lazyPage } from '../../lazyPage.tsx'
import { afterPicture } from '../../live/opening.ts'
import { fieldLabel } from '../../../facts/issueWords.ts'
import { ChoiceField } from './ChoiceField.tsx'
import { KindCards } from './KindCards.tsx'
import { NumberField } from './NumberField.tsx'
import { bracketPictogram, fillPictogram, type Stamp } from './Pictogram.tsx'
import { SwitchField } from './SwitchField.tsx'

const helpOf = (path: string): string =>
  Object.hasOwn(wordsOf('fields'), path) ? wordsOf('fields')[path as keyof Words['fields']].help : ''

/** Long, and below the fold of every page. */
const LateDrawingEditor = lazyPage(
  () => import('../drawing/DrawingEditor.tsx').then((module) => module.DrawingEditor),
  ['drawing'],
  afterPicture,
)
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

/** What an empty box means: nothing was given, or the drawing says it elsewhere. */
const emptyWords = (path: string, { callout }: PierSpec, say: SayNumber): string =>
  path === 'loads.entered.uplift' && callout?.uplift
    ? wordsOf('app').fields.fromDrawing(say(callout.uplift, 'force'))
    : wordsOf('app').fields.empty

/** One field, by what it is: a number, a number that may be left out, a choice, or a part that may be left out. */
const OneField = ({ field, children }: { field: Field; children?: ReactNode }) => {
  const spec = useSpec()
  const { say } = useUnits()
  const value = valueAt(spec, field.path)
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
  if (field.nullable) return <NumberField field={field} help={help} none={emptyWords(field.path, spec, say)} />
  return <NumberField field={field} help={help} />
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
