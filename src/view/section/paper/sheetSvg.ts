import { xmlText } from '../../../export/xmlText.ts'
import { pixelsPerMillimetre as mm } from './drawingScale.ts'
import { hatchesIn, ink, patterns, sectionGroup, wide } from './sectionSvg.ts'
import type { SectionPlan } from './sectionPlan.ts'
import { legendSvg, notesSvg, scaleBarSvg, titleBlock, viewTitle } from './sheetParts.ts'
import { svgElement, svgLine, svgWords } from './svgText.ts'

/** Fits on Letter and on A4 at full size. */
const page = { width: 180 * mm, height: 254 * mm }
const pad = 4 * mm
const blockWidth = 78 * mm
const strip = 8 * mm

/**
 * The section as one page that needs nothing else: drawing, title, scale bar, legend, title block and caution, as the text of an SVG
 * file of 180 by 254 mm, in pixels of 1/4.2 mm.
 *
 * @param letter the page's letter as base64 of a WOFF2 file, to go with the drawing; null to leave it to the reader's own letters
 */
export function sheetSvg(plan: SectionPlan, letter: string | null): string {
  const { size, words } = plan
  const under = size.height + 1 * mm
  const boxTop = under + 12 * mm
  const boxBottom = page.height - strip
  const blockLeft = page.width - blockWidth
  const across = (y: number): string => svgLine(0, y, page.width, y, { stroke: ink, 'stroke-width': wide('seen') })
  const border = wide('ground')
  return [
    '<?xml version="1.0" encoding="UTF-8"?>\n',
    svgElement(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width: '180mm',
        height: '254mm',
        viewBox: `0 0 ${page.width} ${Math.round(page.height * 10) / 10}`,
        'font-family': plan.letter,
      },
      [
        svgElement('title', {}, xmlText(`${words.name}: ${words.title}`)),
        svgElement('desc', {}, xmlText(words.caution)),
        letterStyle(letter),
        patterns(hatchesIn(plan)),
        svgElement('rect', { width: page.width, height: page.height, fill: '#ffffff' }),
        sectionGroup(plan),
        viewTitle(plan, pad, under),
        scaleBarSvg(plan, page.width - pad, under),
        across(boxTop),
        legendSvg(plan.legend, pad, boxTop + 3 * mm, blockLeft - pad),
        notesSvg(plan, pad, boxBottom - (8 + 4.4 * words.notes.length) * mm, blockLeft - 2 * pad),
        titleBlock(plan, blockLeft, page.width, boxTop, boxBottom),
        across(boxBottom),
        svgWords(
          words.caution,
          { x: page.width / 2, y: page.height - strip * 0.36, 'font-size': 15, 'font-weight': 600, 'text-anchor': 'middle', fill: ink },
          page.width - 2 * pad,
        ),
        svgElement('rect', {
          x: border / 2,
          y: border / 2,
          width: page.width - border,
          height: page.height - border,
          fill: 'none',
          stroke: ink,
          'stroke-width': border,
        }),
      ],
    ),
    '\n',
  ].join('')
}

/** The picture of the section alone, as wide and high as it was planned. */
export const bareSvg = (plan: SectionPlan, letter: string | null): string =>
  svgElement(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: plan.size.width,
      height: plan.size.height,
      viewBox: `0 0 ${plan.size.width} ${plan.size.height}`,
      'font-family': plan.letter,
    },
    [
      letterStyle(letter),
      patterns(hatchesIn(plan)),
      svgElement('rect', { width: plan.size.width, height: plan.size.height, fill: '#ffffff' }),
      sectionGroup(plan),
    ],
  )

export const letterStyle = (letter: string | null): string =>
  letter === null
    ? ''
    : svgElement(
        'style',
        {},
        `@font-face{font-family:'Source Sans 3 Variable';font-weight:200 900;src:url(data:font/woff2;base64,${letter}) format('woff2')}`,
      )
