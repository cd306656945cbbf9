import { describe, expect, it } from 'vitest'
import { isListed, licensesText, type Used } from '../../src/build/licenses.ts'

const used = (change: Partial<Used> = {}): Used => ({
  name: 'thing',
  version: '1.2.3',
  license: 'MIT',
  text: 'Copyright (c) somebody',
  hasCode: true,
  ...change,
})

describe('[S9] only work under a listed license goes into the page, and its text goes with it', () => {
  it.each(['MIT', 'ISC', 'Apache-2.0', '(MIT AND Zlib)', 'MIT OR GPL-3.0-only', '(MPL-2.0 OR Apache-2.0)'])('%s is listed', (license) => {
    expect(isListed(license, true)).toBe(true)
  })

  it.each(['GPL-3.0-only', 'MIT AND GPL-3.0-only', 'SEE LICENSE IN FEEL-FREE.md', 'UNLICENSED', 'none', ''])(
    '%s stops the build',
    (license) => {
      expect(isListed(license, true)).toBe(false)
      expect(isListed(license, false)).toBe(false)
      expect(() => licensesText([used(), used({ name: 'stranger', license })])).toThrow('stranger')
    },
  )

  it('the license of letters is for letters alone', () => {
    expect(isListed('OFL-1.1', false)).toBe(true)
    expect(isListed('MIT AND OFL-1.1', false)).toBe(true)
    expect(isListed('OFL-1.1', true)).toBe(false)
    expect(() => licensesText([used({ license: 'OFL-1.1' })])).toThrow('thing (OFL-1.1)')
  })

  it('names everything first, then gives each text', () => {
    const text = licensesText([used(), used({ name: 'letters', license: 'OFL-1.1', text: 'Reserved Font Name', hasCode: false })])
    expect(text.indexOf('letters 1.2.3, OFL-1.1')).toBeLessThan(text.indexOf('Copyright (c) somebody'))
    expect(text).toContain('Reserved Font Name')
  })
})
