// 14 ft of line 2 in above the ceiling: the tent is 12 + 2 · 2 = 16 in of board wide: 168 · 16 ÷ 144 = 18.666667 ft²; 14 · 0.10 = 1.40 h. Blown top 16 in.
import { expect, test } from 'vitest'
import { phases } from '../../src/scope/kind.ts'
import { cautions, gates, hours, needs, take } from './take.ts'

const line = { kind: 'water-line', in: 'main', lengthFt: 14, heightIn: 2, contents: 'wet', material: 'copper', sprinkler: 'no', at: 'over the bath' } as const

test('low and wet: tented to the ceiling before the fill, a mend of the crew', () => {
  const m = take(line)
  expect(needs(m)).toEqual({ 'tent-water-line-main-1': { 'gypsum-12': expect.closeTo(18.666667, 5) } })
  expect(hours(m)['tent-water-line-main-1']).toBeCloseTo(1.4, 9)
  expect(gates(m)).toEqual(['mend water-line-freeze'])
  const mend = m.tasks.find(t => t.id === m.gates![0]!.clearedByTask)!
  for (const p of m.gates![0]!.stops.phases) expect(phases.indexOf(mend.phase)).toBeLessThan(phases.indexOf(p))
})
test('less than 6 in under the blown top: held until a plumber has moved or drained it', () => {
  expect(gates(take({ ...line, heightIn: 10 }))).toEqual(['mend water-line-freeze'])
  const m = take({ ...line, heightIn: 10.25 })
  expect(gates(m)).toEqual(['hold water-line-freeze'])
  expect(m.tasks).toMatchObject([{ id: 'move-water-line-main-1', phase: 'clear', ownVisit: true, closes: 'water-line-main-1' }])
})
test('dry: flagged', () => {
  expect(needs(take({ ...line, contents: 'dry', heightIn: 30 }))).toEqual({ 'flag-water-line-main-1': { 'box-flag': 1 } })
  expect(gates(take({ ...line, contents: 'dry' }))).toEqual([])
})
test('sprinklers and CPVC are warned of', () => { expect(cautions(take({ ...line, material: 'cpvc', sprinkler: 'yes' }))).toMatch(/CPVC.*compatible.*Sprinkler heads: no caulk, no foam/) })
test('where nothing is blown it is flagged all the same: old fill may be laid back over it', () => {
  const m = take(line, false)
  expect(m.tasks).toMatchObject([{ phase: 'contain', closes: 'water-line-main-1' }])
  expect(Object.values(needs(m))).toEqual([{ 'box-flag': 1 }])
  expect(m.gates ?? []).toEqual([])
})

test('in zones 1 and 2 a wet line is flagged and asks for nothing; without a zone it counts as cold', () => {
  const line = { kind: 'water-line', in: 'main', lengthFt: 14, heightIn: 2, contents: 'wet', material: 'copper', sprinkler: 'no', at: 'over the bath' } as const
  expect(gates(take(line, true, {}))).toEqual(['mend water-line-freeze'])
  for (const climateZone of ['1', '2']) expect(gates(take(line, true, { climateZone })), climateZone).toEqual([])
  expect(gates(take(line, true, { climateZone: '3' }))).toEqual(['mend water-line-freeze'])
})
