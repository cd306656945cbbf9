import { useEffect, useState } from 'react'
import type { FieldOf } from '../../../core/model/field.ts'
import type { Issue } from '../../../core/model/issue.ts'
import { valueAt } from '../../../core/spec/path.ts'
import { editText } from '../../../core/units/editText.ts'
import { fromSI, type UnitId } from '../../../core/units/factors.ts'
import { formatText } from '../../../core/units/format.ts'
import { parseQuantity } from '../../../core/units/parse.ts'
import type { QuantityKind, UnitSystem } from '../../../core/units/quantity.ts'
import { useResult, usePier, useSpec } from '../../hooks/usePier.ts'

/** Degrees by the sign that people write. */
const signed = (text: string): string => text.replace(/ deg([FC]?)$/, (_, scale: string) => (scale === '' ? '°' : ` °${scale}`))

/** The value in one unit, with as many digits as people write. */
const inUnit = (value: number, unit: UnitId): string => `${Number(fromSI(value, unit).toFixed(2))}${unit === '1' ? '' : ` ${unit}`}`

/** As the trade writes it where that reads back as the value; else every digit of it. `unit`: where it is not the quantity's own. */
export const boxText = (value: number, quantity: QuantityKind, system: UnitSystem, unit?: UnitId): string => {
  const own = unit === undefined ? [] : [inUnit(value, unit), formatText(value, quantity, system, { feetInches: true })]
  const reads = (text: string): boolean => {
    const reading = parseQuantity(text, quantity, unit)
    return reading.ok && Math.abs(reading.value - value) <= 1e-9 * Math.max(1e-9, Math.abs(value))
  }
  return signed([...own, formatText(value, quantity, system)].find(reads) ?? editText(value, quantity, system))
}

/**
 * The same for a box that nobody is in: a number with more decimals than people read is cut to four figures and marked as about that. The
 * value stays, and stands in full in the box while it is edited.
 */
export const restingText = (settled: string): string =>
  settled.replace(
    /^(-?)(\d+)\.\d{4,}/,
    (number, _sign: string, whole: string) => `≈ ${Number(Number(number).toPrecision(Math.max(4, whole.length + 1)))}`,
  )

const noIssues: readonly Issue[] = []
const ofRange: readonly string[] = ['below-minimum', 'above-maximum']

/** A value beyond its own bounds is told by these alone: what else would not fit then says nothing more. */
const firstOf = (issues: readonly Issue[], path: string): readonly Issue[] => {
  const own = issues.filter((issue) => issue.path === path && ofRange.includes(issue.code))
  return own.length > 0 ? own : issues
}

/** What a number field shows: its value on show, what was typed and refused, and the issues that name it. */
export const useEntry = (field: FieldOf<'number'>) => {
  const spec = useSpec()
  const system = usePier((state) => state.view.units)
  const entry = usePier((state) => state.entries[field.path])
  const warnings = useWarnings(field.path)
  const raw = valueAt(spec, field.path)
  const value = typeof raw === 'number' ? raw : null
  const settled = value === null ? '' : boxText(value, field.quantity, system, field.unit?.[system])
  const [typed, setTyped] = useState<string | null>(null)
  // A value that changed elsewhere (undo, slider, a file) takes the place of what stands in the box; so does a settled entry.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is dropped exactly when one of these changes
  useEffect(() => setTyped(null), [settled, entry])
  return {
    system,
    value,
    text: typed ?? entry?.text ?? settled,
    settled,
    resting: restingText(settled),
    isTyping: typed !== null,
    setTyped,
    errors: entry ? firstOf(entry.issues, field.path) : noIssues,
    warnings,
  }
}

/** Warnings of the result on show that belong to one input. */
export const useWarnings = (path: string): readonly Issue[] => {
  const result = useResult()
  return result.issues.some((issue) => issue.path === path) ? result.issues.filter((issue) => issue.path === path) : noIssues
}
