type SelectProps<T extends string | number> = Readonly<{
  label: string
  /** Is the label in view? Else it is only spoken. */
  isTold?: boolean
  className?: string
  value: T | ''
  of: readonly (readonly [value: T, word: string])[]
  onPick: (value: T) => void
}>

/** One of several. Where none of them is the value, what it is called stands in its place. */
export const Select = <T extends string | number>({ label, isTold, className, value, of, onPick }: SelectProps<T>) => (
  <label className={className}>
    <span className={isTold ? undefined : 'spoken'}>{label}</span>
    <select
      className='framed'
      value={value}
      onChange={(event) => of.flatMap(([one]) => (String(one) === event.target.value ? [one] : [])).forEach(onPick)}
    >
      {value === '' && <option value=''>{label}</option>}
      {of.map(([one, word]) => (
        <option key={one} value={one}>
          {word}
        </option>
      ))}
    </select>
  </label>
)

/** Sentences one under the other. */
export const Bullets = ({ of, className = 'bullets' }: Readonly<{ of: readonly string[]; className?: string }>) => (
  <ul className={className}>
    {of.map((one, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: a sentence is its place
      <li key={i}>{one}</li>
    ))}
  </ul>
)
