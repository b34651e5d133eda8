// Ducts by hand arithmetic: in an area blown to 16 in above the ceiling plane, without access factors, with the demo books.
import { expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { ductFaults, ductTakeoff, type Duct } from '../../src/scope/ducts.ts'
import { found } from '../../src/scope/kind.ts'
import { exactly, type Quantity } from '../../src/units/quantity.ts'
import { hours, needs } from '../openings/take.ts'

const books = shelf(demoPrices, demoCompany).for({ code: 'iecc-2018', state: 'WI', climateZone: '5' })
const take = (item: Duct, filled = true, from = books) => ductTakeoff(found(item, '/ducts/0', item.id), from, { id: 'main', topOfFillInitialIn: exactly(16, 'in', 'these tests'), access: exactly(1, 'factor', 'no access factor'), filled })
const value = (q: unknown): number => (q as Quantity).value

// 8 in round: 3.14159 · 8 = 25.1327 in round. 25 ft: 25.1327 ÷ 12 · 25 = 52.36 ft². 11 joints: 2.09440 · 11 = 23.038 ft.
const branch: Duct = { id: 'branch', in: 'main', use: 'supply', position: 'floor', material: 'metal', shape: 'round', diameterIn: 8, lengthFt: 25, fittings: { elbows: 1, takeoffs: 1, boots: 1 }, gapIn: 0.125, insulationR: 0, cfm: 150 }

test('skin, joints, mastic, mesh and wrap of a bare branch', () => {
  const m = take(branch)
  expect(value(m.figures.surfaceFt2)).toBeCloseTo(52.36, 2)
  expect(value(m.figures.jointFt)).toBeCloseTo(23.038, 3)
  // 23.038 · 12 · 3 · 0.078125 ÷ 231 = 0.28050 gal. Wrap of 3 in: (25.1327 + 17) ÷ 12 · 25 = 87.777 ft².
  expect(needs(m)).toEqual({
    'mesh-ducts-main': { 'mastic-1gal': expect.closeTo(0.2805, 4), 'mesh-3in': expect.closeTo(23.038, 3) },
    'wrap-ducts-main-r-8': { 'duct-wrap-3in': expect.closeTo(87.777, 3), 'foil-tape-ul181': 25 },
  })
  expect(hours(m)).toEqual({ 'mesh-ducts-main': expect.closeTo(11 * 0.12, 9), 'wrap-ducts-main-r-8': expect.closeTo(52.36 * 0.06, 4) })
  // U = 1 ÷ 0.85; 1.17647 · 52.36 ÷ 162 = 0.38025; 162 · 100 · (1 − e^−0.38025) = 5,124.: U 0.109290; 162 · 100 · (1 − e^−0.035324) = 562.3.
  expect(value(m.figures.lossBtuhBefore)).toBeCloseTo(5124, -1)
  expect(value(m.wrapFigures.lossBtuhAfter)).toBeCloseTo(562.3, 0)
})

test('gap classes: mastic alone only thin and far from the air handler', () => {
  const used = (more: Partial<Duct>) => Object.entries(needs(take({ ...branch, ...more }))).find(([id]) => !id.startsWith('wrap'))!
  expect(used({ nearHandler: 'no' })).toEqual(['seal-ducts-main', { 'mastic-1gal': expect.any(Number) }])
  expect(used({ gapIn: 0.25, nearHandler: 'no' })[0]).toBe('mesh-ducts-main')
  expect(used({ gapIn: 0.5 })).toEqual(['bridge-ducts-main', { 'mastic-1gal': expect.any(Number), 'mesh-3in': expect.any(Number), 'foil-tape-ul181': expect.closeTo(23.038, 3) }])
  // 23.038 · 12 · (2 + 2) ÷ 144 = 7.679 ft² of sheet.
  expect(used({ gapIn: 2 })).toEqual(['patch-ducts-main', { 'mastic-1gal': expect.any(Number), 'mesh-3in': expect.any(Number), 'galvanized-coil': expect.closeTo(7.679, 3) }])
})

test('wrap goes round what is there, and stops where the edition is met', () => {
  // R-3 on it: 3 ÷ 3.7 = 0.8108 in; 3.14159 · (8 + 1.6216) = 30.227; (30.227 + 17) ÷ 12 · 25 = 98.39 ft².
  expect(needs(take({ ...branch, insulationR: 3 }))['wrap-ducts-main-r-8']!['duct-wrap-3in']).toBeCloseTo(98.39, 1)
  expect(needs(take({ ...branch, insulationR: 3, onItIn: 1 }))['wrap-ducts-main-r-8']!['duct-wrap-3in']).toBeCloseTo((Math.PI * 10 + 17) / 12 * 25, 6)
  expect(take({ ...branch, insulationR: 8 }).tasks.map(t => t.phase)).toEqual(['ducts'])
  expect(value(take({ ...branch, insulationR: 3 }).wrapFigures.rAfter)).toBeCloseTo(11.3, 9)
})

test('rectangular and square take their own allowance', () => {
  const trunk: Duct = { ...branch, shape: 'rectangular', sizeIn: [20, 8], lengthFt: 30 }
  delete (trunk as { diameterIn?: number }).diameterIn
  // 56 in round + 11 1/2: 67.5 ÷ 12 · 30 = 168.75 ft²; square 12 × 12: 62.5 ÷ 12 · 30 = 156.25 ft².
  expect(needs(take(trunk))['wrap-ducts-main-r-8']!['duct-wrap-3in']).toBeCloseTo(168.75, 6)
  expect(needs(take({ ...trunk, shape: 'square', sizeIn: [12, 12] }))['wrap-ducts-main-r-8']!['duct-wrap-3in']).toBeCloseTo(156.25, 6)
})

test('a return of 2009 wants R-6, and a narrow duct of 2018 too', () => {
  const of2009 = shelf(demoPrices, demoCompany).for({ code: 'iecc-2009', state: 'WI', climateZone: '5' })
  expect(take({ ...branch, use: 'return', insulationR: 6 }, true, of2009).tasks.map(t => t.phase)).toEqual(['ducts'])
  expect(take({ ...branch, diameterIn: 2.5, insulationR: 6 }).tasks.map(t => t.phase)).toEqual(['ducts'])
  expect(take({ ...branch, insulationR: 6 }).tasks.map(t => t.phase)).toEqual(['ducts', 'wrap'])
})

test('put together and hung before it is sealed; flexible duct has two ends and a band on each', () => {
  const flex: Duct = { id: 'return', in: 'main', use: 'return', position: 'hung', material: 'flex', shape: 'round', diameterIn: 14, lengthFt: 10, gapIn: 0.375, insulationR: 4.2, disconnected: 1, strapsMissing: 2 }
  const m = take(flex)
  expect(m.tasks.map(t => [t.phase, t.work])).toEqual([['ducts', 'duct-fix'], ['ducts', 'duct-fix'], ['ducts', 'duct-seal'], ['wrap', 'wrap']])
  // 14 in: 3.66519 ft round, two joints: 7.3304 ft; strap 4 ft for each hanger.
  expect(needs(m)).toMatchObject({ 'reconnect-ducts-main': { 'duct-band': 2 }, 'support-ducts-main': { 'duct-strap': 8 }, 'bridge-ducts-main': { 'duct-band': 2, 'mesh-3in': expect.closeTo(7.3304, 4) } })
  expect(hours(m)).toMatchObject({ 'reconnect-ducts-main': 0.5, 'support-ducts-main': 0.2, 'bridge-ducts-main': 0.24 })
})

test('sealed already: nothing but joints that came apart', () => {
  expect(take({ ...branch, gapIn: 0 }).tasks.map(t => t.phase)).toEqual(['wrap'])
  // One joint of 8 in: 2.0944 ft.
  expect(needs(take({ ...branch, gapIn: 0, disconnected: 1 }))['mesh-ducts-main']!['mesh-3in']).toBeCloseTo(2.0944, 4)
})

test('on the floor it stands in the way of the fill; hung above it does not', () => {
  expect(take(branch).tasks.every(t => (t.touches as string[]).includes('main'))).toBe(true)
  expect(take({ ...branch, position: 'hung' }).tasks.every(t => (t.touches as string[]).join() === 'branch')).toBe(true)
})

test('faults', () => {
  const codes = (item: Duct) => ductFaults(found(item, '/ducts/0', item.id)).map(f => f.code)
  const { diameterIn: _, ...bare } = branch
  expect(codes(branch)).toEqual([])
  expect(codes(bare)).toEqual(['duct-size-missing'])
  expect(codes({ ...branch, sizeIn: [8, 8] })).toEqual(['duct-size-other-shape'])
  expect(codes({ ...bare, shape: 'square', sizeIn: [8, 10] })).toEqual(['duct-not-square'])
  expect(codes({ ...bare, material: 'flex', shape: 'rectangular', sizeIn: [8, 10] })).toEqual(['flex-not-round'])
  expect(codes({ ...branch, joints: 4 })).toEqual(['joints-twice'])
  expect(codes({ ...branch, wrap: 'no' })).toEqual(['wrap-not-optional'])
})

test('an oval duct: way round and allowance of a round one', () => {
  const { diameterIn: _, ...rest } = branch
  // 14 × 6: 34.850 in round; + 17 = 51.850; ÷ 12 · 25 = 108.02 ft².
  expect(needs(take({ ...rest, shape: 'oval', sizeIn: [14, 6] }))['wrap-ducts-main-r-8']!['duct-wrap-3in']).toBeCloseTo(108.02, 2)
})
test('replaced: new flexible duct of the next size up, four bands a run, its own R, no wrap', () => {
  const m = take({ ...branch, replace: 'yes', diameterIn: 7 })
  // 25 ft · 0.05 + 2 · 0.3 = 1.85 h; two ends of 7 in: 3.665 ft, · 12 · 3 · 0.078125 ÷ 231 = 0.04463 gal.
  expect(needs(m)).toEqual({ 'replace-ducts-main': { 'flex-8in-r8': 25, 'duct-band': 4, 'mastic-1gal': expect.closeTo(0.04463, 4) } })
  expect(hours(m)).toEqual({ 'replace-ducts-main': expect.closeTo(1.85, 9) })
  expect(value(m.wrapFigures.rAfter)).toBe(8)
})
test('a panned return is sealed and not wrapped, and somebody says that a hard duct is better', () => {
  const { diameterIn: _, ...rest } = branch, m = take({ ...rest, use: 'return', material: 'panned', shape: 'rectangular', sizeIn: [14, 9] })
  expect(m.tasks.map(t => t.phase)).toEqual(['ducts'])
  expect(m.findings!.map(f => f.code)).toEqual(['panned-return'])
})
test('under fill in a humid zone it is told that it may sweat', () => {
  const codes = (climateZone?: string, more: Partial<Duct> = {}) => ductTakeoff(found({ ...branch, ...more }, '/ducts/0', 'branch'), books, { id: 'main', topOfFillInitialIn: exactly(16, 'in', 'these tests'), access: exactly(1, 'factor', 'no access factor'), filled: true }, climateZone === undefined ? {} : { climateZone }).findings!.map(f => f.code)
  expect([codes('2'), codes('5'), codes(), codes('2', { position: 'hung' })]).toEqual([['buried-duct-humid'], [], [], []])
})
