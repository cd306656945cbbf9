import type { UnitSystem } from './quantity.ts'

/** US: comma between thousands. Metric: a narrow space, none in four digits. */
function parted(whole: string, system: UnitSystem): string {
  if (system === 'metric' && whole.replace('-', '').length <= 4) return whole
  return whole.replace(/\B(?=(?:\d{3})+$)/g, system === 'us' ? ',' : '\u202f')
}

/** A number with a fixed count of decimals, thousands parted; 'trim' drops zeros at the end. Negative zero is written 0. */
export function decimals(amount: number, count: number, system: UnitSystem, zeros: 'keep' | 'trim' = 'keep'): string {
  const fixed = amount.toFixed(count)
  const [whole = '', part = ''] = (Number(fixed) === 0 ? fixed.replace('-', '') : fixed).split('.')
  const shown = zeros === 'trim' ? part.replace(/0+$/, '') : part
  return shown === '' ? parted(whole, system) : `${parted(whole, system)}.${shown}`
}

/** A number rounded to `figures` significant figures, thousands parted, never in powers of ten. Zero is written 0. */
export function significant(amount: number, figures: number, system: UnitSystem): string {
  const rounded = Number(amount.toPrecision(figures))
  if (rounded === 0) return '0'
  const before = Math.floor(Math.log10(Math.abs(rounded))) + 1
  return decimals(rounded, Math.min(Math.max(figures - before, 0), 12), system)
}
