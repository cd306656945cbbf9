import { app } from './app.ts'
import { brackets } from './brackets.ts'
import { cautions } from './cautions.ts'
import { checkNames } from './checkNames.ts'
import { choices } from './choices.ts'
import { entrances } from './entrances.ts'
import { fields } from './fields.ts'
import { fills } from './fills.ts'
import { groups } from './groups.ts'
import { headlines } from './headlines.ts'
import { issues } from './issues.ts'
import { standings } from './standings.ts'
import { zones } from './zones.ts'

/** English. What the page opens with comes with it; each other subject is fetched by the part of the page that says it. */
export const english = {
  id: 'en',
  locale: 'en-US',
  first: { app, brackets, cautions, checkNames, choices, entrances, fields, fills, groups, headlines, issues, standings, zones },
  late: {
    answers: async () => (await import('./answers.ts')).answers,
    build: async () => (await import('./build.ts')).build,
    compare: async () => (await import('./compare.ts')).compare,
    drawing: async () => (await import('./drawing.ts')).drawing,
    examples: async () => (await import('./examples.ts')).examples,
    glossary: async () => (await import('./glossary.ts')).glossary,
    life: async () => (await import('./life.ts')).life,
    loadPath: async () => (await import('./loadPath.ts')).loadPath,
    loads: async () => (await import('./loads.ts')).loads,
    looking: async () => (await import('./looking.ts')).looking,
    materials: async () => (await import('./materials.ts')).materials,
    moisture: async () => (await import('./moisture.ts')).moisture,
    moved: async () => (await import('./moved.ts')).moved,
    questions: async () => (await import('./questions.ts')).questions,
    reasons: async () => (await import('./reasons.ts')).reasons,
    scene: async () => (await import('./scene.ts')).scene,
    sheet: async () => (await import('./sheet.ts')).sheet,
    shelf: async () => (await import('./shelf.ts')).shelf,
    steps: async () => (await import('./steps.ts')).steps,
    sure: async () => (await import('./sure.ts')).sure,
    takeAlong: async () => (await import('./takeAlong.ts')).takeAlong,
    terms: async () => (await import('./terms.ts')).terms,
    time: async () => (await import('./time.ts')).time,
    verifiable: async () => (await import('./verifiable.ts')).verifiable,
    years: async () => (await import('./years.ts')).years,
  },
} as const
