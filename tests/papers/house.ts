// An invented house, estimated by hand into every shape a paper must lay out: two areas, a row between rows, gates in each state, eaves.
import type { EstimateOut } from '../../src/estimate/output.ts'

export function house(): EstimateOut {
  return {
    format: 'lidwork-estimate/1',
    job: { id: 'bittern-court-22', title: '22 Bittern Court, seal and blow', status: 'draft', surveyedOn: '2026-02-17', customer: 'R. Okafor' },
    basis: { priceBook: { name: 'demo prices', dated: '2026-01-15', demo: true }, company: { name: 'demo company', dated: '2026-01-15', demo: true }, codeEdition: 'iecc-2021', climateZone: '6', state: 'MN', county: 'Stearns' },
    verdict: 'hold',
    gates: [
      { id: 'chimney-use-unknown-main-1', code: 'chimney-use-unknown', state: 'note', open: true, stops: { phases: [], places: ['main'] }, where: 'back hall', why: 'nobody said whether anything vents into it', clearedBy: 'a look at what vents into it', line: 61, path: '/openings/2/inUse' },
      { id: 'light-not-ic-main-1', code: 'light-not-ic', state: 'mend', open: true, stops: { phases: ['insulate'], places: ['main'] }, where: 'den', why: 'fill against a light not rated for contact can start a fire', clearedBy: 'own box, photo with ruler', clearedByTask: 'box-lights-main', line: 58, path: '/openings/1' },
      { id: 'combustion-untested-furnace', code: 'combustion-untested', state: 'hold', open: true, stops: { phases: ['seal', 'ducts', 'wrap', 'insulate'], places: [] }, where: 'basement', why: 'a natural-draft gas furnace that nobody has tested may spill once the house is tighter', clearedBy: 'a passed combustion test by a certified tester', clearedByTask: 'test-combustion-in', line: 31, path: '/appliances/0' },
      { id: 'vermiculite', code: 'vermiculite', state: 'stop', open: false, stops: { phases: ['clear', 'prepare', 'seal', 'ducts', 'check', 'wrap', 'ventilate', 'contain', 'insulate', 'close', 'prove'], places: [] }, where: 'north end', why: 'vermiculite may hold asbestos', clearedBy: 'a final letter of a licensed abatement firm',
        clearance: { by: 'Invented Abatement LLC', on: '2026-02-10', paper: 'letters/north-end.pdf', kind: 'abatement-letter' }, line: 27, path: '/hazards/0' },
      { id: 'ceiling-sags-porch-1', code: 'ceiling-sags', state: 'stop', open: true, stops: { phases: ['insulate'], places: ['porch'] }, where: 'porch ceiling', why: 'the ceiling sags', clearedBy: 'a repaired ceiling, photo', line: 49, path: '/areas/2' },
    ],
    stopped: [
      { id: 'blow-porch', title: 'Blow the porch floor', phase: 'insulate', gate: 'ceiling-sags-porch-1', why: 'the ceiling sags' },
      { id: 'markers-porch', title: 'Depth markers', phase: 'contain', gate: 'ceiling-sags-porch-1', why: 'nothing is left that it serves' },
      { id: 'level-porch', title: 'Level, probe, top up', phase: 'insulate', gate: 'ceiling-sags-porch-1', why: 'nothing is left that it serves' },
    ],
    areas: [
      { id: 'main', kind: 'open-floor', areaFt2: 1180, netAreaFt2: 1152, existingR: 10.6, targetR: 49, addedR: 38.4, product: 'loose-cellulose', chartR: 38, interpolated: false, settledDepthIn: 10.56, initialDepthIn: 12.13, topOfFillInitialIn: 15.38, topOfFillSettledIn: 13.81,
        bags: 63.8, addedWeightPsf: 1.407, ceilingLoadPsf: 1.552, ceilingLimitPsf: 1.3, finalR: 48.6, averageR: 41.3, uBefore: 0.0931, uAfter: 0.0231, edgeStripFt: 3.4, markers: 4, stoppedBy: [],
        neighborRows: [{ chartR: 30, bags: 50.41, bagsCents: 71400 }, { chartR: 49, bags: 82.29, bagsCents: 117600 }], lighter: { product: 'loose-fiberglass', chartR: 38, interpolated: false, bags: 25.71, ceilingLoadPsf: 0.815, totalCents: 642500, moreCents: 38500 } },
      { id: 'knee-floor', kind: 'open-floor', areaFt2: 140, netAreaFt2: 140, existingR: 0, targetR: 49, addedR: 49, product: 'loose-cellulose', chartR: 39, interpolated: true, settledDepthIn: 11, initialDepthIn: 12.5, topOfFillInitialIn: 12.5, topOfFillSettledIn: 11,
        bags: 8.02, addedWeightPsf: 1.444, ceilingLoadPsf: 1.444, ceilingLimitPsf: 2.2, finalR: 49, averageR: 49.2, uBefore: 0.5, uAfter: 0.02, markers: 1, stoppedBy: [] },
      { id: 'porch', kind: 'open-floor', areaFt2: 96, netAreaFt2: 96, existingR: 0, targetR: 49, addedR: 49, uBefore: 0.5, stoppedBy: ['ceiling-sags-porch-1'] },
    ],
    eaves: { bays: 66, ventedBays: 40, baffles: 40, windBlocks: 40, sides: [{ id: 'eave-main-1', area: 'main', where: 'street side', bays: 33, ventedBays: 20, baffles: 20 }, { id: 'eave-main-2', area: 'main', where: 'yard side', bays: 33, ventedBays: 20, baffles: 20 }] },
    offers: [], tests: [], office: [],
  sealing: [
      { id: 'top-plate-main-1', kind: 'top-plate', area: 'main', where: 'all inside walls', count: 1, method: 'sealant', materials: [{ item: 'sealant', quantity: 98.4, unit: 'fl oz' }], personHours: 3.9, tasks: ['seal-plates-main-1'] },
      { id: 'recessed-light-main-1', kind: 'recessed-light', area: 'main', where: 'den', count: 3, method: 'box, lid bare', materials: [{ item: 'board', quantity: 30.2, unit: 'ft2' }, { item: 'sealant', quantity: 17, unit: 'fl oz' }], personHours: 2.7, tasks: ['box-lights-main'] },
    ],
    ducts: [],
    tasks: [
      { step: 1, id: 'test-combustion-in', title: 'Test the furnace before anything is tightened', phase: 'clear', areas: ['main'], after: [], because: [], role: 'tester', personHours: 1.5, cautions: ['Carbon monoxide: monitor worn and on.'], keepOff: [], materials: [], proof: 'test form', clears: [] },
      { step: 2, id: 'set-up', title: 'Arrive, walk round, protect (2 days)', phase: 'clear', areas: ['main'], after: ['test-combustion-in'], because: [], role: 'lead', personHours: 2.25, cautions: [], keepOff: [], materials: [], proof: 'photos', clears: [] },
      { step: 3, id: 'box-lights-main', title: 'Build a box over each light not rated for contact (3)', phase: 'seal', areas: ['main'], after: ['set-up'], because: [], role: 'crew', personHours: 2.7, cautions: ['Power off and proved off', 'Keep fill 3 in off.'], keepOff: [], materials: [], proof: 'photo with ruler', clears: ['light-not-ic-main-1'] },
      { step: 4, id: 'seal-plates-main-1', title: 'Seal both edges of the inside top plates (156 ft)', phase: 'seal', areas: ['main'], after: ['set-up'], because: [], role: 'crew', personHours: 3.9, cautions: [], keepOff: [], materials: [], proof: 'photo', clears: [] },
      { step: 5, id: 'look', title: 'Smoke pencil and flashlight, a photo of each opening', phase: 'check', areas: ['main'], after: ['set-up', 'box-lights-main', 'seal-plates-main-1', 'test-combustion-in'], because: [], role: 'lead', personHours: 0.75, cautions: [], keepOff: [], materials: [], proof: 'photos', clears: [] },
      { step: 6, id: 'baffles-main', title: 'Baffle and wind block in each vented bay (40)', phase: 'ventilate', areas: ['main'], after: ['look'], because: [], role: 'crew', personHours: 4, cautions: [], keepOff: [], materials: [], proof: 'photo', clears: [] },
      { step: 7, id: 'curb-hatch-main-1', title: 'Rigid curb round the hatch', phase: 'contain', areas: ['main'], after: ['baffles-main'], because: [], role: 'crew', personHours: 0.6, cautions: [], keepOff: [], materials: [], proof: 'photo', clears: [] },
      { step: 8, id: 'blow-main', title: 'Blow the open floor', phase: 'insulate', areas: ['main'], after: ['look', 'curb-hatch-main-1'], because: [], role: 'hose', personHours: 2.16, cautions: [], keepOff: [], materials: [], proof: 'bag tally', clears: [] },
      { step: 9, id: 'clean-up', title: 'Clean, load, haul away', phase: 'close', areas: ['main'], after: ['blow-main'], because: [], role: 'helper', personHours: 3, cautions: [], keepOff: [], materials: [], proof: 'photos', clears: [] },
      { step: 10, id: 'test-combustion-out', title: 'Test the furnace after the work', phase: 'prove', areas: ['main'], after: ['clean-up'], because: [], role: 'tester', personHours: 1.5, cautions: [], keepOff: [], materials: [], proof: 'test form', clears: [] },
    ],
    materials: [
      { item: 'loose-cellulose', name: 'loose cellulose, 25 lb bag', needed: 71.82, unit: 'bag', wastePct: 2, pack: 1, alternates: [], buy: 74, buyUnit: 'bag', charge: 'whole', charged: 74, unitPriceCents: 1400, totalCents: 103600, usedFor: ['blow-main'] },
      { item: 'sealant', name: 'latex sealant, 10.1 oz', needed: 115.4, unit: 'fl oz', wastePct: 10, pack: 1, alternates: [], buy: 13, buyUnit: 'tube', charge: 'used', charged: 12.57, unitPriceCents: 500, totalCents: 6285, usedFor: ['box-lights-main', 'seal-plates-main-1'] },
      { item: 'board', name: 'drywall 5/8 Type X, 4×8', needed: 30.2, unit: 'ft2', wastePct: 10, pack: 1, alternates: [], buy: 2, buyUnit: 'sheet', charge: 'whole', charged: 2, unitPriceCents: 2000, totalCents: 4000, usedFor: ['box-lights-main'] },
      { item: 'kit', name: 'protection and PPE kit', needed: 4, unit: 'person-day', wastePct: 0, pack: 1, alternates: [], buy: 4, buyUnit: 'person-day', charge: 'whole', charged: 4, unitPriceCents: 2500, totalCents: 10000, usedFor: ['set-up'] },
    ],
    carry: [],
    labor: { personHours: 22.36, wageCents: 4800, byPhase: { clear: 3.75, seal: 6.6, check: 0.75, ventilate: 4, contain: 0.6, insulate: 2.16, close: 3, prove: 1.5 }, crewSize: 2, days: 2 },
    price: {
      materialsCents: 123885, salesTaxCents: 8672, laborCents: 107328, subcontractCents: 0, otherCents: 0, directCents: 239885, contingencyCents: 16185, overheadCents: 0, costCents: 256070, marginPct: 40, markupPct: 66.7, minimumAddedCents: 0, roundingCents: 217,
      customerTaxCents: 0, totalCents: 427000, incentivesCents: 0, netCents: 427000, depositCents: 0, validDays: 30, excludes: ['The price holds only if the furnace (basement) passes its combustion test before work starts.', 'Blowing over the porch'],
    },
    findings: [
      { code: 'few-probes', severity: 'note', line: 44, path: '/areas/0/existing/0/depthIn', message: '3 of 5 probes: existing R is only as good as its probes' },
      { code: 'eave-not-vented', severity: 'warning', line: 66, path: '/eaves/0', message: '13 bays without vents: air reaches them from no side' },
    ],
    overrides: [],
    assumptions: [
      { id: 'bead-seam', what: 'least bead of sealant on a seam', value: 0.25, unit: 'in', why: 'starting value' },
      { id: 'rate.look', what: 'look', value: 0.75, unit: 'h/unit', why: 'starting rate, not overridden by the company file' },
      { id: 'rate.blow', what: 'blow', value: 0.03, unit: 'h/unit', why: 'starting rate, not overridden by the company file' },
      { id: 'visit-fee', what: 'fee for a visit', value: 12500, unit: 'cents', why: 'none in the company file' },
      { id: 'year-vermiculite', what: 'last year that vermiculite is possible', value: 1990, unit: 'year', why: 'EPA' },
    ],
  }
}

/** The same house where nothing may be done: no depth, no bags, no price but the visit. */
export function stoppedHouse(): EstimateOut {
  const h = house()
  return {
    ...h, verdict: 'stop', tasks: [], sealing: [], materials: [],
    gates: h.gates.filter(g => g.state !== 'mend').map(g => (g.id === 'vermiculite' ? { id: g.id, code: g.code, state: g.state, open: true, stops: g.stops, where: g.where, why: g.why, clearedBy: g.clearedBy, line: g.line, path: g.path } : g)),
    stopped: h.tasks.map(t => ({ id: t.id, title: t.title, phase: t.phase, gate: 'vermiculite', why: 'vermiculite may hold asbestos' })),
    areas: h.areas.map(a => ({ id: a.id, kind: a.kind, areaFt2: a.areaFt2, netAreaFt2: a.netAreaFt2, existingR: a.existingR!, targetR: a.targetR!, addedR: a.addedR!, uBefore: a.uBefore!, stoppedBy: ['vermiculite'] })),
    labor: { personHours: 0, wageCents: 4800, byPhase: {}, crewSize: 2, days: 0 },
    price: { otherCents: 12500, directCents: 12500, excludes: ['Every sealing and blowing task'] },
  }
}
