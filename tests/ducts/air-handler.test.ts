// An air handler in the attic: sealed first of all duct work, dammed, its water caught.
import { expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

const handler = { id: 'handler', in: 'main', at: 'over the hall', sealed: 'no', pan: 'yes' } as const
const house = (more: Partial<JobFile>) => make({
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004, floorAreaFt2: 1800 }, target: { rValue: 49 },
  notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], areas: [openFloor.sample], eaves: [], appliances: [], openings: [],
  ducts: [{ id: 'branch', in: 'main', use: 'supply', position: 'floor', material: 'metal', shape: 'round', diameterIn: 6, lengthFt: 10, gapIn: 0.125, insulationR: 0 }], airHandlers: [handler], ...more,
}).json

test('1.5 h, 20 ft of seams, before the joints; a dam of 16 ft before the blow', () => {
  const e = house({}), step = (id: string) => e.tasks.find(t => t.id === id)!.step
  expect(e.tasks.find(t => t.id === 'seal-handler')!.personHours).toBe(1.5)
  expect([step('seal-handler') < step('mesh-ducts-main'), step('dam-handler') < step('blow-main')]).toEqual([true, true])
  expect(e.materials.find(m => m.item === 'dam-rigid')!.needed).toBe(16)
})
test('sealed already: only its dam; no pan: a note', () => {
  expect(house({ airHandlers: [{ ...handler, sealed: 'yes' }] }).tasks.map(t => t.id)).not.toContain('seal-handler')
  for (const pan of ['no', 'unknown'] as const) expect(house({ airHandlers: [{ ...handler, pan }] }).gates.map(g => g.code)).toEqual(['drain-pan'])
})
test('a duct test says what is wanted: 1,800 ft² at 4 cfm for 100 are 72 (IECC R403.3.4, from memory)', () => {
  const e = house({ tests: { ductTest: 'out' } })
  expect([e.airLeakage, e.tasks.find(t => t.id === 'duct-test')!.title]).toEqual([{ ductCfm25Target: 72 }, 'Duct test: CFM25 of the sealed ducts, 72 wanted at most'])
})
test('without a floor a tenth of the air that is moved (programs for existing houses, from memory): 120 of 1,200 cfm', () => {
  expect(house({ house: { state: 'WI', yearBuilt: 2004 }, tests: { ductTest: 'out' }, energy: { heating: { fuel: 'gas', efficiency: 0.8, fanCfm: 1200 } } }).airLeakage).toEqual({ ductCfm25Target: 120 })
})
