import { type ComponentType, lazy, useState } from 'react'
import { common, type Subject, withWords } from '../words/index.ts'
import { Apart } from './kit/Apart.tsx'

type Load<Props> = () => Promise<ComponentType<Props>>
/** When a part is fetched. */
type Turn = <T>(load: () => Promise<T>) => Promise<T>
const atOnce: Turn = (load) => load()

/** A part of the page that is fetched when it is wanted, or in its turn, together with the words that it says. Whoever shows it says what stands in its place. */
export const lazyPart = <Props extends object>(
  load: Load<Props>,
  subjects: readonly Subject[],
  turn = atOnce,
  others = common,
): ComponentType<Props> => lazy(async () => ({ default: await turn(() => withWords(load, subjects, others)) }))

type Latest<Props> = { part: ComponentType<Props>; readonly fetchAgain: () => ComponentType<Props> }

const LatePage = <Props extends object>({ latest, props }: Readonly<{ latest: Latest<Props>; props: Props }>) => {
  const [Part, setPart] = useState(() => latest.part)
  // One that could not be fetched is remembered as such: it takes another to fetch it again.
  const fetchAgain = () => {
    latest.part = latest.fetchAgain()
    setPart(() => latest.part)
  }
  return (
    <Apart onAgain={fetchAgain} onClose={(props as Readonly<{ onClose?: () => void }>).onClose}>
      <Part {...props} />
    </Apart>
  )
}

/** The same, for a part that stands apart: when it breaks or can't be fetched the rest of the page goes on, and it can be tried again. */
export const lazyPage = <Props extends object>(load: Load<Props>, subjects: readonly Subject[], turn = atOnce): ComponentType<Props> => {
  const fetchAgain = () => lazyPart(load, subjects, turn)
  const latest: Latest<Props> = { part: fetchAgain(), fetchAgain }
  return (props) => <LatePage latest={latest} props={props} />
}
