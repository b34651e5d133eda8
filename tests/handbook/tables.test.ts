// The reference tables against what was published, typed in here a second time.
import { describe, expect, test } from 'vitest'
import { ceilingLimits, lumber, MOST_PSF_ROW } from '../../src/reference/ceilings.ts'
import { conditions, densities, fills } from '../../src/reference/fills.ts'
import { editions, surfaces, targets, zones } from '../../src/reference/targets.ts'
import { method } from '../../src/scope/kind.ts'
import { asTape } from '../../src/units/tape.ts'

describe('ceiling R by edition and zone (BASC, 2009–2021 IECC and IRC minimum insulation requirements; 2018 also in Philadelphia’s IRC N1102.1.2)', () => {
  // Zones 1, 2, 3, 4, 4 marine, 5, 6, 7, 8
  const published: Record<string, readonly number[]> = {
    'iecc-2009': [30, 30, 30, 38, 38, 38, 49, 49, 49],
    'iecc-2012': [30, 38, 38, 49, 49, 49, 49, 49, 49],
    'iecc-2015': [30, 38, 38, 49, 49, 49, 49, 49, 49],
    'iecc-2018': [30, 38, 38, 49, 49, 49, 49, 49, 49],
    'iecc-2021': [30, 49, 49, 60, 60, 60, 60, 60, 60],
  }
  test('covers five editions and nine zones', () => {
    expect([...editions]).toEqual(Object.keys(published))
    expect([...zones]).toEqual(['1', '2', '3', '4', '4C', '5', '6', '7', '8'])
  })
  test.each(Object.entries(published))('%s', (edition, rs) => {
    const row = targets.rows.find(r => r.edition === edition)!
    expect(zones.map(z => row.r[z])).toEqual(rs)
  })
  test('sections of the tables', () => expect(targets.rows.map(r => r.section)).toEqual(['402.1.1', 'R402.1.1', 'R402.1.2', 'R402.1.2', 'R402.1.3']))
})

describe('existing fill', () => {
  // DOE/CE-0180 insulation fact sheet, "including aging and settling": range, and the figure it names.
  test.each([['fiberglass-batt', 2.9, 3.2, 3.8], ['loose-fiberglass', 2.3, 2.5, 2.7], ['loose-rock-wool', 2.7, 2.8, 3], ['loose-cellulose', 3.4, 3.5, 3.7], ['old-cellulose', 3.4, 3.5, 3.7],
    // NRCan, Keeping the Heat In, table 3-1: mineral fiber batt
    ['mineral-wool-batt', 3, 3.4, 4],
    // ASHRAE Handbook (from memory): 2.13 at 7 to 8.2 lb/ft³, 2.27 at 4 to 6; a home inspectors' table has 2
    ['vermiculite', 2, 2.1, 2.3],
    // ASHRAE Handbook (from memory): sawdust and shavings, 8 to 15 lb/ft³
    ['wood-shavings', 2.2, 2.22, 2.4]] as const)('%s: R per inch from %f to %f', (fill, least, named, most) => {
    const row = fills.rows.find(r => r.fill === fill)!
    expect(row.rPerIn).toBe(named)
    expect(row.rPerIn).toBeGreaterThanOrEqual(least)
    expect(row.rPerIn).toBeLessThanOrEqual(most)
  })
  // The same sheet: lb/ft³ in attics. Old hammermilled cellulose 2.2 to 3.0.
  test.each([['loose-cellulose', 1.5, 2], ['loose-fiberglass', 0.5, 1], ['loose-rock-wool', 1.7, 1.7], ['old-cellulose', 2.2, 3], ['vermiculite', 4, 8.2], ['wood-shavings', 8, 15]] as const)('%s: %f to %f lb/ft³', (fill, least, most) => {
    const { densityPcf } = densities.rows.find(r => r.fill === fill)!
    expect(densityPcf).toBeGreaterThanOrEqual(least)
    expect(densityPcf).toBeLessThanOrEqual(most)
  })
  test('gaps by grade: ANSI/RESNET 301 takes 2 % for grade II and 5 % for grade III', () => {
    expect(Object.fromEntries(conditions.rows.map(r => [r.condition, r.gaps]))).toEqual({ good: 0, fair: 0.02, poor: 0.05 })
  })
  test('no figure is without source', () => { for (const t of [fills, conditions, ceilingLimits, lumber, targets, surfaces]) expect(`${t.source} ${t.obtained}`).toMatch(/\w{3}.*\w{3}/) })
})

