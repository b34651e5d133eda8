// What each hazard shuts, for how long, and what it leaves open: the gate table of the trade, row by row, on one small house.
import { expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'
import { hazardKinds, type Hazard } from '../../src/scope/index.ts'
import { phases } from '../../src/scope/kind.ts'
import { make } from '../property/job.ts'

const all = hazardKinds.map(k => k.kind as Hazard['kind'])
const plates = { kind: 'top-plate', wall: 'inside', lengthFt: 40, gapIn: 0.125, at: 'all' } as const
/** Two areas, each with plates to seal and a floor to blow; a duct in the first. */
const house = (hazards: readonly Hazard[], more: Partial<JobFile> = {}): JobFile => ({
  format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 1948 }, target: { rValue: 49 },
  notFound: all.filter(k => !hazards.some(h => h.kind === k)), hazards: [...hazards], areas: [openFloor.sample, { ...openFloor.sample, id: 'wing' }], eaves: [], appliances: [], openings: [{ ...plates, in: 'main' }, { ...plates, in: 'wing' }],
  ducts: [{ id: 'branch', in: 'main', use: 'supply', position: 'floor', material: 'metal', shape: 'round', diameterIn: 6, lengthFt: 10, gapIn: 0.125, insulationR: 0 }], ...more,
})
const left = (data: JobFile) => {
  const { json } = make(data)
  return { json, ids: json.tasks.map(t => t.id), gates: json.gates.map(g => `${g.state} ${g.code}`) }
}

test('knob-and-tube stops the cover of its area; its sealing and the other area go on; the electrician’s letter opens it', () => {
  const old: Hazard = { kind: 'knob-and-tube', in: 'main', at: 'front', state: 'unknown' }
  const { json, ids, gates } = left(house([old]))
  expect([json.verdict, gates]).toEqual(['conditional', ['stop knob-and-tube']])
  expect(ids).toEqual(expect.arrayContaining(['seal-plates-main-1', 'mesh-ducts-main', 'blow-wing']))
  expect(ids.filter(id => /^(blow-main|wrap-)/.test(id))).toEqual([])
  // Where it runs nobody foams it in either; the other area is not told.
  const warned = (id: string) => json.tasks.find(t => t.id === id)!.cautions.some(c => c.startsWith('Old open wiring'))
  expect([warned('seal-plates-main-1'), warned('seal-plates-wing-1')]).toEqual([true, false])
  const letter = { gate: 'knob-and-tube', in: 'main', kind: 'electrician-letter', by: 'Invented Electric LLC', license: 'WI-0', on: '2026-03-05', paper: 'letters/a.pdf' }
  expect(left(house([old], { clearances: [letter] })).ids).toContain('blow-main')
  expect(make(house([old], { clearances: [{ ...letter, license: undefined as never }] })).made.findings.map(f => f.code)).toContain('clearance-without-license')
})

test('open splices hold the cover, priced at the electrician’s price for each', () => {
  const { json, gates } = left(house([{ kind: 'open-splice', in: 'main', at: 'above the bath', count: 3 }]))
  expect([json.verdict, gates]).toEqual(['hold', ['hold open-splice']])
  expect(json.price.subcontractCents).toBe(3 * 9500)
  expect(json.tasks.find(t => t.role === 'electrician')!.step).toBeLessThan(json.tasks.find(t => t.id === 'set-up')!.step)
})

test('wet wood stops sealing and cover of its area, and no more', () => {
  const { json, ids } = left(house([{ kind: 'wet-wood', in: 'main', at: 'valley', cause: 'roof' }]))
  expect(json.verdict).toBe('conditional')
  expect(ids.filter(id => /main/.test(id))).toEqual([])
  expect(ids).toEqual(expect.arrayContaining(['seal-plates-wing-1', 'blow-wing']))
  expect(left(house([{ kind: 'wet-wood', at: 'everywhere', cause: 'frost' }])).json.verdict).toBe('stop')
})

test('mold over 10 ft² stops its area, less is a note', () => {
  expect(left(house([{ kind: 'mold', in: 'main', at: 'north', areaFt2: 10 }])).gates).toEqual(['note mold-small'])
  const { ids, gates } = left(house([{ kind: 'mold', in: 'main', at: 'north', areaFt2: 10.5 }]))
  expect([gates, ids.filter(id => /main/.test(id))]).toEqual([['stop mold'], []])
})

test('animals and droppings stop all work in their area', () => {
  for (const what of ['animals', 'droppings', 'bats'] as const) expect(left(house([{ kind: 'animals', in: 'wing', at: 'gable', what }])).ids.filter(id => /wing/.test(id)), what).toEqual([])
})

