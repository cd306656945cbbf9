import { type UnitWeight, unitWeight } from '../../units/quantity.ts'
import { fromPrinted } from '../cited.ts'
import { showing } from '../showing.ts'

/** Moisture contents at which a post is weighed: the light one for uplift. Source: assumption. */
export const postMoisture = { light: 0.12, service: 0.19, wet: 0.3 } as const

type Inputs = Readonly<{ gravity: number; moisture: number }>

/**
 * Unit weight of wood.
 * @param gravity specific gravity G, oven-dry [1]
 * @param moisture water by mass of dry wood [1], 0 to 0.30
 * @returns unit weight [N/m3]
 * Formula: 62.4 [G/(1 + 0.009 G m)] (1 + m/100), pcf, m in percent
 * Valid: up to fibre saturation. Outside: freshly treated wood is far heavier.
 * Source: nds-supplement-3-1-3
 * Checked by: tests/external/nds-supplement-3-1-3/check.test.ts
 */
export function woodUnitWeight({ gravity, moisture }: Inputs): UnitWeight {
  const percent = 100 * moisture
  return unitWeight(fromPrinted(62.4 * (gravity / (1 + 0.009 * gravity * percent)) * (1 + moisture), 'pcf'))
}

/** Unit weight of wood, with its work shown. */
export const workedWoodUnitWeight = showing({
  id: 'wood-unit-weight',
  quantity: 'unitWeight',
  formula: String.raw`\gamma = 62.4\,\frac{G}{1 + 0.009\,G\,m}\,(1 + m/100)\ (\mathrm{pcf},\ m\ \mathrm{in}\ \%)`,
  terms: { gravity: ['G', 'ratio'], moisture: ['m', 'ratio'] },
  sources: ['nds-supplement-3-1-3'],
  of: woodUnitWeight,
})
