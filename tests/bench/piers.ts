import type { PierSpec } from '../../src/core/model/spec.ts'
import { defaultSpec } from '../../src/core/spec/defaults.ts'
import { toSI } from '../../src/core/units/factors.ts'
import { metres, slope } from '../../src/core/units/quantity.ts'

const inch = (value: number) => metres(toSI(value, 'in'))

/** Everything that makes a pier heavy to draw: bell, slope, three layers, gravel, crown, bar. */
const belled: PierSpec = {
  ...defaultSpec,
  site: { ...defaultSpec.site, slope: slope(0.15), lower: { from: inch(30), soil: defaultSpec.site.soil } },
  hole: {
    ...defaultSpec.hole,
    depth: inch(60),
    bell: { diameter: inch(30), height: inch(10) },
    base: { material: 'gravel', thickness: inch(4) },
  },
}

export const benchPiers: Readonly<Record<string, PierSpec>> = {
  'the pier a new page opens with': defaultSpec,
  'belled, on a slope, in three layers': belled,
}
