import { type FormEvent, useId, useState } from 'react'
import type { Issue } from '../../../core/model/issue.ts'
import type { SoilMechanism } from '../../../core/model/spec.ts'
import { longestReason } from '../../../core/spec/edit.ts'
import { soilMechanisms } from '../../../core/spec/pier/pier.ts'
import { judge } from '../../../state/actions/judgement.ts'
import { pierStore } from '../../../state/store.ts'
import { wordsOf } from '../../../words/index.ts'
import { useIsLooking, useSpec, useUnits } from '../../hooks/usePier.ts'
import { answerWords } from '../../../facts/answerWords.ts'
import { FieldIssues } from '../inputs/FieldNotes.tsx'
import { type PullPath, holdsOf, isNeeded, linksOf } from '../../../core/derive/report/pullPath.ts'
import { Button } from '../../kit/Controls.tsx'
const mechanismOf = (id: string): SoilMechanism | null => soilMechanisms.find((one) => one === id) ?? null

/** Asks for the reason. Without one nothing changes. */
const ReasonForm = ({ mechanism, onDone }: { mechanism: SoilMechanism; onDone: () => void }) => {
  const words = wordsOf('loadPath').soil
  const id = useId()
  const [reason, setReason] = useState('')
  const [issues, setIssues] = useState<readonly Issue[]>([])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const found = judge(pierStore, mechanism, reason)
    setIssues(found)
    if (found.length === 0) onDone()
  }
  return (
    <form className='reason stack aside small' onSubmit={submit}>
      <label htmlFor={id}>{words.reason}</label>
      <p id={`${id}-help`} className='quiet'>
        {words.reasonHelp} {words.stays}
      </p>
      <textarea
        id={id}
        rows={3}
        maxLength={longestReason}
        value={reason}
        aria-invalid={issues.length > 0}
        aria-describedby={`${id}-help ${id}-issues`}
        onChange={(event) => setReason(event.target.value)}
      />
      <FieldIssues id={`${id}-issues`} errors={issues} />
      <div className='line'>
        <button type='submit' className='button'>
          {words.use}
        </button>
        <Button className='button plain' onClick={onDone}>
          {words.cancel}
        </Button>
      </div>
    </form>
  )
}

/** What was typed, beside the number that rests on it. */
export const GivenReason = ({ inUse }: { inUse: string }) => {
  const words = wordsOf('loadPath').soil
  const { judgement } = useSpec()
  const isLooking = useIsLooking()
  if (judgement === null) return null
  return (
    <div className='given-reason stack aside small'>
      <p>
        <strong>
          {words.given}, {answerWords(judgement.mechanism).label.toLowerCase()}:
        </strong>{' '}
        <q>{judgement.reason}</q>
      </p>
      <p className='quiet'>{judgement.mechanism === inUse ? words.stays : words.idle}</p>
      <Button disabled={isLooking} onClick={() => judge(pierStore, null, '')}>
        {words.back}
      </Button>
    </div>
  )
}

/** Every way to count the ground that could be worked out, least first, and the form that asks why another may be used. */
export const SoilWays = ({ chain }: { chain: PullPath }) => {
  const words = wordsOf('loadPath').soil
  const { say } = useUnits()
  const name = useId()
  const isLooking = useIsLooking()
  const [picked, setPicked] = useState<SoilMechanism | null>(null)
  const ways = linksOf(chain)
    .filter((link) => link.group === 'uplift-soil' && holdsOf(link) !== null && mechanismOf(link.id) !== null)
    .sort((a, b) => (holdsOf(a) ?? 0) - (holdsOf(b) ?? 0))
  if (ways.length < 2) return <p className='quiet'>{words.only}</p>
  const used = ways.find(isNeeded)?.id
  const chosen = picked !== null && ways.some(({ id }) => id === picked) ? picked : used
  const pick = (id: string, isLeast: boolean) => {
    const isUsed = id === used
    if (isLeast && !isUsed) judge(pierStore, null, '')
    setPicked(isLeast || isUsed ? null : mechanismOf(id))
  }
  return (
    <>
      <fieldset className='ways'>
        <legend className='spoken'>{words.ways}</legend>
        {ways.map((way, i) => (
          <label key={way.id} className='way-choice ruled ticks'>
            <input type='radio' name={name} disabled={isLooking} checked={way.id === chosen} onChange={() => pick(way.id, i === 0)} />
            <span>
              {answerWords(way.id).label}
              {i === 0 && <span className='quiet'> · {words.least}</span>}
              <span className='quiet block'>{answerWords(way.id).plain}</span>
            </span>
            <span className='number strong'>{say(holdsOf(way) ?? 0, 'force')}</span>
          </label>
        ))}
      </fieldset>
      {picked !== null && picked !== used && <ReasonForm key={picked} mechanism={picked} onDone={() => setPicked(null)} />}
    </>
  )
}
