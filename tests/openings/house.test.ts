// Every kind of opening in one house: what must be done before what, by the edges of the estimate, and what a stop leaves.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parse, stringify } from 'yaml'
import { estimate } from '../../src/estimate/estimate.ts'
import { readJob } from '../../src/job/read.ts'
import { openingKinds, type Opening } from '../../src/scope/index.ts'
import { books } from './take.ts'

const good = parse(readFileSync(join(import.meta.dirname, '../findings/good.job.yaml'), 'utf8'), { schema: 'core' }) as Record<string, unknown>
const samples = openingKinds.map(k => k.sample as Opening)
const house = (openings: readonly Opening[]) => {
  const read = readJob(stringify({ ...good, openings, choices: { fill: { main: 'demo-loose-fiberglass' } } }), 'a.job.yaml')
  if (!read.ok) throw new Error(read.findings.map(f => f.code).join())
  return estimate(read.job, books)
}
const before = (made: ReturnType<typeof house>, id: string): Set<string> => {
  const by = new Map(made.steps.map(s => [s.id, s])), all = new Set<string>()
  const visit = (x: string): void => { for (const a of by.get(x)!.after) if (!all.has(a.task)) { all.add(a.task); visit(a.task) } }
  visit(id)
  return all
}

describe('a house with one opening of every kind', () => {
  const made = house(samples)
  test('has no error', () => { expect(made.findings.filter(f => f.severity === 'error')).toEqual([]) })
  test('every opening has its closing step, and each comes before the fill', () => {
    const first = before(made, 'blow-main')
    const closing = made.steps.filter(s => s.closes.length > 0)
    expect(new Set(closing.flatMap(s => s.closes))).toEqual(new Set(made.out.sealing.map(s => String(s.id))))
    for (const s of closing) expect(first.has(s.id), s.id).toBe(true)
  })
  test('the fan is ducted after its cap is in the roof, and before the last look and the fill', () => {
    expect(before(made, 'reduct-exhaust-fan-main-1').has('roof-cap-exhaust-fan-main-1')).toBe(true)
    expect(before(made, 'look').has('reduct-exhaust-fan-main-1')).toBe(true)
  })
  test('the roofer is in the price', () => { expect((made.out.price.subcontractCents as { value: number }).value).toBeGreaterThanOrEqual(32500) })
})

const stops: readonly (readonly [string, Opening])[] = [
  ['combustion-air-unclear', { kind: 'open-chase', in: 'main', sizeIn: [30, 18], flue: 'no', airFor: 'unknown', at: 'closet' }],
  ['single-wall-through-ceiling', { kind: 'metal-flue', in: 'main', type: 'single-wall', diameterIn: 6, framedIn: [12, 12], at: 'closet' }],
  ['chimney-model-unknown', { kind: 'metal-flue', in: 'main', type: 'factory-chimney', diameterIn: 8, framedIn: [14, 14], at: 'den' }],
  ['transite-vent', { kind: 'metal-flue', in: 'main', type: 'transite', diameterIn: 6, framedIn: [12, 12], at: 'closet' }],
]
test.each(stops)('%s: nothing in its area is covered, the rest is sealed and priced', (code, item) => {
  const made = house([...samples, item])
  expect(made.out.gates.filter(g => g.state === 'stop').map(g => g.code)).toEqual([code])
  expect(made.steps.filter(s => s.buries !== undefined || s.phase === 'insulate').map(s => s.id)).toEqual([])
  expect(made.steps.some(s => s.id === 'seal-wires-main')).toBe(true)
  expect(made.out.price.totalCents).toBeDefined()
  expect((made.out.price.excludes as readonly string[]).some(e => e.includes('is not closed in this price'))).toBe(true)
})
