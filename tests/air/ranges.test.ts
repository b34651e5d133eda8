// Air and energy on generated houses: what must hold whatever the house.
import { describe, expect, test } from 'vitest'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { make, onHouses } from '../property/job.ts'

/** What the digits of the output leave of a figure. */
const ROUNDED = 1.5
const rising = (what: string, ...xs: readonly (number | undefined)[]): void => {
  const there = xs.filter(x => x !== undefined)
  for (let i = 1; i < there.length; i++) expect(there[i]!, what).toBeGreaterThanOrEqual(there[i - 1]! - 1e-9)
}

describe('generated houses', () => {
  test('sealing never raises leakage, and every range holds what is expected', () => {
    let cuts = 0
    onHouses(({ json: { airLeakage: a, ventilation: v } }) => {
      if (!a) return
      rising('listed area', a.listedIn2After, a.listedIn2Before)
      rising('CFM50 cut', 0, a.cfm50CutLow, a.cfm50CutExpected, a.cfm50CutHigh, a.cfm50Before)
      rising('CFM50', 0, a.cfm50After, a.cfm50Before)
      rising('natural flow', 0, a.naturalCfmAfter, a.naturalCfmBefore)
      rising('natural flow by N', 0, a.naturalByNCfmAfter, a.naturalByNCfmBefore)
      rising('ceiling by area', a.ceilingIn2Low, a.ceilingIn2, a.ceilingIn2High)
      if (a.stack) rising('neutral level sinks as the top is sealed', 0, a.stack.neutralFtAfter, a.stack.neutralFtBefore, a.stack.heightFt)
      if (a.stack && a.stack.stackPa >= 0) rising('and the ceiling is pressed harder', 0, a.stack.ceilingPaBefore, a.stack.ceilingPaAfter)
      if (a.leaks) expect(a.leaks.map(l => l.leakageAreaIn2)).toEqual(a.leaks.map(l => l.leakageAreaIn2).sort((x, y) => y - x))
      if (v) rising('fan', 0, v.fanCfm, v.totalCfm + (v.localDeficitCfm ?? 0))
      if (a.cfm50CutExpected !== undefined) cuts++
    })
    expect(cuts).toBeGreaterThan(20)
  })

  test('without a blower door no flow is told', () => {
    let silent = 0
    onHouses(({ data, json: { airLeakage: a, savings: s, ventilation: v } }) => {
      if (data.tests?.cfm50 !== undefined) return
      for (const key of ['cfm50CutLow', 'cfm50After', 'naturalCfmBefore', 'leakageAreaIn2', 'ach50Before', 'stack', 'ventilationCfm'] as const) expect(a?.[key]).toBeUndefined()
      expect(v).toBeUndefined()
      if (s) expect(s.missing.some(m => m.includes('tests.cfm50'))).toBe(true)
      if (s) silent++
    })
    expect(silent).toBeGreaterThan(20)
  })

  test('a year: low, expected, high; parts add up; a payback only where something is saved', () => {
    let years = 0
    onHouses(({ data, json: { savings: s, verdict, price } }) => {
      expect(s !== undefined, 'a saving only where the file speaks of energy, and something is done').toBe(data.energy !== undefined && verdict !== 'stop')
      if (!s) return
      if (s.billCentsExpected === undefined) { expect(s.missing.length).toBeGreaterThan(0); return }
      years++
      rising('heat', 0, s.heatingBtuLow, s.heatingBtuExpected, s.heatingBtuHigh)
      rising('fuel', 0, s.fuelUnitsLow, s.fuelUnitsExpected, s.fuelUnitsHigh)
      rising('summer', 0, s.coolingKwhLow, s.coolingKwhExpected, s.coolingKwhHigh)
      rising('money', 0, s.billCentsLow, s.billCentsExpected, s.billCentsHigh)
      rising('CO2', 0, s.co2LbLow, s.co2LbExpected, s.co2LbHigh)
      rising('payback', 0, s.paybackYearsLow, s.paybackYearsExpected, s.paybackYearsHigh)
      const parts = s.parts ?? []
      expect(Math.abs(parts.reduce((sum, p) => sum + p.heatingBtu, 0) - s.heatingBtuExpected!)).toBeLessThanOrEqual(ROUNDED * 1000 * (parts.length + 1))
      const priced = parts.filter(p => p.priceCents !== undefined)
      if (price.totalCents !== undefined && priced.length > 0) expect(Math.abs(priced.reduce((sum, p) => sum + p.priceCents!, 0) - price.totalCents)).toBeLessThanOrEqual(ROUNDED * priced.length)
      if (s.billCentsHigh === 0) expect(s.paybackYearsLow).toBeUndefined()
    })
    expect(years).toBeGreaterThan(20)
  })

  test('ducts: sealed and wrapped delivers at least as much as either alone, either at least as much as found', () => {
    let both = 0
    onHouses(({ json: { ductDelivery: d } }) => {
      if (!d) return
      const at = Object.fromEntries(d.cases.map(c => [c.id, c])), found = at['as-found']!
      for (const key of ['designShare', 'averageShare'] as const) for (const id of ['wrap-only', 'seal-only'] as const) {
        rising(`${id} ${key}`, 0, found[key], at[id]?.[key], at['both']?.[key])
        expect(at['both']?.[key] ?? 0).toBeLessThanOrEqual(1)
      }
      if (at['both']) both++
      if (d.leakCfmAfter !== undefined) expect(d.leakCfmAfter).toBeLessThanOrEqual(d.leakCfmBefore)
    })
    expect(both).toBeGreaterThan(3)
  })

  test('climate, fuel and fresh air change no gate, no task, no hour and no price', () => {
    let asked = 0
    onHouses(({ data, json }) => {
      if (!data.energy && !data.ventilation) return
      const { energy: _, ventilation: __, ...rest } = data, other = make(rest).json
      // What a duct test should find is advice, and goes by the air that is moved where no floor is given.
    const of = ({ verdict, gates, stopped, tasks, materials, labor, price }: EstimateOut) => ({ verdict, gates, stopped, tasks: tasks.map(t => ({ ...t, title: t.title.replace(/, \d+ wanted at most/, '') })), materials, labor, price })
      expect(of(other)).toEqual(of(json))
      asked++
    }, 120)
    expect(asked).toBeGreaterThan(30)
  })
})
