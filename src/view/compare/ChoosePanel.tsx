import { compareStore, fewestPiers, mostPiers, type Pick } from '../../state/compare.ts'
import { dropBrought, togglePick } from '../../state/compareActions.ts'
import { otherMethods, picksOf } from '../../state/compareSet.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { useIsLooking, usePier, useUnits } from '../hooks/usePier.ts'
import { issueText } from '../../facts/issueWords.ts'
import type { BroughtFiles } from './useBroughtFiles.ts'
import { useCompare } from './useCompare.ts'
import { Button, FileButton } from '../kit/Controls.tsx'
import { Bullets } from '../kit/Lists.tsx'

const Choice = ({ pick, label, picks }: Readonly<{ pick: Pick; label: string; picks: readonly Pick[] }>) => {
  const isIn = picks.includes(pick)
  return (
    <label className='cmp-choice tick small'>
      <input
        type='checkbox'
        checked={isIn}
        disabled={isIn ? picks.length <= fewestPiers : picks.length >= mostPiers}
        onChange={() => togglePick(compareStore, seenDocument(pierStore.getState()), pick)}
      />
      <span>{label}</span>
    </label>
  )
}

/** Piers that were brought along can be laid aside for good. */
const Brought = ({ picks }: Readonly<{ picks: readonly Pick[] }>) => {
  const words = wordsOf('compare')
  const brought = useCompare((state) => state.brought)
  if (brought.every((document) => document === null)) return null
  return (
    <fieldset>
      <legend>{words.saved}</legend>
      {brought.map((document, place) => {
        if (document === null) return null
        const name = document.name === '' ? words.brought(place + 1) : document.name
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a pier that was brought keeps its place
          <div key={place} className='ends'>
            <Choice pick={`brought:${place}`} label={name} picks={picks} />
            <Button className='icon' aria-label={words.choose.drop(name)} onClick={() => dropBrought(compareStore, place)}>
              <svg viewBox='0 0 16 16' width='16' height='16' aria-hidden='true'>
                <path d='M3 3l10 10M13 3 3 13' stroke='currentColor' strokeWidth='1.6' />
              </svg>
            </Button>
          </div>
        )
      })}
    </fieldset>
  )
}

const OpenFile = ({ refused, bring }: BroughtFiles) => {
  const words = wordsOf('compare')
  const { system } = useUnits()
  return (
    <div>
      <FileButton onFile={bring}>{words.choose.open}</FileButton>
      <div role='status'>
        {refused && (
          <>
            <p>{words.choose.refused(refused.file)}</p>
            <Bullets of={refused.issues.slice(0, 5).map((issue) => issueText(issue, system))} />
          </>
        )}
      </div>
    </div>
  )
}

/** Which piers stand side by side: the open one, it with other methods, and those brought along. */
export const ChoosePanel = ({ files }: Readonly<{ files: BroughtFiles }>) => {
  const words = wordsOf('compare')
  const picked = useCompare((state) => state.picks)
  const brought = useCompare((state) => state.brought)
  const own = usePier(seenDocument)
  const isLooking = useIsLooking()
  const picks = picksOf({ picks: picked, brought }, own)
  return (
    <div className='stack cmp-choose'>
      <fieldset>
        <legend>
          {words.choose.methods} <span className='quiet light block'>{words.choose.rule}</span>
        </legend>
        <Choice
          pick='own'
          label={`${isLooking ? wordsOf('looking').tag : words.own}: ${wordsOf('fills')[own.spec.fill.kind].label}`}
          picks={picks}
        />
        {otherMethods(own).map((id) => (
          <Choice key={id} pick={`method:${id}`} label={wordsOf('fills')[id].label} picks={picks} />
        ))}
      </fieldset>
      <Brought picks={picks} />
      <OpenFile {...files} />
    </div>
  )
}
