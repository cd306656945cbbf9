import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Shelf } from '../../state/storage/shelf.ts'
import type { ShelfState } from '../../state/storage/desk.ts'
import type { Issue } from '../../core/model/issue.ts'
import type { UnitSystem } from '../../core/units/quantity.ts'
import { locale, wordsOf } from '../../words/index.ts'
import { issueText } from '../../facts/issueWords.ts'

export const whenWords = (at: number | null): string =>
  at !== null && at > 0 ? new Date(at).toLocaleString(locale(), { dateStyle: 'medium', timeStyle: 'short' }) : '–'

export const nameWords = (name: string): string => (name.trim() === '' ? wordsOf('shelf').untitled : name)

/** An issue of the shelf or of a job in it. */
export const shelfIssue = (issue: Issue, system: UnitSystem): string => {
  const words = wordsOf('shelf')
  const own = Object.hasOwn(words.issues, issue.code) ? words.issues[issue.code] : undefined
  if (own === undefined) return issueText(issue, system)
  return issue.path === '' ? own : words.at(issue.path, own)
}

export const ShelfContext = createContext<Shelf | null>(null)

/** The shelf that a part of the dialog works on. */
export const useShelf = (): Shelf => {
  const shelf = useContext(ShelfContext)
  if (!shelf) throw new Error('useShelf: no shelf above')
  return shelf
}

export const useShelfState = <T>(select: (state: ShelfState) => T): T => useStore(useShelf().state, select)
