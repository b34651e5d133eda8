// What the crew's paper needs of the estimate: distances, readings with limits, bags as they are counted, what a step takes.
import { describe, expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { wholeBagsOf } from '../../src/estimate/money/whole-bags.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { exactly } from '../../src/units/quantity.ts'
import { make } from '../property/job.ts'

const house: JobFile = {
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [openFloor.sample], eaves: [], appliances: [], openings: [{ kind: 'top-plate', in: 'main', wall: 'inside', lengthFt: 40, gapIn: 0.125, at: 'all' }],
}
const of = (more: Partial<JobFile>) => make({ ...house, ...more }).json
const heater = { id: 'heater', kind: 'water-heater', fuel: 'gas', vent: 'natural-draft', at: 'closet' } as const
const furnace = { id: 'furnace', kind: 'furnace', fuel: 'gas', vent: 'fan-assisted', at: 'basement' } as const

describe('distances', () => {
  test('stand on the step that makes them: light 3 in (NEC 410.116(B)), chimney 2 in to wood (IRC R1003.18), 3 in to fill (SWS 3.0102.2)', () => {
    const { tasks } = of({ openings: [
      { kind: 'recessed-light', in: 'main', count: 2, rating: 'non-ic', diameterIn: 6, heightIn: 7.5, at: 'kitchen' },
      { kind: 'chimney', in: 'main', sizeIn: [17, 21], gapIn: 2, inUse: 'no', at: 'middle' },
    ] })
    const off = (id: string) => tasks.find(t => t.id === id)!.keepOff.map(k => [k.what, k.distanceIn])
    expect(off('box-lights-main')).toEqual([['board and fill off a light’s housing and wiring box', 3]])
    expect(off('cap-chimney-main-1')).toEqual([['fill and sealant off the brick', 3], ['wood and paper off the brick', 2]])
    expect(off('dam-chimney-main-1')).toEqual([['fill and sealant off the brick', 3]])
    expect(tasks.filter(t => t.keepOff.length === 0).length).toBeGreaterThan(3)
  })
  test('a vent keeps its label’s distance; two vents in one area keep each its own', () => {
    const vent = { kind: 'metal-flue', in: 'main', type: 'b-vent', diameterIn: 4, framedIn: [7, 7], at: 'bath closet' } as const
    const { tasks } = of({ openings: [{ ...vent, labelClearanceIn: 1 }, vent] })
    expect(tasks.filter(t => t.id.startsWith('shield-')).map(t => t.keepOff[0]!.distanceIn)).toEqual([1, 3])
  })
})

describe('readings', () => {
  test('each flame by its vent: a water heater alone 2 Pa, a fan-assisted furnace elsewhere 15 (home performance standard, from memory)', () => {
    const { tests } = of({ appliances: [heater, furnace] })
    const pulled = tests.filter(t => t.task === 'test-combustion-in' && t.unit === 'Pa')
    expect(pulled.map(t => [t.of, t.where, t.atMost])).toEqual([['water heater', 'closet', 2], ['furnace', 'basement', 15]])
    expect(tests.filter(t => t.task === 'test-combustion-in' && t.reads.includes('flue gas')).map(t => t.atMost)).toEqual([200, 400])
  })
  test('on one flue both take the stricter row', () => {
    const { tests } = of({ appliances: [heater, { ...furnace, at: 'closet' }] })
    expect(tests.filter(t => t.task === 'test-combustion-in' && t.unit === 'Pa').map(t => t.atMost)).toEqual([3, 3])
  })
  test('what passed is not tested before the work, but again after it; the air of the rooms has its four steps, rising', () => {
    const { tests } = of({ appliances: [{ ...heater, test: { result: 'pass', on: '2026-03-01', by: 'Ada Invented' } }] })
    expect([...new Set(tests.map(t => t.task))]).toEqual(['test-combustion-interim', 'test-combustion-out'])
    const from = tests.find(t => t.id === 'test-combustion-out-room')!.acts.map(a => a.from)
    expect(from).toEqual([9, 35, 36, 70])
  })
  test('an oven has no draft to test; a blower door has what it read before, and no limit', () => {
    const { tests } = of({ appliances: [{ ...heater, id: 'oven', kind: 'oven', vent: 'unvented' }], tests: { cfm50: 2450, zonePa: 38, blowerDoor: 'out' } })
    expect(tests.filter(t => t.of === 'oven' && t.task === 'test-combustion-in').map(t => [t.unit, t.atMost])).toEqual([['ppm', 225]])
    expect(tests.filter(t => t.task === 'blower-door-out').map(t => [t.unit, t.before, t.atMost])).toEqual([['CFM50', 2450, undefined], ['Pa', 38, undefined]])
  })
  test('no reading without its step: a stopped house has none', () => {
    const stopped = of({ appliances: [heater], hazards: [{ kind: 'vermiculite', in: 'main', at: 'north' }], tests: { blowerDoor: 'out' } })
    expect([stopped.verdict, stopped.tests]).toEqual(['stop', []])
    const json = of({ appliances: [heater], tests: { blowerDoor: 'in-and-out' } }), steps = new Set(json.tasks.map(t => t.id))
    expect(json.tests.length).toBeGreaterThan(8)
    expect(json.tests.filter(t => !steps.has(t.task))).toEqual([])
  })
})

describe('bags as they are counted', () => {
  const bags = (...of: [string, string, number][]) => [...wholeBagsOf(of.map(([id, product, n]) => ({ id, product, bags: exactly(n, 'bag', 'test') })))].map(([id, q]) => [id, q.value])
  test('the largest shares of a bag get one more; the sum is the exact bags, up', () => {
    expect(bags(['a', 'x', 51.3], ['b', 'x', 6.1])).toEqual([['a', 52], ['b', 6]])
    expect(bags(['a', 'x', 10.6], ['b', 'x', 10.7], ['c', 'x', 10.6])).toEqual([['a', 11], ['b', 11], ['c', 10]])
  })
  test('each product by itself; whole bags stay, noise of a float is none', () => {
    expect(bags(['a', 'x', 3.5], ['b', 'y', 2.5])).toEqual([['a', 4], ['b', 3]])
    expect(bags(['a', 'x', 7], ['b', 'x', 3 + 1e-12])).toEqual([['a', 7], ['b', 3]])
  })
})

test('what the steps take is what is bought for them, before waste', () => {
  const json = of({ openings: [...house.openings, { kind: 'chimney', in: 'main', sizeIn: [17, 21], gapIn: 2, inUse: 'no', at: 'middle' }, { kind: 'hatch', in: 'main', sizeIn: [22, 30], panelR: 0, gasket: 'no', latch: 'no', at: 'hall' }] })
  for (const m of json.materials) {
    const lines = json.tasks.flatMap(t => t.materials.filter(x => x.item === m.item).map(x => ({ task: t.id, ...x })))
    expect(lines.map(l => l.task).sort(), m.item).toEqual([...m.usedFor].sort())
    expect(lines.every(l => l.unit === m.unit)).toBe(true)
    expect(Math.abs(lines.reduce((sum, l) => sum + l.quantity, 0) - m.needed)).toBeLessThanOrEqual(0.01 * lines.length)
  }
})

test('an alternate is another product of the role that is no worse, with how many of it', async () => {
  const { newPrices } = await import('../../src/papers/new-books.ts')
  const { newJob } = await import('../../src/papers/new-job.ts')
  const { lidwork } = await import('../cli/test-io.ts')
  const twin = (name: string, more: string): string => `  - {item: ${name}, name: ${name}, role: hot-sealant, unit: fl oz, pack: 5.05, buyUnit: tube, price: 9, charge: used${more}}\n`
  const prices = newPrices().replace(/^blown:/m, `${twin('half-tube', ', noncombustible: yes')}${twin('burns', '')}$&`)
  const job = newJob().replace(/^openings:.*$/m, '$&\n  - {kind: chimney, in: main, sizeIn: [17, 21], gapIn: 2, inUse: no, at: middle}')
  const ran = await lidwork('estimate a.job.yaml --json --prices p.yaml', { files: { 'a.job.yaml': job, 'p.yaml': prices } })
  const hot = (JSON.parse(ran.out) as { materials: { item: string; buy: number; alternates: unknown[] }[] }).materials.find(m => m.item.startsWith('noncombustible-sealant'))!
  expect(hot.alternates).toEqual([{ item: 'half-tube', name: 'half-tube', buy: expect.any(Number) as number, buyUnit: 'tube' }])
})
