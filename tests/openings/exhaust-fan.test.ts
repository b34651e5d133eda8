// Housing 9 × 9 in, edge 36 in: bead 1/4 in, 36 · 0.0490874 ÷ 1.8046875 = 0.979198 fl oz; hot, 3/8 in, 36 · 0.110446617 ÷ 1.8046875 = 2.203195 fl oz.
// Dam 3 in off: side 15, run 60 in, 20 in high (blown top 16 + 4): 60 · 20 ÷ 144 = 8.333333 ft²; 5 ft · 0.06 = 0.30 h; bare square 225 ÷ 144 = 1.5625 ft².
import { expect, test } from 'vitest'
import { phases } from '../../src/scope/kind.ts'
import { cautions, codes, gates, hours, needs, take } from './take.ts'

const fan = { kind: 'exhaust-fan', in: 'main', serves: 'bath', endsAt: 'attic', ductIn: 4, lengthFt: 9, heater: 'no', at: 'bath' } as const

test('into the attic: housing sealed, ducted to a roof cap before the check; the roofer is a subcontract', () => {
  const m = take(fan)
  expect(needs(m)).toEqual({ 'seal-exhaust-fan-main-1': { 'sealant-10oz': expect.closeTo(0.979198, 5) }, 'roof-cap-exhaust-fan-main-1': { 'roof-cap': 1 }, 'reduct-exhaust-fan-main-1': { 'fan-duct-4': 9 } })
  expect(hours(m)).toEqual({ 'seal-exhaust-fan-main-1': 0.3, 'roof-cap-exhaust-fan-main-1': 0, 'reduct-exhaust-fan-main-1': 1.5 })
  expect(m.tasks[1]!.subcontractCents!.value).toBe(32500)
  for (const t of m.tasks) expect(phases.indexOf(t.phase)).toBeLessThan(phases.indexOf('check'))
})
test.each(['attic', 'soffit'] as const)('ends at the %s: a mend, closed by the new duct in an earlier phase than all that it stops', endsAt => {
  const m = take({ ...fan, endsAt }), gate = m.gates![0]!, mend = m.tasks.find(t => t.id === gate.clearedByTask)!
  expect(gates(m)).toEqual(['mend fan-into-attic'])
  for (const p of gate.stops.phases) expect(phases.indexOf(mend.phase)).toBeLessThan(phases.indexOf(p))
})
test('outdoors: the housing alone', () => {
  const m = take({ ...fan, endsAt: 'outdoors' })
  expect(Object.keys(needs(m))).toEqual(['seal-exhaust-fan-main-1'])
  expect(gates(m)).toEqual([])
})
test('the duct fits what it carries', () => {
  const duct = (item: Parameters<typeof take>[0]) => Object.keys(needs(take(item))['reduct-exhaust-fan-main-1']!)
  expect([duct({ ...fan, ductIn: 6 }), duct({ ...fan, ductIn: 8 }), duct({ ...fan, serves: 'kitchen' }), duct({ ...fan, serves: 'laundry' })]).toEqual([['fan-duct-6'], ['galvanized-pipe-5ft'], ['galvanized-pipe-5ft'], ['galvanized-pipe-5ft']])
  expect(cautions(take({ ...fan, serves: 'laundry' }))).toMatch(/no screws into the duct, no flexible duct/)
})
test.each(['yes', 'unknown'] as const)('heater %s: noncombustible sealant, 3 in of air in a metal dam, never foamed', heater => {
  const m = take({ ...fan, endsAt: 'outdoors', heater })
  expect(needs(m)).toEqual({ 'seal-exhaust-fan-main-1': { 'noncombustible-sealant-10oz': expect.closeTo(2.203195, 5) }, 'dam-exhaust-fan-main-1': { 'galvanized-coil': expect.closeTo(8.333333, 5) } })
  expect(hours(m)['dam-exhaust-fan-main-1']).toBeCloseTo(0.3, 9)
  expect(m.paths!.map(p => p.areaFt2.value)).toEqual([1.5625])
  expect(cautions(m)).toMatch(/no foam/)
  expect(m.unknowns).toHaveLength(heater === 'unknown' ? 1 : 0)
})

// 4 in round: 12.566 in; + 17 = 29.566 in; ÷ 12 · 9 ft = 22.175 ft² of wrap; skin 9.425 ft² · 0.06 = 0.5655 h.
test('a bath fan that ends outdoors through a bare duct: sealed and wrapped; from R-8 on, or not looked at, left alone', () => {
  const fan = { kind: 'exhaust-fan', in: 'main', serves: 'bath', endsAt: 'outdoors', ductIn: 4, lengthFt: 9, heater: 'no', insulationR: 0, at: 'bath' } as const
  const m = take(fan)
  expect(needs(m)['wrap-fan-duct-main-1']).toEqual({ 'duct-wrap-3in': expect.closeTo(22.175, 3), 'foil-tape-ul181': 9 })
  expect(hours(m)['wrap-fan-duct-main-1']).toBeCloseTo(0.5655, 4)
  const { insulationR: _, ...silent } = fan
  for (const other of [{ ...fan, insulationR: 8 }, silent, { ...fan, serves: 'kitchen' as const }]) expect(take(other).tasks.filter(t => t.phase === 'wrap')).toEqual([])
  expect([codes(take(silent)), codes(take(fan))]).toEqual([['fan-duct-not-looked-at'], []])
})
