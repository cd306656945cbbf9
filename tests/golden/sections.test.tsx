// @vitest-environment jsdom
import { describe, expect, it, vi } from 'vitest'
import { patterns } from '../../src/view/section/paper/sectionSvg.ts'
import { hatchTiles } from '../../src/view/section/hatchTile.ts'
import { SectionView } from '../../src/view/section/SectionView.tsx'
import { draw } from '../view/page.ts'
import { kept, leftOver, shortened } from './kept.ts'
import { opened, sectionOf, sections, sizeOf } from './sections.ts'

// Without a canvas the widths of words are guessed, the same on every machine.
HTMLCanvasElement.prototype.getContext = () => null

/** An element a line, so that two drawings can be read side by side. */
const lines = (svg: string): string => `${svg.replaceAll('><', '>\n<').trim()}\n`
class NeverResized {
  observe(): void {}
  disconnect(): void {}
}
const fileOf = (name: string): string => `${name.replaceAll(/[, ]+/g, '-')}.svg`

describe('[Z2] the section is drawn as it was', () => {
  it.each(sections.map((section) => [section.name, section] as const))('%s', (name, section) => {
    const now = lines(shortened(sectionOf(section)))
    expect(now.split('\n')).toEqual(kept(`drawings/section/${fileOf(name)}`, now).split('\n'))
  })

  it('in hatches of the same marks', () => {
    const marks = patterns(Object.keys(hatchTiles) as (keyof typeof hatchTiles)[])
    const now = lines(`<svg xmlns="http://www.w3.org/2000/svg">${marks}</svg>`)
    expect(now.split('\n')).toEqual(kept('drawings/hatches.svg', now).split('\n'))
  })

  it('with no reference that nobody draws', () => {
    expect(sections.length).toBeGreaterThanOrEqual(60)
    expect(
      leftOver(
        'drawings/section',
        sections.map(({ name }) => fileOf(name)),
      ),
    ).toEqual([])
  })

  it('and a point that moves by a tenth of a pixel shows, a dot of a hatch, a letter', () => {
    const svg = sectionOf(sections.find(({ name }) => name === 'level-mixed-full-height, page') ?? expect.fail())
    const was = kept('drawings/section/level-mixed-full-height-page.svg', lines(shortened(svg)))
    const now = (text: string, by: string): string => {
      expect(svg).toContain(text)
      return lines(shortened(svg.replace(text, by)))
    }
    const [point = ''] = /<g data-zone="post"><path d="M\d+\.\d/.exec(svg) ?? []
    expect(now(point, `${point.slice(0, -1)}${(Number(point.at(-1)) + 1) % 10}`)).not.toBe(was)
    const [dots = ''] = / d="[^"]{1000,}/.exec(svg) ?? []
    expect(now(dots, `${dots} `)).not.toBe(was)
    expect(now('>Topsoil<', '>Topsail<')).not.toBe(was)
    expect(lines(shortened(svg))).toBe(was)
  })

  const onPage = sections.filter(({ look }) => look.as === 'page')
  it.each(onPage.map((section) => [section.name, section] as const))('on the page too: %s', async (_, section) => {
    const { width, height } = sizeOf(section)
    vi.stubGlobal('ResizeObserver', NeverResized)
    vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(width)
    vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockReturnValue(height)
    const file = sectionOf(section)
    opened(section)
    const page = await draw(<SectionView />)
    const shown = [...document.querySelectorAll('svg')].filter((svg) => svg.getAttribute('viewBox') === `0 0 ${width} ${height}`)
    expect(shown).toHaveLength(1)
    const parts = [...(shown[0]?.querySelectorAll(':not(defs *)') ?? [])]
    const paths = parts.flatMap((part) => (part.tagName === 'path' ? [part.getAttribute('d') ?? ''] : [])).filter((d) => d !== '')
    const words = parts.flatMap((part) => (part.tagName === 'text' ? [part.textContent] : []))
    await page.end()
    vi.unstubAllGlobals()
    expect(paths.length).toBeGreaterThan(6)
    expect(paths.filter((d) => !file.includes(d))).toEqual([])
    expect(words.filter((word) => !file.includes(`>${word.replaceAll('&', '&amp;')}<`))).toEqual([])
  })
})