test('suspect wrap on a duct under the fill: the duct stays untouched, and what would cover it is not blown', () => {
  const { json, ids } = left(house([{ kind: 'suspect-duct-wrap', of: 'branch', at: 'boot' }]))
  expect(json.verdict).toBe('conditional')
  expect(ids.filter(id => /ducts|blow-main/.test(id))).toEqual([])
  expect(ids).toEqual(expect.arrayContaining(['seal-plates-main-1', 'blow-wing']))
  expect(json.ducts[0]).toMatchObject({ tasks: [], personHours: 0, materials: [] })
  expect(json.ducts[0]).not.toHaveProperty('rAfter')
  // Hung above the fill, it stops no more than itself.
  const hung = house([{ kind: 'suspect-duct-wrap', of: 'branch', at: 'boot' }])
  expect(left({ ...hung, ducts: hung.ducts!.map(d => ({ ...d, position: 'hung' as const })) }).ids).toContain('blow-main')
})

test('gas shuts the house; carbon monoxide by its reading', () => {
  expect(left(house([{ kind: 'gas-leak', at: 'valve' }])).json).toMatchObject({ verdict: 'stop', tasks: [] })
  const co = (coPpm: number) => left(house([{ kind: 'carbon-monoxide', at: 'hall', coPpm }])).json
  expect([8, 9, 35, 36, 70].map(ppm => [co(ppm).verdict, co(ppm).gates[0]?.state])).toEqual([['go', undefined], ['go', 'note'], ['go', 'note'], ['stop', 'stop'], ['stop', 'stop']])
  expect([co(36), co(70)].map(e => e.gates[0]!.stops.phases.length)).toEqual([4, phases.length])
})

test('a roof insulated at its deck stops the blow below it; a damaged flue stops the cover', () => {
  expect(left(house([{ kind: 'unvented-roof', in: 'main', at: 'deck' }])).ids).not.toContain('blow-main')
  expect(left(house([{ kind: 'damaged-flue', in: 'main', at: 'brick' }])).ids).not.toContain('blow-main')
})

test('lead paint is a question of the year and of how much is cut', () => {
  const lead = (disturbedFt2: number, yearBuilt = 1948) => left(house([{ kind: 'lead-paint', in: 'main', at: 'hall', disturbedFt2 }], { house: { state: 'WI', yearBuilt } }))
  expect(lead(6).gates).toEqual(['note lead-paint-small'])
  expect(lead(6.5)).toMatchObject({ json: { verdict: 'hold' }, gates: ['hold lead-paint'] })
  expect(lead(6.5, 1978).gates).toEqual([])
})

test('silence: by year a hold with its look, else a line of the assumptions', () => {
  const silent = (yearBuilt?: number) => left(house([], { notFound: [], house: yearBuilt === undefined ? { state: 'WI' } : { state: 'WI', yearBuilt } }))
  expect(silent(1950).gates).toEqual(['hold vermiculite-not-checked', 'hold knob-and-tube-not-checked', 'hold suspect-duct-wrap-not-checked', 'note lead-paint-question'])
  expect(silent().gates).toEqual(silent(1950).gates)
  expect(silent(1985).gates).toEqual(['hold vermiculite-not-checked', 'hold suspect-duct-wrap-not-checked'])
  expect(silent(2004).gates).toEqual([])
  expect(silent(2004).json).toMatchObject({ verdict: 'go' })
  expect(silent(2004).json.assumptions.map(a => a.id).filter(id => id.startsWith('no-')).sort()).toEqual(['no-animals', 'no-damaged-flue', 'no-damaged-framing', 'no-mold', 'no-open-splice', 'no-unvented-roof', 'no-wet-wood'])
  // No ducts, no question about what lies on them.
  expect(make({ ...house([], { notFound: [] }), ducts: [] }).json.gates.map(g => g.code)).not.toContain('suspect-duct-wrap-not-checked')
})

test('cut framing stops all work on it; a recalled item is replaced by its trade first', () => {
  expect(left(house([{ kind: 'damaged-framing', in: 'main', at: 'truss' }])).ids.filter(id => /main/.test(id))).toEqual([])
  const { json, gates } = left(house([{ kind: 'recalled-item', in: 'main', at: 'bath', what: 'fan on a recall list' }]))
  expect([gates, json.price.subcontractCents]).toEqual([['hold recalled-item'], 22000])
})

test('solar wiring, radon and sensitive occupants are notes: they speak and shut nothing', () => {
  for (const h of [{ kind: 'solar-wiring', in: 'main', at: 'ridge' }, { kind: 'radon', at: 'cellar', radonPciL: 4 }, { kind: 'sensitive-occupant', at: 'child', what: 'asthma' }] as const) {
    const { json, gates } = left(house([h]))
    expect([json.verdict, gates], h.kind).toEqual(['go', [`note ${h.kind}`]])
  }
  expect(left(house([{ kind: 'radon', at: 'cellar', radonPciL: 3.9 }])).gates).toEqual([])
})
