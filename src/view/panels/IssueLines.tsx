import type { ReactNode } from 'react'
import type { Issue } from '../../core/model/issue.ts'
import { issueText } from '../../facts/issueWords.ts'
import { wordsOf } from '../../words/index.ts'
import { usePier } from '../hooks/usePier.ts'

type Props = Readonly<{
  issues: readonly Issue[]
  /** Of more than so many the rest is counted. */
  most?: number
  /** Stands before each. */
  mark?: ReactNode
  className: string
}>

/** What is wrong, a line each. */
export const IssueLines = ({ issues, most = issues.length, mark, className }: Props) => {
  const system = usePier((state) => state.view.units)
  return (
    <ul className={className}>
      {issues.slice(0, most).map((issue, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: one list is never rearranged
        <li key={i}>
          {mark} {issueText(issue, system)}
        </li>
      ))}
      {issues.length > most && <li>{wordsOf('app').moreIssues(issues.length - most)}</li>}
    </ul>
  )
}
