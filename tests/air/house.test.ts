// One house with air and fuel worked out apart from the program, facts left out one at a time, and what is there already.
import { describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import type { JobFile } from '../../src/job/job-file.ts'
import { hazardKinds } from '../../src/scope/index.ts'
import { make } from '../property/job.ts'

type Layer = { fill: 'loose-cellulose'; depthIn: number[]; condition: 'good'; action: 'keep' }
const deep = (depthIn: number): Layer[] => (depthIn === 0 ? [] : [{ fill: 'loose-cellulose', depthIn: [depthIn, depthIn, depthIn, depthIn, depthIn], condition: 'good', action: 'keep' }])
const house = (existingIn: number, more: Partial<JobFile> = {}): JobFile => ({
  format: 'lidwork-job/1', job: { id: 'by-hand', title: 'A house by hand', surveyedOn: '2026-03-01', surveyedBy: 'Ada Invented', status: 'draft' },
  house: { state: 'WI', yearBuilt: 2004, stories: 1, floorAreaFt2: 1200, volumeFt3: 9600, bedrooms: 3 }, target: { rValue: 49 }, notFound: hazardKinds.map(k => k.kind as JobFile['notFound'][number]), hazards: [], appliances: [], eaves: [],
  areas: [{ kind: 'open-floor', id: 'main', rectanglesFt: [[40, 30]], joists: { size: '2x6', spacingIn: 24 }, ceiling: { board: 'gypsum', thicknessIn: 0.5, condition: 'sound' }, roofPitch: 5, heelIn: 20, headroomIn: 62, existing: deep(existingIn) }],
  openings: [{ kind: 'top-plate', in: 'main', wall: 'outside', lengthFt: 140, gapIn: 0.25, at: 'all round' }, { kind: 'dropped-soffit', in: 'main', sizeFt: [8, 2], at: 'kitchen' }],
  tests: { cfm50: 2400 }, energy: { heating: { fuel: 'gas', efficiency: 0.8, price: 1.5, yearlyBill: 1500 }, degreeDays: { hdd65: 7000, from: 'a round number' } }, ...more,
})
const of = (data: JobFile): EstimateOut => make(data).json

describe('worked out apart from the program', () => {
  const e = of(house(4)), a = e.airLeakage!, s = e.savings!, ceiling = e.areas[0]!
  const near = (seen: number | undefined, by: number, share = 0.005) => expect(Math.abs(seen! - by) / by).toBeLessThan(share)
  const IN2_PER_CFM50 = 1 / 18.19
  test('leakage area: 2,400 CFM50 · 0.055 in²', () => near(a.leakageAreaIn2, 2400 * IN2_PER_CFM50))
  test('air changes: 2,400 · 60 ÷ 9,600 = 15', () => expect(a.ach50Before).toBe(15))
  test('natural flow: basic model of one story, suburban, 70 °F against 65 − 7,000 ÷ 212, 7 mph (ASHRAE 2001 ch. 26, seen in a copy: 0.0150, 0.0065)', () => near(a.naturalCfmBefore, 2400 * IN2_PER_CFM50 * Math.sqrt(0.015 * (70 - (65 - 7000 / 212)) + 0.0065 * 49)))
  test('the cut is the sum of parts or 60 % of the ceiling’s share, whichever is less', () => {
    const sum = (a.listedIn2Before! - a.listedIn2After!) / IN2_PER_CFM50, cap = 0.6 * 0.22 * 2400
    near(a.cfm50CutExpected, Math.min(sum, cap), 0.01)
    expect(a.cutCapped).toBe(sum > cap)
  })
  const airBtu = 1.08 * (a.naturalCfmBefore! - a.naturalCfmAfter!) * 24 * 7000 * 0.8 / 0.8
  const ceilingBtu = 24 * 1200 * (ceiling.uBefore! - ceiling.uAfter!) * 7000 * 0.8 / 0.8
  test('air: 1.08 · cfm · 24 · 7,000, of it 0.8, at an efficiency of 0.8', () => near(s.parts!.find(p => p.id === 'air')!.heatingBtu, airBtu, 0.05)) // cfm is printed whole
  test('ceiling: 24 · area · ΔU · 7,000, of it 0.8, at 0.8', () => near(s.parts!.find(p => p.id === 'ceiling')!.heatingBtu, ceilingBtu))
  test('money: therms of both at $1.50, under 35 % of the bill', () => {
    near(s.billCentsExpected, (airBtu + ceilingBtu) / 1e5 * 150, 0.02)
    expect(s.billCentsHigh).toBeLessThan(0.35 * 150000)
    expect(s.capped).toBe(false)
  })
  test('payback: price over the year’s saving', () => near(s.paybackYearsExpected, e.price.totalCents! / s.billCentsExpected!, 0.01))
})

describe('what lies there already', () => {
  const ceilingOf = (existingIn: number) => of(house(existingIn)).savings?.parts?.find(p => p.id === 'ceiling')?.heatingBtu ?? 0
  test('the more of it, the less is saved', () => {
    const saved = [1, 2, 3, 4, 6, 8, 10, 12].map(ceilingOf)
    expect(saved).toEqual([...saved].sort((x, y) => y - x))
    expect(new Set(saved).size).toBe(saved.length)
  })
  test('and never more than a third of a bill, however bare the ceiling', () => {
    const s = of(house(0, { energy: { heating: { fuel: 'gas', efficiency: 0.8, price: 1.5, yearlyBill: 400 }, degreeDays: { hdd65: 7000, from: 'a round number' } } })).savings!
    expect(s.capped).toBe(true)
    expect(s.billCentsHigh).toBe(0.35 * 40000)
    expect(s.parts!.reduce((sum, p) => sum + p.billCents, 0)).toBeLessThanOrEqual(s.billCentsExpected! + s.parts!.length)
  })
})

describe('a fact that is missing is named, and what hangs on it is not there', () => {
  const full = house(4), missing = (data: JobFile) => of(data).savings?.missing.join('; ') ?? 'no savings'
  const without = (change: object, rest: object = {}) => house(4, { ...rest, energy: { ...full.energy, ...change } } as Partial<JobFile>)
  const { floorAreaFt2: _, ...small } = full.house
  test.each([
    ['nothing said of energy', (() => { const { energy: __, ...rest } = full; return rest })(), 'no savings'],
    ['no fuel', without({ heating: undefined }), 'energy.heating: what heats the house'],
    ['no price where no state mean is at hand', without({ heating: { fuel: 'wood', efficiency: 0.6, yearlyBill: 900 } }), 'energy.heating.price: no price of wood is at hand'],
    ['no degree days of Alaska', { ...house(4), house: { ...full.house, state: 'AK' }, energy: { heating: full.energy!.heating! } } as JobFile, 'energy.degreeDays or energy.station: no mean of AK is at hand (lidwork tables stations lists the stations)'],
    ['nothing that bounds the saving', { ...without({ heating: { fuel: 'gas', efficiency: 0.8, price: 1.5 } }), house: small }, 'house.floorAreaFt2 or energy.heating.yearlyBill'],
    ['no blower door', house(4, { tests: {} }), 'tests.cfm50 and house.stories'],
    ['a cooler without degree days of summer', without({ cooling: { seer: 13, price: 0.15 } }), 'energy.degreeDays.cdd65'],
  ] as const)('%s', (_, data, words) => expect(missing(data)).toContain(words))
  test('all there: nothing is missing', () => expect(missing(full)).toBe(''))
  test('a mean price of the state stands among the assumptions with its date', () => expect(of(without({ heating: { fuel: 'gas', efficiency: 0.8, yearlyBill: 1500 } })).assumptions.find(x => x.id === 'price-gas')!.why).toMatch(/Energy Information Administration.*20\d\d/))
})
