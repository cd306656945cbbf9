import { type ReactNode, Suspense } from 'react'
import type { Field, FieldGroup as GroupId } from '../../../core/model/field.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { setChoice, setPart, setValue } from '../../../state/actions/edit.ts'
import { sliderOf } from '../../../state/slider.ts'
import { pierStore } from '../../../state/store.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { bracketKinds, fillKinds } from '../../../core/kinds/index.ts'
import { usePier, useSpec } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { fieldLabel } from '../issueText.ts'
import { ChoiceField } from './ChoiceField.tsx'
import { groupSummary } from './groupSummary.ts'
import { KindCards } from './KindCards.tsx'
import { LoadsNote } from './LoadsNote.tsx'
import { NumberField } from './NumberField.tsx'
import { Pictogram } from './Pictogram.tsx'
import { bracketPictogram, fillPictogram } from './pictogram.ts'
import { SwitchField } from './SwitchField.tsx'
import { useWarnings } from './useEntry.ts'
import { lazyPage } from '../../lazyPage.tsx'

const helpOf = (path: string): string =>
  Object.hasOwn(wordsOf('fields'), path) ? wordsOf('fields')[path as keyof Words['fields']].help : ''

const FillCards = ({ path }: { path: string }) => {
  const chosen = useSpec().fill.kind
  const errors = usePier((state) => state.entries[path]?.issues)
  return (
    <KindCards
      legend={fieldLabel(path)}
      ids={fillKinds.map((kind) => kind.id)}
      chosen={chosen}
      words={wordsOf('fills')}
      picture={(id) => <Pictogram drawing={fillPictogram(id)} />}
      onPick={(id) => setChoice(pierStore, path, id)}
      errors={errors ?? []}
      warnings={useWarnings(path)}
    />
  )
}

const BracketCards = ({ path }: { path: string }) => {
  const { support } = useSpec()
  const errors = usePier((state) => state.entries[path]?.issues)
  const warnings = useWarnings(path)
  if (support.kind !== 'bracket') return null
  return (
    <KindCards
      legend={fieldLabel(path)}
      ids={bracketKinds.map((kind) => kind.id)}
      chosen={support.bracket.kind}
      words={wordsOf('brackets')}
      picture={(id) => <Pictogram drawing={bracketPictogram(id)} />}
      onPick={(id) => setChoice(pierStore, path, id)}
      errors={errors ?? []}
      warnings={warnings}
    />
  )
}

/** Long, and below the fold of every page. */
const LateDrawingEditor = lazyPage(() => import('../drawing/DrawingEditor.tsx').then((module) => module.DrawingEditor), ['drawing'])
const DrawingEditor = (props: { path: string }) => (
  <Suspense>
    <LateDrawingEditor {...props} />
  </Suspense>
)

/** Inputs of a form of their own: choices as cards with a picture of each kind, and the drawing. */
const cards: Readonly<Record<string, (props: { path: string }) => ReactNode>> = {
  'fill.kind': FillCards,
  'support.bracket.kind': BracketCards,
  callout: DrawingEditor,
}

/** One field, by what it is: a number, a number that may be left out, a choice, or a part that may be left out. */
const OneField = ({ field, children }: { field: Field; children?: ReactNode }) => {
  const value = valueAt(useSpec(), field.path)
  const system = usePier((state) => state.view.units)
  const help = helpOf(field.path)
  const Cards = cards[field.path]
  if (Cards) return <Cards path={field.path} />
  if (field.type === 'choice') return <ChoiceField field={field} help={help} />
  if (field.type === 'part')
    return (
      <SwitchField
        path={field.path}
        label={fieldLabel(field.path)}
        help={help}
        on={value !== null}
        onChange={(on) => setPart(pierStore, field.path, on)}
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

/** What stands over the inputs of a step. */
const notes: Partial<Readonly<Record<GroupId, () => ReactNode>>> = { loads: LoadsNote }

/** Where a step stands in the page. */
export const groupId = (group: GroupId): string => `inputs-${group}`

/** A step of the building order: its number, its name, what is set, and its inputs while it is open. */
export const FieldGroup = (props: {
  group: GroupId
  number: number
  fields: readonly Field[]
  open: boolean
  onToggle: (open: boolean) => void
}) => {
  const spec = useSpec()
  const { say } = useUnits()
  const { label } = wordsOf('groups')[props.group]
  const Note = notes[props.group]
  return (
    <details id={groupId(props.group)} className='group' open={props.open} onToggle={(event) => props.onToggle(event.currentTarget.open)}>
      <summary>
        <span className='bubble' aria-hidden='true'>
          {props.number}
        </span>
        <h3>{label}</h3>
        <span className='group-summary'>
          {groupSummary[props.group](spec, say, (path) => props.fields.some((field) => field.path === path))}
        </span>
      </summary>
      <div className='group-fields'>
        {Note && <Note />}
        {nested(props.fields)}
      </div>
    </details>
  )
}