describe('ceilings', () => {
  // DOE/EREC loose-fill sheet (a gypsum maker's figures): 1.3 lb/ft² for 1/2 in at 24 in; 2.2 for 1/2 in at 16 in, or for 5/8 in.
  test.each([['gypsum', 0.5, 16, 2.2], ['gypsum', 0.5, 24, 1.3], ['gypsum', 0.625, 24, 2.2]])('%s %f in at %i in carries %f lb/ft²', (board, thicknessIn, spacingIn, limitPsf) => {
    expect(ceilingLimits.rows.find(r => r.board === board && r.thicknessIn === thicknessIn && r.spacingIn === spacingIn)?.limitPsf).toBe(limitPsf)
  })
  test('what no one published is marked as judgment or memory, and no row is over the most', () => {
    const seen = ceilingLimits.rows.filter(r => (r.obtained ?? ceilingLimits.obtained).startsWith('published')).map(r => `${r.board} ${asTape(r.thicknessIn)} at ${r.spacingIn}`)
    expect(seen).toEqual(['gypsum 1/2 at 16', 'gypsum 1/2 at 24', 'gypsum 5/8 at 24'])
    expect(Math.max(...ceilingLimits.rows.map(r => r.limitPsf))).toBe(MOST_PSF_ROW.limitPsf)
    expect(ceilingLimits.rows.map(r => r.board)).not.toContain('plaster')
  })
  // The same sheet: weight of R-38 at the heavy end, and whether it may lie on 1/2 in at 24 in; on the other two ceilings all may.
  test.each([['cellulose', 2, 'no'], ['fiberglass', 1.2, 'yes'], ['rock wool', 1.8, 'no']] as const)('R-38 of %s, %f lb/ft², on 1/2 in at 24 in: %s', (_, psf, may) => {
    const of = (thicknessIn: number, spacingIn: number) => ceilingLimits.rows.find(r => r.board === 'gypsum' && r.thicknessIn === thicknessIn && r.spacingIn === spacingIn)!.limitPsf
    expect(psf <= of(0.5, 24) ? 'yes' : 'no').toBe(may)
    expect(psf).toBeLessThanOrEqual(Math.min(of(0.5, 16), of(0.625, 24)))
  })
  test('softwood as milled (PS 20, from memory)', () => {
    expect(lumber.rows.map(r => [r.size, r.widthIn, r.depthIn])).toEqual([['2x4', 1.5, 3.5], ['2x6', 1.5, 5.5], ['2x8', 1.5, 7.25], ['2x10', 1.5, 9.25], ['2x12', 1.5, 11.25]])
  })
})

describe('films and boards', () => {
  const of = (what: string) => surfaces.rows.find(r => r.what === what)!
  test('base: WAC 51-11 film 0.61 heat up, JA4.5 gypsum 1/2 in 0.45, film 0.61', () => expect(of('base').r).toBeCloseTo(0.61 + 0.45 + 0.61, 9))
  test('box lid: ASHRAE 90.1 A2.4 gypsum 5/8 in; SWS 4.1001.1 allows R 0.56 at most', () => expect(of('box-lid').r).toBe(0.56))
  test('softwood: JA4.5 has 5.00 for 4 in', () => expect(of('softwood-per-inch').r * 4).toBe(5))
})

describe('how a gap is closed (SWS 3.0101.1)', () => {
  test.each([[0.125, 'sealant'], [0.25, 'sealant'], [0.3, 'foam with backing'], [3, 'foam with backing']])('%f in: %s', (gapIn, how) => expect(method(gapIn).method).toBe(how))
})
