import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

/** The tests that say what a formula gives: published and hand cases, identities, decimals, the strip at the eave. */
export default defineConfig({
  root: join(import.meta.dirname, '../..'),
  test: { include: ['tests/handbook/{handbook,identities,money,taper,chart}.test.ts'], pool: 'threads', testTimeout: 60_000 },
})
