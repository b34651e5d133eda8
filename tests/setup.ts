// Tests run on the source; the validators are made from it first, so that none is stale.
// @ts-expect-error a script of the build, without types
import { buildValidators } from '../bin/validators.mjs'

export default async function setup(): Promise<void> {
  await (buildValidators as () => Promise<void>)()
}
