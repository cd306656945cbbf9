import type { PresumptiveClass } from '../../model/spec.ts'
import type { Metres, MetresPerSecond } from '../../units/quantity.ts'
import { type Cited, cited } from '../cited.ts'

/** Averages of one texture class. Spread inside a class is often a factor of 3 to 10 (from memory). */
export type TextureRow = Readonly<{
  /** Void share of the whole volume, and the share that drains and fills [1]. */
  porosity: Cited
  effectivePorosity: Cited
  /** Suction head at the wetting front [m of water]. */
  suction: Cited<Metres>
  /** The model's K, half of the saturated conductivity that some tables print [m/s]. */
  conductivity: Cited<MetresPerSecond>
}>
const source = 'rawls-1983-table'
const row = (porosity: number, effective: number, suction: number, conductivity: number): TextureRow => ({
  porosity: cited(porosity, '1', source, 'secondary'),
  effectivePorosity: cited(effective, '1', source, 'secondary'),
  suction: cited<Metres>(suction, 'cm', source, 'secondary'),
  conductivity: cited<MetresPerSecond>(conductivity, 'cm/h', source, 'secondary'),
})

/** Porosity, effective porosity, suction in cm, K in cm/h, from about 5,000 horizons. Source: rawls-1983-table. */
export const textures = {
  sand: row(0.437, 0.417, 4.95, 11.78),
  'loamy-sand': row(0.437, 0.401, 6.13, 2.99),
  'sandy-loam': row(0.453, 0.412, 11.01, 1.09),
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a porosity of 0.434, not the logarithm of e
  loam: row(0.463, 0.434, 8.89, 0.34),
  'silt-loam': row(0.501, 0.486, 16.68, 0.65),
  'sandy-clay-loam': row(0.398, 0.33, 21.85, 0.15),
  'clay-loam': row(0.464, 0.309, 20.88, 0.1),
  'silty-clay-loam': row(0.471, 0.432, 27.3, 0.1),
  'sandy-clay': row(0.43, 0.321, 23.9, 0.06),
  'silty-clay': row(0.479, 0.423, 29.22, 0.05),
  clay: row(0.475, 0.385, 31.63, 0.03),
} as const satisfies Readonly<Record<string, TextureRow>>
export type Texture = keyof typeof textures

/**
 * Textures that ground of each presumptive class may have, fastest first: the pairing is ours. Empty where none is
 * published for it: gravel takes water faster than any of these, rock by its cracks alone. Source: assumption.
 */
export const texturesOfClass: Readonly<Record<PresumptiveClass, readonly Texture[]>> = {
  'crystalline-rock': [],
  'foliated-rock': [],
  gravel: [],
  sand: ['sand', 'loamy-sand', 'sandy-loam', 'sandy-clay-loam'],
  clay: ['silt-loam', 'loam', 'clay-loam', 'silty-clay-loam', 'sandy-clay', 'silty-clay', 'clay'],
}

/** Some tables print the saturated conductivity, which is this many times the model's K. Source: rawls-1983-table. */
export const saturatedOverModel = cited(2, '1', 'rawls-1983-table', 'secondary')
