import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Plugin } from 'vite'

/** Licenses under which others' work may be part of the built files. One that is not here stops the build. */
export const listed = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'ISC', 'MIT', 'Zlib'] as const
/** For letters alone, never for code. */
export const listedForFonts = ['OFL-1.1'] as const

export type Used = Readonly<{ name: string; version: string; license: string; text: string; hasCode: boolean }>

/** Is a package's license, by its SPDX expression, on the list? Of several joined by OR one does, joined by AND all have to. */
export function isListed(license: string, hasCode: boolean): boolean {
  const known: readonly string[] = hasCode ? listed : [...listed, ...listedForFonts]
  const ways = license.replace(/[()]/g, '').split(' OR ')
  return ways.some((way) => way.split(' AND ').every((one) => known.includes(one.trim())))
}

const rule = '='.repeat(78)

/** What the built files carry of others, with every license as its owner wrote it. Throws on a license that is not listed. */
export function licensesText(used: readonly Used[]): string {
  const strangers = used.filter(({ license, hasCode }) => !isListed(license, hasCode))
  if (strangers.length > 0)
    throw new Error(`licenses that are not on the list: ${strangers.map(({ name, license }) => `${name} (${license})`).join(', ')}`)
  const titles = used.map(({ name, version, license }) => `${name} ${version}, ${license}`)
  const texts = used.map(({ text }, i) => `${rule}\n${titles[i]}\n${rule}\n\n${text.trim()}\n`)
  return `This page is built with the work of others:\n\n${titles.join('\n')}\n\n${texts.join('\n')}`
}

const isCode = (id: string): boolean => !/\.(?:css|woff2?|ttf|otf)$/.test(id.replace(/\?.*$/, ''))
/** The folder of the package that a module belongs to; what the builder adds of its own belongs to the builder. */
const folderOf = (id: string): string | null => {
  const [, inner] = /(?:^|\/)(node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+)\//.exec(id) ?? []
  return inner ?? (/^\0?vite\//.test(id) ? 'node_modules/vite' : /^\0?rolldown\//.test(id) ? 'node_modules/rolldown' : null)
}

/** The text of MIT, for the few packages that name it and carry no text. Source: SPDX license list. */
const mit = (owner: string): string => `MIT License

Copyright (c) ${owner}

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the
"Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish,
distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to
the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF
MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR
ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH
THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`

type Manifest = Readonly<{ name: string; version: string; license?: string; author?: string | Readonly<{ name: string }> }>

function usedFrom(folder: string, hasCode: boolean): Used {
  const { name, version, license = 'none', author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Manifest
  const own = readdirSync(folder).filter((file) => /^(?:licen[sc]e|copying|notice|ofl)/i.test(file))
  const owner = typeof author === 'object' ? author.name : (author ?? `the authors of ${name}`)
  if (own.length === 0 && license !== 'MIT') throw new Error(`${name} carries no text of its license, ${license}`)
  // What a tool lists of others inside itself is no part of the page.
  const read = (file: string) =>
    readFileSync(join(folder, file), 'utf8')
      .split(/^# Licenses of bundled dependencies/m)[0]
      ?.trim()
  const text = own.length === 0 ? mit(owner) : own.map(read).join('\n\n')
  return { name, version, license, text, hasCode }
}

/** Writes `licenses.txt`, made from what is in the built files. Workers are built apart from the page: `inWorkers` sees what is in those. */
export function licenses(): Readonly<{ plugin: Plugin; inWorkers: () => Plugin }> {
  const folders = new Map<string, boolean>()
  const see = (id: string): void => {
    const folder = folderOf(id)
    if (folder !== null) folders.set(folder, folders.get(folder) === true || isCode(id))
  }
  const seeAll: NonNullable<Plugin['generateBundle']> = (_, bundle) => {
    for (const file of Object.values(bundle)) for (const id of file.type === 'chunk' ? file.moduleIds : file.originalFileNames) see(id)
  }
  return {
    inWorkers: () => ({ name: 'licenses-in-workers', generateBundle: seeAll }),
    plugin: {
      name: 'licenses',
      apply: 'build',
      generateBundle(...built) {
        seeAll.apply(this, built)
        const used = [...folders].map(([folder, hasCode]) => usedFrom(folder, hasCode)).sort((a, b) => a.name.localeCompare(b.name, 'en'))
        this.emitFile({ type: 'asset', fileName: 'licenses.txt', source: licensesText(used) })
        this.info(`licenses     of ${used.length} packages`)
      },
    },
  }
}
