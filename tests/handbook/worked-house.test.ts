// One house that was worked out by hand from survey to price, and what changes when one thing in it is otherwise.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { estimate } from '../../src/estimate/estimate.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { estimateJson } from '../../src/estimate/to-json.ts'
import { readJob } from '../../src/job/read.ts'

const file = readFileSync(join(import.meta.dirname, 'worked-house.job.yaml'), 'utf8')
const books = shelf(demoPrices, demoCompany)

function run(change: (text: string) => string = t => t): EstimateOut {
  const text = change(file)
  const read = readJob(text, 'worked-house.job.yaml')
  if (!read.ok) throw new Error(JSON.stringify(read.findings, undefined, 1))
  const { data } = read.job
  const made = estimate(read.job, books.for({ ...data.target, ...(data.house.climateZone === undefined ? {} : { climateZone: data.house.climateZone }), ...data.choices }))
  return estimateJson(made, read.job)
}
/** Puts text in the place of other text that must be there. */
const swap = (from: string | RegExp, to: string) => (text: string): string => {
  const out = text.replace(from, to)
  if (out === text) throw new Error(`not in the file: ${from}`)
  return out
}
const both = (...changes: ((t: string) => string)[]) => (t: string): string => changes.reduce((x, change) => change(x), t)
const main = (e: EstimateOut) => e.areas[0]!
const hoursOf = (e: EstimateOut, id: string) => e.tasks.find(t => t.id === id)?.personHours

