// Threads that price jobs: in order whoever is quicker, and what is lost with one that ends.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Done } from '../../src/cli/reprice/run-jobs.ts'
import type { Unit } from '../../src/cli/reprice/sources.ts'
import { startThreads } from '../../src/cli/reprice/threads.ts'

let folder = ''
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'lidwork-threads-')) })
afterAll(() => { rmSync(folder, { recursive: true, force: true }) })

const JOBS = 500
async function* jobs(): AsyncGenerator<Unit> { for (let n = 0; n < JOBS; n++) yield { file: `${n}.job.yaml` } }
const turn = (): Promise<void> => new Promise(resolve => { setImmediate(resolve) })
const here = ({ file }: Unit): Done => ({ is: 'skipped', file, code: 1, why: 'here', report: '' })

/** What comes of the jobs where a thread of this text stands beside this one. */
async function beside(text: string, count = 1): Promise<Done[]> {
  const file = join(folder, 'thread.cjs'), all: Done[] = []
  writeFileSync(file, `const { parentPort } = require('node:worker_threads')\n${text}`)
  const workers = startThreads(count, file, { terms: { from: '', to: '' }, held: {} }, turn)
  try { for await (const d of workers.price(here, jobs())) all.push(d) } finally { await workers.end() }
  return all
}
const filesOf = (all: readonly Done[]): string[] => all.map(d => (d.is === 'priced' ? '' : d.file))
const inOrder = Array.from({ length: JOBS }, (_, n) => `${n}.job.yaml`)
const LATE = "parentPort.on('message', units => setTimeout(() => parentPort.postMessage(units.map(u => ({ is: 'skipped', file: u.file, code: 1, why: 'there', report: '' }))), 5))"

test.each([1, 3])('with %i beside it: every job once, in order, and all take part', async count => {
  const all = await beside(LATE, count)
  expect(filesOf(all)).toEqual(inOrder)
  expect(new Set(all.map(d => d.is === 'skipped' && d.why))).toEqual(new Set(['here', 'there']))
})

test.each([['ends', "parentPort.once('message', () => process.exit(1))"], ['throws', "parentPort.once('message', () => { throw new Error('out of reach') })"], ['never loads', "throw new Error('out of reach')"]])('a thread that %s leaves a fault at the jobs it had, and the others are still done', async (_, text) => {
  const all = await beside(text), lost = all.filter(d => d.is === 'fault')
  expect(filesOf(all)).toEqual(inOrder)
  expect(lost.length).toBeGreaterThan(0)
  expect(lost.length).toBeLessThan(JOBS / 2)
  for (const d of lost) expect(d.message).toMatch(/^a worker thread ended/)
})
