import { fromSI } from './factors.ts'
import type { Formatted, FormatOptions } from './format.ts'
import { decimals, significant } from './numerals.ts'
import type { UnitSystem } from './quantity.ts'

/** A length as the trade writes it. Drafting forms: feet-dash-inches with zero inches kept, inches alone below, fractions reduced. */
export function lengthText(value: number, system: UnitSystem, options: FormatOptions): Formatted {
  const style = options.style ?? 'screen'
  return system === 'us' ? usLength(fromSI(value, 'in'), style, options) : metricLength(fromSI(value, 'mm'), style)
}

function usLength(inches: number, style: 'screen' | 'sheet', options: FormatOptions): Formatted {
  const parts = options.fraction ?? (Math.abs(inches) < 1 ? 16 : 8)
  const rounded = Math.round(Math.abs(inches) * parts) / parts
  const sign = inches < 0 && rounded > 0 ? '-' : ''
  const feetFrom =
    options.feetInches === undefined
      ? style === 'sheet'
        ? 36
        : Number.POSITIVE_INFINITY
      : options.feetInches
        ? 12
        : Number.POSITIVE_INFINITY
  if (rounded >= feetFrom) {
    const feet = Math.floor(rounded / 12)
    const inchesOver = rounded - feet * 12
    const zero = inchesOver > 0 && inchesOver < 1 ? '0 ' : ''
    return { text: `${sign}${feet}'-${zero}${inchesText(inchesOver, parts)}"`, unit: '' }
  }
  if (rounded === 0 && inches !== 0) return { text: significant(inches, 1, 'us'), unit: style === 'sheet' ? '"' : 'in' }
  const text = `${sign}${inchesText(rounded, parts)}`
  return style === 'sheet' ? { text: `${text}"`, unit: '' } : { text, unit: 'in' }
}

/** Inches in whole numbers and a reduced fraction: 18, 1 1/2, 5/8, 0. */
function inchesText(inches: number, parts: number): string {
  const whole = Math.floor(inches)
  let top = Math.round((inches - whole) * parts)
  let bottom = parts
  while (top > 0 && top % 2 === 0) {
    top /= 2
    bottom /= 2
  }
  const thousands = decimals(whole, 0, 'us')
  if (top === 0) return thousands
  return whole === 0 ? `${top}/${bottom}` : `${thousands} ${top}/${bottom}`
}

/** Screen: millimetres below a metre, then metres with two decimals. Sheet: whole millimetres without a sign. */
function metricLength(mm: number, style: 'screen' | 'sheet'): Formatted {
  const size = Math.abs(mm)
  if (style === 'sheet') return { text: decimals(mm, size < 9.95 ? 1 : 0, 'metric', 'trim'), unit: '' }
  if (size >= 999.5) return { text: decimals(mm / 1000, 2, 'metric'), unit: 'm' }
  return { text: size < 9.95 ? decimals(mm, 1, 'metric', 'trim') : decimals(mm, 0, 'metric'), unit: 'mm' }
}
