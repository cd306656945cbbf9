/** What the scene takes from the page's style sheet. */
export type Tones = Readonly<{ paper: string; accent: string; isDark: boolean }>

/** White behind the pier whatever the page is, so that a printer lays no ink there. */
export const paperTones: Tones = { paper: '#ffffff', accent: '#7a1f5c', isDark: false }

/** Colours of the page as its style sheet has them now. */
export function readTones(): Tones {
  const style = getComputedStyle(document.documentElement)
  const read = (name: string, otherwise: string): string => style.getPropertyValue(name).trim() || otherwise
  return {
    paper: read('--sheet', '#efece4'),
    accent: read('--governing', '#7a1f5c'),
    isDark: style.colorScheme.includes('dark'),
  }
}
