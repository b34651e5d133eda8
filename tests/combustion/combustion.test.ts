// What besides an untested flame holds or stops the tightening of a house, and the tests a job asks for.
import { describe, expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

const house: JobFile = {
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [openFloor.sample], eaves: [], appliances: [], openings: [{ kind: 'top-plate', in: 'main', wall: 'inside', lengthFt: 40, gapIn: 0.125, at: 'all' }],
}
const heater = { id: 'heater', kind: 'water-heater', fuel: 'gas', vent: 'natural-draft', at: 'closet', test: { result: 'pass', on: '2026-03-01', by: 'Ada Invented' } } as const
const stove = { id: 'stove', kind: 'fireplace', fuel: 'wood', vent: 'natural-draft', at: 'living room' } as const
const gatesOf = (more: Partial<JobFile>) => make({ ...house, ...more }).json.gates.map(g => `${g.state} ${g.code}${g.open ? '' : ' open'}`)
const ids = (more: Partial<JobFile>) => make({ ...house, ...more }).json.tasks.map(t => t.id)

test('a fire of wood holds the work even with a passed draft test; the owner’s signature opens it; it is not among the tests', () => {
  const passed = { ...stove, test: heater.test }
  expect(gatesOf({ appliances: [passed] })).toEqual(['hold solid-fuel'])
  expect(gatesOf({ appliances: [{ ...stove, vent: 'sealed' }] })).toEqual([])
  const signed = { gate: 'solid-fuel', of: 'stove', kind: 'owner-instruction', by: 'The Quince Household', on: '2026-03-04', paper: 'a.pdf' }
  expect(make({ ...house, appliances: [passed], clearances: [signed] }).json.verdict).toBe('go')
  expect(make({ ...house, appliances: [heater, passed] }).json.tasks.filter(t => t.id.startsWith('test-combustion')).map(t => /fireplace/.test(t.title))).toEqual([false, false])
})

test('an unvented heater that is the main heat stops the house; another one waits for its test', () => {
  const unvented = { ...heater, kind: 'room-heater', vent: 'unvented' } as const
  expect(make({ ...house, appliances: [{ ...unvented, mainHeat: 'yes' }] }).json).toMatchObject({ verdict: 'stop', gates: [{ code: 'unvented-main-heat' }] })
  const { test: _, ...untested } = unvented
  expect(gatesOf({ appliances: [untested] })).toEqual(['hold combustion-untested'])
})

test('an oven gives its gases to the rooms whatever its vent is called: its test is of carbon monoxide, no fan turns a draft it has not', () => {
  const oven = { id: 'oven', kind: 'oven', fuel: 'gas', vent: 'unvented', at: 'kitchen' } as const
  const why = (a: object) => make({ ...house, appliances: [{ ...oven, ...a }] as unknown as NonNullable<JobFile['appliances']> }).json.gates[0]!.why
  expect(why({})).toBe('an unvented gas oven gives its gases to the rooms, and nobody has tested its carbon monoxide: a tighter house keeps them longer')
  expect(why({ vent: 'natural-draft' })).toMatch(/^a natural-draft gas oven gives its gases/)
  expect(why({ kind: 'furnace', vent: 'unknown' })).toBe('a gas furnace (vent not looked at) that nobody has tested may spill once the house is tighter')
  expect(why({ kind: 'furnace', fuel: 'oil', vent: 'natural-draft' })).toMatch(/^a natural-draft oil furnace /)
  expect(why({ test: { result: 'fail', on: '2026-03-01', by: 'Ada Invented' } })).toBe('the oven failed its combustion test: a tighter house keeps its gases')
  const pulled = (a: object) => gatesOf({ tests: { cfm50: 500 }, exhausts: [{ id: 'hood', kind: 'hood', at: 'kitchen', cfm: 390 }], appliances: [{ ...oven, test: heater.test, ...a }] as unknown as NonNullable<JobFile['appliances']> })
  expect(pulled({})).toEqual([])
  expect(pulled({ kind: 'water-heater', vent: 'natural-draft' })).toEqual(['note depressurization'])
})

test('a hood over 400 cfm holds, at 400 and of unknown size it does not (IRC M1503.6, from memory)', () => {
  const hood = (cfm?: number) => gatesOf({ exhausts: [{ id: 'hood', kind: 'hood', at: 'kitchen', ...(cfm === undefined ? {} : { cfm }) }] })
  expect([hood(401), hood(400), hood()]).toEqual([['hold hood-make-up-air'], [], []])
  const { json } = make({ ...house, exhausts: [{ id: 'hood', kind: 'hood', at: 'kitchen', cfm: 600 }] })
  expect(json.price.subcontractCents).toBe(48000)
  expect(json.tasks[0]!.id).toBe('make-up-air-hood')
})

test('a powered attic fan holds only beside a flame on room air, and only while it has power', () => {
  const fan = { id: 'fan', kind: 'power-attic-fan', at: 'roof' } as const
  expect(gatesOf({ exhausts: [fan] })).toEqual([])
  expect(gatesOf({ exhausts: [fan], appliances: [heater] })).toEqual(['hold power-attic-fan'])
  expect(gatesOf({ exhausts: [{ ...fan, disabled: 'yes' }], appliances: [heater] })).toEqual([])
})

test('alarms that are missing are hung and priced', () => {
  const { json } = make({ ...house, house: { ...house.house, coAlarmsMissing: 2 } })
  expect(json.materials.find(m => m.item === 'co-alarm')).toMatchObject({ buy: 2, totalCents: 6400 })
})

test('tests asked for: in before the crew, the look with the blower door, ducts tested sealed and bare, out at the end', () => {
  const ducts: JobFile['ducts'] = [{ id: 'branch', in: 'main', use: 'supply', position: 'floor', material: 'metal', shape: 'round', diameterIn: 6, lengthFt: 10, gapIn: 0.125, insulationR: 0 }]
  const asked = { ducts, tests: { cfm50: 2450, cfm25Total: 210, blowerDoor: 'in-and-out', ductTest: 'in-and-out' } } as const
  const { json } = make({ ...house, ...asked })
  const step = (id: string) => json.tasks.find(t => t.id === id)!.step
  const order = ['blower-door-in', 'set-up', 'seal-plates-main-1', 'mesh-ducts-main', 'look', 'duct-test', 'wrap-ducts-main-r-8', 'blow-main', 'blower-door-out'].map(step)
  expect(order).toEqual([...order].sort((a, b) => a - b))
  expect(step('duct-test-in')).toBeLessThan(step('set-up'))
  expect(['blower-door-in', 'duct-test-in', 'look', 'duct-test', 'blower-door-out'].map(id => json.tasks.find(t => t.id === id)!.personHours)).toEqual([1.5, 1.5, 1.5, 1.5, 1.5])
  expect(json.airLeakage).toMatchObject({ cfm50Before: 2450, ductCfm25Before: 210 })
  expect(ids({ ducts })).not.toContain('duct-test')
  // No fan where dust may hold asbestos.
  expect(ids({ ...asked, hazards: [{ kind: 'suspect-duct-wrap', of: 'branch', at: 'boot' }], notFound: house.notFound.filter(k => k !== 'suspect-duct-wrap') }).filter(id => /blower|duct-test/.test(id))).toEqual([])
})

// Plates: 80 ft of seam, at most 0.12 − 0.0236 in² a foot, 7.71 in² = 140 CFM50 less; 50 · (250 ÷ 1,810)^1.538 = 2.4 Pa.
test('fans against the leakage once it is sealed, at the high end: 250 cfm at 1,950 CFM50 pull 2.4 Pa, over the 2 of a water heater alone; it warns and closes nothing', () => {
  const fans = [{ id: 'hood', kind: 'hood', at: 'kitchen', cfm: 200 }, { id: 'fan', kind: 'bath-fan', at: 'bath' }] as const
  const warned = (cfm50: number | undefined, appliances: readonly object[] = [heater]) => make({ ...house, exhausts: [...fans], appliances: [...appliances] as never, ...(cfm50 === undefined ? {} : { tests: { cfm50 } }) }).json
  expect(warned(1950).gates.map(g => [g.code, g.state])).toEqual([['depressurization', 'note']])
  expect(warned(1950).gates[0]!.why).toContain('at least 2.4 Pa once it is sealed')
  expect([warned(2600).gates, warned(undefined).gates, warned(1950, [{ ...heater, vent: 'sealed' }]).gates]).toEqual([[], [], []])
  // With a furnace on the same flue the limit is 3.
  expect(warned(1950, [heater, { ...heater, id: 'furnace', kind: 'furnace' }]).gates).toEqual([])
  // A hood of 900 at 600 CFM50 is told and changes no price: 50 · (950 ÷ 1,950)^1.54.
  expect(warned(1950).verdict).toBe('go')
})

describe('a test that is older than the house as it stands', () => {
  const tested = (on: string) => gatesOf({ appliances: [{ ...heater, test: { ...heater.test, on } }] })
  test('up to 90 days before the survey of 2026-03-01 it counts; before that the heater is untested', () => {
    expect([tested('2026-03-01'), tested('2025-12-01'), tested('2025-11-30'), tested('2016-11-12')]).toEqual([[], [], ['hold combustion-untested'], ['hold combustion-untested']])
  })
  test('and the gate says which test', () => expect(make({ ...house, appliances: [{ ...heater, test: { ...heater.test, on: '2016-11-12' } }] }).json.gates[0]!.why).toContain('2016-11-12'))
})
