import { Component, type ReactNode, useState } from 'react'
import { wordsOf } from '../../words/index.ts'
import { Button } from './Controls.tsx'

type Props = Readonly<{ children: ReactNode; fallback: (error: unknown) => ReactNode; onError?: (error: unknown) => void }>

/** Catches what breaks below it and shows something else instead. React has no function for it. */
export class ErrorBoundary extends Component<Props, Readonly<{ error: unknown; failed: boolean }>> {
  override state = { error: null as unknown, failed: false }

  static getDerivedStateFromError(error: unknown) {
    return { error, failed: true }
  }

  override componentDidCatch(error: unknown): void {
    this.props.onError?.(error)
  }

  override render(): ReactNode {
    return this.state.failed ? this.props.fallback(this.state.error) : this.props.children
  }
}

export const errorText = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error))

/** What stands in the place of a part that broke: what happened, and the ways on. */
const Broken = ({
  error,
  className,
  onAgain,
  onClose,
}: Readonly<{ error: unknown; className: string; onAgain: () => void; onClose?: (() => void) | undefined }>) => {
  const words = wordsOf('app')
  return (
    <section className={`${className} broken panel stack wide${onClose ? ' broken-over' : ''}`} role='alert'>
      <p>
        <strong>{words.broken.title}</strong> {words.broken.body}
      </p>
      <div className='line'>
        <Button onClick={onAgain}>{words.actions.tryAgain}</Button>
        <Button onClick={() => location.reload()}>{words.actions.reload}</Button>
        {onClose && <Button onClick={onClose}>{words.actions.close}</Button>}
      </div>
      <details>
        <summary className='arrowed'>{words.crash.detail}</summary>
        <pre>{errorText(error)}</pre>
      </details>
    </section>
  )
}

/**
 * A part of the page that takes nothing else with it when it breaks: the rest goes on, and it can be tried again.
 * @param className of the part: what stands in its place takes the same room
 * @param onClose of a part that lies over the page
 */
export const Apart = ({
  children,
  className = '',
  onAgain,
  onClose,
  onBreak = () => undefined,
}: Readonly<{
  children: ReactNode
  className?: string
  onAgain?: () => void
  onClose?: (() => void) | undefined
  onBreak?: () => void
}>) => {
  const [attempt, setAttempt] = useState(0)
  const again = () => {
    onAgain?.()
    setAttempt((last) => last + 1)
  }
  return (
    <ErrorBoundary
      key={attempt}
      onError={onBreak}
      fallback={(error) => <Broken error={error} className={className} onAgain={again} onClose={onClose} />}
    >
      {children}
    </ErrorBoundary>
  )
}
