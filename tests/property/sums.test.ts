// Sums to the cent, redone from the printed figures; nothing empty in the output; same input, same output.
import { describe, expect, test } from 'vitest'
import { decimal } from '../../src/units/money.ts'
import { make, onHouses, VERDICTS } from './job.ts'

/** amount × cents in whole numbers, half up, written apart from the program's own rule. */
function line(amount: number, cents: number): number {
  const [a, i] = decimal(amount), [c, j] = decimal(cents), scale = 10n ** BigInt(i + j)
  return Number((a * c * 2n + scale) / (scale * 2n))
}
const sum = (list: readonly (number | undefined)[]): number => list.reduce<number>((s, x) => s + (x ?? 0), 0)

describe('the printed figures add up', () => {
  test('materials, labor, direct, cost, total and net, to the cent', () => {
    onHouses(({ json: { price: p, materials, tasks, labor, verdict } }) => {
      if (verdict === 'stop') { expect(Object.keys(p).sort()).toEqual(['directCents', 'excludes', 'otherCents']); return }
      for (const m of materials) expect(line(m.charged, m.unitPriceCents), m.item).toBe(m.totalCents)
      expect(sum(materials.map(m => m.totalCents))).toBe(p.materialsCents)
      expect(sum(tasks.map(t => line(t.personHours, labor.wageCents)))).toBe(p.laborCents)
      expect(sum([p.materialsCents, p.salesTaxCents, p.laborCents, p.subcontractCents, p.otherCents])).toBe(p.directCents)
      expect(sum([p.directCents, p.contingencyCents, p.overheadCents])).toBe(p.costCents)
      expect(p.netCents).toBe(p.totalCents! - p.incentivesCents!)
      const before = p.totalCents! - p.customerTaxCents! - p.roundingCents! - p.minimumAddedCents!
      expect(p.totalCents! - p.customerTaxCents!, 'a whole step of the company file').toBe(Math.ceil((before + p.minimumAddedCents!) / 500) * 500)
      expect(p.minimumAddedCents).toBe(tasks.length === 0 ? 0 : Math.max(0, 85000 - before))
      if (p.totalCents! > 0) expect(p.marginPct).toBeCloseTo((p.totalCents! - p.costCents!) / p.totalCents! * 100, 0)
    })
  })

  test('the price is cost ÷ (1 − margin), half up', () => {
    onHouses(({ data, json: { price: p, verdict } }) => {
      if (verdict === 'stop') return
      const left = 100n - BigInt(data.choices?.marginPct ?? 40), cost = BigInt(p.costCents!) * 100n
      expect(BigInt(p.totalCents! - p.customerTaxCents! - p.roundingCents! - p.minimumAddedCents!)).toBe((2n * cost + left) / (2n * left))
    })
  })

  test('hours: the whole is the sum of the tasks and of the phases', () => {
    onHouses(({ json: { tasks, labor, verdict } }) => {
      if (verdict === 'stop') expect(tasks).toEqual([])
      expect(Math.abs(labor.personHours - sum(tasks.map(t => t.personHours)))).toBeLessThan(0.005)
      expect(Math.abs(labor.personHours - sum(Object.values(labor.byPhase)))).toBeLessThan(0.005)
      for (const [phase, hours] of Object.entries(labor.byPhase)) expect(Math.abs(hours - sum(tasks.filter(t => t.phase === phase).map(t => t.personHours))), phase).toBeLessThan(0.005)
    })
  })

  test('every material, every hour of sealing and every clearing step belongs to a task of the plan', () => {
    onHouses(({ json }) => {
      const ids = new Set(json.tasks.map(t => t.id))
      expect(ids.size, 'one name for one task').toBe(json.tasks.length)
      for (const m of json.materials) { expect(m.usedFor.length, m.item).toBeGreaterThan(0); for (const t of m.usedFor) expect(ids.has(t), t).toBe(true) }
      for (const s of json.sealing) { for (const t of s.tasks) expect(ids.has(t), t).toBe(true); if (s.tasks.length === 0) expect(s.personHours, s.id).toBe(0) }
      const sealed = sum(json.sealing.map(s => s.personHours)), all = sum(json.tasks.map(t => t.personHours))
      expect(sealed).toBeLessThanOrEqual(all + json.sealing.length * 0.01)
      for (const g of json.gates) if (g.clearedByTask !== undefined) expect(ids.has(g.clearedByTask), g.clearedByTask).toBe(true)
      for (const a of json.areas) for (const g of a.stoppedBy) expect(g === 'declined' || json.gates.some(x => x.id === g), g).toBe(true)
      for (const list of [json.gates, json.areas, json.sealing, json.stopped, json.eaves?.sides ?? []]) expect(new Set(list.map(x => x.id)).size, list.map(x => x.id).join()).toBe(list.length)
      for (const s of json.stopped) { expect(ids.has(s.id), `${s.id} is stopped and in the plan`).toBe(false); expect(s.gate === 'declined' || json.gates.some(g => g.id === s.gate && g.open), s.gate).toBe(true) }
    })
  })

  test('whole packs hold what is needed with its waste, and not one pack more', () => {
    onHouses(({ json }) => {
      for (const m of json.materials) {
        expect(Number.isInteger(m.buy), m.item).toBe(true)
        expect(m.buy, m.item).toBeGreaterThanOrEqual(m.charged - 1e-6)
        if (m.charge === 'whole') expect(m.charged).toBe(m.buy)
        else expect(m.buy - m.charged, m.item).toBeLessThan(1 + 1e-6)
      }
    })
  })
})

const empties = (v: unknown, at: string): string[] =>
  v === null || v === undefined || (typeof v === 'number' && !Number.isFinite(v)) ? [at]
    : typeof v === 'object' ? Object.entries(v).flatMap(([k, x]) => empties(x, `${at}/${k}`)) : []

describe('the output', () => {
  test('holds nothing that is null, undefined or no number, and is plain data', () => {
    onHouses(({ json }) => {
      expect(empties(json, '')).toEqual([])
      expect(JSON.parse(JSON.stringify(json))).toEqual(json)
    })
  })

  test('a total is absent under stop and only there', () => {
    onHouses(({ json }) => {
      expect(VERDICTS).toContain(json.verdict)
      expect(json.price.totalCents === undefined).toBe(json.verdict === 'stop')
      if (json.verdict === 'stop') expect(json.materials).toEqual([])
    })
  })

  test('an open hold and what it depends on is the first thing the price excludes', () => {
    onHouses(({ json }) => {
      if (json.verdict === 'hold') expect(json.price.excludes[0]).toMatch(/^The price holds only if .+\.$/)
      for (const a of json.areas) expect(a.netAreaFt2).toBeLessThanOrEqual(a.areaFt2)
    })
  })

  test('is the same when made twice', () => {
    onHouses(({ data, json }) => expect(make(structuredClone(data)).json).toEqual(json))
  })
})
