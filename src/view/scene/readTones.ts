import type { Tones } from './Stage.ts'

/** Colours of the page as its style sheet has them now. */
export function readTones(): Tones {
  const style = getComputedStyle(document.documentElement)
  const read = (name: string, otherwise: string): string => style.getPropertyValue(name).trim() || otherwise
  return {
    paper: read('--sheet', '#efece4'),
    ink: read('--ink', '#1b1f23'),
    accent: read('--governing', '#7a1f5c'),
    isDark: style.colorScheme.includes('dark'),
  }
}
