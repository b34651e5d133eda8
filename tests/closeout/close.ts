// A house and its close-out in memory, closed by the command line.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { AsBuiltOut } from '../../src/closeout/output.ts'
import { lidwork, type Ended } from '../cli/test-io.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
export const text = (file: string): string => readFileSync(root + file, 'utf8')

/** The house that was worked out by hand, its heater tested so that nothing holds it; 1,344 ft² over 3 1/2 in of old batts. */
export const WORKED = text('tests/handbook/worked-house.job.yaml').replace('at: laundry closet}', 'at: laundry closet, test: {result: pass, on: 2026-03-10, by: N. Quill}}').replace('status: draft', 'status: signed')

/** Runs one close-out against a job. @param body the close-out without its first two lines */
export async function run(body: string, { job = WORKED, line = '--json', more = {} }: { readonly job?: string; readonly line?: string; readonly more?: Record<string, string> } = {}): Promise<Ended> {
  return lidwork(`closeout a.closeout.yaml ${line}`.trim(), { files: { 'a.job.yaml': job, 'a.closeout.yaml': `format: lidwork-closeout/1\njob: a.job.yaml\n${body}\n`, ...more } })
}

/** The close-out as other programs read it. */
export async function closed(body: string, job?: string): Promise<AsBuiltOut> {
  const ran = await run(body, job === undefined ? {} : { job })
  if (ran.out === '') throw new Error(ran.err)
  return JSON.parse(ran.out) as AsBuiltOut
}

export const example = async (name: string, line = '--json'): Promise<Ended> => lidwork(`closeout examples/${name}.closeout.yaml ${line}`.trim(), { files: Object.fromEntries(['job', 'closeout'].map(k => [`examples/${name}.${k}.yaml`, text(`examples/${name}.${k}.yaml`)])) })
