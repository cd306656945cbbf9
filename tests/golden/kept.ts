import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'

/** `GOLDEN=write npx vitest run tests/golden` writes the references anew instead of holding results against them. */
export const isWriting = process.env.GOLDEN === 'write'

const fileAt = (path: string): URL => new URL(path, import.meta.url)

/** The reference stored under a path in this folder; empty where there is none. */
export const readKept = (path: string): string => (existsSync(fileAt(path)) ? readFileSync(fileAt(path), 'utf8') : '')

/** Gives the reference to hold a text against. While references are written, the text is stored first and is its own reference. */
export const kept = (path: string, now: string): string => {
  if (isWriting) {
    mkdirSync(dirname(fileAt(path).pathname), { recursive: true })
    writeFileSync(fileAt(path), now)
  }
  return readKept(path)
}

/** Names of the references in a folder that nothing asks for any more. While references are written, they are removed. */
export const leftOver = (folder: string, wanted: readonly string[]): readonly string[] => {
  const extra = existsSync(fileAt(folder)) ? readdirSync(fileAt(folder)).filter((name) => !wanted.includes(name)) : []
  if (!isWriting) return extra
  for (const name of extra) rmSync(fileAt(`${folder}/${name}`).pathname)
  return []
}

/** Sixteen letters that stand for a long text. */
export const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 16)

/** The marks of a hatch are hundreds of dots, and are held once in a drawing of their own: elsewhere the first stand, and a hash of all. */
export const shortened = (svg: string): string =>
  svg.replace(/ d="([^"]{1000,})"/g, (_, path: string) => ` d="${path.slice(0, path.indexOf('M', 300))}" data-all="${hashOf(path)}"`)
