import { answers } from './en/answers.ts'
import { app } from './en/app.ts'
import { standingCautions } from './en/cautions.ts'
import { changes } from './en/changes.ts'
import { drawing } from './en/drawing.ts'
import { choices, fields, groups } from './en/fields.ts'
import { glossary } from './en/glossary.ts'
import { issues } from './en/issues.ts'
import { brackets, fills } from './en/kinds.ts'
import { lettingGo } from './en/lettingGo.ts'
import { loadPath } from './en/loadPath.ts'
import { loads } from './en/loads.ts'
import { cautions, steps } from './en/practice.ts'
import { reasons } from './en/reasons.ts'
import { contacts, roles } from './en/roles.ts'
import { scene } from './en/scene.ts'
import { standings } from './en/standings.ts'
import { terms } from './en/terms.ts'
import { verifiable } from './en/verifiable.ts'
import { zones } from './en/zones.ts'

/** Every word of the page in one language. A second language is a second object of this type. */
export const en = {
  answers,
  app,
  brackets,
  cautions,
  changes,
  choices,
  contacts,
  drawing,
  fields,
  fills,
  glossary,
  groups,
  issues,
  lettingGo,
  loadPath,
  loads,
  reasons,
  roles,
  scene,
  standings,
  standingCautions,
  steps,
  terms,
  verifiable,
  zones,
}

export const text = en
