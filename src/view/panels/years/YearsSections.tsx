import { type ComponentType, Suspense, useState } from 'react'
import { wordsOf } from '../../../words/index.ts'
import { lazyPage } from '../../lazyPage.tsx'

const MixPanel = lazyPage(
  () => import('./MixPanel.tsx').then((module) => module.MixPanel),
  ['answers', 'compare', 'glossary', 'life', 'moisture', 'reasons', 'terms', 'time', 'years'],
)
const LifePanel = lazyPage(
  () => import('./LifePanel.tsx').then((module) => module.LifePanel),
  ['answers', 'compare', 'glossary', 'life', 'moisture', 'reasons', 'terms', 'time', 'years'],
)
const CostPanel = lazyPage(
  () => import('./CostPanel.tsx').then((module) => module.CostPanel),
  ['answers', 'glossary', 'reasons', 'terms', 'years'],
)

type Props = Readonly<{ title: string; help: string; Body: ComponentType }>

/** A section that is loaded, and worked out, once it is opened. */
const OnceOpen = ({ title, help, Body }: Props) => {
  const [isOpen, setIsOpen] = useState(false)
  return (
    <details className='answer answer-folded' onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary className='fold'>
        <h3>{title}</h3>
        <p className='answer-help'>{help}</p>
      </summary>
      {isOpen && (
        <Suspense fallback={<p className='quiet'>{wordsOf('entrances').years.loading}</p>}>
          <Body />
        </Suspense>
      )}
    </details>
  )
}

/** Mix, years and cost as sections of the answers. */
export const YearsSections = () => {
  const words = wordsOf('entrances').years
  return (
    <>
      <OnceOpen {...words.mix} Body={MixPanel} />
      <OnceOpen {...words.life} Body={LifePanel} />
      <OnceOpen {...words.cost} Body={CostPanel} />
    </>
  )
}
