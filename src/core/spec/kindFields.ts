import type { Field } from '../model/field.ts'
import type { PierSpec } from '../model/spec.ts'
import { bracketKinds, fillKinds } from '../kinds/index.ts'
import { choiceField, inches } from '../model/fieldMakers.ts'

/** A kind's own field, shown only while that kind is the one in use. */
const ownedBy =
  (inUse: (spec: PierSpec) => boolean) =>
  (field: Field): Field => {
    const { visibleIf } = field
    return { ...field, visibleIf: (spec) => inUse(spec) && (visibleIf === undefined || visibleIf(spec)) }
  }

const bracketInUse = (spec: PierSpec) => (spec.support.kind === 'bracket' ? spec.support.bracket.kind : null)

export const fillFields: readonly Field[] = [
  choiceField(
    'fill.kind',
    'fill',
    fillKinds.map((kind) => kind.id),
  ),
  ...fillKinds.flatMap((kind) => kind.fields.map(ownedBy((spec) => spec.fill.kind === kind.id))),
]

const standing = { shown: (spec: PierSpec) => spec.support.kind === 'bracket' }

export const bracketFields: readonly Field[] = [
  choiceField(
    'support.bracket.kind',
    'steel',
    bracketKinds.map((kind) => kind.id),
    standing,
  ),
  inches('support.standOff', 'steel', 0, 12, 0.25, standing),
  choiceField('code', 'steel', ['irc-2012-2018', 'irc-2021', 'ibc-2012', 'ibc-2018'], standing),
  ...bracketKinds.flatMap((kind) => kind.fields.map(ownedBy((spec) => bracketInUse(spec) === kind.id))),
]
