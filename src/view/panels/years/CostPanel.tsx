import { useDeferredValue } from 'react'
import { deriveCost } from '../../../core/derive/life/deriveCost.ts'
import { deriveLife } from '../../../core/derive/life/deriveLife.ts'
import { costAtRateEnds } from '../../../core/derive/life/rateEnds.ts'
import { fillKinds } from '../../../core/kinds/index.ts'
import type { Band } from '../../../core/model/timeResult.ts'
import type { FillId, PierSpec } from '../../../core/model/spec.ts'
import { withChoice } from '../../../core/spec/choose.ts'
import { priceNames, pricePath } from '../../../core/spec/pier/life.ts'
import { visibleFields } from '../../../core/spec/fields.ts'
import { rowIn } from '../../../facts/firstWords.ts'
import { wordsOf } from '../../../words/index.ts'
import { useSpec, useUnits } from '../../hooks/usePier.ts'
import { Pairs } from '../../kit/FactTable.tsx'
import { Numbers } from '../answers/WorkedDetails.tsx'
import { NumberField } from '../inputs/NumberField.tsx'
import { Fields } from '../inputs/Fields.tsx'
import './years.css'

/** Help of an input, and what its empty box means. */
const fieldWords = (path: string): Readonly<{ help: string; none: string }> => {
  const { help = '', none = '' } = rowIn<Readonly<{ help: string; none?: string }>>(wordsOf('fields'), path) ?? {}
  return { help, none }
}

/** The same pier, filled another way. */
const builtAs = (spec: PierSpec, kind: FillId): PierSpec => (spec.fill.kind === kind ? spec : withChoice(spec, 'fill.kind', kind))

/** Two prices of one method, and what they come to over the years. */
const Method = ({ spec, kind }: Readonly<{ spec: PierSpec; kind: FillId }>) => {
  const years = wordsOf('years')
  const words = wordsOf('years').cost
  const { say } = useUnits()
  const built = builtAs(spec, kind)
  const life = deriveLife(built)
  const cost = deriveCost(built, life)
  if (cost === null || built.costs === null) return null
  const { costs } = built
  const money = ({ low, high }: Band) => years.range(say(low, 'money'), say(high, 'money'))
  const fields = visibleFields(spec).filter((field) => priceNames.some((name) => field.path === pricePath(kind, name)))
  const isPriced = priceNames.every((name) => costs.prices[kind][name] !== null)
  return (
    <section className='years-method over-fine'>
      <h4>{wordsOf('fills')[kind].label}</h4>
      {fields.map((field) => field.type === 'number' && <NumberField key={field.path} field={field} {...fieldWords(field.path)} />)}
      {cost.present && cost.yearly && cost.replacements ? (
        <Pairs
          of={[
            [words.present, money(cost.present)],
            [words.yearly, money(cost.yearly)],
            [words.changes, years.range(String(cost.replacements.low), String(cost.replacements.high))],
            ...costAtRateEnds(built, life).map(({ rate, present }) => [words.rate(say(rate, 'ratio')), money(present), 'part'] as const),
          ]}
        />
      ) : (
        <p className='quiet'>{isPriced ? words.noLife : words.noPrice}</p>
      )}
      <Numbers of={cost.worked} />
    </section>
  )
}

/** What each way of building costs over the years, from the reader's own prices alone. */
export const CostPanel = () => {
  const words = wordsOf('years').cost
  const shown = useSpec()
  const spec = useDeferredValue(shown)
  const common = visibleFields(shown).filter(({ path }) => /^costs(\.[a-z]+)?$/.test(path))
  return (
    <div className='years stack small'>
      <p>{words.help}</p>
      <Fields of={common} />
      {spec.costs && <p className='quiet'>{words.note}</p>}
      {spec.costs && fillKinds.map(({ id }) => <Method key={id} spec={spec} kind={id} />)}
    </div>
  )
}
