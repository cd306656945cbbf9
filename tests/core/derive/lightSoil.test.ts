import { describe, expect, it } from 'vitest'
import { derivePier } from '../../../src/core/derive/derivePier.ts'
import type { PierSpec } from '../../../src/core/model/spec.ts'
import { defaultSpec } from '../../../src/core/spec/defaults.ts'
import { fromSI, toSI } from '../../../src/core/units/factors.ts'
import { metres, pascals, pressureGradient, type UnitWeight } from '../../../src/core/units/quantity.ts'
import { checkOf, entered, foot, inch, pound } from './pierOf.ts'

/** A soil of the user's that stands in water from the top. */
const light = (pcf: number, side = 150): PierSpec => ({
  ...defaultSpec,
  site: {
    ...defaultSpec.site,
    topsoil: metres(0),
    waterTable: metres(0),
    soil: {
      kind: 'user',
      unitWeight: toSI(pcf, 'pcf') as UnitWeight,
      frictionAngle: toSI(30, 'deg') as never,
      cohesion: pascals(0),
      allowableBearing: pascals(toSI(2000, 'psf')),
      lateral: pressureGradient(toSI(side, 'psf/ft')),
      sideFriction: pascals(0),
    },
  },
  loads: entered({ lateral: pound(400), lateralHeight: foot(6) }),
})

describe('[Q5] ground that is no heavier than water holds nothing under it, and says so', () => {
  it.each([60, 62, 62.4, 63, 110])('%s pcf: friction is never less than none, and side soil is told by what was entered', (pcf) => {
    const result = derivePier(light(pcf))
    for (const { worked } of result.checks)
      for (const one of worked) if (one.id.startsWith('side-friction')) expect(one.value, one.id).toBeGreaterThanOrEqual(0)
    const friction = checkOf(result, 'friction-and-weight')
    const weight = friction.worked.find(({ id }) => id === 'factored-dead-load')
    if (weight && friction.allowable) expect(friction.allowable.value).toBeGreaterThanOrEqual(weight.value * (1 - 1e-9))
    const { why } = checkOf(result, 'lateral-embedment')
    expect(why).not.toBe('no-sideways-value')
    expect(why === 'ground-no-heavier-than-water').toBe(pcf <= 62.4)
  })

  it('says that no side value was entered only where none was', () => {
    expect(checkOf(derivePier(light(110, 0)), 'lateral-embedment').why).toBe('no-sideways-value')
    expect(checkOf(derivePier(light(60, 0)), 'lateral-embedment').why).toBe('no-sideways-value')
  })
})

describe('[Q6] net bearing prints no unit weight that nothing has', () => {
  it('takes the weight of the pier, above grade and below, and the soil that it replaced', () => {
    const spec: PierSpec = {
      ...defaultSpec,
      top: { ...defaultSpec.top, rim: inch(12) },
      loads: entered({ gravity: pound(4000) }),
    }
    const result = derivePier(spec)
    const net = checkOf(result, 'bearing-net').demand ?? expect.fail('no net bearing')
    const term = (name: string) => net.inputs.find((one) => one.name === name)?.value ?? expect.fail(`no ${name}`)
    expect(net.inputs.map(({ name }) => name)).not.toContain('concrete')
    const gross = checkOf(result, 'bearing-gross').demand ?? expect.fail('no gross bearing')
    expect(term('weight')).toBe(gross.inputs.find(({ name }) => name === 'weight')?.value)
    expect(net.value).toBeCloseTo((term('load') + term('weight') - term('soil') * term('volume')) / term('area'), 6)
    // Nothing that is printed of it weighs 155 pcf, as concrete of 145 pcf did with a foot of it above grade.
    for (const { quantity, value } of net.inputs) if (quantity === 'unitWeight') expect(fromSI(value, 'pcf')).toBeLessThan(145)
  })
})
