import type { SourceFile } from './sourceFile.ts'

const exported = /^export (?:declare )?(?:async )?(?:const|let|function\*?|class|type|interface|enum) (\w+)/gm

/** Names that stand for more than one thing: exported by several files, each with those files. */
export function exportedTwice(files: readonly SourceFile[]): string[] {
  const by = new Map<string, Set<string>>()
  for (const { path, code } of files)
    for (const [, name = ''] of code.matchAll(exported)) by.set(name, (by.get(name) ?? new Set()).add(path))
  return [...by].filter(([, paths]) => paths.size > 1).map(([name, paths]) => `${name}: ${[...paths].join(', ')}`)
}
