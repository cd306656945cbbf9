import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'
import { unpackBrowser } from './browserArchive.ts'
import { type FoundBrowser, whyUnfit } from './launch.ts'

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'microsoft-edge', 'brave-browser', 'vivaldi']
const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
]

const at = (executablePath: string, how: string): FoundBrowser => ({ executablePath, env: {}, how })

const installed = (): FoundBrowser[] => {
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)))
  const there = [...onPath, ...usualPlaces].filter((path) => existsSync(path))
  return [...new Set(there)].map((path) => at(path, 'installed on this machine'))
}

const asked = (): FoundBrowser[] => (process.env.CHROMIUM_PATH ? [at(process.env.CHROMIUM_PATH, 'named by CHROMIUM_PATH')] : [])

const cachedByPlaywright = (): FoundBrowser[] => {
  const path = chromium.executablePath()
  return path && existsSync(path) ? [at(path, "in Playwright's cache")] : []
}

const unpacked = (): FoundBrowser[] => {
  const found = unpackBrowser()
  return found ? [found] : []
}

/** Commands that put a browser on a Debian-like machine; run only as root, told to everybody else. */
export const installCommands: readonly (readonly string[])[] = [
  ['apt-get', 'update'],
  ['apt-get', 'install', '-y', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'],
]

const installedNow = (): FoundBrowser[] => {
  const isRootOnDebian = process.getuid?.() === 0 && existsSync('/etc/debian_version')
  if (!isRootOnDebian) return []
  for (const [command = '', ...rest] of installCommands) {
    console.log(`browser: ${[command, ...rest].join(' ')}`)
    execFileSync(command, rest, { stdio: ['ignore', 'ignore', 'inherit'], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } })
  }
  return installed().map(({ executablePath }) => at(executablePath, 'just installed from Debian packages'))
}

/** In the order tried. BROWSER_ROUTES may name fewer, so that each can be tested on a machine that has them all. */
const routes = { asked, installed, playwright: cachedByPlaywright, archive: unpacked, apt: installedNow } as const
type Route = keyof typeof routes
const allRoutes = Object.keys(routes) as Route[]

const help = `No browser that draws WebGL2 was found, and the browser tests are not skipped silently.
Any one of these helps:
  ${installCommands.map((command) => command.join(' ')).join(' && ')}        (as root on Debian)
  npx playwright install chromium
  CHROMIUM_PATH=/path/to/chromium npm test
  SKIP_E2E=1 npm test        (leaves the browser tests out, and says so)`

/** The first browser that opens a page with a WebGL2 context. Throws with what was tried, and the commands that help. */
export const findBrowser = async (): Promise<FoundBrowser> => {
  const wanted = process.env.BROWSER_ROUTES?.split(',') ?? allRoutes
  const tried: string[] = []
  for (const route of allRoutes.filter((name) => wanted.includes(name))) {
    let candidates: FoundBrowser[] = []
    try {
      candidates = routes[route]()
    } catch (error) {
      tried.push(`${route}: ${String(error).split('\n')[0]}`)
    }
    for (const candidate of candidates) {
      const reason = await whyUnfit(candidate)
      if (reason === null) return candidate
      tried.push(`${route}: ${candidate.executablePath}: ${reason}`)
    }
    if (candidates.length === 0) tried.push(`${route}: nothing there`)
  }
  throw new Error(`${help}\nTried:\n  ${tried.join('\n  ')}`)
}
