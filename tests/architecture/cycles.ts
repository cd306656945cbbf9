import { type Import, type SourceFile, target } from './sourceFile.ts'

/** Rings in what leads to what, each as the places round the ring. */
function ringsIn(next: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const found: string[][] = []
  const done = new Set<string>()
  const walk = (place: string, trail: readonly string[]): void => {
    const start = trail.indexOf(place)
    if (start >= 0) {
      found.push(trail.slice(start))
      return
    }
    if (done.has(place)) return
    for (const to of next.get(place) ?? []) walk(to, [...trail, place])
    done.add(place)
  }
  for (const place of next.keys()) walk(place, [])
  return found
}

/** What leads to what, where each file stands at `place`. */
function leads(files: readonly SourceFile[], place: (path: string) => string, counts: (wanted: Import, by: SourceFile) => boolean) {
  const next = new Map<string, Set<string>>()
  for (const file of files) {
    const from = place(file.path)
    const tos = next.get(from) ?? new Set()
    for (const wanted of file.imports) {
      const to = counts(wanted, file) ? target(file, wanted) : null
      if (to !== null && (place(to) !== from || to === file.path)) tos.add(place(to))
    }
    next.set(from, tos)
  }
  return next
}

/** Rings of files that import each other at run time. Types leave no import behind. */
export const rings = (files: readonly SourceFile[]): string[][] =>
  ringsIn(
    leads(
      files,
      (path) => path,
      (wanted) => !wanted.typeOnly && !wanted.dynamic,
    ),
  )

const folderOf = (path: string): string =>
  path
    .split('/')
    .slice(0, /^src\/(?:core|view)\//.test(path) ? 3 : 2)
    .join('/')

/** Rings of folders that import each other, at once or late; inside the view types count as well. */
export const folderRings = (files: readonly SourceFile[]): string[][] =>
  ringsIn(leads(files, folderOf, (wanted, by) => !wanted.typeOnly || by.path.startsWith('src/view/')))

/** Files that none of `starts` leads to, at once or late: nothing but a test reaches them. Types count, so that a file of types is reached. */
export function unreached(files: readonly SourceFile[], starts: readonly string[]): string[] {
  const next = leads(
    files,
    (path) => path,
    () => true,
  )
  const seen = new Set<string>()
  const open = [...starts]
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    if (seen.has(path)) continue
    seen.add(path)
    open.push(...(next.get(path) ?? []))
  }
  return files.map(({ path }) => path).filter((path) => !seen.has(path))
}
