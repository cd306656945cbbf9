import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type PrintedUnit, fromPrinted, toPrinted } from '../../src/core/engineering/cited.ts'
import { close } from '../close.ts'

/** One row of a cases.csv: cells as printed. Columns whose name begins with "=" are published answers. */
export type Case = Readonly<Record<string, string>>

/** Rows of the cases.csv beside a test, comments and blank lines left out. */
export const readCases = (testUrl: string, file = 'cases.csv'): readonly Case[] =>
  parse(readFileSync(join(dirname(fileURLToPath(testUrl)), file), 'utf8'))

export const parse = (text: string): readonly Case[] => {
  const lines = text.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('#'))
  const [head = '', ...rows] = lines
  const names = cells(head)
  return rows.map((row) => {
    const found = cells(row)
    if (found.length > names.length) throw new Error(`more cells than columns: ${row}`)
    return Object.fromEntries(names.map((name, i) => [name, found[i] ?? '']))
  })
}

/** No cell holds a comma. */
const cells = (line: string): readonly string[] => line.split(',').map((cell) => cell.trim())

/** A printed number in SI, as the quantity that the place it goes to asks for. */
export const si = <T extends number = number>(row: Case, column: string, unit: PrintedUnit = '1'): T => at<T>(digits(row, column), unit)
/** A figure and its unit in SI, as the quantity that the place it goes to asks for. */
export const at = <T extends number = number>(printed: number, unit: PrintedUnit = '1'): T => fromPrinted(printed, unit) as T
/** A printed number as it stands. */
export const digits = (row: Case, column: string): number => {
  const text = row[column]
  if (text === undefined || text === '' || !Number.isFinite(Number(text)))
    throw new Error(`case ${row.id ?? '?'} has no number in ${column}`)
  return Number(text)
}
export const has = (row: Case, column: string): boolean => (row[column] ?? '') !== ''

/** Half a unit in the last printed digit. */
export const halfUnit = (text: string): number => {
  const [mantissa = '', exponent = '0'] = text.toLowerCase().split('e')
  const decimals = mantissa.split('.')[1]?.length ?? 0
  return 0.5 * 10 ** (Number(exponent) - decimals)
}

/**
 * Holds an SI result against a published answer in its printed unit, to half a unit in the last printed digit.
 * Empty cells are skipped. `slack` is added only where the test says why.
 */
export const published = (got: number, row: Case, column: string, unit: PrintedUnit = '1', slack = 0): void => {
  const text = row[column] ?? ''
  if (text === '') return
  close(toPrinted(got, unit), digits(row, column), { abs: halfUnit(text) * (1 + 1e-9) + slack, rel: 0 }, `${row.id ?? ''} ${column}`)
}
