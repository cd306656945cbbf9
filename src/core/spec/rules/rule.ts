import type { Issue } from '../../model/issue.ts'
import type { PierSpec } from '../../model/spec.ts'
import type { Dimensions } from '../dimensions.ts'
import type { IssueCode } from '../issueCodes.ts'

/** One theme of what can and can't be built. It sees the whole pier and gives what is wrong with it. */
export type Rule = (spec: PierSpec, dimensions: Dimensions) => readonly Issue[]

type Facts = Omit<Issue, 'code' | 'path' | 'severity'>
export const error = (code: IssueCode, path: string, facts: Facts = {}): Issue => ({ code, severity: 'error', path, ...facts })
export const warning = (code: IssueCode, path: string, facts: Facts = {}): Issue => ({ code, severity: 'warning', path, ...facts })
/** The same with two lengths to show [m]. */
export const lengths = (got: number, limit: number, sources?: Issue['sources']): Facts => ({
  got,
  limit,
  quantity: 'length',
  ...(sources === undefined ? {} : { sources }),
})

/** The issue, when it holds. */
export const when = (holds: boolean, issue: () => Issue): readonly Issue[] => (holds ? [issue()] : [])

/** Rounding that a length may carry without breaking a limit [m]. */
const rounding = 1e-9
export const exceeds = (got: number, limit: number): boolean => got > limit + rounding
export const fallsShort = (got: number, limit: number): boolean => got < limit - rounding
