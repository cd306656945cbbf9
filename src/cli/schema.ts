import { jobJsonSchema } from '../core/spec/schema.ts'

process.stdout.write(`${JSON.stringify(jobJsonSchema(), null, 2)}\n`)
