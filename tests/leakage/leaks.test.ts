// Effective leakage areas at 4 Pa, as found and closed, by hand from the table and from sizes.
import { expect, test } from 'vitest'
import type { JobFile } from '../../src/job/job-file.ts'
import { openingKinds, type Opening } from '../../src/scope/index.ts'
import { found } from '../../src/scope/kind.ts'
import type { Leak } from '../../src/scope/leaks.ts'
import { leakage } from '../../src/reference/leakage.ts'
import { books } from '../openings/take.ts'
import { make, onHouses } from '../property/job.ts'
import { openFloor } from '../../src/scope/areas/open-floor.ts'

const leakOf = (item: Opening): readonly [number, number] | undefined => {
  const kind = openingKinds.find(k => k.kind === item.kind)! as unknown as { leak?(f: unknown, b: unknown): Leak }
  const leak = kind.leak?.(found(item, '/openings/0', 'x'), books)
  return leak && [leak.before.value, leak.after.value]
}
const near = (a: readonly [number, number] | undefined, b: readonly [number, number]): void => { expect(a![0]).toBeCloseTo(b[0], 3); expect(a![1]).toBeCloseTo(b[1], 3) }

test('parts by the table', () => {
  near(leakOf({ kind: 'recessed-light', in: 'main', count: 4, rating: 'non-ic', diameterIn: 6, heightIn: 7, at: 'x' }), [4 * 1.6, 4 * 0.23])
  near(leakOf({ kind: 'wire-hole', in: 'main', count: 22, holeIn: 0.75, at: 'x' }), [22 * 0.441786, 22 * 0.441786 * 0.31 / 0.93]) // no wider than its hole: π ÷ 4 · 0.75² = 0.4418
  near(leakOf({ kind: 'wire-hole', in: 'main', count: 22, holeIn: 1.5, at: 'x' }), [22 * 0.93, 22 * 0.31])
  // A 2 in pipe is 2.375 outside: π ÷ 4 · (2.5² − 2.375²) = 0.4786, two of them; in a hole of 3 in by the table.
  near(leakOf({ kind: 'pipe', in: 'main', count: 2, nominalIn: 2, material: 'pvc', holeIn: 2.5, at: 'x' }), [2 * 0.478616, 2 * 0.478616 / 3])
  near(leakOf({ kind: 'pipe', in: 'main', count: 2, nominalIn: 2, material: 'pvc', holeIn: 3, at: 'x' }), [2 * 0.93, 2 * 0.31])
  near(leakOf({ kind: 'duct-boot', in: 'main', count: 7, sizeIn: [4, 10], gapIn: 0.25, at: 'x' }), [7 * 0.78, 7 * 0.16])
  near(leakOf({ kind: 'hatch', in: 'main', sizeIn: [22, 30], panelR: 0, gasket: 'no', latch: 'no', at: 'x' }), [4.6, 2.8])
  near(leakOf({ kind: 'hatch', in: 'main', sizeIn: [22, 30], panelR: 0, gasket: 'yes', latch: 'no', at: 'x' }), [2.8, 2.8])
  near(leakOf({ kind: 'pull-down-stair', in: 'main', sizeIn: [54, 22.5], panelR: 0, gasket: 'no', at: 'x' }), [6.8, 0.62])
})
test('plates by the foot of seam: inside walls have two', () => {
  near(leakOf({ kind: 'top-plate', in: 'main', wall: 'inside', lengthFt: 186, gapIn: 0.125, at: 'x' }), [372 * 0.071, 372 * 0.0236])
  near(leakOf({ kind: 'top-plate', in: 'main', wall: 'outside', lengthFt: 100, gapIn: 0.125, at: 'x' }), [7.1, 2.36])
})
test('a soffit leaks through its seams, a chimney through its gap; closed, each along the edge of its cover', () => {
  // 240 in round · 1/4 = 60 in²; 60 · 0.61 · 0.5 = 18.3; 20 ft of edge · 0.0047 = 0.094.
  near(leakOf({ kind: 'dropped-soffit', in: 'main', sizeFt: [8, 2], at: 'x' }), [18.3, 0.094])
  // 21 · 25 − 17 · 21 = 168 in²; 168 · 0.61 · 0.5 = 51.24; 76 in of brick, 6.333 ft · 0.0047 = 0.0298.
  near(leakOf({ kind: 'chimney', in: 'main', sizeIn: [17, 21], gapIn: 2, inUse: 'yes', at: 'x' }), [51.24, 0.0298])
  // 36 in round · 1/4 = 9 in²; three bays: 3 · 9 · 0.305 = 8.235; 3 ft · 0.0047 · 3 = 0.0423.
  near(leakOf({ kind: 'open-stud-bay', in: 'main', count: 3, sizeIn: [14.5, 3.5], at: 'x' }), [8.235, 0.0423])
})
test('a chase that is open below leaks as wide as it is, one that finishes close through their seams', () => {
  const chase = { kind: 'open-chase', in: 'main', sizeIn: [16, 20], flue: 'no', airFor: 'none', at: 'x' } as const
  // 72 in round · 1/4 = 18 in² · 0.305 = 5.49; open: 320 in² · 0.305 = 97.6.
  near(leakOf(chase), [5.49, 6 * 0.0047])
  near(leakOf({ ...chase, below: 'open' }), [97.6, 6 * 0.0047])
})
test('air for a flame and lines of water count as no leak', () => {
  expect(['combustion-air-opening', 'heat-producing-device', 'water-line'].map(k => openingKinds.find(x => x.kind === k)!).every(k => !('leak' in k))).toBe(true)
})
test('closing never opens: each row of the table, and every opening of the generated houses', () => {
  for (const r of leakage.rows) { expect(r.minIn2).toBeLessThanOrEqual(r.bestIn2); expect(r.bestIn2).toBeLessThanOrEqual(r.maxIn2) }
  onHouses(({ json }) => { for (const s of json.sealing) if (s.leakageAreaIn2Before !== undefined) expect(s.leakageAreaIn2After).toBeLessThanOrEqual(s.leakageAreaIn2Before) })
})
test('what is not closed leaks as before: kept open by the owner, or stopped', () => {
  const house: JobFile = { format: 'lidwork-job/1', job: { id: 'quince', title: 'Quince Lane', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' }, house: { state: 'WI', yearBuilt: 2004 }, target: { rValue: 49 },
    notFound: [], hazards: [], areas: [openFloor.sample], eaves: [], appliances: [], openings: [{ kind: 'dropped-soffit', in: 'main', sizeFt: [8, 2], at: 'kitchen' }] }
  const after = (more: Partial<JobFile>) => make({ ...house, ...more }).json.sealing.map(s => s.leakageAreaIn2After)
  expect(after({})).toEqual([0.09])
  expect(after({ openings: house.openings.map(o => ({ ...o, decline: 'yes' as const })) })).toEqual([18.3])
  expect(after({ hazards: [{ kind: 'wet-wood', in: 'main', at: 'valley', cause: 'roof' }] })).toEqual([18.3])
})
