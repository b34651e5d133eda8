// Proof of the fill. The worked house is done by hand: 48 × 28 ft, 2x6 at 16 in, 3 1/2 in of old batts, R-38 of cellulose sold.
import { describe, expect, test } from 'vitest'
import type { AreaBuiltOut } from '../../src/closeout/output.ts'
import { closed, text, WORKED } from './close.ts'

const main = async (bags: number | string, markers: string, more = ''): Promise<AreaBuiltOut> => (await closed(`areas: [{in: main, bags: ${bags}, markersIn: [${markers}]${more}}]`)).areas[0]!
/** 3 1/2 in old, 12.13 in new: 15.63 on the ruler. */
const FULL = '15 3/4, 15 3/4, 16, 15 3/4, 15 3/4'

describe('one area by hand', () => {
  // Net of joists: 1344 · (1 − 1.5/16 · 2/10.56) = 1320.14 ft². Bags by coverage 1320.14 ÷ 17.8 = 74.165, by weight 1.407 · 1320.14 ÷ 25 = 74.297: the label rounds each column, and the larger counts.
  test('75 bags and each marker over 15.63 in prove R-38', async () => {
    const a = await main(75, FULL)
    expect(a).toMatchObject({ proof: 'proved', why: [], soldR: 38, certifiedR: 38, settledDepthIn: 10.56, bags: 75, bagsNeeded: 74.3, bagsMissing: 0, markersNeeded: 5, markersRead: 5, oldFillIn: 3.5, initialDepthIn: 12.25, meanDepthIn: 12.3 })
    expect(a.weightPsf).toBeCloseTo(75 * 25 / 1320.14, 3) // 1.420 psf
    expect(a.densityPcf).toBeCloseTo(75 * 25 / (1320.14 * 12.3 / 12), 2) // 1.39 lb/ft³ as blown
  })
  test('74 bags are one too few, and too light: R-30 is proved, no R between', async () => {
    const a = await main(74, FULL)
    expect(a).toMatchObject({ proof: 'short', certifiedR: 30, settledDepthIn: 8.33, bagsMissing: 0.3 })
    expect(a.why.join('; ')).toContain('1 bag missing for R-38')
    expect(a.why.join('; ')).toContain('fluffed')
  })
  test('bags by coverage and not by weight: 74.2 lie between 74.165 and 74.297, and do not prove the row', async () => {
    const a = await main(74.2, FULL)
    expect(a.rows!.find(r => r.chartR === 38)).toMatchObject({ bags: true, weight: false, depth: true })
    expect([a.proof, a.certifiedR]).toEqual(['short', 30])
  })
  test('all the bags and one marker a hair low: R-30, and the marker is named', async () => {
    const a = await main(90, '15 3/4, 15 1/2, 16, 15 3/4, 15 3/4')
    expect(a).toMatchObject({ proof: 'short', certifiedR: 30, bagsMissing: 0 })
    expect(a.readings!.filter(r => r.shortIn !== undefined)).toEqual([{ marker: 2, topIn: 15.5, newIn: 12, shortIn: 0.13 }])
    expect(a.why.join('; ')).toContain('under 12 1/4 in at marker 2')
  })
  test('deep and heavy enough for R-49 is R-49', async () => {
    expect(await main(97, '19 1/4, 19 1/4, 19 1/2, 19 1/4, 19 1/4')).toMatchObject({ proof: 'proved', certifiedR: 49, soldR: 38 })
  })
  test('four of five markers prove nothing: one for each 300 ft² (IECC R303.1.1.1)', async () => {
    const a = await main(80, '16, 16, 16, 16')
    expect([a.proof, a.certifiedR, a.markersNeeded]).toEqual(['not-shown', undefined, 5])
    expect(a.why).toEqual(['4 of 5 markers were read (one for each 300 ft2)'])
  })
  test('no bags, no markers, no entry: not shown, each with its word', async () => {
    expect((await main('___', FULL)).why).toEqual(['no bags are recorded'])
    expect((await closed('areas: [{in: main, bags: 80}]')).areas[0]!.why).toEqual(['no marker was read'])
    expect((await closed('flags: 2')).areas[0]).toMatchObject({ proof: 'not-shown', why: ['nothing is recorded for main'] })
  })
  test('more floor takes more bags', async () => {
    expect((await main(75, FULL, ', coveredFt2: 1400')).bagsNeeded).toBeCloseTo(74.297 * 1400 / 1344, 1)
    expect(await main(75, FULL, ', coveredFt2: 1400')).toMatchObject({ proof: 'short', coveredFt2: 1400 })
  })
  test('less than the first row is no row', async () => {
    const a = await main(20, '5, 5, 5, 5, 5')
    expect([a.proof, a.certifiedR]).toEqual(['short', undefined])
  })
  test('another product goes by its own label; two in one area by none', async () => {
    // 44.8 ft² of a 30 lb bag: 1344 · (1 − .09375 · 2/14.62) ÷ 44.8 = 29.615 by coverage; .670 · 1326.76 ÷ 30 = 29.631 by weight.
    const a = await main(30, '19, 19, 19, 19, 19', ', product: demo-loose-fiberglass')
    expect(a).toMatchObject({ proof: 'proved', certifiedR: 38, settledDepthIn: 14.62, bagsNeeded: 29.63, product: 'demo-loose-fiberglass' })
    const two = (await closed('areas: [{in: main, bags: 60, markersIn: [20, 20, 20]}, {in: main, product: demo-loose-fiberglass, bags: 40, markersIn: [20, 20]}]')).areas[0]!
    expect([two.proof, two.certifiedR]).toEqual(['not-shown', undefined])
    expect(two.why).toEqual(['demo-loose-cellulose and demo-loose-fiberglass lie in one area: no label speaks for their mix'])
  })
})

