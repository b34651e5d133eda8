import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: join(import.meta.dirname, '..'),
  // `--update` writes the records of examples/ anew, as `verify --record` does.
  test: { env: { LIDWORK_RECORD: process.argv.some(a => a === '--update' || a === '-u') ? 'yes' : '' }, include: ['tests/**/*.test.ts'], pool: 'threads', isolate: false, poolOptions: { threads: { maxThreads: 2 } }, testTimeout: 60_000, globalSetup: 'tests/setup.ts' },
})
