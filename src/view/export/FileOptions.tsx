import { modelScales } from '../../export/solid/modelFrame.ts'
import { locale, wordsOf } from '../../words/index.ts'
import { type FileChoices, pictureWidths } from './fileWish.ts'

type Props = Readonly<{ choices: FileChoices; change: (part: Partial<FileChoices>) => void }>

const Tick = ({ label, isOn, onChange }: { label: string; isOn: boolean; onChange: (isOn: boolean) => void }) => (
  <label className='take-along-tick'>
    <input type='checkbox' checked={isOn} onChange={(event) => onChange(event.target.checked)} />
    {label}
  </label>
)

type PickProps<T extends number> = Readonly<{
  label: string
  value: T
  from: readonly T[]
  say: (value: T) => string
  onPick: (value: T) => void
}>

const Pick = <T extends number>({ label, value, from, say, onPick }: PickProps<T>) => (
  <label className='take-along-pick'>
    <span>{label}</span>
    <select
      value={value}
      onChange={(event) => {
        const picked = from.find((one) => String(one) === event.target.value)
        if (picked !== undefined) onPick(picked)
      }}
    >
      {from.map((one) => (
        <option key={one} value={one}>
          {say(one)}
        </option>
      ))}
    </select>
  </label>
)

export const ModelChoices = ({ choices, change }: Props) => {
  const words = wordsOf('takeAlong').choices
  return (
    <div className='take-along-choices'>
      <Pick
        label={words.scale}
        value={choices.scale}
        from={modelScales}
        say={(scale) => (scale === 1 ? words.fullSize : words.oneTo(scale))}
        onPick={(scale) => change({ scale })}
      />
      <Tick label={words.withPost} isOn={choices.withPost} onChange={(withPost) => change({ withPost })} />
    </div>
  )
}

export const PictureChoices = ({ choices, change }: Props) => {
  const words = wordsOf('takeAlong').choices
  return (
    <div className='take-along-choices'>
      <Pick
        label={words.width}
        value={choices.width}
        from={pictureWidths}
        say={(width) => words.pixels(width.toLocaleString(locale()))}
        onPick={(width) => change({ width })}
      />
      <Tick label={words.withWords} isOn={choices.withWords} onChange={(withWords) => change({ withWords })} />
    </div>
  )
}
