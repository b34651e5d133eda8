import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: join(import.meta.dirname, '..'),
  test: { include: ['tests/**/*.test.ts'], pool: 'threads', isolate: false, testTimeout: 20_000, globalSetup: 'tests/setup.ts' },
})
