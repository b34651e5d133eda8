// Tests run on the source; the validators are made from it first, so that none is stale.
import { existsSync } from 'node:fs'
import { join } from 'node:path'
// @ts-expect-error a script of the build, without types
import { buildValidators } from '../bin/validators.mjs'

// @ts-expect-error a script of the build, without types
import { buildUses } from '../bin/uses.mjs'

export default async function setup(): Promise<void> {
  await (buildValidators as () => Promise<void>)()
  if (!existsSync(join(import.meta.dirname, '../dist/uses.json'))) await (buildUses as () => Promise<void>)()
}
