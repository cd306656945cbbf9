import { loadWords, subjects } from '../src/words/index.ts'

/** A part under test may say any word; which part loads which words has a test of its own. */
await loadWords(subjects)
