import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { linear } from '../../src/export/solid/glb.ts'
import { roleColours } from '../../src/export/roleColours.ts'
import { root } from '../architecture/sourceFile.ts'
import { close } from '../close.ts'

describe('[E3] materials in files have the colours of the page', () => {
  it('each one as in the style sheet', () => {
    const css = readFileSync(join(root, 'src/view/styles/roles.css'), 'utf8')
    const onPage = Object.fromEntries([...css.matchAll(/\.role-([\w-]+) \{\s*--role: (#[0-9a-f]{6});/g)].map((m) => [m[1], m[2]]))
    expect(Object.keys(onPage).length).toBeGreaterThan(10)
    expect(roleColours).toEqual(onPage)
  })

  it('middle grey is about a fifth in linear light', () => {
    // IEC 61966-2-1: sRGB 0.5 is 0.2140 in linear light.
    close(linear('#808080')[0], 0.2159, { abs: 1e-4, rel: 0 })
    expect(linear('#ffffff')).toEqual([1, 1, 1])
    expect(linear('#000000')).toEqual([0, 0, 0])
  })
})
