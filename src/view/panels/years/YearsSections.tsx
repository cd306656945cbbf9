import { type ComponentType, lazy, Suspense, useState } from 'react'
import { yearsSections as words } from '../../../text/en/yearsSections.ts'

const MixPanel = lazy(() => import('./MixPanel.tsx').then((module) => ({ default: module.MixPanel })))
const LifePanel = lazy(() => import('./LifePanel.tsx').then((module) => ({ default: module.LifePanel })))
const CostPanel = lazy(() => import('./CostPanel.tsx').then((module) => ({ default: module.CostPanel })))

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
        <Suspense fallback={<p className='quiet'>{words.loading}</p>}>
          <Body />
        </Suspense>
      )}
    </details>
  )
}

/** Mix, years and cost as sections of the answers. */
export const YearsSections = () => (
  <>
    <OnceOpen {...words.mix} Body={MixPanel} />
    <OnceOpen {...words.life} Body={LifePanel} />
    <OnceOpen {...words.cost} Body={CostPanel} />
  </>
)
