import { isClose } from '../close.ts'
import { hashOf } from './kept.ts'
import { namedNumbers, namedWords, textsOf } from './named.ts'

/** One line a pier: words as they are, long texts as a hash, numbers to their last digit. */
export type Row = ReadonlyMap<string, string>

export const rowOf = (result: unknown): Row =>
  new Map([
    ...namedWords(result),
    ...Object.entries(textsOf(result)).map(([kind, texts]) => [kind, hashOf(texts.join('\n'))] as const),
    ...[...namedNumbers(result)].map(([name, value]) => [name, value === null ? '' : String(value)] as const),
  ])

/** The table as CSV; none of its words has a comma. */
export const written = (rows: ReadonlyMap<string, Row>): string => {
  const [first] = rows.values()
  const columns = [...(first?.keys() ?? [])]
  return [
    ['pier', ...columns].join(','),
    ...[...rows].map(([name, row]) => [name, ...columns.map((column) => row.get(column) ?? '')].join(',')),
    '',
  ].join('\n')
}

export const read = (text: string): ReadonlyMap<string, Row> => {
  const [head = '', ...lines] = text.trimEnd().split('\n')
  const [, ...columns] = head.split(',')
  return new Map(
    lines.map((line) => {
      const [name = '', ...cells] = line.split(',')
      return [name, new Map(columns.map((column, i) => [column, cells[i] ?? '']))]
    }),
  )
}

const isNumber = (cell: string): boolean => cell !== '' && Number.isFinite(Number(cell))
/** A volume of nothing is the difference of two that are alike: of a thousandth of a cubic millimetre nobody knows anything. */
const allowance = { abs: 1e-12, rel: 1e-12 }

/** What of a line differs from the reference, in words; numbers to twelve digits. */
export const differences = (name: string, now: Row, was: Row | undefined): readonly string[] => {
  if (was === undefined) return [`${name} has no reference`]
  return [...new Set([...now.keys(), ...was.keys()])].flatMap((column) => {
    const [is = 'left out', before = 'left out'] = [now.get(column), was.get(column)]
    const isSame = is === before || (isNumber(is) && isNumber(before) && isClose(Number(is), Number(before), allowance))
    return isSame ? [] : [`${name}: ${column} was ${before}, is ${is}`]
  })
}

/** Every text of many results, a number in it as #, each once: a word that changes shows here by itself. */
export const vocabulary = (results: readonly unknown[]): string =>
  `${[
    ...new Set(
      results.flatMap((result) => {
        const { words, formulas } = textsOf(result)
        return [...words, ...formulas].map((text) => text.replace(/\d[\d,./]*/g, '#').replaceAll('\n', ' '))
      }),
    ),
  ]
    .sort()
    .join('\n')}\n`