const passed = swap('at: laundry closet}', 'at: laundry closet, test: {result: pass, on: 2026-03-10, by: N. Quill}}')
const failed = swap('at: laundry closet}', 'at: laundry closet, test: {result: fail, on: 2026-03-10, by: N. Quill}}')
const at24 = swap('spacingIn: 16', 'spacingIn: 24')
const sagging = swap('condition: sound', 'condition: sagging')
const vermiculite = both(swap('notFound: [vermiculite]', 'notFound: []'), swap('hazards: []', 'hazards:\n  - {kind: vermiculite, in: main, at: under the batts}'))
const eaves = (t: string) => `${t}eaves:\n  - {in: main, at: front, lengthFt: 48, ventedBays: 0}\n  - {in: main, at: back, lengthFt: 48, ventedBays: 0}\n`
const noChimney = swap(/ {2}- \{kind: chimney.*\n/, '')

describe('the worked house', () => {
  const e = run()
  test('verdict and gates', () => {
    expect(e.verdict).toBe('hold')
    expect(e.gates.map(g => [g.code, g.state, g.clearedByTask])).toEqual(expect.arrayContaining([['combustion-untested', 'hold', 'test-combustion-in'], ['light-not-ic', 'mend', 'box-lights-main']]))
    expect(e.tasks[0]!.id).toBe('test-combustion-in')
    expect(e.price.excludes[0]).toMatch(/^The price holds only if the water heater/)
  })
  test('areas: R, depth, bags, load', () => {
    expect(main(e)).toMatchObject({
      areaFt2: 1344, netAreaFt2: 1344, existingR: 11.2, targetR: 49, addedR: 37.8, chartR: 38, interpolated: false, initialDepthIn: 12.13, settledDepthIn: 10.56, topOfFillInitialIn: 15.63, topOfFillSettledIn: 14.06,
      bags: 74.16, addedWeightPsf: 1.407, ceilingLoadPsf: 1.567, ceilingLimitPsf: 2.2, finalR: 49.2, uBefore: 0.0926, markers: 5,
    })
  })
  test('what the ceiling averages: 41.06 with the bare ring round the chimney', () => {
    expect(main(e)).toMatchObject({ averageR: 41.06, uAfter: 0.0234 })
  })
  test('without the chimney 42.55, with two eaves of 48 ft as well 40.82', () => {
    expect(main(run(noChimney))).toMatchObject({ averageR: 42.55, uAfter: 0.0226 })
    expect(main(run(both(noChimney, eaves))).averageR).toBe(40.82)
  })
  test('bare box tops take it from 47.69 to 42.55 where there is no chimney', () => {
    expect(run(noChimney).findings.find(f => f.code === 'bare-box-tops')?.message).toMatch(/^4 bare box tops cost R 5\.1 of 47\.7/)
  })
  test.each([
    ['test-combustion-in', 1.5], ['set-up', 3], ['cap-chimney-main-1', 1.5], ['box-lights-main', 3.6], ['cover-soffit-main-1', 1.2], ['fit-hatch-main-1', 1], ['cover-lights-main', 0.8], ['trim-lights-main', 0.45], ['seal-plates-main-1', 4.65],
    ['look', 0.75], ['test-combustion-interim', 1.5], ['dam-chimney-main-1', 0.5], ['curb-hatch-main-1', 0.6], ['markers-main', 0.25], ['set-machine', 1.5], ['blow-main', 2.22], ['level-main', 0.6], ['shut-hatch-main-1', 0.1], ['clean-up', 3.75], ['test-combustion-out', 1.5],
  ])('%s: %f h', (id, hours) => expect(hoursOf(e, id)).toBe(hours))
  test('twenty tasks, 30.97 h, by phase, in 2.5 days', () => {
    expect(e.tasks).toHaveLength(20)
    expect(e.labor).toMatchObject({ personHours: 30.97, days: 2.5, crewSize: 2, byPhase: { clear: 4.5, seal: 13.2, check: 2.25, contain: 1.35, insulate: 4.32, close: 3.85, prove: 1.5 } })
  })
  test.each([
    ['demo-loose-cellulose', 74.16, 76, 76, 106400], ['protection-kit', 6, 6, 6, 15000], ['sealant-10oz', 158.05, 18, 17.22, 8610], ['galvanized-coil', 17.15, 2, 1.14, 4788], ['light-cover-ic', 2, 2, 2, 4400],
    ['gypsum-typex-58', 40.22, 2, 2, 4000], ['dam-rigid', 8.67, 9, 8.67, 1517], ['noncombustible-sealant-10oz', 10.28, 2, 1.12, 1344], ['weatherstrip-17ft', 8.67, 1, 1, 1100], ['mineral-wool-r23', 4.58, 5, 4.59, 803],
    ['latch-pair', 1, 1, 1, 800], ['depth-marker', 5, 5, 5, 250],
    // 19.44 ft² over the soffit, 4.58 ft² for the tray on the hatch panel
    ['gypsum-12', 24.03, 1, 1, 1600],
  ])('%s: %f needed, %i to buy, %f charged, %i cents', (item, needed, buy, charged, totalCents) => expect(e.materials.find(m => m.item === item)).toMatchObject({ needed, buy, charged, totalCents }))
  test('thirteen materials, no more', () => expect(e.materials).toHaveLength(13))
  test('each line of the price to the cent', () => {
    expect(e.price).toMatchObject({
      materialsCents: 150612, salesTaxCents: 10543, laborCents: 148656, subcontractCents: 0, otherCents: 0, directCents: 309811, contingencyCents: 20949, overheadCents: 0, costCents: 330760,
      minimumAddedCents: 0, roundingCents: 233, customerTaxCents: 0, totalCents: 551500, incentivesCents: 0, netCents: 551500, depositCents: 0, validDays: 30, markupPct: 66.7,
    })
  })
  test('lies in the bands of the trade: $3.25 to 7.00/ft², material 20 to 40 %, sealing 25 to 60 % of labor, 1.0 to 4.5 h for 100 ft² of sealing and blowing', () => {
    const perFt2 = e.price.totalCents! / 100 / 1344, material = e.price.materialsCents! / e.price.totalCents!, sealing = e.labor.byPhase.seal! / e.labor.personHours, hours = (e.labor.byPhase.seal! + e.labor.byPhase.insulate!) / 13.44
    expect([perFt2.toFixed(2), material.toFixed(2), sealing.toFixed(2), hours.toFixed(1)]).toEqual(['4.10', '0.27', '0.43', '1.3'])
  })
})

describe('the same house, one thing otherwise', () => {
  test('heater passed: 1.5 h less, $5,385; the unread labels stay a condition', () => {
    const e = run(passed)
    expect(e.verdict).toBe('conditional')
    expect(e.labor.personHours).toBe(29.47)
    expect(hoursOf(e, 'test-combustion-in')).toBeUndefined()
    // Labor 1,486.56 − 72.00 = 1,414.56; direct 3,026.11; contingency 7 % of 2,920.68 = 204.45; cost 3,230.56; ÷ 0.6 = 5,384.27; up to 5 = 5,385.
    expect(e.price).toMatchObject({ laborCents: 141456, directCents: 302611, contingencyCents: 20445, costCents: 323056, roundingCents: 73, totalCents: 538500 })
  })
  test('heater passed, labels read, no eaves over this ceiling: go', () => expect(run(both(passed, swap('rating: unknown', 'rating: non-ic'), t => `${t}eaves: []\n`)).verdict).toBe('go'))
  test('heater failed: stop, no total, only the visit', () => {
    const e = run(failed)
    expect(e.verdict).toBe('stop')
    expect(e.price.totalCents).toBeUndefined()
    expect(e.price).toMatchObject({ otherCents: 12500, directCents: 12500 })
    expect(main(e).bags).toBeUndefined()
    expect(e.tasks.filter(t => ['seal', 'insulate', 'contain', 'check', 'prove'].includes(t.phase))).toEqual([])
  })
  test('joists at 24 in: 1.567 over 1.3 is a hold, with the lighter product beside it', () => {
    const e = run(at24)
    expect(e.verdict).toBe('hold')
    expect(e.gates.find(g => g.code === 'ceiling-over-limit')).toMatchObject({ state: 'hold', clearedByTask: 'inspect-ceiling-main' })
    expect(main(e)).toMatchObject({ ceilingLoadPsf: 1.567, ceilingLimitPsf: 1.3, lighter: { product: 'demo-loose-fiberglass', chartR: 38, ceilingLoadPsf: 0.83, totalCents: 593000, moreCents: 36500 } })
    // One bag more (74.61 · 1.02 = 76.1, up to 77), 0.02 h of blowing, 0.25 h of looking: materials 1,520.12, tax 106.41, labor 1,499.52, contingency 211.37; 3,337.42 ÷ 0.6 = 5,562.37, up to 5.
    expect(e.price).toMatchObject({ materialsCents: 152012, salesTaxCents: 10641, laborCents: 149952, contingencyCents: 21137, costCents: 333742, totalCents: 556500 })
    const glass = run(both(at24, swap('demo-loose-cellulose', 'demo-loose-fiberglass')))
    expect(glass.materials.find(m => m.item === 'demo-loose-fiberglass')!.buy).toBe(31)
    // 238 more for fill, 5.88 for a higher dam, 0.70 for the corners of higher boxes, 0.58 h less: 3,556.63 ÷ 0.6 = 5,927.72, up to 5.
    expect(glass.price).toMatchObject({ materialsCents: 175070, laborCents: 145872, costCents: 355663, totalCents: 593000 })
    expect(glass.gates.filter(g => g.code.startsWith('ceiling'))).toEqual([])
  })
  test('joists at 16 in: 1.567 under 2.2 is no gate', () => expect(run().gates.filter(g => g.code.startsWith('ceiling'))).toEqual([]))
  test('5/8 in board at 24 in carries 2.2: no gate; plaster has no published limit: a hold', () => {
    expect(run(both(at24, swap('thicknessIn: 1/2', 'thicknessIn: 5/8'))).gates.filter(g => g.code.startsWith('ceiling'))).toEqual([])
    expect(run(swap('board: gypsum', 'board: plaster')).gates.find(g => g.code.startsWith('ceiling'))).toMatchObject({ code: 'ceiling-no-limit', state: 'hold' })
  })
  test('R-60 of cellulose, 2.222 and the old batt 0.160, is over every listed ceiling: a stop for it, glass beside it', () => {
    const e = run(both(passed, swap('target: {code: iecc-2018}', 'target: {rValue: 71}')))
    expect(e.verdict).toBe('conditional')
    expect(e.gates.find(g => g.code === 'ceiling-overloaded')).toMatchObject({ state: 'stop', why: expect.stringContaining('2.38 psf') as string })
    // 1.058 + 0.160
    expect(main(e).lighter).toMatchObject({ product: 'demo-loose-fiberglass', chartR: 60, ceilingLoadPsf: 1.218 })
    expect(e.tasks.map(t => t.id)).not.toContain('blow-main')
  })
  test('sixty vented bays: a piece of 48 in and a wind block in each, 9.0 h, before the blow', () => {
    const e = run(both(passed, t => `${t}eaves:\n  - {in: main, at: front, lengthFt: 48, ventedBays: 30}\n  - {in: main, at: back, lengthFt: 48, ventedBays: 30}\n`))
    // (15.63 + 2 − (5.5 − 1 · 13/12)) ÷ (5/13) = 34.4 in: one piece
    expect(e.eaves).toMatchObject({ bays: 72, ventedBays: 60, baffles: 60, windBlocks: 60 })
    expect(hoursOf(e, 'baffles-main')).toBe(9)
    expect(e.tasks.findIndex(t => t.id === 'baffles-main')).toBeLessThan(e.tasks.findIndex(t => t.id === 'blow-main'))
    // Strip: (14.06 − 5.5 + 13/12) · 12/5 − 4.5 = 18.64 in
    expect(main(e).edgeStripFt).toBe(1.55)
  })
  test('a sagging ceiling: the sealing stands, fill and dams go', () => {
    const e = run(both(passed, sagging))
    expect(e.verdict).toBe('conditional')
    expect(e.gates.find(g => g.code === 'ceiling-sagging')).toMatchObject({ state: 'stop' })
    expect(e.labor.byPhase.seal).toBe(13.2)
    expect(e.stopped.map(s => s.id).sort()).toEqual(expect.arrayContaining(['blow-main', 'curb-hatch-main-1', 'dam-chimney-main-1', 'level-main', 'markers-main', 'set-machine']))
    expect(e.tasks.filter(t => t.phase === 'contain' || t.phase === 'insulate')).toEqual([])
    expect(e.price.totalCents).toBeGreaterThan(0)
    expect(main(e).bags).toBeUndefined()
    expect(main(e).stoppedBy).toHaveLength(1)
  })
  test('vermiculite: stop, nothing is done, no total', () => {
    const e = run(both(passed, vermiculite))
    expect(e.verdict).toBe('stop')
    expect(e.tasks).toEqual([])
    expect(e.price.totalCents).toBeUndefined()
  })
  test('owner keeps the soffit open: nothing above it is covered', () => {
    const e = run(both(passed, swap('at: over the cupboards}', 'at: over the cupboards, decline: yes}')))
    expect(e.tasks.map(t => t.id)).not.toContain('cover-soffit-main-1')
    expect(e.tasks.map(t => t.id)).not.toContain('blow-main')
    expect(e.price.excludes.join(' ')).toMatch(/over the cupboards/)
  })
  test('items of the file in another order: the same hours and the same price', () => {
    const lines = file.split('\n'), first = lines.findIndex(l => l.includes('kind: top-plate')), last = lines.findIndex(l => l.includes('kind: hatch'))
    const turned = [...lines.slice(0, first), ...lines.slice(first, last + 1).reverse(), ...lines.slice(last + 1)].join('\n')
    const e = run(() => turned)
    expect(e.price).toMatchObject({ materialsCents: 150612, laborCents: 148656, totalCents: 551500 })
    expect(e.labor.personHours).toBe(30.97)
  })
})
