// A company that tests at the end of each day that tightened the house.
import { expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

const house = (lengthFt: number): JobFile => ({
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [openFloor.sample], eaves: [], appliances: [{ id: 'heater', kind: 'water-heater', fuel: 'gas', vent: 'natural-draft', at: 'closet', test: { result: 'pass', on: '2026-03-01', by: 'Ada Invented' } }],
  openings: [{ kind: 'top-plate', in: 'main', wall: 'inside', lengthFt, gapIn: 0.125, at: 'all' }],
})
const interim = (data: JobFile, retestEachDay: 'yes' | 'no') => make(data, shelf(demoPrices, { ...demoCompany, retestEachDay })).json.tasks.find(t => t.id === 'test-combustion-interim')!.personHours

// Two people have 2 · 6.5 − 1.5 = 11.5 h a day. 400 ft take 10 h: one day; 800 ft 20 h: 1.74 days, two; one test with one appliance 1.5 h.
test('one day one test, two days two', () => {
  expect([interim(house(400), 'yes'), interim(house(800), 'yes'), interim(house(800), 'no')]).toEqual([1.5, 3, 1.5])
})
