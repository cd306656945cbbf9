import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    maxWorkers: 2,
    testTimeout: 120_000,
    restoreMocks: true,
  },
})
