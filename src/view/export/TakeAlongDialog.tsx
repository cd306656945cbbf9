import { useEffect, useId, useRef, useState } from 'react'
import { type Words, wordsOf } from '../../words/index.ts'
import { ModelChoices, PictureChoices } from './FileOptions.tsx'
import { type FileChoices, type FileId, firstChoices } from './fileWish.ts'
import { Outcome } from './Outcome.tsx'
import './takeAlong.css'
import { useFileMaker } from './useFileMaker.ts'

type Group = keyof Words['takeAlong']['groups']

const groups: readonly (readonly [group: Group, files: readonly FileId[]])[] = [
  ['drawing', ['svg', 'dxf']],
  ['model', ['glb', 'stl', 'threeMf']],
  ['picture', ['png']],
  ['numbers', ['csv', 'json']],
]

/** The list of files, each with a button; what came of the last one stands below. */
export const TakeAlongDialog = ({ onClose }: { onClose: () => void }) => {
  const exporting = wordsOf('takeAlong')
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  const [choices, setChoices] = useState<FileChoices>(firstChoices)
  const { outcome, make } = useFileMaker(choices)
  const isMaking = outcome?.kind === 'making'
  useEffect(() => {
    const element = dialog.current
    element?.showModal()
    return () => element?.close()
  }, [])
  const change = (part: Partial<FileChoices>) => setChoices((before) => ({ ...before, ...part }))
  return (
    <dialog ref={dialog} className='take-along' aria-labelledby={title} onClose={onClose}>
      <div className='take-along-head'>
        <h2 id={title}>{exporting.title}</h2>
        <button type='button' className='button' onClick={() => dialog.current?.close()}>
          {exporting.close}
        </button>
      </div>
      <p className='take-along-lead'>{exporting.lead}</p>
      {groups.map(([group, files]) => (
        <section key={group} aria-labelledby={`${title}-${group}`}>
          <h3 id={`${title}-${group}`}>{exporting.groups[group].title}</h3>
          <p>{exporting.groups[group].help}</p>
          {group === 'model' && <ModelChoices choices={choices} change={change} />}
          {group === 'picture' && <PictureChoices choices={choices} change={change} />}
          <ul>
            {files.map((id) => (
              <li key={id}>
                <button type='button' className='button' disabled={isMaking} onClick={() => void make(id)}>
                  <span>{exporting.files[id].action}</span> <b>{exporting.files[id].kind}</b>
                </button>
                <span>{exporting.files[id].help}</span>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <Outcome outcome={outcome} />
    </dialog>
  )
}
