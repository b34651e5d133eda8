// One job under two books: the prices are those of the estimates, the parts add up, and a chart that turns a gate is told.
import fc from 'fast-check'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import type { CompanyFile } from '../../src/books/company-file.ts'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import type { PriceBook } from '../../src/books/price-book.ts'
import { shapeOf } from '../../src/books/shape.ts'
import { estimate } from '../../src/estimate/estimate.ts'
import { keptStand, standKept } from '../../src/estimate/quotes/kept-stand.ts'
import { DayMissing, repriced, standOf, type RepricedOut } from '../../src/estimate/quotes/reprice.ts'
import { Totals } from '../../src/estimate/quotes/reprice-totals.ts'
import { estimateJson } from '../../src/estimate/to-json.ts'
import { targetOf } from '../../src/job/target.ts'
import type { Job } from '../../src/job/job.ts'
import { readJob } from '../../src/job/read.ts'
import { seed } from '../property/job.ts'

const folder = join(import.meta.dirname, '../../examples')
const jobs = readdirSync(folder).filter(f => f.endsWith('.job.yaml')).map((f): Job => { const r = readJob(readFileSync(join(folder, f)), f); if (!r.ok) throw new Error(f); return r.job })
const quince = jobs.find(j => j.file.startsWith('quince'))!
const with_ = (job: Job, status: Job['data']['job']['status'], quote?: Job['data']['quote']): Job => ({ ...job, data: { ...job.data, job: { ...job.data.job, status }, ...(quote ? { quote } : {}) } })

function reprice(job: Job, from: PriceBook, to: PriceBook, { company = demoCompany, on, through = s => s }: { company?: CompanyFile; on?: string; through?: typeof kept } = {}): RepricedOut {
  const [old, now] = [from, to].map(b => shelf(b, company).for(targetOf(job.data))) as [ReturnType<ReturnType<typeof shelf>['for']>, ReturnType<ReturnType<typeof shelf>['for']>]
  return repriced(job.file, job.data, { stand: through(standOf(job.data, old)), books: old }, { stand: through(standOf(job.data, now)), books: now }, on)
}
const kept = (s: ReturnType<typeof standOf>): ReturnType<typeof standOf> => standKept(JSON.parse(JSON.stringify(keptStand(s))) as ReturnType<typeof keptStand>)

/** Every price times a factor, by item. */
const moved = (book: PriceBook, factor: (item: string) => number): PriceBook => {
  const price = <P extends { item: string; price: number }>(p: P): P => ({ ...p, price: Math.round(p.price * factor(p.item) * 100) / 100 })
  return { ...book, dated: '2026-06-01', products: book.products.map(price), blown: book.blown.map(price) }
}
const dearer = moved(demoPrices, item => (item === 'demo-loose-cellulose' ? 1.25 : 1))
const added = (r: RepricedOut): number => { const { items, ...lines } = r.effects!; return items.reduce((sum, i) => sum + i.priceCents, 0) + Object.values(lines).reduce((a, b) => a + b, 0) }

describe('the two prices', () => {
  test.each(jobs.map(j => [j.file, j] as const))('%s: are those of its estimates', (_, job) => {
    const r = reprice(job, demoPrices, dearer)
    for (const [book, total, cost] of [[demoPrices, r.oldCents, r.oldCostCents], [dearer, r.newCents, r.newCostCents]] as const) {
      const out = estimateJson(estimate(job, shelf(book, demoCompany).for(targetOf(job.data))), job)
      expect([out.price.totalCents, out.price.costCents]).toEqual([total, cost])
      expect(book === demoPrices ? r.verdictOld : r.verdictNew).toBe(out.verdict)
    }
    if (r.changeCents !== undefined) expect(added(r)).toBe(r.changeCents)
  })
  test.each(jobs.map(j => [j.file, j] as const))('%s: a stand that was kept gives the same', (_, job) => { expect(reprice(job, demoPrices, dearer, { through: kept })).toEqual(reprice(job, demoPrices, dearer)) })
  test('nothing moves where the books are the same', () => {
    for (const job of jobs) {
      const r = reprice(job, demoPrices, { ...demoPrices, name: 'another name', dated: '2027-01-01' })
      if (r.newCents === undefined) { expect([r.verdictNew, r.oldCents, r.action]).toEqual(['stop', undefined, 'ask']); continue }
      expect([r.changeCents, r.changePct, r.lossCents, r.newCents, r.effects]).toEqual([0, 0, 0, r.oldCents, { items: [], laborCents: 0, otherCents: 0, minimumCents: 0, roundingCents: 0 }])
      expect(r.honoredMarginPct).toBe(r.marginPct)
    }
  })
  test('by hand: 76 bags that cost 3.50 more each', () => {
    const r = reprice(quince, demoPrices, dearer), bags = estimateJson(estimate(quince, shelf(demoPrices, demoCompany).for(targetOf(quince.data))), quince).materials.find(m => m.item === 'demo-loose-cellulose')!
    // cost of the line; with 7 % tax and 7 % contingency; at a margin of 40 %
    const more = bags.charged * 350
    expect(r.effects!.items).toEqual([{ item: 'demo-loose-cellulose', name: bags.name, costCents: more, priceCents: Math.round(more * 1.14 / 0.6) }])
    expect(Math.abs(r.lossCents! - more * 1.14)).toBeLessThan(1.5)
    expect(r.honoredMarginPct).toBeCloseTo((r.oldCents! - r.newCostCents!) / r.oldCents! * 100, 0)
    expect(r.newCents! % 500).toBe(0)
  })
})

