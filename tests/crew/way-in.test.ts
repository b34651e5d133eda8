// What the crew reads of its way in, and of what a fan's duct serves.
import { expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { workOrderOf } from '../../src/papers/crew/work-order.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

const house: JobFile = {
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [openFloor.sample, { ...openFloor.sample, id: 'ell' }], eaves: [], appliances: [], openings: [],
}
const hatch = { kind: 'hatch', in: 'main', sizeIn: [22, 30], panelR: 0, gasket: 'no', latch: 'no', at: 'hall' } as const
const door = { kind: 'attic-door', in: 'ell', sizeIn: [48, 24], panelR: 0, gasket: 'no', latch: 'no', at: 'bedroom' } as const
const stair = { kind: 'pull-down-stair', in: 'main', sizeIn: [54, 22.5], panelR: 0, gasket: 'no', at: 'hall' } as const
const titles = (openings: JobFile['openings']) => make({ ...house, openings }).json.tasks.filter(t => /^(?:blow|markers)-/.test(t.id)).map(t => [t.id, /facing the (\w+)|far end to (\w+)/.exec(t.title)!.slice(1).find(Boolean)]).sort()

test('markers face, and the hose goes to, the way into that area; else that of the house', () => {
  expect(titles([hatch, door])).toEqual([['blow-ell', 'door'], ['blow-main', 'hatch'], ['markers-ell', 'door'], ['markers-main', 'hatch']])
  expect(titles([stair])).toEqual([['blow-ell', 'stair'], ['blow-main', 'stair'], ['markers-ell', 'stair'], ['markers-main', 'stair']])
  expect(titles([]).map(t => t[1])).toEqual(['hatch', 'hatch', 'hatch', 'hatch'])
})

test('the sheet of each area says which way its markers face', () => {
  const fills = (openings: JobFile['openings']) => workOrderOf(make({ ...house, openings }).json).fills.map(f => [f.area.id, f.wayIn])
  expect(fills([hatch, door])).toEqual([['main', 'hatch'], ['ell', 'door']])
  expect(fills([stair])).toEqual([['main', 'stair'], ['ell', 'stair']])
  expect(fills([])).toEqual([['main', 'hatch'], ['ell', 'hatch']])
})

test('a laundry duct is no fan', () => {
  const duct = { kind: 'exhaust-fan', in: 'main', serves: 'laundry', endsAt: 'attic', ductIn: 4, lengthFt: 9, heater: 'no', at: 'dryer' } as const
  const { tasks, gates } = make({ ...house, openings: [duct] }).json
  const own = tasks.filter(t => /exhaust-fan/.test(t.id)).map(t => t.title)
  expect(own).toContain('Run the laundry duct to its roof cap')
  expect(own.filter(t => /\bfan/.test(t))).toEqual([])
  expect(gates.find(g => g.code === 'fan-into-attic')!.why).toBe('the laundry duct blows moist air and lint into the attic')
})
