import { app } from './en/app.ts'
import { standingCautions } from './en/cautions.ts'
import { drawing } from './en/drawing.ts'
import { choices, fields, groups } from './en/fields.ts'
import { firstAnswers } from './en/firstAnswers.ts'
import { issues } from './en/issues.ts'
import { brackets, fills } from './en/kinds.ts'
import { contacts, roles } from './en/roles.ts'
import { scene } from './en/scene.ts'
import { standings } from './en/standings.ts'
import { zones } from './en/zones.ts'

/** The words of the page in one language, but for those in `late.ts`. A second language is a second object of this type. */
export const en = {
  answers: firstAnswers,
  app,
  brackets,
  choices,
  contacts,
  drawing,
  fields,
  fills,
  groups,
  issues,
  roles,
  scene,
  standings,
  standingCautions,
  zones,
}

export const text = en
