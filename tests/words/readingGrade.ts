/** Words of the trade that a reader meets at every turn; each counts as a word of one beat. */
const tradeWords = new Set(
  `concrete diameter galvanized engineer engineering allowable capacity friction embedded embedment compacted granular material
  presumptive reinforced undisturbed inspector moisture exposure stainless epoxy aggregate cementitious footing excavation
  property volume unit units metric foundation building licensed preliminary`.split(/\s+/),
)

/** Beats in one English word: groups of vowels, less a silent e. Good to about one in ten, which is enough for a median. */
export const beats = (word: string): number => {
  const plain = word.toLowerCase().replace(/[^a-z]/g, '')
  if (plain.length <= 3 || tradeWords.has(plain)) return 1
  const groups = plain.replace(/(?:[^laeiouy]es|ed|[^laeiouy]e)$/, '').match(/[aeiouy]{1,2}/g)
  return Math.max(1, groups?.length ?? 1)
}

/** The sentences of a text that are long enough to be judged: six words or more, closed by a stop. */
export const sentencesOf = (text: string): string[] =>
  (text.match(/[^.!?]+[.!?]+(?=\s|$)/g) ?? []).map((sentence) => sentence.trim()).filter((sentence) => wordsOf(sentence).length >= 6)

export const wordsOf = (sentence: string): string[] => sentence.split(/\s+/).filter((word) => /[a-z]/i.test(word))

/**
 * US school grade that a sentence asks for: 0.39 words + 11.8 beats per word - 15.59.
 * Source: Kincaid et al., Derivation of new readability formulas for Navy enlisted personnel, 1975 (coefficients from memory).
 */
export const grade = (sentence: string): number => {
  const words = wordsOf(sentence)
  const total = words.reduce((sum, word) => sum + beats(word), 0)
  return 0.39 * words.length + 11.8 * (total / words.length) - 15.59
}

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length / 2
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2
}
