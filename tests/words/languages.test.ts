import { afterEach, describe, expect, it } from 'vitest'
import { english } from '../../src/words/en/index.ts'
import { generatedLanguage } from '../../src/words/generated.ts'
import { languageSpoken, languages, locale, onLanguage, speak, subjects, wordsOf } from '../../src/words/index.ts'

afterEach(() => speak(english))

describe('the language that is spoken', () => {
  it('is English first, with every subject by its name', async () => {
    expect([languageSpoken(), locale()]).toEqual(['en', 'en-US'])
    expect(subjects.length).toBeGreaterThan(30)
    for (const subject of subjects) expect(wordsOf(subject), subject).toBeTypeOf('object')
    expect(await languages.en()).toBe(english)
  })

  it('changes for all that was loaded at once, and tells who listens', async () => {
    const heard: string[] = []
    const stop = onLanguage(() => heard.push(languageSpoken()))
    const made = generatedLanguage('x')
    if (!made) throw new Error('x is no language')
    await speak(made)
    stop()
    expect(heard).toEqual(['x'])
    expect(wordsOf('compare').title).toBe('XXXX XX XXXX')
  })
})

describe('languages made from English', () => {
  it('cross out the words of a sentence and leave what is handed into it', () => {
    const app = generatedLanguage('x')?.first.app
    expect(app?.fields.between('8 in', '48 in')).toBe('XXXX 8 in XX 48 in.')
    expect(app?.tagline).not.toMatch(/[a-z]/)
  })

  it('say everything twice, and keep ids and signs', () => {
    const first = generatedLanguage('double')?.first
    expect(first?.app.actions.undo).toBe('Undo Undo')
    expect(first?.app.fields.slider('Depth')).toBe('Depth, slider , slider')
    expect(first?.cautions.standing.map(({ id }) => id)).toEqual(english.first.cautions.standing.map(({ id }) => id))
  })

  it('are two', () => expect(generatedLanguage('moon')).toBeNull())
})
