import '../kit/parts.css'
import { useEffect, useId, useRef, useState } from 'react'
import { type Words, wordsOf, locale } from '../../words/index.ts'
import { type FileChoices, type FileId, firstChoices, pictureWidths } from './fileWish.ts'
import { Outcome } from './Outcome.tsx'
import { useFileMaker } from './useFileMaker.ts'
import { Button } from '../kit/Controls.tsx'
import { Select } from '../kit/Lists.tsx'
import { modelScales } from '../../export/solid/modelFrame.ts'
import './takeAlong.css'

type Props = Readonly<{ choices: FileChoices; change: (part: Partial<FileChoices>) => void }>

const Tick = ({ label, isOn, onChange }: { label: string; isOn: boolean; onChange: (isOn: boolean) => void }) => (
  <label className='tick'>
    <input type='checkbox' checked={isOn} onChange={(event) => onChange(event.target.checked)} />
    {label}
  </label>
)

const ModelChoices = ({ choices, change }: Props) => {
  const words = wordsOf('takeAlong').choices
  return (
    <div className='take-along-choices small'>
      <Select
        className='tick'
        isTold
        label={words.scale}
        value={choices.scale}
        of={modelScales.map((scale) => [scale, scale === 1 ? words.fullSize : words.oneTo(scale)])}
        onPick={(scale) => change({ scale })}
      />
      <Tick label={words.withPost} isOn={choices.withPost} onChange={(withPost) => change({ withPost })} />
    </div>
  )
}

const PictureChoices = ({ choices, change }: Props) => {
  const words = wordsOf('takeAlong').choices
  return (
    <div className='take-along-choices small'>
      <Select
        className='tick'
        isTold
        label={words.width}
        value={choices.width}
        of={pictureWidths.map((width) => [width, words.pixels(width.toLocaleString(locale()))])}
        onPick={(width) => change({ width })}
      />
      <Tick label={words.withWords} isOn={choices.withWords} onChange={(withWords) => change({ withWords })} />
    </div>
  )
}

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
    <dialog ref={dialog} className='take-along scrolls' aria-labelledby={title} onClose={onClose}>
      <div className='take-along-head panel ends'>
        <h2 id={title} className='large'>
          {exporting.title}
        </h2>
        <Button onClick={() => dialog.current?.close()}>{exporting.close}</Button>
      </div>
      <p className='take-along-lead'>{exporting.lead}</p>
      {groups.map(([group, files]) => (
        <section key={group} aria-labelledby={`${title}-${group}`}>
          <h3 id={`${title}-${group}`}>{exporting.groups[group].title}</h3>
          <p className='quiet'>{exporting.groups[group].help}</p>
          {group === 'model' && <ModelChoices choices={choices} change={change} />}
          {group === 'picture' && <PictureChoices choices={choices} change={change} />}
          <ul className='stack small'>
            {files.map((id) => (
              <li key={id}>
                <Button className='button ends' disabled={isMaking} onClick={() => void make(id)}>
                  <span>{exporting.files[id].action}</span> <b className='quiet strong'>{exporting.files[id].kind}</b>
                </Button>
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
