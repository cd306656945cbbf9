import { useId, useState } from 'react'
import type { Assumption } from '../../../core/uncertainty/assumptions.ts'
import { reshaped, type Spread, type SpreadKind, spreadProblem } from '../../../core/uncertainty/distributions.ts'
import type { Input } from '../../../core/uncertainty/inputs.ts'
import type { PierSpec } from '../../../core/model/spec.ts'
import { setSpread, setVaries, sureStore } from '../../../state/sure.ts'
import { type Words, wordsOf } from '../../../words/index.ts'
import { useUnits } from '../../hooks/usePier.ts'
import { StandingMark, Mark } from '../../kit/Mark.tsx'
import { Button, Switch } from '../../kit/Controls.tsx'
import { AmountBox } from './AmountBox.tsx'
import { drawnFigure, drawnRange, inputWords, usualDraws } from './sureFigures.ts'

type Figure = keyof Words['sure']['figures']
/** The figures of each shape, in the order in which they are asked for. */
const figuresOf: Readonly<Record<SpreadKind, readonly Figure[]>> = {
  normal: ['middle', 'sd', 'low', 'high'],
  lognormal: ['middle', 'cov', 'low', 'high'],
  triangular: ['low', 'peak', 'high'],
  uniform: ['low', 'high'],
}

/** One assumed range: whether the input varies, where most of its draws lie, and on demand its shape and figures. */
export const RangeRow = ({ assumption, input, spec }: { assumption: Assumption; input: Input; spec: PierSpec }) => {
  const sure = wordsOf('sure')
  const id = useId()
  const units = useUnits()
  const [isOpen, setIsOpen] = useState(false)
  const { label } = inputWords(input.id)
  const problem = spreadProblem(assumption.spread)
  const isDrawn = assumption.varies && problem === null
  const entered = input.figure(spec) ?? 0
  const said = isDrawn ? sure.ranges.draws(...drawnRange(input, spec, usualDraws(assumption), units)) : sure.ranges.fixed
  return (
    <li className='ruled'>
      <div className='line wide sure-range'>
        <Switch
          id={id}
          isOn={assumption.varies}
          aria-label={sure.ranges.vary(label)}
          onSwitch={(on) => setVaries(sureStore, input.id, on)}
        />
        <span className='row-name grows'>
          <span>{label}</span>
          <span className='quiet'>
            {said} <StandingMark standing={assumption.standing} />
          </span>
        </span>
        <Button
          className='button plain'
          aria-expanded={isOpen}
          aria-controls={`${id}-form`}
          aria-label={isOpen ? sure.ranges.fold(label) : sure.ranges.edit(label)}
          onClick={() => setIsOpen(!isOpen)}
        >
          {isOpen ? sure.ranges.close : sure.ranges.change}
        </Button>
      </div>
      {problem !== null && (
        <p className='problem sure-help mark-short'>
          <Mark name='short' />
          <span>{sure.problems[problem]}</span>
        </p>
      )}
      <div id={`${id}-form`} hidden={!isOpen}>
        {isOpen && (
          <RangeForm
            input={input}
            spread={assumption.spread}
            why={assumption.why}
            entered={drawnFigure(input, spec, input.as === 'times' ? 1 : 0, units)}
            hasFigure={entered !== 0}
          />
        )}
      </div>
    </li>
  )
}

type FormProps = Readonly<{ input: Input; spread: Spread; why: string; entered: string; hasFigure: boolean }>
const RangeForm = ({ input, spread, why, entered, hasFigure }: FormProps) => {
  const sure = wordsOf('sure')
  const id = useId()
  const { plain, why: reason } = inputWords(input.id)
  const quantity = input.as === 'times' ? 'ratio' : input.quantity
  const figures = spread as Readonly<Partial<Record<Figure, number>>>
  return (
    <div className='nested stack'>
      <p className='quiet'>
        {plain}
        {hasFigure && ` ${sure.ranges.asEntered(entered)}`} {input.as === 'times' ? sure.ranges.times : sure.ranges.added}
      </p>
      {why !== '' && (
        <p className='quiet'>
          <strong>{sure.ranges.why}</strong> {reason}
        </p>
      )}
      <div className='field-line ends'>
        <label htmlFor={id}>{sure.ranges.shape}</label>
        <span className='list'>
          <select
            id={id}
            value={spread.kind}
            onChange={(event) => setSpread(sureStore, input.id, reshaped(spread, event.target.value as SpreadKind))}
          >
            {(Object.keys(sure.shapes) as SpreadKind[])
              .filter((kind) => kind !== 'lognormal' || input.as === 'times')
              .map((kind) => (
                <option key={kind} value={kind}>
                  {sure.shapes[kind]}
                </option>
              ))}
          </select>
        </span>
      </div>
      {figuresOf[spread.kind].map((name) => (
        <AmountBox
          key={name}
          label={sure.figures[name]}
          value={figures[name] ?? 0}
          quantity={name === 'cov' ? 'ratio' : quantity}
          onEnter={(value) => setSpread(sureStore, input.id, { ...spread, [name]: value } as Spread)}
        />
      ))}
    </div>
  )
}
