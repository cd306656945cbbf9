import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** Runs every check of the project, one headed section after another, and ends with one line of counts. */

const root = fileURLToPath(new URL('..', import.meta.url))
const reports = join(root, 'node_modules/.cache/test-run')
rmSync(reports, { recursive: true, force: true })
mkdirSync(reports, { recursive: true })

type Counts = Readonly<{ passed: number; failed: number; skipped: number }>
type Section = Readonly<{ name: string; commands: readonly string[]; env?: Record<string, string>; count?: () => Counts | null }>

const readReport = (name: string): unknown => {
  const path = join(reports, name)
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null
}
const unitCounts = (): Counts | null => {
  const report = readReport('unit.json') as { numPassedTests: number; numFailedTests: number; numPendingTests: number } | null
  return report && { passed: report.numPassedTests, failed: report.numFailedTests, skipped: report.numPendingTests }
}
const browserCounts = (): Counts | null => {
  const report = readReport('browser.json') as { stats: { expected: number; unexpected: number; flaky: number; skipped: number } } | null
  return report && { passed: report.stats.expected, failed: report.stats.unexpected + report.stats.flaky, skipped: report.stats.skipped }
}

const sections: readonly Section[] = [
  { name: 'types', commands: ['tsc -p tsconfig.json', 'tsc -p src/core/tsconfig.json'] },
  { name: 'lint', commands: ['npm run --silent lint'] },
  {
    name: 'unit tests',
    commands: ['vitest run --reporter=dot --reporter=json --outputFile.json=node_modules/.cache/test-run/unit.json'],
    count: unitCounts,
  },
  { name: 'build', commands: ['vite build'] },
  {
    name: 'browser tests',
    commands: ['playwright test -c tests --reporter=list,json'],
    env: { PLAYWRIGHT_JSON_OUTPUT_NAME: join(reports, 'browser.json') },
    count: browserCounts,
  },
]

/** Only the section it runs in stops: later ones still tell what else is wrong. */
const runs = (section: Section): boolean => {
  for (const command of section.commands) {
    const { status } = spawnSync(command, { cwd: root, stdio: 'inherit', shell: true, env: { ...process.env, ...section.env } })
    if (status !== 0) return false
  }
  return true
}

const total = { passed: 0, failed: 0, skipped: 0 }
const summary: string[] = []
let isBuilt = true

for (const [index, section] of sections.entries()) {
  console.log(`\n=== ${index + 1}/${sections.length} ${section.name} ${'='.repeat(Math.max(4, 60 - section.name.length))}`)
  const isBrowser = section.name === 'browser tests'
  if (isBrowser && process.env.SKIP_E2E === '1') {
    console.log('left out, because SKIP_E2E=1 was set')
    summary.push('LEFT OUT  browser tests (SKIP_E2E=1)')
    continue
  }
  if (isBrowser && !isBuilt) {
    console.log('not run: there is no build to test')
    summary.push('NOT RUN   browser tests')
    total.failed += 1
    continue
  }
  const started = Date.now()
  const isGood = runs(section)
  const counts = section.count?.() ?? null
  if (section.name === 'build') isBuilt = isGood
  if (counts) {
    total.passed += counts.passed
    total.failed += counts.failed
    total.skipped += counts.skipped
  }
  // A section that fails without a failed test, or whose report is missing or empty, has failed all the same.
  const isCounted = section.count === undefined || (counts !== null && counts.passed > 0)
  if ((!isGood && (counts?.failed ?? 0) === 0) || !isCounted) total.failed += 1
  const told = counts ? `, ${counts.passed} passed, ${counts.failed} failed` : ''
  summary.push(`${isGood && isCounted ? 'ok      ' : 'FAILED  '}  ${section.name} (${((Date.now() - started) / 1000).toFixed(0)} s${told})`)
}

console.log(`\n=== summary ${'='.repeat(56)}`)
for (const line of summary) console.log(line)
console.log(`${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`)
process.exit(total.failed === 0 && total.passed > 0 ? 0 : 1)
