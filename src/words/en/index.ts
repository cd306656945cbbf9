import { app } from './app.ts'
import { cautions } from './cautions.ts'
import { checkNames } from './checkNames.ts'
import { entrances } from './entrances.ts'
import { headlines } from './headlines.ts'
import { scene } from './scene.ts'
import { standings } from './standings.ts'
import { zones } from './zones.ts'

/** English. What the page opens with comes with it; each other subject is fetched by the part of the page that says it. */
export const english = {
  id: 'en',
  locale: 'en-US',
  first: { app, cautions, checkNames, entrances, headlines, scene, standings, zones },
  late: {
    answers: async () => (await import('./answers.ts')).answers,
    brackets: async () => (await import('./brackets.ts')).brackets,
    build: async () => (await import('./build.ts')).build,
    choices: async () => (await import('./choices.ts')).choices,
    compare: async () => (await import('./compare.ts')).compare,
    drawing: async () => (await import('./drawing.ts')).drawing,
    examples: async () => (await import('./examples.ts')).examples,
    fields: async () => (await import('./fields.ts')).fields,
    fills: async () => (await import('./fills.ts')).fills,
    glossary: async () => (await import('./glossary.ts')).glossary,
    groups: async () => (await import('./groups.ts')).groups,
    issues: async () => (await import('./issues.ts')).issues,
    life: async () => (await import('./life.ts')).life,
    loadPath: async () => (await import('./loadPath.ts')).loadPath,
    loads: async () => (await import('./loads.ts')).loads,
    looking: async () => (await import('./looking.ts')).looking,
    materials: async () => (await import('./materials.ts')).materials,
    moisture: async () => (await import('./moisture.ts')).moisture,
    moved: async () => (await import('./moved.ts')).moved,
    questions: async () => (await import('./questions.ts')).questions,
    reasons: async () => (await import('./reasons.ts')).reasons,
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
