import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { sources } from '../../../src/core/engineering/sources.ts'

const root = join(dirname(fileURLToPath(import.meta.url)), '../../..')
const home = 'src/core/engineering'

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`
    return entry.isDirectory() ? filesUnder(path) : path.endsWith('.ts') ? [path] : []
  })

type Calculation = Readonly<{ path: string; name: string; doc: string; parameters: readonly string[] }>

/** Text from an opening bracket to its partner. */
const bracketed = (text: string, from: number): string => {
  let open = 0
  for (let i = from; i < text.length; i++) {
    if ('({['.includes(text[i] ?? '')) open++
    if (')}]'.includes(text[i] ?? '')) open--
    if (open === 0) return text.slice(from + 1, i)
  }
  throw new Error('bracket never closes')
}
/** Splits at commas that stand outside every bracket. */
const atTop = (text: string): readonly string[] => {
  const parts: string[] = []
  let open = 0
  let part = ''
  for (const letter of text) {
    if ('({[<'.includes(letter)) open++
    if (')}]>'.includes(letter)) open--
    if (letter === ',' && open === 0) {
      parts.push(part)
      part = ''
    } else part += letter
  }
  return [...parts, part].map((one) => one.trim()).filter((one) => one !== '')
}

/** Names that a person passes: a destructured object's keys, a named type's keys where it is given whole. */
const parametersOf = (signature: string, text: string): readonly string[] =>
  atTop(signature).flatMap((parameter) => {
    if (parameter.startsWith('{')) {
      const inner = bracketed(parameter, 0)
      if (inner.includes('...')) return keysOf(parameter.slice(inner.length + 2).match(/\w+/)?.[0] ?? '', text)
      return atTop(inner).map((key) => key.split(/[:=]/)[0]?.trim() ?? '')
    }
    const [, name = '', type = ''] = parameter.match(/^(\w+)\??:\s*(\w+)/) ?? []
    if (name !== 'inputs') return [name]
    return keysOf(type, text)
  })
const keysOf = (type: string, text: string): readonly string[] => {
  const found = text.match(new RegExp(`type ${type} = ((?:\\w+ & )*)Readonly<\\{`))
  if (!found || found.index === undefined) throw new Error(`no type ${type}`)
  const bases = (found[1] ?? '').split('&').flatMap((base) => (base.trim() ? keysOf(base.trim(), text) : []))
  const body = bracketed(text, text.indexOf('{', found.index)).replace(/\/\*\*.*?\*\//gs, '')
  return [...bases, ...atTop(body.replace(/[;\n]/g, ',')).map((key) => key.split(/\??:/)[0]?.trim() ?? '')]
}

const calculationsIn = (path: string): readonly Calculation[] => {
  const text = readFileSync(join(root, path), 'utf8')
  return [...text.matchAll(/(?:\/\*\*((?:(?!\*\/).)*?)\*\/\n)?export function (\w+)\(/gs)].map((match) => {
    const at = (match.index ?? 0) + match[0].length - 1
    return { path, name: match[2] ?? '', doc: match[1] ?? '', parameters: parametersOf(bracketed(text, at), text) }
  })
}

const methodFiles = filesUnder(home).filter((path) => !path.startsWith(`${home}/tables/`))
const calculations = methodFiles.flatMap(calculationsIn)
const field = (doc: string, label: string): string =>
  doc
    .match(new RegExp(`\\* ${label}: ([\\s\\S]*?)(?=\\n \\* [A-Z][a-z ]+:|\\n \\* @|$)`))?.[1]
    ?.replace(/\n \* +/g, ' ')
    .trim() ?? ''
const sourceIds = (text: string): readonly string[] =>
  text
    .replace(/\([^)]*\)/g, '')
    .split(',')
    .map((one) => one.trim().split(' ')[0] ?? '')
    .filter((one) => one !== '')

describe('docstrings of the calculations', () => {
  it('finds them', () => expect(calculations.length).toBeGreaterThan(75))

  it.each(calculations.map((one) => [one.name, one] as const))(
    '%s says what it takes, gives and rests on',
    (_, { doc, parameters, path }) => {
      const opening =
        doc
          .replace(/^ \*\s?/gm, '')
          .split(/@param|@returns/)[0]
          ?.trim() ?? ''
      expect(opening, `${path}: opening sentence`).toMatch(/^[A-Z][\s\S]*[.:]$/)
      for (const parameter of parameters) {
        const line = doc.match(new RegExp(`@param ${parameter} (.*)`))?.[1]
        expect(line, `${path}: @param ${parameter}`).toBeDefined()
        expect(line, `${path}: unit of ${parameter}`).toMatch(/\[[^\]]+\]/)
      }
      expect([...doc.matchAll(/@param (\w+)/g)].map((match) => match[1]).sort()).toEqual([...parameters].sort())
      expect(doc.match(/@returns ([\s\S]*?)\n \* [A-Z]/)?.[1], `${path}: unit of the result`).toMatch(/\[[^\]]+\]/)
      for (const label of ['Formula', 'Valid']) expect(field(doc, label), `${path}: ${label}`).not.toBe('')
      expect(field(doc, 'Valid'), `${path}: what happens outside`).toContain('Outside:')
      const ids = sourceIds(field(doc, 'Source'))
      expect(ids.length, `${path}: Source`).toBeGreaterThan(0)
      for (const id of ids) expect(id in sources, `${path}: source ${id}`).toBe(true)
      const checks = field(doc, 'Checked by')
        .split(',')
        .map((one) => one.trim())
      for (const check of checks) expect(existsSync(join(root, check)), `${path}: ${check}`).toBe(true)
    },
  )

  it('a recipe names only sources that exist, and every file that calculates is documented', () => {
    for (const path of methodFiles) {
      const text = readFileSync(join(root, path), 'utf8')
      for (const match of text.matchAll(/sources: \[([^\]]*)\],\n/g)) {
        for (const id of (match[1] ?? '').matchAll(/'([^']+)'/g)) expect((id[1] ?? '') in sources, `${path}: ${id[1]}`).toBe(true)
      }
    }
  })

  it('tables name sources that exist', () => {
    for (const path of filesUnder(`${home}/tables`)) {
      const text = readFileSync(join(root, path), 'utf8')
      for (const match of text.matchAll(/Source: ([a-z0-9-]+)/g)) expect((match[1] ?? '') in sources, `${path}: ${match[1]}`).toBe(true)
    }
  })

  it('can fail', () => {
    const [first] = calculations
    expect(field(first?.doc ?? '', 'No such field')).toBe('')
    expect(sourceIds('a-b (with a note), c-d Table 3')).toEqual(['a-b', 'c-d'])
    expect(parametersOf('{ a, b: c }: Inputs, depth: Metres', '')).toEqual(['a', 'b', 'depth'])
  })
})
