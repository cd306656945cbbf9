import type { PierDocument, PierSpec } from '../src/core/model/spec.ts'
import { defaultDocument, defaultSpec } from '../src/core/spec/defaults.ts'
import { throughBarFields, verticalBarFields } from '../src/core/spec/pier/steel.ts'
import { toSI } from '../src/core/units/factors.ts'
import { metres, pascals } from '../src/core/units/quantity.ts'

const inch = (value: number) => metres(toSI(value, 'in'))

/** A pier of which every link counts: 8 in of concrete under the post, and upright bars that reach far past the bar through it. */
export const soundPier: PierSpec = {
  ...defaultSpec,
  support: { kind: 'embedded', foot: inch(8) },
  bars: { ...throughBarFields.first, aboveFoot: inch(12) },
  verticalBars: { ...verticalBarFields.first, size: '#4', grade: '40' },
  concrete: { ...defaultSpec.concrete, strength: pascals(toSI(4500, 'psi')) },
}
export const soundDocument: PierDocument = { ...defaultDocument, spec: soundPier }
