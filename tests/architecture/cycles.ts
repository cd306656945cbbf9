import { type SourceFile, target } from './sourceFile.ts'

/** Rings of files that import each other at run time, each as the paths round the ring. Types leave no import behind. */
export const rings = (files: readonly SourceFile[]): string[][] => {
  const next = new Map(
    files.map((file) => [
      file.path,
      file.imports.filter((wanted) => !wanted.typeOnly && !wanted.dynamic).flatMap((wanted) => target(file, wanted) ?? []),
    ]),
  )
  const found: string[][] = []
  const done = new Set<string>()
  const walk = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path)
    if (start >= 0) {
      found.push(trail.slice(start))
      return
    }
    if (done.has(path)) return
    for (const to of next.get(path) ?? []) walk(to, [...trail, path])
    done.add(path)
  }
  for (const path of next.keys()) walk(path, [])
  return found
}
