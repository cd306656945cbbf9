import { z } from 'zod'
import type { FieldNode, NumberNode, Shape, TextNode } from '../fields/node.ts'
import type { Issue } from '../model/issue.ts'
import { unitNames } from '../units/factors.ts'
import { formatText } from '../units/format.ts'
import { parseQuantity } from '../units/parse.ts'
import { schemaVersion } from './schemaVersion.ts'
import { documentWords, pierFields } from './pier/pier.ts'
import { shortText } from './writeJob.ts'

// Without this the library would probe for `new Function`, which the page's content policy forbids.
z.config({ jitless: true })

/** "8 in to 48 in (203 mm to 1.22 m)": what may be entered, for the reader of the schema. */
const range = ({ min, max, quantity }: NumberNode): string => {
  const both = (system: 'us' | 'metric') => `${formatText(min, quantity, system)} to ${formatText(max, quantity, system)}`
  return both('us') === both('metric') ? both('us') : `${both('us')} (${both('metric')})`
}

/** A quantity is text with its unit, a count a number. */
const number = (node: NumberNode, path: string): z.ZodType => {
  const { quantity } = node
  if (quantity === 'count') return z.number().meta({ description: `whole number, ${range(node)}` })
  return z
    .string()
    .meta({ description: `${quantity} with its unit (${unitNames(quantity)}), ${range(node)}` })
    .transform((text, context) => {
      const reading = parseQuantity(text, quantity)
      if (reading.ok) return reading.value
      const facts = { got: text.slice(0, 80), limit: unitNames(quantity), quantity }
      const issue: Issue = { code: reading.code, severity: 'error', path, ...facts }
      context.issues.push({ code: 'custom', input: text, params: { issue }, message: issue.code })
      return z.NEVER
    })
}

const words = ({ least, most }: TextNode): z.ZodType<string> =>
  least > 0 ? z.string().min(least).max(most) : z.string().max(most).default('')

/** What a holder says of fields that a file leaves out. */
type LeftOut = FieldNode['leftOut']

const object = (shape: Shape, holder: string, leftOut: LeftOut): z.ZodObject => z.strictObject(entries(shape, holder, leftOut))
const entries = (shape: Shape, holder: string, leftOut: LeftOut): Record<string, z.ZodType> =>
  Object.fromEntries(
    Object.entries(shape).map(([key, node]) => [key, entry(node, holder === '' ? key : `${holder}.${key}`, node.leftOut ?? leftOut)]),
  )

/** May a file leave out all that a group holds? */
const isOptional = (shape: Shape, leftOut: LeftOut): boolean =>
  Object.values(shape).every(
    (node) =>
      (node.leftOut ?? leftOut) !== undefined ||
      node.type === 'part' ||
      (node.type === 'text' && node.least === 0) ||
      ((node.type === 'number' || node.type === 'choice') && node.nullable) ||
      (node.type === 'group' && isOptional(node.fields, leftOut)),
  )

/** A part that is off to begin with has no values that a file may leave out, but for those that say so themselves. */
const partOrNull = (shape: Shape, path: string) => object(shape, path, undefined).nullable()

/** One node as the job file holds it. */
function entry(node: FieldNode, path: string, leftOut: LeftOut): z.ZodType {
  switch (node.type) {
    case 'text':
      return words(node)
    case 'group':
      return isOptional(node.fields, leftOut) ? z.prefault(object(node.fields, path, leftOut), {}) : object(node.fields, path, leftOut)
    case 'part':
      return partOrNull(node.fields, path).default(null)
    case 'either': {
      const [first, ...others] = node.kinds.map(({ id, fields }) =>
        z.strictObject({ kind: z.literal(id), ...entries(fields, path, leftOut) }),
      )
      if (first === undefined) throw new Error(`entry: no kinds at '${path}'`)
      return z.discriminatedUnion('kind', [first, ...others])
    }
  }
  const one = node.type === 'number' ? number(node, path) : z.literal([...node.choices])
  if (node.nullable) return one.nullable().default(null)
  if (leftOut === 'unless shown') return one.optional()
  if (leftOut === undefined) return one
  const { start } = node
  const isQuantity = node.type === 'number' && node.quantity !== 'count' && typeof start === 'number'
  return z.prefault(one as z.ZodType<unknown, unknown>, isQuantity ? shortText(start, node.quantity) : start)
}

/** Where values came from, by path, as far as they do not tell it themselves. */
const origins = z.record(z.string(), z.literal(['typed', 'drawing', 'assumed', 'not-known'])).meta({
  description:
    'path of an input to where its value came from; without an entry, a value as in the first pier is assumed, any other was given',
})

const { support, fill, bars, verticalBars, top } = pierFields.fields
/** What a kind that is not in use had. A part that is not there is not what it had: nothing is filled in. */
const otherKind = z.strictObject({
  of: z.literal(['fill', 'support', 'bracket']),
  pier: z.strictObject({
    support: entry(support, 'support', undefined).optional(),
    fill: entry(fill, 'fill', undefined).optional(),
    bars: partOrNull(bars.fields, 'bars').optional(),
    verticalBars: partOrNull(verticalBars.fields, 'verticalBars').optional(),
    top: object(top.fields, 'top', top.leftOut).optional(),
  }),
  origins: origins.optional(),
})

/** The job file, newest version. Reading gives SI numbers; written texts are kept beside them by jobFile.ts. */
export const jobSchema = z.strictObject({
  pierglass: z.literal(schemaVersion).meta({ description: 'version of the job file' }),
  name: words(documentWords.name),
  note: words(documentWords.note),
  origins: origins.optional(),
  otherKinds: z.array(otherKind).meta({ description: 'what fills, supports and brackets had that are not in use now' }).optional(),
  pier: object(pierFields.fields, '', undefined),
})

/** JSON Schema of the job file as it is written. */
export const jobJsonSchema = (): unknown => z.toJSONSchema(jobSchema, { io: 'input' })
