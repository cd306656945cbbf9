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
import { wordsOf } from '../../../words/index.ts'
import { useSpec } from '../../hooks/usePier.ts'
import { useUnits } from '../../hooks/useUnits.ts'
import { NumberField } from '../inputs/NumberField.tsx'
import { Fields } from '../inputs/FieldGroup.tsx'
import { fieldWords } from './fieldWords.ts'
import { Numbers } from './Numbers.tsx'
import './years.css'

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
    <section className='years-method'>
      <h4>{wordsOf('fills')[kind].label}</h4>
      {fields.map((field) => field.type === 'number' && <NumberField key={field.path} field={field} {...fieldWords(field.path)} />)}
      {cost.present && cost.yearly && cost.replacements ? (
        <dl className='pairs'>
          <div>
            <dt>{words.present}</dt>
            <dd>{money(cost.present)}</dd>
          </div>
          <div>
            <dt>{words.yearly}</dt>
            <dd>{money(cost.yearly)}</dd>
          </div>
          <div>
            <dt>{words.changes}</dt>
            <dd>{years.range(String(cost.replacements.low), String(cost.replacements.high))}</dd>
          </div>
          {costAtRateEnds(built, life).map(({ rate, present }) => (
            <div key={rate} className='pair-sub'>
              <dt>{words.rate(say(rate, 'ratio'))}</dt>
              <dd>{money(present)}</dd>
            </div>
          ))}
        </dl>
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
    <div className='years'>
      <p>{words.help}</p>
      <Fields of={common} />
      {spec.costs && <p className='quiet'>{words.note}</p>}
      {spec.costs && fillKinds.map(({ id }) => <Method key={id} spec={spec} kind={id} />)}
    </div>
  )
}
