import { createServer } from 'node:net'
import { defineConfig } from '@playwright/test'
import { findBrowser } from './browser/findBrowser.ts'
import { browserFlags, environmentFor, type FoundBrowser } from './browser/launch.ts'

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer().once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0))
    })
  })

// Every worker reads this file again: what the first reading found is handed down through the environment.
const kept = process.env
kept.PIERGLASS_TEST_PORT ??= String(await freePort())
kept.PIERGLASS_TEST_BROWSER ??= JSON.stringify(await findBrowser())
const port = kept.PIERGLASS_TEST_PORT
const browser = JSON.parse(kept.PIERGLASS_TEST_BROWSER) as FoundBrowser

export default defineConfig({
  testDir: 'browser',
  testMatch: '**/*.spec.ts',
  outputDir: '../test-results',
  workers: 2,
  fullyParallel: true,
  forbidOnly: process.env.CI !== undefined,
  // No test waits for a time, each waits for what it wants to see: these end one that will never see it, on the busiest machine.
  timeout: 300_000,
  expect: { timeout: 60_000 },
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    viewport: { width: 480, height: 320 },
    trace: 'off',
    // A test that reloads wants the page of its own build and the network that it has set up; `offline.spec.ts` lets them in.
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
    launchOptions: { executablePath: browser.executablePath, args: [...browserFlags], env: environmentFor(browser) },
  },
  webServer: {
    cwd: '..',
    command: `vite preview --port ${port} --strictPort`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
})
