import { describe, expect, it } from 'vitest'
import { saturatedOverModel, type Texture, textures, texturesOfClass } from '../../../src/core/engineering/tables/infiltration.ts'
import { published, readCases } from '../cases.ts'

describe('soil by texture', () => {
  it.each(readCases(import.meta.url).map((row) => [row.id as Texture, row] as const))('[trap 9] %s', (id, row) => {
    const { porosity, effectivePorosity, suction, conductivity } = textures[id]
    published(porosity.value, row, '=porosity')
    published(effectivePorosity.value, row, '=effective')
    published(suction.value, row, '=suction_cm', 'cm')
    published(conductivity.value, row, '=K_cm/h', 'cm/h')
    published(conductivity.value, row, '=K_m/s', 'm/s')
    // The saturated conductivity that some tables print is twice the K of the model.
    published(saturatedOverModel.value * conductivity.value, row, '=saturated_mm/h', 'mm/h')
    expect(effectivePorosity.value).toBeLessThan(porosity.value)
    expect(conductivity.standing).toBe('secondary')
  })
  it('lists textures of a class fastest first, and none where none is published', () => {
    for (const rows of Object.values(texturesOfClass)) {
      const speeds = rows.map((id) => textures[id].conductivity.value)
      expect(speeds).toEqual([...speeds].sort((a, b) => b - a))
    }
    expect(texturesOfClass.gravel).toEqual([])
    expect(texturesOfClass.sand).toContain('sand')
  })
})
