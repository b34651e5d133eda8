// Two devices of 6 × 4 in, 3 in clear: 12 × 10, run 2 · 44 = 88 in, 20 in high (blown top 16 + 4): 88 · 20 ÷ 144 = 12.222222 ft²; 88 ÷ 12 · 0.06 = 0.44 h; bare 2 · 120 ÷ 144 = 1.666667 ft².
import { expect, test } from 'vitest'
import { cautions, gates, hours, needs, take } from './take.ts'

const devices = { kind: 'heat-producing-device', in: 'main', count: 2, sizeIn: [6, 4], at: 'kitchen' } as const

test('3 in clear in a metal dam, flagged, never foamed', () => {
  const m = take(devices)
  expect(needs(m)).toEqual({ 'dam-devices-main-1': { 'galvanized-coil': expect.closeTo(12.222222, 5) }, 'flag-devices-main-1': { 'box-flag': 2 } })
  expect(hours(m)).toEqual({ 'dam-devices-main-1': expect.closeTo(0.44, 9), 'flag-devices-main-1': expect.closeTo(0.06, 9) })
  expect(m.paths![0]!.areaFt2.value).toBeCloseTo(1.666667, 5)
  expect(cautions(m)).toMatch(/Never foamed, never covered/)
  expect(m.tasks[0]!.closes).toBe('heat-producing-device-main-1')
})
test('moved by an electrician: a subcontract, and a hold until the photo is there', () => {
  const m = take({ ...devices, treatment: 'move' })
  expect(gates(m)).toEqual(['hold device-not-moved'])
  expect(m.tasks.map(t => [t.id, t.subcontractCents!.value, t.ownVisit])).toEqual([['move-devices-main-1', 37000, true]])
})
test('where nothing is blown it is flagged all the same: old fill may be laid back over it', () => {
  const m = take(devices, false)
  expect(m.tasks).toMatchObject([{ phase: 'contain', closes: 'heat-producing-device-main-1' }])
  expect(Object.values(needs(m))).toEqual([{ 'box-flag': 2 }])
  expect(m.gates ?? []).toEqual([])
})
