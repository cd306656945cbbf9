import { jobJsonSchema } from '../core/spec/schema.ts'
import { print } from './print.ts'

print(`${JSON.stringify(jobJsonSchema(), null, 2)}\n`)
