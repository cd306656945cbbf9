import { answers } from './en/answers.ts'
import { changes } from './en/changes.ts'
import { glossary } from './en/glossary.ts'
import { lettingGo } from './en/lettingGo.ts'
import { loadPath } from './en/loadPath.ts'
import { loads } from './en/loads.ts'
import { moisture, moistureAnswers, moistureTerms } from './en/moisture.ts'
import { cautions, steps } from './en/practice.ts'
import { reasons } from './en/reasons.ts'
import { terms } from './en/terms.ts'
import { verifiable } from './en/verifiable.ts'
import { yearsAnswers, yearsTerms } from './en/yearsAnswers.ts'

/**
 * Words that nobody reads before the answers are there: apart from the others, so that the first script goes without them. A second
 * language is a second object of this type too.
 */
export const enLate = {
  answers: { ...answers, ...moistureAnswers, ...yearsAnswers },
  cautions,
  changes,
  glossary,
  lettingGo,
  loadPath,
  loads,
  reasons,
  steps,
  terms: { ...terms, ...moistureTerms, ...yearsTerms },
  verifiable,
  moisture,
}

export const late = enLate
