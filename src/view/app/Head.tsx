import { useRef } from 'react'
import { documentWords } from '../../core/spec/pier/pier.ts'
import { reset, setName } from '../../state/actions/document.ts'
import { redo, undo } from '../../state/actions/history.ts'
import { seenDocument } from '../../state/derived.ts'
import { pierStore } from '../../state/store.ts'
import { wordsOf } from '../../words/index.ts'
import { useHistory, useIsLooking, usePier } from '../hooks/usePier.ts'
import { CompareButton } from '../compare/CompareButton.tsx'
import { TakeAlong } from '../export/TakeAlong.tsx'
import { SheetButton } from '../sheet/SheetButton.tsx'
import { copyLink } from './copyLink.ts'
import { openJobFile, saveJobFile } from '../files/jobFiles.ts'
import { PageSwitches } from './PageSwitches.tsx'
import { ShelfButton } from '../shelf/ShelfButton.tsx'
import { Wordmark } from './Wordmark.tsx'
import { Button, FileButton } from '../kit/Controls.tsx'

const PierName = () => {
  const name = usePier((state) => seenDocument(state).name)
  const isLooking = useIsLooking()
  const box = useRef<HTMLInputElement>(null)
  const enter = () => box.current && setName(pierStore, box.current.value)
  return (
    <input
      ref={box}
      key={name}
      className='pier-name'
      type='text'
      readOnly={isLooking}
      maxLength={documentWords.name.most}
      defaultValue={name}
      placeholder={wordsOf('app').nameIt}
      aria-label={wordsOf('app').pierName}
      autoComplete='off'
      onBlur={enter}
      onKeyDown={(event) => event.key === 'Enter' && enter()}
    />
  )
}

const Reset = () => {
  const isLooking = useIsLooking()
  return (
    <Button className='button plain' disabled={isLooking} onClick={() => reset(pierStore)}>
      {wordsOf('app').actions.reset}
    </Button>
  )
}

const FileActions = () => (
  <>
    <FileButton className='button plain' onFile={(file) => void openJobFile(pierStore, file)}>
      {wordsOf('app').actions.open}
    </FileButton>
    <Button className='button plain' onClick={() => saveJobFile(seenDocument(pierStore.getState()))}>
      {wordsOf('app').actions.save}
    </Button>
    <Button className='button plain' onClick={() => void copyLink(pierStore)}>
      {wordsOf('app').actions.copyLink}
    </Button>
    <SheetButton />
    <TakeAlong />
    <Reset />
  </>
)

/** An arrow back, or forward. */
const Step = (props: Readonly<{ word: string; path: string; disabled: boolean; onClick: () => void }>) => (
  <Button
    className='button plain step centered'
    aria-label={props.word}
    title={props.word}
    disabled={props.disabled}
    onClick={props.onClick}
  >
    <svg viewBox='0 0 20 16' width='20' height='16' aria-hidden='true' focusable='false'>
      <path d={props.path} fill='none' stroke='currentColor' strokeWidth='1.8' />
    </svg>
  </Button>
)

const Undo = () => {
  const { past, future } = useHistory()
  const isLooking = useIsLooking()
  return (
    <div className='head-group'>
      <Step
        word={wordsOf('app').actions.undo}
        path='M8 1.5 3 6.5l5 5M3.5 6.5h9a4 4 0 0 1 0 8H9'
        disabled={past === 0 && !isLooking}
        onClick={() => undo(pierStore)}
      />
      <Step
        word={wordsOf('app').actions.redo}
        path='M12 1.5l5 5-5 5M16.5 6.5h-9a4 4 0 0 0 0 8H11'
        disabled={future === 0 || isLooking}
        onClick={() => redo(pierStore)}
      />
    </div>
  )
}

/** The head of the sheet: whose pier it is, and what can be done with it as a whole. */
export const Head = () => (
  <header className='head panel under-heavy'>
    <Button className='skip' onClick={() => document.getElementById('inputs')?.focus()}>
      {wordsOf('app').skipToInputs}
    </Button>
    <Wordmark />
    <PierName />
    <div className='only-wide'>
      <ShelfButton />
    </div>
    <span className='spring' />
    <CompareButton />
    <Undo />
    <div className='head-group only-wide'>
      <FileActions />
    </div>
    <div className='only-wide'>
      <PageSwitches />
    </div>
    <details className='menu holds only-narrow'>
      <summary className='button plain'>{wordsOf('app').actions.more}</summary>
      <div className='menu-list panel stack'>
        <ShelfButton />
        <FileActions />
      </div>
    </details>
  </header>
)