describe('a row between two rows of the label', () => {
  const between = WORKED.replace('target: {code: iecc-2018}', 'target: {rValue: 45}') // 33.8 short: R 34 between
  const body = (bags: number, top: string) => `areas: [{in: main, bags: ${bags}, markersIn: [${[top, top, top, top, top].join(', ')}]}]`
  test('as sold: it is done, and the label proves the listed row below', async () => {
    const a = (await closed(body(68, '14 1/2'), between)).areas[0]!
    expect(a).toMatchObject({ interpolated: true, soldR: 34, promisedR: 30, certifiedR: 30, proof: 'proved' })
  })
  test('enough for the listed row and not for what was sold: short', async () => {
    const a = (await closed(body(60, '14 1/2'), between)).areas[0]!
    expect(a).toMatchObject({ certifiedR: 30, proof: 'short' })
    expect(a.why.join()).toContain('missing for R 34')
  })
})

describe('the law of three', () => {
  // The chart as it stands on the invented label, typed here again: R, settled, blown, weight, coverage.
  const label = [[13, 3.61, 4.15, 0.481, 51.9], [19, 5.28, 6.07, 0.704, 35.5], [22, 6.11, 7.02, 0.815, 30.7], [30, 8.33, 9.58, 1.111, 22.5], [38, 10.56, 12.13, 1.407, 17.8], [49, 13.61, 15.64, 1.815, 13.8], [60, 16.67, 19.16, 2.222, 11.2]] as const
  const cases = [20, 27, 40, 50, 59, 60, 74, 75, 95, 96, 97, 130].flatMap((bags, i) => [6, 8, 10, 13, 15.5, 15.75, 20, 24].map((top, j) => [bags, top + ((i + j) % 3) / 4] as const))
  test('the highest row whose bags, weight and depth all stand, for each of many fills', async () => {
    for (const [bags, top] of cases) {
      const a = await main(bags, Array(5).fill(top).join(', '))
      const met = label.filter(([, settled, blown, weight, coverage]) => {
        const filled = 1344 * (1 - 1.5 / 16 * Math.min(settled, 2) / settled)
        return bags >= filled / coverage - 1e-9 && bags * 25 / filled >= weight - 1e-9 && top - 3.5 >= blown - 1e-9
      })
      expect(a.certifiedR, `${bags} bags, ${top} in`).toBe(met.at(-1)?.[0])
      expect(a.proof, `${bags} bags, ${top} in`).toBe(met.some(([r]) => r >= 38) ? 'proved' : 'short')
    }
  })
})

describe('packed and laid areas', () => {
  const laurel = text('examples/laurel-fork-7.job.yaml')
  test('packed: by bags to the least density, and R only by the label', async () => {
    const short = (await closed('areas: [{in: slope-east, bags: 5}]', laurel)).areas.find(a => a.id === 'slope-east')!
    expect(short).toMatchObject({ way: 'packed', proof: 'short' })
    const full = await closed('areas: [{in: slope-east, bags: 60}]', laurel)
    const a = full.areas.find(x => x.id === 'slope-east')!
    expect(a.proof).toBe('proved')
    expect(a.densityPcf! / a.densityNeededPcf!).toBeCloseTo(60 / a.bagsNeeded!, 2)
    expect(full.receipt.missing).toContainEqual({ part: 'slope-east', field: 'rValue', title: 'R-value' })
    const labeled = await closed('areas: [{in: slope-east, bags: 60, labelR: 18}]', laurel)
    expect(labeled.receipt.parts.find(p => p.id === 'slope-east')).toMatchObject({ rValue: 18, bags: 60 })
  })
  test('laid: thickness and R of the package', async () => {
    const out = await closed('areas: [{in: knee-east, thicknessIn: 3 1/2, labelR: 15}]', laurel)
    expect(out.areas.find(a => a.id === 'knee-east')).toMatchObject({ way: 'laid', proof: 'proved' })
    expect(out.receipt.parts.find(p => p.id === 'knee-east')).toMatchObject({ kind: 'other', thicknessIn: 3.5, rValue: 15 })
  })
})
