// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { linesOf } from '../../../src/view/sheet/pdf/lines.ts'

const letter = 10
const hebrew = /[\u0590-\u05ff]/

/**
 * Boxes as a browser gives them for a line of letters of one width: those from the right stand in reverse, run by run (Unicode
 * Standard Annex 9, by hand for these few), and a range that spans both ways has a box for each.
 */
const placesOf = (text: string): number[] => {
  const places = Array.from(text, (_, i) => i)
  for (const { index, 0: run } of text.matchAll(/[\u0590-\u05ff](?:[^a-z0-9]*[\u0590-\u05ff])*/g))
    for (let i = 0; i < run.length; i++) places[index + i] = index + run.length - 1 - i
  return places
}

/** jsdom sets nothing: these stand in for the boxes of a browser. */
const setting = (text: string): Text => {
  const node = document.createTextNode(text)
  const places = placesOf(text)
  vi.spyOn(Range.prototype, 'setStart').mockImplementation(function (this: Range, _, at) {
    Object.defineProperty(this, 'from', { value: at, configurable: true })
  })
  vi.spyOn(Range.prototype, 'setEnd').mockImplementation(function (this: Range, _, at) {
    Object.defineProperty(this, 'to', { value: at, configurable: true })
  })
  Range.prototype.getClientRects = function (this: Range & Partial<Record<'from' | 'to', number>>) {
    const { from = 0, to = 0 } = this
    const taken = places.slice(from, to).sort((a, b) => a - b)
    const boxes: DOMRect[] = []
    for (const [i, place] of taken.entries()) {
      const ways = [place, (taken[i - 1] ?? place) as number].map((one) => hebrew.test(text.charAt(places.indexOf(one))))
      const last = boxes.at(-1)
      if (last && last.right === place * letter && ways[0] === ways[1])
        boxes[boxes.length - 1] = new DOMRect(last.x, 0, last.width + letter, 12)
      else boxes.push(new DOMRect(place * letter, 0, letter, 12))
    }
    return boxes as unknown as DOMRectList
  }
  return node
}

class Box {
  constructor(
    readonly x: number,
    readonly y: number,
    readonly width: number,
    readonly height: number,
  ) {}
  get left() {
    return this.x
  }
  get right() {
    return this.x + this.width
  }
  get top() {
    return this.y
  }
}

const own = Range.prototype.getClientRects
beforeEach(() => void vi.stubGlobal('DOMRect', Box))
afterEach(() => {
  vi.unstubAllGlobals()
  Range.prototype.getClientRects = own
})

const lines = (text: string) =>
  linesOf(setting(text)).map(({ text: said, left, right, fromRight }) => [said, left / letter, right / letter, fromRight])

describe('[E19] words on the saved sheet stand where the page has set them, whichever way they run', () => {
  it('a line of one way is one line', () => {
    expect(lines('north row, post 3')).toEqual([['north row, post 3', 0, 17, false]])
  })

  it('two words from the right between two from the left change places, and cover nothing', () => {
    expect(lines('pier שלום עולם north')).toEqual([
      ['pier', 0, 4, false],
      ['שלום', 10, 14, true],
      ['עולם', 5, 9, true],
      ['north', 15, 20, false],
    ])
  })

  it('a word that runs both ways is parted where it turns', () => {
    expect(lines('post-שלום-b')).toEqual([
      ['post-', 0, 5, false],
      ['שלום', 5, 9, true],
      ['-b', 9, 11, false],
    ])
  })
})
