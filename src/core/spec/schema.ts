import { z } from 'zod'
import type { Field } from '../model/field.ts'
import type { Issue } from '../model/issue.ts'
import { bracketKinds, fillKinds } from '../kinds/index.ts'
import { unitNames } from '../units/factors.ts'
import { formatText } from '../units/format.ts'
import { parseQuantity } from '../units/parse.ts'
import { calloutTexts } from './calloutText.ts'
import { fields } from './fields.ts'
import { defaultSpec } from './defaults.ts'
import { longestReason, shortestReason, soilMechanisms } from './judgement.ts'
import { schemaVersion } from './migrate.ts'
import { valueAt } from './path.ts'
import { longestName, longestNote } from './textLimits.ts'
import { shortText } from './writeJob.ts'

// Without this the library would probe for `new Function`, which the page's content policy forbids.
z.config({ jitless: true })

type NumberField = Extract<Field, { type: 'number' }>

/** "8 in to 48 in (203 mm to 1.22 m)": what may be entered, for the reader of the schema. */
const range = ({ min, max, quantity }: NumberField): string => {
  const both = (system: 'us' | 'metric') => `${formatText(min, quantity, system)} to ${formatText(max, quantity, system)}`
  return both('us') === both('metric') ? both('us') : `${both('us')} (${both('metric')})`
}

const quantity = (field: NumberField) =>
  z
    .string()
    .meta({ description: `${field.quantity} with its unit (${unitNames(field.quantity)}), ${range(field)}` })
    .transform((text, context) => {
      const reading = parseQuantity(text, field.quantity)
      if (reading.ok) return reading.value
      const facts = { got: text.slice(0, 80), limit: unitNames(field.quantity), quantity: field.quantity }
      const issue: Issue = { code: reading.code, severity: 'error', path: field.path, ...facts }
      context.issues.push({ code: 'custom', input: text, params: { issue }, message: issue.code })
      return z.NEVER
    })

const count = (field: NumberField) => z.number().meta({ description: `whole number, ${range(field)}` })

/** One field as the job file holds it: a quantity as text with its unit, a count or a choice as it is. */
const entry = (field: Field) => {
  if (field.type === 'part') throw new Error(`entry: ${field.path} is a part`)
  if (field.type === 'choice') {
    const one = z.literal([...field.choices])
    return field.nullable ? one.nullable().default(null) : one
  }
  const plain = field.quantity === 'count' ? count(field) : quantity(field)
  return field.nullable ? plain.nullable().default(null) : plain
}

const byPath: ReadonlyMap<string, Field> = new Map([...fields].reverse().map((field) => [field.path, field]))
const at = (path: string) => {
  const field = byPath.get(path)
  if (field === undefined) throw new Error(`at: no field '${path}'`)
  return entry(field)
}
const lastKey = (path: string) => path.slice(path.lastIndexOf('.') + 1)
const entries = (own: readonly Field[]) => Object.fromEntries(own.map((field) => [lastKey(field.path), entry(field)]))

/** Every field below a path, by its last key. */
const entriesUnder = (prefix: string) => entries(fields.filter((field) => field.path.startsWith(prefix)))

/** Keys of one object whose fields a pier may not show; left out, they take the values of the pier that everybody starts from. */
const maybe = (path: string) => at(path).optional()

/** A choice that a file from before it existed leaves out. */
const started = (path: string) => z.prefault(at(path) as z.ZodType<unknown, unknown>, valueAt(defaultSpec, path))

/** The fields below a path, nested as their paths are; what a file leaves out is as in the pier that everybody starts from. */
const startedUnder = (prefix: string): z.ZodType => {
  const below = fields.map((field) => field.path).filter((path) => path.startsWith(prefix))
  const keys = [...new Set(below.map((path) => path.slice(prefix.length).split('.')[0] ?? ''))]
  const shape = keys.map((key) => {
    const path = `${prefix}${key}`
    const field = byPath.get(path)
    if (field?.type === 'part') return [key, part(nestedUnder(`${path}.`))] as const
    if (field === undefined) return [key, startedUnder(`${path}.`)] as const
    const value = valueAt(defaultSpec, path)
    const text =
      field.type === 'number' && field.quantity !== 'count' && typeof value === 'number' ? shortText(value, field.quantity) : value
    return [key, field.type === 'choice' && field.nullable ? at(path) : z.prefault(at(path) as z.ZodType<unknown, unknown>, text)] as const
  })
  return z.strictObject(Object.fromEntries(shape)).prefault({})
}

/** The same for a part that is off to begin with: it has no values that a file may leave out. */
const nestedUnder = (prefix: string): z.core.$ZodLooseShape => {
  const below = fields.map((field) => field.path).filter((path) => path.startsWith(prefix))
  const keys = [...new Set(below.map((path) => path.slice(prefix.length).split('.')[0] ?? ''))]
  return Object.fromEntries(
    keys.map((key) => [key, byPath.has(`${prefix}${key}`) ? at(`${prefix}${key}`) : z.strictObject(nestedUnder(`${prefix}${key}.`))]),
  )
}

/** A quantity that a file may leave out, as the text that it then has. */
const written = (path: string, text: string) => z.prefault(at(path) as z.ZodType<unknown, unknown>, text)

