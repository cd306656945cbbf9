import type { ReactNode } from 'react'

type Props = Readonly<{ title: string; help: string; children: ReactNode }>

/** Part of the shelf under a heading of its own. */
export const ShelfList = ({ title, help, children }: Props) => (
  <section className='stack' aria-label={title}>
    <h3>{title}</h3>
    <p className='quiet'>{help}</p>
    {children}
  </section>
)
