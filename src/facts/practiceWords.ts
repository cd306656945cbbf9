import { bracketKind, fillKind } from '../core/kinds/index.ts'
import type { PierSpec } from '../core/model/spec.ts'
import { wordsOf } from '../words/index.ts'

/** The bracket that a post stands on; null for a post in the hole. */
export const bracketUnder = ({ support }: PierSpec) => (support.kind === 'bracket' ? bracketKind(support.bracket.kind) : null)

/** What goes wrong with a pier that is built like this one. */
export const cautionsOf = (spec: PierSpec): readonly string[] =>
  [...new Set([...fillKind(spec.fill.kind).cautions, ...(bracketUnder(spec)?.cautions ?? [])])].map(
    (key) => wordsOf('cautions').ofPiers[key],
  )
