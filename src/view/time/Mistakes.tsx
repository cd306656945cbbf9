import { useId } from 'react'
import type { MistakeId } from '../../core/model/buildStep.ts'
import type { PierResult } from '../../core/model/result.ts'
import { putRight, setMistake } from '../../state/actions/view.ts'
import { meantResult } from '../../state/derived.ts'
import { worseChecks } from '../../state/shown.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier, useResult, useUnits } from '../hooks/usePier.ts'
import type { SayNumber } from '../../core/units/reader.ts'
import { Button } from '../kit/Controls.tsx'
import { PlainTable } from '../kit/FactTable.tsx'

type Change = Readonly<{ label: string; right: string; wrong: string }>

const nameOf = (id: string): string => (wordsOf('headlines') as Readonly<Record<string, { label: string }>>)[id]?.label ?? id

/** What is missed that would not be, then the main numbers that are other than they would be, as they are read. */
function changesOf(meant: PierResult, built: PierResult, say: SayNumber): readonly Change[] {
  const words = wordsOf('time').build
  const read = (value: number | null | undefined, quantity: Parameters<SayNumber>[1]): string =>
    value == null ? words.none : say(value, quantity)
  const rows = [
    {
      label: wordsOf('app').answers.uplift,
      right: read(meant.uplift.allowable, 'force'),
      wrong: read(built.uplift.allowable, 'force'),
    },
    ...meant.headlines.map(({ id, value, quantity }) => ({
      label: nameOf(id),
      right: read(value, quantity),
      wrong: read(built.headlines.find((one) => one.id === id)?.value, quantity),
    })),
  ]
  const missed = worseChecks(meant, built).map(({ id, ratio }) => ({
    label: nameOf(id),
    right: words.within,
    wrong: words.beyond(say(ratio, 'ratio')),
  }))
  return [...missed, ...rows.filter(({ right, wrong }) => right !== wrong)]
}

/** Mistakes of a step as switches; picture and numbers follow. */
export const Mistakes = ({ ids }: Readonly<{ ids: readonly MistakeId[] }>) => {
  const build = wordsOf('build')
  const made = usePier((state) => state.view.mistakes)
  const id = useId()
  return (
    <>
      {ids.length > 0 && (
        <>
          <p id={id}>{wordsOf('time').build.makeIt}</p>
          <ul className='time-switches ticks' aria-labelledby={id}>
            {ids.map((one) => (
              <li key={one}>
                <label className='ruled'>
                  <input
                    type='checkbox'
                    checked={made.includes(one)}
                    onChange={(event) => setMistake(pierStore, one, event.currentTarget.checked)}
                  />
                  <strong>{build.mistakes[one].name}</strong>
                </label>
                {made.includes(one) && (
                  <p>
                    {build.mistakes[one].what} {build.mistakes[one].later}
                  </p>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  )
}

/** What is built wrong, at whatever step, and what it changes, with the way back. */
export const BuiltWrong = () => {
  const words = wordsOf('time').build
  const made = usePier((state) => state.view.mistakes)
  const meant = usePier(meantResult)
  const built = useResult()
  const { say } = useUnits()
  if (made.length === 0) return null
  const changes = changesOf(meant, built, say)
  return (
    <div className='danger'>
      <p className='line wide'>
        <strong>
          {words.isMade} {made.map((one) => wordsOf('build').mistakes[one].name).join(', ')}.
        </strong>
        <Button onClick={() => putRight(pierStore)}>{words.allRight}</Button>
      </p>
      {changes.length > 0 && (
        <PlainTable
          className='columns time-table'
          heads={[words.numbers, words.right, words.asBuilt]}
          rows={changes.map(({ label, right, wrong }) => [label, right, wrong])}
        />
      )}
    </div>
  )
}
