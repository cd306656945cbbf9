import { xmlText } from '../../../export/xmlText.ts'
import { textWidth } from '../typeSize.ts'

type Attributes = Readonly<Record<string, string | number | undefined>>

const attribute = ([name, value]: readonly [string, string | number | undefined]): string =>
  value === undefined ? '' : ` ${name}="${typeof value === 'number' ? Math.round(value * 100) / 100 : xmlText(value)}"`

/** One element as text; a body of several parts is joined. Names are ours; values are made harmless. */
export const svgElement = (name: string, attributes: Attributes, body: readonly string[] | string = ''): string => {
  const inside = typeof body === 'string' ? body : body.join('')
  const head = `${name}${Object.entries(attributes).map(attribute).join('')}`
  return inside === '' ? `<${head}/>` : `<${head}>${inside}</${name}>`
}

export type SvgWords = Attributes & Readonly<{ x: number; y: number; 'font-size': number; 'font-weight'?: number }>

/**
 * Words as text, never as an outline, so that they can be selected and searched. They are as wide as in the page's own letter, also
 * where a reader has another one, and never wider than `room` pixels.
 */
export const svgWords = (words: string, attributes: SvgWords, room = Number.POSITIVE_INFINITY): string => {
  if (words === '') return ''
  const width = Math.min(textWidth(words, attributes['font-size'], attributes['font-weight'] ?? 400), room)
  return svgElement('text', { ...attributes, textLength: width, lengthAdjust: 'spacingAndGlyphs' }, xmlText(words))
}

/** A straight line. */
export const svgLine = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string =>
  svgElement('path', { d: `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`, ...attributes })

const round = (value: number): number => Math.round(value * 100) / 100
