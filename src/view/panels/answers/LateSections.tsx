import { type ComponentType, type ReactNode, Suspense, useState } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { useResult } from '../../hooks/usePier.ts'
import { lazyPage } from '../../lazyPage.tsx'

const SurePanel = lazyPage(() => import('../sure/SurePanel.tsx').then((module) => module.SurePanel), ['answers', 'reasons', 'sure'])
const MixPanel = lazyPage(
  () => import('../years/MixPanel.tsx').then((module) => module.MixPanel),
  ['answers', 'compare', 'glossary', 'life', 'moisture', 'reasons', 'terms', 'time', 'years'],
)
const LifePanel = lazyPage(
  () => import('../years/LifePanel.tsx').then((module) => module.LifePanel),
  ['answers', 'compare', 'glossary', 'life', 'moisture', 'reasons', 'terms', 'time', 'years'],
)
const CostPanel = lazyPage(
  () => import('../years/CostPanel.tsx').then((module) => module.CostPanel),
  ['answers', 'glossary', 'reasons', 'terms', 'years'],
)

type FoldedProps = Readonly<{ title: string; help: string; children: ReactNode; onOpen?: (isOpen: boolean) => void }>

/** To look things up in: closed until it is wanted. */
export const Folded = ({ title, help, children, onOpen }: FoldedProps) => (
  <details className='answer under-fine answer-folded' onToggle={(event) => onOpen?.(event.currentTarget.open)}>
    <summary className='opens'>
      <h3>{title}</h3>
      <p className='answer-help quiet'>{help}</p>
    </summary>
    {children}
  </details>
)

type Props = Readonly<{ title: string; help: string; loading: string; Body: ComponentType }>

/** A section that is loaded, and worked out, once it is opened. */
const OnceOpen = ({ title, help, loading, Body }: Props) => {
  const [isOpen, setOpen] = useState(false)
  return (
    <Folded title={title} help={help} onOpen={setOpen}>
      {isOpen && (
        <Suspense fallback={<p className='quiet'>{loading}</p>}>
          <Body />
        </Suspense>
      )}
    </Folded>
  )
}

/** Against the uplift that is asked for, where any is. */
const Sure = () => {
  const { uplift } = useResult().demand
  return <SurePanel demand={uplift && uplift.value > 0 ? uplift.value : null} />
}

/** The study of ranges as a section of the answers. */
export const SureSection = () => <OnceOpen {...wordsOf('entrances').sure} Body={Sure} />

/** Mix, years and cost as sections of the answers. */
export const YearsSections = () => {
  const { mix, life, cost, loading } = wordsOf('entrances').years
  return (
    <>
      <OnceOpen {...mix} loading={loading} Body={MixPanel} />
      <OnceOpen {...life} loading={loading} Body={LifePanel} />
      <OnceOpen {...cost} loading={loading} Body={CostPanel} />
    </>
  )
}
