import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** All that stands at the top of the project; the second line stands there because a tool looks nowhere else. */
const topLevel = [
  ...['DEVELOPERS.md', 'README.md', 'index.html', 'package.json', 'public', 'src', 'tests', 'tsconfig.json'],
  ...['.ci', '.gitignore', '.npmrc', 'package-lock.json', 'vite.config.ts'],
]

/** What stands in a folder besides, and what of the list is missing there. What `.gitignore` names may be there or not. */
export const topLevelBreaches = (folder: string, planted: readonly string[] = []): string[] => {
  const found = [...readdirSync(folder), ...planted]
  const patterns = ['.git', ...readFileSync(join(folder, '.gitignore'), 'utf8').split('\n')]
    .filter(Boolean)
    .map((line) => new RegExp(`^${line.replace(/\/$/, '').replaceAll('.', '\\.').replaceAll('*', '.*')}$`))
  return [
    ...found.filter((name) => !topLevel.includes(name) && !patterns.some((pattern) => pattern.test(name))),
    ...topLevel.filter((name) => !found.includes(name)),
  ]
}
