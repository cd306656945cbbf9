import type { HTMLAttributes, ReactNode } from 'react'

type TableProps = Readonly<{ className: string; caption?: string; heads?: readonly string[]; children: ReactNode }>

/** A table of facts, a line each; what the columns are is said once above them. */
export const FactTable = ({ className, caption, heads, children }: TableProps) => (
  <table className={className}>
    {caption !== undefined && <caption>{caption}</caption>}
    {heads && (
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope='col'>
              {head}
            </th>
          ))}
        </tr>
      </thead>
    )}
    {children}
  </table>
)

type PlainTableProps = Omit<TableProps, 'children'> & Readonly<{ rows: readonly (readonly ReactNode[])[] }>

/** Rows under their heads; the first cell of each names it. */
export const PlainTable = ({ rows, ...table }: PlainTableProps) => (
  <FactTable {...table}>
    <tbody>
      {rows.map(([name, ...cells], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
        <tr key={i}>
          <th scope='row'>{name}</th>
          {cells.map((cell, k) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a cell is its place
            <td key={k}>{cell}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </FactTable>
)

/** What the lines below it have in common. */
export const GroupLine = ({ className, span, children }: Readonly<{ className?: string; span: number; children: ReactNode }>) => (
  <tbody className={className}>
    <tr>
      <th colSpan={span} scope='colgroup'>
        {children}
      </th>
    </tr>
  </tbody>
)

type LineProps = HTMLAttributes<HTMLTableSectionElement> &
  Readonly<{
    name: ReactNode
    /** Numbers, by column. */
    cells: readonly string[]
    /** Cells of words behind them. */
    tail?: ReactNode
    /** Rows of their own under the line. */
    children?: ReactNode
  }>

/** A fact as a line of a table: its name, then its numbers. */
export const FactLine = ({ name, cells, tail, children, ...rest }: LineProps) => (
  <tbody {...rest}>
    <tr>
      <th scope='row'>{name}</th>
      {cells.map((cell, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a cell is its place
        <td key={i} className='number'>
          {cell}
        </td>
      ))}
      {tail}
    </tr>
    {children}
  </tbody>
)

type PairProps = Readonly<{
  of: readonly (readonly [name: ReactNode, value: ReactNode, isPart?: 'part'])[]
  /** Figures beside their names, or marks and words over what they mean. */
  as?: 'pairs' | 'marks'
}>

/** Names and their figures, one under the other; a part stands in under the whole. */
export const Pairs = ({ of, as = 'pairs' }: PairProps) => (
  <dl className={as === 'marks' ? 'marks stack small' : 'pairs small'}>
    {of.map(([name, value, part], i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: a pair is its place
      <div key={i} className={part && 'pair-sub'}>
        <dt>{name}</dt>
        <dd>{value}</dd>
      </div>
    ))}
  </dl>
)
