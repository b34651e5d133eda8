// 12 × 8 in, no sleeve, blown top 16 in: sleeve to 22 in, edge 40 in: 40 · 22 ÷ 144 = 6.111111 ft²; dam 3 in off, 40 + 24 = 64 in, 20 in high: 64 · 20 ÷ 144 = 8.888889 ft².
// Together 15 ft²; hours (40 + 64) ÷ 12 · 0.06 = 0.52.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { estimate } from '../../src/estimate/estimate.ts'
import { readJob } from '../../src/job/read.ts'
import { books, hours, needs, take } from './take.ts'

const air = { kind: 'combustion-air-opening', in: 'main', sizeIn: [12, 8], sleeveIn: 0, at: 'furnace closet' } as const
const SLEEVE = 'sleeve-combustion-air-opening-main-1'

test('sleeve 6 in above the blown top and a dam, in metal; no sealant, no foam', () => {
  const m = take(air)
  expect(needs(m)[SLEEVE]).toEqual({ 'galvanized-coil': expect.closeTo(15, 9) })
  expect(hours(m)[SLEEVE]).toBeCloseTo(0.52, 9)
  expect(m.tasks.filter(t => t.phase === 'seal')).toEqual([])
  expect(m.tasks[0]!.title).toContain('to 22 in above the ceiling')
})
test('a sleeve that stands 10 in is raised by 12 in: 40 · 12 ÷ 144 = 3.333333 ft² and the dam', () => {
  expect(needs(take({ ...air, sleeveIn: 10 }))[SLEEVE]!['galvanized-coil']).toBeCloseTo(12.222222, 5)
})
test('where nothing is blown it is flagged all the same: old fill may be laid back over it', () => {
  const m = take(air, false)
  expect(m.tasks).toMatchObject([{ phase: 'contain', closes: 'combustion-air-opening-main-1' }])
  expect(Object.values(needs(m))).toEqual([{ 'box-flag': 1 }])
  expect(m.gates ?? []).toEqual([])
})

const good = readFileSync(join(import.meta.dirname, '../findings/good.job.yaml'), 'utf8')
const house = (more: string) => {
  const read = readJob(good.replace('openings:\n', `openings:\n  - {kind: combustion-air-opening, in: main, sizeIn: [12, 8], sleeveIn: 0, at: closet${more}}\n`), 'a.job.yaml')
  if (!read.ok) throw new Error('the sample must be sound')
  return estimate(read.job, books)
}
test('in a house: the caution stands on the blowing, whose hours stay as they are; the sleeve comes first', () => {
  const plain = readJob(good, 'a.job.yaml')
  if (!plain.ok) throw new Error('the sample must be sound')
  const before = estimate(plain.job, books).steps.find(s => s.id === 'blow-main')!, after = house('').steps
  const blow = after.find(s => s.id === 'blow-main')!
  expect(blow.cautions.join(' ')).toMatch(/never close, cover or narrow this opening; carbon monoxide/)
  expect(blow.personHours.value).toBe(before.personHours.value)
  expect(blow.title).toBe(before.title)
  expect(after.find(s => s.id === SLEEVE)!.step).toBeLessThan(blow.step)
})
test('without its sleeve nothing in its area is covered', () => { expect(house(', decline: yes').steps.some(s => s.buries?.includes('main'))).toBe(false) })
