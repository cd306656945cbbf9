import { chromium } from '@playwright/test'

/** Software drawing that behaves the same everywhere, and a browser that asks its maker for nothing. */
export const browserFlags: readonly string[] = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  '--disable-background-networking',
  '--disable-component-update',
  // Pixels of the page itself are put together without the software GPU: it is left to the picture, which needs it.
  '--disable-gpu-compositing',
]

/** A browser to start: where it is, what it needs in its environment, and how it was found. */
export type FoundBrowser = Readonly<{ executablePath: string; env: Readonly<Record<string, string>>; how: string }>

/** The environment of this process with the browser's own additions. */
export const environmentFor = (found: FoundBrowser): Record<string, string> => {
  const own = Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined)
  return { ...Object.fromEntries(own), ...found.env }
}

const startLimit = 60_000

/** Opens a page and asks it for a WebGL2 context. Gives null when that works, else the reason in one line. */
export const whyUnfit = async (found: FoundBrowser): Promise<string | null> => {
  try {
    const browser = await chromium.launch({
      executablePath: found.executablePath,
      args: [...browserFlags],
      env: environmentFor(found),
      timeout: startLimit,
    })
    try {
      const page = await browser.newPage()
      const draws = await page.evaluate(() => document.createElement('canvas').getContext('webgl2') !== null)
      return draws ? null : 'it starts but gives no WebGL2 context'
    } finally {
      await browser.close()
    }
  } catch (error) {
    const lines = String(error).split('\n')
    return (
      lines.find((line) => /error while loading|cannot open shared|ENOENT|EACCES/.test(line)) ??
      lines[0] ??
      'it does not start'
    ).trim()
  }
}
