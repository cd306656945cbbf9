import type { PierDocument, PierSpec } from '../model/spec.ts'
import { metres } from '../units/quantity.ts'
import { toSI } from '../units/factors.ts'
import { defaultDocument, defaultSpec } from './defaults.ts'
import { originsAfter } from './origins.ts'
import { deepFreeze } from './path.ts'
import { verticalBarFields } from './pier/steel.ts'

const inch = (value: number) => metres(toSI(value, 'in'))
const { support, concrete, placing } = defaultSpec

/**
 * The pier that a new page opens with: good practice, as far as checks can tell, so that a stranger has a pier to start from that meets all
 * that is asked of it. What a link means that says nothing stays as `defaultSpec` has it, for ever. Sizes are a scenario of our own.
 */
const openingSpec: PierSpec = {
  ...defaultSpec,
  // Thick enough under the post for plain concrete to spread its load over the whole bottom, and room for the upright bars below the bar.
  support: support.kind === 'embedded' ? { ...support, foot: inch(14) } : support,
  // The pull crosses the level of the bar in steel: plain concrete may not carry it. #3 reaches its length on both sides in this pier.
  verticalBars: { ...verticalBarFields.first, size: '#3' },
  // Concrete that freezes wet, class F2: 4,500 psi, with air.
  concrete: { ...concrete, strength: toSI(4500, 'psi') as typeof concrete.strength, unitWeight: 'reinforced' },
  placing: { ...placing, air: 'yes' },
}

/** Nobody has given any of it. */
export const openingDocument: PierDocument = deepFreeze<PierDocument>({
  ...defaultDocument,
  spec: openingSpec,
  origins: originsAfter(defaultDocument, openingSpec, []),
})
