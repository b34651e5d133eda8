// A chase of 30 × 18 in. Cover with 2 in of lap: 34 · 22 ÷ 144 = 5.194444 ft²; edge 96 in.
// Cold: bead 1/4 in, 96 · 0.0490874 ÷ 1.8046875 = 2.611194 fl oz; 3.75 ft² is under 6: 0.90 h.
// Hot, flue 6 in: bead 3/8 in on 96 + π · 6 = 114.849556 in: · 0.110446617 ÷ 1.8046875 = 7.028776 fl oz;
// dam 3 in off: side 12, run 48 in, 20 in high (blown top 16 + 4): 48 · 20 ÷ 144 = 6.666667 ft², 4 ft · 0.06 = 0.24 h; bare square 12 · 12 ÷ 144 = 1 ft².
import { expect, test } from 'vitest'
import { books, cautions, codes, gates, hours, needs, take } from './take.ts'

const chase = { kind: 'open-chase', in: 'main', sizeIn: [30, 18], flue: 'no', airFor: 'none', at: 'behind the tub' } as const

test('cold: a rigid board and its bead', () => {
  const m = take(chase)
  expect(needs(m)).toEqual({ 'cap-chase-main-1': { 'gypsum-12': expect.closeTo(5.194444, 5), 'sealant-10oz': expect.closeTo(2.611194, 5) } })
  expect(hours(m)).toEqual({ 'cap-chase-main-1': 0.9 })
})
test('cold and wide: support over a 24 in span, hours for each square foot over 6', () => {
  // 48 × 36 in is 12 ft²: 0.90 + 6 · 0.08 = 1.38 h; two pieces of 3 ft
  const m = take({ ...chase, sizeIn: [48, 36] })
  expect(needs(m)['cap-chase-main-1']!['stud-2x4-8']).toBe(6)
  expect(hours(m)['cap-chase-main-1']).toBeCloseTo(1.38, 9)
})
test('with a flue: metal, noncombustible sealant, a dam; no foam', () => {
  const m = take({ ...chase, flue: 'yes', flueIn: 6 })
  expect(needs(m)).toEqual({ 'cap-chase-main-1': { 'galvanized-coil': expect.closeTo(5.194444, 5), 'noncombustible-sealant-10oz': expect.closeTo(7.028776, 5) }, 'dam-chase-main-1': { 'galvanized-coil': expect.closeTo(6.666667, 5) } })
  expect(hours(m)).toEqual({ 'cap-chase-main-1': 2, 'dam-chase-main-1': expect.closeTo(0.24, 9) })
  expect(m.paths!.map(p => [p.areaFt2.value, p.rAfter.value])).toEqual([[1, 1.67]])
  expect(cautions(m)).toMatch(/E136.*no foam/)
  expect(codes(m)).toEqual([])
  expect(m.tasks[1]!.title).toContain('20 in high')
})
test('nobody looked: as hot, and a look holds the fill', () => {
  const m = take({ ...chase, flue: 'unknown' })
  expect(gates(m)).toEqual(['hold chase-flue-unknown'])
  expect(needs(m)['cap-chase-main-1']).toHaveProperty('noncombustible-sealant-10oz')
  expect(hours(m)['look-chase-main-1']).toBe(0.25)
  expect(gates(take({ ...chase, flue: 'unknown' }, false))).toEqual([])
})
test.each(['appliance', 'unknown'] as const)('air for %s: never closed, nothing in its area covered, opened by no paper', airFor => {
  const m = take({ ...chase, airFor })
  expect(m.tasks).toEqual([])
  expect(gates(m)).toEqual(['stop combustion-air-unclear'])
  expect(m.gates![0]).toMatchObject({ stops: { phases: ['wrap', 'insulate'], places: ['main'] }, clearable: [] })
  expect(m.unknowns).toHaveLength(1)
})
test('a flue wider than its chase is a finding', () => {
  expect(codes(take({ ...chase, flue: 'yes', flueIn: 19 }))).toEqual(['flue-larger-than-chase'])
  expect(codes(take({ ...chase, flue: 'yes', flueIn: 18 }))).toEqual([])
})
test('the demo books fill the roles', () => { expect(books.product('hot-sealant').noncombustible).toBe(true) })
