import { type ComponentType, type LazyExoticComponent, lazy } from 'react'
import { type Subject, withWords } from '../words/index.ts'

/** A part of the page that is fetched when it is wanted, together with the words that it says. */
export const lazyPage = <Props>(
  load: () => Promise<ComponentType<Props>>,
  subjects: readonly Subject[],
): LazyExoticComponent<ComponentType<Props>> => lazy(async () => ({ default: await withWords(load, subjects) }))
