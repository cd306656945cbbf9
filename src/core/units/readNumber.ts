const thin = '\u2009\u202f\u00a0'
const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/**
 * One plain alphabet for what keyboards and word processors make of a length: ASCII minus, straight quotes for primes, n/d for
 * typographic fractions, ordinary spaces except the thin ones that part thousands.
 */
export const plainText = (text: string): string =>
  text
    .replace(/[\u2212\u2010-\u2014]/g, '-')
    .replace(/[\u2032\u2018\u2019\u00b4]/g, "'")
    .replace(/[\u2033\u201c\u201d]/g, '"')
    .replaceAll("''", '"')
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign] ?? ''}`)
    .replaceAll('\u2044', '/')
    .replace(new RegExp(`(\\d)[${thin}](?=\\d{3}(?!\\d))`, 'g'), '$1\u202f')
    .replace(/\s/g, (space) => (space === '\u202f' ? space : ' '))
    .trim()

const grouped = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/
const parted = /^[1-9]\d{0,2}(?:\u202f\d{3})+(?:\.\d*)?$/
const decimalComma = /^\d+,\d+$/
const decimal = /^(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i
const mixed = /^(\d+)(?: +| *- *)(\d+)\/(\d+)$/
const fraction = /^(\d+)\/(\d+)$/

/**
 * A magnitude without sign or unit; undefined when it cannot be read. May be infinite ("1e999").
 *
 * A comma parts thousands when it stands before groups of exactly three digits and the first group does not begin with 0
 * ("1,500" is fifteen hundred). One comma in any other place, with no full stop, is a decimal comma ("0,457", "1,5", "45,72").
 * A full stop is always a decimal point. Thin and no-break spaces part thousands.
 *
 * @param shift power of ten to multiply by; a decimal is shifted before it is rounded, so that 2.05 % is 0.0205 to the last bit
 */
export function readNumber(text: string, shift = 0): number | undefined {
  const whole = mixed.exec(text)
  if (whole) return divided(Number(whole[2]), Number(whole[3]), Number(whole[1]), shift)
  const part = fraction.exec(text)
  if (part) return divided(Number(part[1]), Number(part[2]), 0, shift)
  if (grouped.test(text)) return shifted(text.replaceAll(',', ''), shift)
  if (parted.test(text)) return shifted(text.replaceAll('\u202f', ''), shift)
  if (decimalComma.test(text)) return shifted(text.replace(',', '.'), shift)
  return decimal.test(text) ? shifted(text, shift) : undefined
}

const shifted = (text: string, shift: number) => {
  const [digits = '', power = '0'] = text.toLowerCase().split('e')
  return Number(`${digits}e${Number(power) + shift}`)
}
const divided = (top: number, bottom: number, whole: number, shift: number) =>
  bottom === 0 ? undefined : shift < 0 ? (whole + top / bottom) / 10 ** -shift : (whole + top / bottom) * 10 ** shift