describe('on random prices and companies', () => {
  const factors = fc.record({ seed: fc.integer(), most: fc.constantFrom(1.01, 1.1, 1.5, 3) })
  /** A factor for each item, from its name and the seed: the same each time. */
  const factorOf = ({ seed: s, most }: { seed: number; most: number }) => (item: string): number => { let h = s | 0; for (const c of item) h = Math.imul(h ^ c.charCodeAt(0), 0x9e3779b1); return 1 + ((h >>> 8) / 0xffffff) * (most - 1) * (h & 1 ? 1 : -0.3) }
  const { grossMarginPct: _, ...ungrossed } = demoCompany
  const companies: readonly CompanyFile[] = [demoCompany, { ...ungrossed, overheadPerHour: 21, netProfitPct: 8 }, { ...ungrossed, overheadPct: 25, netProfitPct: 8, salesTax: 'customer-taxed' }, { ...demoCompany, minimumCharge: 7000, salesTax: 'exempt' }]
  test('the effects add up to the change, and rounding is no more than its step and the parts of cents', () => {
    fc.assert(fc.property(factors, fc.constantFrom(...jobs), fc.constantFrom(...companies), (f, job, company) => {
      const r = reprice(job, demoPrices, moved(demoPrices, factorOf(f)), { company })
      if (!r.effects) return
      expect(added(r)).toBe(r.changeCents)
      expect(Math.abs(r.effects.roundingCents)).toBeLessThan(company.roundUpTo * 100 * 1.1 + r.effects.items.length + 10)
      expect(r.effects.laborCents).toBe(0)
      const materials = (book: PriceBook): number => estimateJson(estimate(job, shelf(book, company).for(targetOf(job.data))), job).price.materialsCents!
      expect(r.effects.items.reduce((sum, i) => sum + i.costCents, 0)).toBe(materials(moved(demoPrices, factorOf(f))) - materials(demoPrices))
    }), { seed, numRuns: 40 })
  })
  test('no unit price can rise and a price fall', () => {
    const items = [...demoPrices.products, ...demoPrices.blown].map(p => p.item)
    fc.assert(fc.property(fc.constantFrom(...items), fc.constantFrom(...jobs), fc.constantFrom(1.01, 1.3, 4), (item, job, by) => {
      const r = reprice(job, demoPrices, moved(demoPrices, i => (i === item ? by : 1)))
      expect(r.changeCents ?? 0).toBeGreaterThanOrEqual(0)
      expect(r.lossCents ?? 0).toBeGreaterThanOrEqual(0)
    }), { seed, numRuns: 120 })
  })
  test('the totals are the sums of the jobs, and their parts add up', () => {
    const to = moved(demoPrices, factorOf({ seed: 5, most: 1.5 })), all = jobs.map(j => reprice(j, demoPrices, to)), totals = new Totals()
    all.forEach(r => totals.add(r))
    const t = totals.out()
    const sum = (key: 'oldCents' | 'newCents' | 'changeCents' | 'lossCents'): number => all.reduce((s, r) => s + (r.changeCents === undefined ? 0 : r[key]!), 0)
    for (const key of ['oldCents', 'newCents', 'changeCents', 'lossCents'] as const) {
      expect(t[key]).toBe(sum(key))
      expect(t.byStatus.reduce((s, x) => s + x[key], 0)).toBe(t[key])
      expect(t.byAction.reduce((s, x) => s + x[key], 0)).toBe(t[key])
    }
    expect([t.jobs, t.unpriced]).toEqual([all.length, all.filter(r => r.changeCents === undefined).length])
    expect(t.items).toHaveLength(10)
    expect(t.items.reduce((s, i) => s + i.priceCents, 0) + t.otherItems.priceCents + t.laborCents + t.otherCents + t.minimumCents + t.roundingCents).toBe(t.changeCents)
    expect([...t.items].sort((a, b) => Math.abs(b.priceCents) - Math.abs(a.priceCents))).toEqual(t.items)
  })
})

