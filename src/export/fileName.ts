/** What a file holds, as the last part of its name: `north-row-section.svg`. */
export type FileContent = 'section' | 'pier' | 'picture' | 'numbers' | 'sheet'

const mostLetters = 60

/**
 * A file's name from the pier's name: letters and digits of any script in lower case, words joined by hyphens, at most 60 signs.
 * Marks, path signs, control signs and what turns the direction of writing are left out. A pier without a usable name is `pier`.
 */
export function fileName(name: string, content: FileContent, ending: string): string {
  const words = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’]/g, '')
    .match(/[\p{L}\p{M}\p{N}]+/gu)
  const stem = [...(words ?? []).join('-')].slice(0, mostLetters).join('').replace(/-+$/, '')
  const isNamed = stem !== '' && stem !== content
  return `${isNamed ? `${stem}-` : stem === '' && content !== 'pier' ? 'pier-' : ''}${content}.${ending}`
}
