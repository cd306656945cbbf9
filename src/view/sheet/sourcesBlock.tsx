import type { PierResult } from '../../core/model/result.ts'
import { sources } from '../../core/engineering/sources.ts'
import { wordsOf } from '../../words/index.ts'
import { standingWords } from '../../facts/firstWords.ts'
import { Block } from './blocks.tsx'

/** Every source that a number of these piers rests on, with its edition, place and how well it was checked. */
export const Sources = ({ results }: Readonly<{ results: readonly PierResult[] }>) => {
  const words = wordsOf('sheet')
  const ids = [...new Set(results.flatMap((result) => result.sources))]
  const marks = [...new Set(ids.flatMap((id) => standingWords(sources[id].standing).mark ?? []))]
  const letter = (mark: string): string => `(${String.fromCharCode(97 + marks.indexOf(mark))})`
  const titles = [...new Set(ids.map((id) => sources[id].title))]
  return (
    <Block title={words.sources.title}>
      <p className='paper-sources'>
        {words.sources.note} {marks.map((mark) => `${letter(mark)} ${mark.toLowerCase()}`).join(', ')}.{' '}
        {titles.map((title) => {
          const own = ids.map((id) => sources[id]).filter((source) => source.title === title)
          const [first] = own
          if (!first) return null
          const year = first.year === null || first.edition.includes(String(first.year)) ? '' : String(first.year)
          return (
            <span key={title} translate='no'>
              <cite>{title}</cite>
              {[first.edition, year].filter((part) => part !== '').map((part) => `, ${part}`)}
              {own.some(({ locator }) => locator !== '') && ': '}
              {own.map((source, i) => (
                <span key={source.locator + source.edition}>
                  {i > 0 && '; '}
                  {source.locator}
                  {[standingWords(source.standing).mark ?? []].flat().map((mark) => `\u00a0${letter(mark)}`)}
                </span>
              ))}
              {'. '}
            </span>
          )
        })}
      </p>
    </Block>
  )
}
