import { type ComponentType, lazy, useState } from 'react'
import { type Subject, withWords } from '../words/index.ts'
import { Apart } from './kit/Apart.tsx'

type Load<Props> = () => Promise<ComponentType<Props>>
const late = <Props extends object>(load: Load<Props>, subjects: readonly Subject[]) =>
  lazy(async () => ({ default: await withWords(load, subjects) }))

/** A part of the page that is fetched when it is wanted, together with the words that it says. Whoever shows it says what stands in its place. */
export const lazyPart = <Props extends object>(load: Load<Props>, subjects: readonly Subject[]): ComponentType<Props> =>
  late(load, subjects)

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
export const lazyPage = <Props extends object>(load: Load<Props>, subjects: readonly Subject[]): ComponentType<Props> => {
  const fetchAgain = () => late(load, subjects)
  const latest: Latest<Props> = { part: fetchAgain(), fetchAgain }
  return (props) => <LatePage latest={latest} props={props} />
}
