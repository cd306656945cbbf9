// @vitest-environment jsdom
import { describe, expect, it } from 'vitest'
import { withChoice } from '../../../src/core/spec/choose.ts'
import { defaultDocument } from '../../../src/core/spec/defaults.ts'
import { defaultView } from '../../../src/state/defaultView.ts'
import { derived } from '../../../src/state/derived.ts'
import { bareFigures, plannedTogether } from '../../../src/view/sheet/sheetSection.ts'

// Without a canvas the widths of words are guessed.
HTMLCanvasElement.prototype.getContext = () => null

describe('sections of several piers on one sheet', () => {
  const kinds = ['mixed-full-height', 'mixed-bracket-pier', 'dry-bag-at-foot', 'dry-full-height']
  const plans = plannedTogether(
    kinds.map((kind) => {
      const spec = withChoice(defaultDocument.spec, 'fill.kind', kind)
      return {
        document: { ...defaultDocument, spec },
        result: derived(spec),
        view: { ...defaultView, units: 'us' as const },
        date: '2026-01-02',
        version: '9.8.7',
      }
    }),
    { width: 40, height: 72 },
  )
  const boxes = bareFigures(plans, kinds, 'test-', 40).map((svg) => (/viewBox="([^"]+)"/.exec(svg)?.[1] ?? '').split(' ').map(Number))

  it('have one scale, one size, and grade at one height', () => {
    expect(new Set(plans.map(({ drawing }) => drawing.frame.perMetre)).size).toBe(1)
    expect(new Set(boxes.map(([, , width, height]) => `${width} ${height}`)).size).toBe(1)
    const grade = plans.map(({ drawing }, i) => drawing.frame.grade - (boxes[i]?.[1] ?? Number.NaN))
    for (const height of grade) expect(height).toBeCloseTo(grade[0] ?? Number.NaN, 1)
    // They would not lie so by themselves.
    expect(new Set(plans.map(({ drawing }) => drawing.frame.grade.toFixed(1))).size).toBeGreaterThan(1)
  })
})