describe('a clause', () => {
  const clause = (abovePct: number | undefined, on = '2026-03-03', basePrice = 14) => [{ item: 'demo-loose-cellulose', basePrice, on, ...(abovePct === undefined ? {} : { abovePct }) }]
  const signed = (escalation: ReturnType<typeof clause>, to = dearer): RepricedOut => reprice(with_(quince, 'signed', { escalation }), demoPrices, to)
  test('passes on the rise over the price it names: bags that cost 17.50 in place of 14.00', () => {
    const r = signed(clause(undefined))
    expect(r.action).toBe('re-issue')
    expect(r.clauses).toEqual([{ item: 'demo-loose-cellulose', basePriceCents: 1400, unitPriceCents: 1750, charged: r.clauses[0]!.charged, passedOnCents: r.clauses[0]!.charged * 350 }])
  })
  test.each([[25, 'honor'], [24.9, 're-issue'], [0, 're-issue']] as const)('that bears a rise of %f %% of one of 25 %%: %s', (above, action) => { expect(signed(clause(above)).action).toBe(action) })
  test.each([['2026-05-31', 're-issue'], ['2026-06-01', 'honor'], ['2026-06-02', 'honor']] as const)('of %s, under a book of 2026-06-01: %s', (on, action) => { expect(signed(clause(0, on)).action).toBe(action) })
  test('asks nothing where the price is not above it, or the job uses none', () => {
    expect(signed(clause(0, '2026-03-03', 17.5)).action).toBe('honor')
    expect(signed([{ ...clause(0)[0]!, item: 'no-such-item' }]).action).toBe('honor')
  })
  test('binds no quote that is not signed', () => {
    expect(reprice(with_(quince, 'sent', { escalation: clause(0) }), demoPrices, dearer).clauses).toEqual([])
  })
})

describe('charts', () => {
  /** The same R from heavier fill: half the coverage at twice the weight. */
  const heavier: PriceBook = { ...demoPrices, dated: '2026-06-01', blown: demoPrices.blown.map(p => ({ ...p, chart: p.chart.map(r => ({ ...r, coverageFt2: r.coverageFt2 / 2, bagsPer1000Ft2: r.bagsPer1000Ft2 * 2, weightPsf: r.weightPsf * 2 })) })) }
  test('another price is no other shape, another chart is', () => {
    expect(shapeOf(dearer)).toBe(shapeOf(demoPrices))
    expect(shapeOf(heavier)).not.toBe(shapeOf(demoPrices))
  })
  test('a load that passes under the old one is a gate under the new one: ask, also where it is signed', () => {
    for (const status of ['sent', 'signed'] as const) {
      const r = reprice(with_(quince, status), demoPrices, heavier)
      expect(r.gates.map(g => g.code)).toEqual(expect.arrayContaining([expect.stringMatching(/^ceiling-over/)]))
      expect([r.action, r.why]).toEqual(['ask', expect.stringContaining(r.gates[0]!.why)])
    }
  })
  test('more bags take more hours: labor moves, and all adds up', () => {
    const double: PriceBook = { ...demoPrices, blown: demoPrices.blown.map(p => ({ ...p, bagLb: p.bagLb / 2, chart: p.chart.map(r => ({ ...r, coverageFt2: r.coverageFt2 / 2, bagsPer1000Ft2: r.bagsPer1000Ft2 * 2 })) })) }
    const r = reprice(quince, demoPrices, double)
    expect(r.effects!.laborCents).toBeGreaterThan(0)
    expect(added(r)).toBe(r.changeCents)
  })
})

test('a quote with a date and no day to judge it by is refused', () => {
  expect(() => reprice(with_(quince, 'sent', { sentOn: '2026-03-02' }), demoPrices, dearer)).toThrow(DayMissing)
  expect(reprice(with_(quince, 'sent', { sentOn: '2026-03-02' }), demoPrices, dearer, { on: '2026-03-01' })).toMatchObject({ action: 'ask', why: 'sent 2026-03-02, later than --on' })
  expect(reprice(with_(quince, 'sent', { sentOn: '2026-03-02' }), demoPrices, dearer, { on: '2026-03-02' })).toMatchObject({ status: 'sent' })
  expect(reprice(with_(quince, 'sent', { sentOn: '2026-03-02' }), demoPrices, dearer, { on: '2026-04-02' })).toMatchObject({ status: 'expired', expiresOn: '2026-04-01', sentOn: '2026-03-02' })
})