const soil = (path: string) =>
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('presumptive'), class: at(`${path}.class`) }),
    z.strictObject({
      kind: z.literal('user'),
      unitWeight: at(`${path}.unitWeight`),
      frictionAngle: at(`${path}.frictionAngle`),
      cohesion: at(`${path}.cohesion`),
      allowableBearing: at(`${path}.allowableBearing`),
      lateral: at(`${path}.lateral`),
      sideFriction: at(`${path}.sideFriction`),
    }),
  ])

const part = (shape: z.core.$ZodLooseShape) => z.strictObject(shape).nullable().default(null)

const [firstFill, ...otherFills] = fillKinds.map((kind) => z.strictObject({ kind: z.literal(kind.id), ...entries(kind.fields) }))
const [firstBracket, ...otherBrackets] = bracketKinds.map((kind) => z.strictObject({ kind: z.literal(kind.id), ...entries(kind.fields) }))
if (firstFill === undefined || firstBracket === undefined) throw new Error('schema: no kinds')

const pier = z.strictObject({
  site: z.strictObject({
    soil: soil('site.soil'),
    lower: part({ from: at('site.lower.from'), soil: soil('site.lower.soil') }),
    topsoil: at('site.topsoil'),
    slope: at('site.slope'),
    downhill: at('site.downhill'),
    waterTable: at('site.waterTable'),
    frostDepth: at('site.frostDepth'),
    blows: at('site.blows'),
    slopeHeight: at('site.slopeHeight'),
    weathering: started('site.weathering'),
  }),
  hole: z.strictObject({
    diameter: at('hole.diameter'),
    depth: at('hole.depth'),
    bell: part({ diameter: at('hole.bell.diameter'), height: at('hole.bell.height') }),
    flare: part({ diameter: at('hole.flare.diameter'), depth: at('hole.flare.depth') }),
    base: part({ material: at('hole.base.material'), thickness: at('hole.base.thickness') }),
  }),
  post: z.strictObject({
    section: at('post.section'),
    species: at('post.species'),
    treatment: at('post.treatment'),
    heightAboveGrade: at('post.heightAboveGrade'),
    lean: written('post.lean', '0 deg'),
  }),
  support: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('embedded'), foot: at('support.foot') }),
    z.strictObject({
      kind: z.literal('bracket'),
      bracket: z.discriminatedUnion('kind', [firstBracket, ...otherBrackets]),
      standOff: at('support.standOff'),
    }),
  ]),
  fill: z.discriminatedUnion('kind', [firstFill, ...otherFills]),
  bars: part({
    size: at('bars.size'),
    count: at('bars.count'),
    aboveFoot: at('bars.aboveFoot'),
    spacing: maybe('bars.spacing'),
    length: at('bars.length'),
    grade: at('bars.grade'),
    coating: at('bars.coating'),
  }),
  verticalBars: part({
    size: at('verticalBars.size'),
    count: at('verticalBars.count'),
    cover: at('verticalBars.cover'),
    grade: at('verticalBars.grade'),
    coating: at('verticalBars.coating'),
  }),
  top: z
    .strictObject({ shape: maybe('top.shape'), rise: maybe('top.rise'), rim: maybe('top.rim'), heaped: maybe('top.heaped') })
    .prefault({}),
  concrete: z.strictObject({
    strength: maybe('concrete.strength'),
    unitWeight: maybe('concrete.unitWeight'),
    bagSize: maybe('concrete.bagSize'),
    waste: at('concrete.waste'),
    cores: part(entriesUnder('concrete.cores.')),
  }),
  placing: startedUnder('placing.'),
  water: startedUnder('water.'),
  piers: at('piers').default(1),
  loads: z
    .strictObject({ entered: part(entriesUnder('loads.entered.')), estimate: part(entriesUnder('loads.estimate.')) })
    .prefault({ entered: null, estimate: null }),
  sideways: z.strictObject({ ground: started('sideways.ground'), top: started('sideways.top') }).prefault({}),
  spacing: at('spacing'),
  code: started('code'),
  judgement: z
    .strictObject({ mechanism: z.literal([...soilMechanisms]), reason: z.string().min(shortestReason).max(longestReason) })
    .nullable()
    .default(null),
  callout: part({
    ...entries(fields.filter((field) => /^callout\.\w+$/.test(field.path))),
    tolerance: z
      .strictObject({ diameter: written('callout.tolerance.diameter', '0 in'), depth: written('callout.tolerance.depth', '0 in') })
      .prefault({}),
    number: z.string().max(calloutTexts.number).default(''),
    date: z.string().max(calloutTexts.date).default(''),
    notes: z.string().max(calloutTexts.notes).default(''),
  }),
  life: startedUnder('life.'),
  costs: part(nestedUnder('costs.')),
})

/** The job file, newest version. Reading gives SI numbers; written texts are kept beside them by jobFile.ts. */
export const jobSchema = z.strictObject({
  pierglass: z.literal(schemaVersion).meta({ description: 'version of the job file' }),
  name: z.string().max(longestName).default(''),
  note: z.string().max(longestNote).default(''),
  pier,
})

/** JSON Schema of the job file as it is written. */
export const jobJsonSchema = (): unknown => z.toJSONSchema(jobSchema, { io: 'input' })
