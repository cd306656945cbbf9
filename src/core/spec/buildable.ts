import type { Issue } from '../model/issue.ts'
import type { PierSpec } from '../model/spec.ts'
import { dimensions } from './dimensions.ts'
import { barRules } from './rules/barRules.ts'
import { bracketRules } from './rules/bracketRules.ts'
import { fillRules } from './rules/fillRules.ts'
import { holeRules } from './rules/holeRules.ts'
import { lifeRules } from './rules/lifeRules.ts'
import { postRules } from './rules/postRules.ts'
import type { Rule } from './rules/rule.ts'
import { siteRules } from './rules/siteRules.ts'
import { topRules } from './rules/topRules.ts'
import { verticalBarRules } from './rules/verticalBarRules.ts'

const rules: readonly Rule[] = [siteRules, holeRules, postRules, fillRules, bracketRules, barRules, verticalBarRules, topRules, lifeRules]

/** What can't be built as set, and what can but should be looked at: every conflict between fields, each at the field to change. */
export function buildable(spec: PierSpec): readonly Issue[] {
  const d = dimensions(spec)
  return rules.flatMap((rule) => rule(spec, d))
}
