import { Component, type ReactNode } from 'react'

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
