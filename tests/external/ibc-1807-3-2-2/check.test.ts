import { describe, it } from 'vitest'
import { allowableMomentConstrained, embedmentConstrained } from '../../../src/core/engineering/soil/lateralConstrained.ts'
import type { Metres, NewtonMetres, PressureGradient } from '../../../src/core/units/quantity.ts'
import { close } from '../../close.ts'
import { at, published, readCases, si } from '../cases.ts'

describe('required embedment, post held at grade', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id, row] as const))('%s', (_, row) => {
    const soil = {
      gradient: si<PressureGradient>(row, 'Lt_psf/ft', 'psf/ft'),
      multiplier: si(row, 'k'),
      width: si<Metres>(row, 'b_ft', 'ft'),
    }
    const moment = si<NewtonMetres>(row, 'Mg_lb-ft', 'lb-ft')
    const depth = embedmentConstrained({ ...soil, moment })
    published(depth, row, '=d_ft', 'ft')
    published(soil.multiplier * soil.gradient * depth, row, '=S3_psf', 'psf')
    published((soil.multiplier * soil.gradient * depth) / 3, row, '=S1_psf', 'psf')
    close(allowableMomentConstrained({ ...soil, depth }), moment, { abs: 0, rel: 1e-12 })
  })

  it('joins at 12 ft, where the pressure stops growing', () => {
    const soil = { gradient: at<PressureGradient>(150, 'psf/ft'), multiplier: 1, width: at<Metres>(2, 'ft') }
    const limit = allowableMomentConstrained({ ...soil, depth: at(12, 'ft') })
    close(embedmentConstrained({ ...soil, moment: (limit * (1 - 1e-9)) as NewtonMetres }), at(12, 'ft'), { abs: 0, rel: 1e-8 })
    close(embedmentConstrained({ ...soil, moment: (limit * (1 + 1e-9)) as NewtonMetres }), at(12, 'ft'), { abs: 0, rel: 1e-8 })
  })
})
