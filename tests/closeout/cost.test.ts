// Job cost: every sum redone here from the lines printed, and the margin from what was sold and spent.
import { describe, expect, test } from 'vitest'
import type { AsBuiltOut } from '../../src/closeout/output.ts'
import { newCompany } from '../../src/papers/new-books.ts'
import { closed, example, run, text } from './close.ts'

const JOB = text('examples/quince-lane-14.job.yaml')
/** The close-out of the example without its head, with lines taken out or changed. */
const body = (...changes: readonly (readonly [string | RegExp, string])[]): string => changes.reduce((t, [from, to]) => {
  if (typeof from === 'string' ? !t.includes(from) : !from.test(t)) throw new Error(`no ${String(from)}`)
  return t.replace(from, to)
}, text('examples/quince-lane-14.closeout.yaml').replace(/^(#.*\n)*format.*\njob.*\n/m, ''))
const cents = (x: number): number => Math.floor(x + 0.5 + 1e-6)

describe('the example, redone', () => {
  test('hours, wage, materials, tax, cost and margin', async () => {
    const { cost } = JSON.parse((await example('quince-lane-14')).out) as AsBuiltOut
    const hours = [4, 5.5, 1.5, 1.5, 0.5, 1.25, 0.25, 9.5, 4, 0.75, 1.5, 7, 0.5, 0.75, 0.25, 1.5, 2.25, 0.5, 0.1, 4, 1.5, 1].reduce((a, b) => a + b)
    expect(cost.personHours).toBeCloseTo(hours, 9)
    expect(cost.job!.laborCents).toBe(cents(hours * 4800))
    // Bags 66 for 65, tubes 23 for 19.7, sheets 3 for 2, baffles 50 for 49, coil 1 for 1.07; all else as estimated.
    const m = new Map(cost.materials.map(x => [x.item, x]))
    expect(['demo-loose-cellulose', 'sealant-10oz', 'gypsum-typex-58', 'baffle-14', 'galvanized-coil'].map(i => m.get(i)!.totalCents)).toEqual([66 * 1400, 23 * 500, 3 * 2000, 50 * 190, 4200])
    for (const x of cost.materials) expect(x.totalCents, x.item).toBe(cents(x.used * x.unitPriceCents))
    for (const x of cost.materials) if (x.asEstimated) expect([x.used, x.totalCents]).toEqual([x.estimated, x.estimatedCents])
    const j = cost.job!
    expect(j.materialsCents).toBe(cost.materials.reduce((s, x) => s + x.totalCents, 0))
    expect(j.salesTaxCents).toBe(cents(j.materialsCents * 0.07))
    expect(j.costCents).toBe(j.materialsCents + j.salesTaxCents + j.laborCents + j.subcontractCents + j.otherCents + j.overheadCents + j.contingencyCents)
    expect([j.contingencyCents, j.soldCents]).toEqual([0, 697000])
    expect(cost.marginKeptPct).toBe(Math.round((697000 - j.costCents) / 697000 * 1000) / 10)
    expect(cost.asEstimated).toEqual(cost.materials.filter(x => x.asEstimated).map(x => x.item))
  })
  test('the estimate’s own column is the estimate', async () => {
    const { cost } = await closed(body(), JOB)
    expect(cost.estimate).toMatchObject({ costCents: 418082, soldCents: 697000, marginPct: 40 })
    expect(cost.estimatedHours).toBe(46.67)
    for (const t of cost.tasks) if (t.personHours !== undefined) expect(t.overHours).toBeCloseTo(t.personHours - t.estimatedHours, 2)
  })
})

describe('what is not known', () => {
  test('one task without its hours: no job cost, and the task is named', async () => {
    const { cost } = await closed(body([/ {2}- \{task: look, .*\n/, '']), JOB)
    expect([cost.job, cost.marginKeptPct, cost.missing]).toEqual([undefined, undefined, ['hours of look']])
  })
  test('a task that was not done took 0', async () => {
    const { cost } = await closed(body(['task: look, personHours: 0.75', 'task: look, personHours: 0']), JOB)
    expect([cost.missing, cost.personHours]).toEqual([[], 48.85])
  })
  test('costs and changes without a figure are missing too', async () => {
    const { cost } = await closed(`${body()}costs: [{what: dump, of: other}]\nchanges: [{what: two baffles}]\n`, JOB)
    expect(cost.missing).toEqual(['cost of dump', 'price of two baffles'])
  })
})

describe('money', () => {
  test('other trades, fees, changes and another contract', async () => {
    const { cost } = await closed(`${body()}costs: [{what: electrician, of: subcontract, paid: 370}, {what: dump, of: other, paid: 45.5}]\nsoldFor: 6900\nchanges: [{what: two baffles, price: 24}, {what: no flag, price: -4.5}]\n`, JOB)
    const j = cost.job!
    expect([j.subcontractCents, j.otherCents, cost.changesCents, j.soldCents]).toEqual([37000, 4550, 1950, 690000 + 1950])
    expect(cost.marginKeptPct).toBe(Math.round((j.soldCents - j.costCents) / j.soldCents * 1000) / 10)
  })
  test('a price that was paid stands for that of the book, for bags too', async () => {
    const { cost } = await closed(body([/(materials:\n)/, '$1  - {item: demo-loose-cellulose, price: 15.25}\n  - {item: depth-marker, price: 0.4}\n']), JOB)
    const of = (i: string) => cost.materials.find(m => m.item === i)!
    expect(of('demo-loose-cellulose')).toMatchObject({ used: 66, unitPriceCents: 1525, totalCents: 100650 })
    expect(of('depth-marker')).toMatchObject({ used: 4, unitPriceCents: 40, asEstimated: true })
  })
  test('a product in place of another: its bags are paid, the other’s are not', async () => {
    const { cost } = await closed(body(['{in: main, maker', '{in: main, product: demo-loose-fiberglass, maker'], ['bags: 66', 'bags: 27']), JOB)
    const of = (i: string) => cost.materials.find(m => m.item === i)!
    expect([of('demo-loose-cellulose').totalCents, of('demo-loose-fiberglass').totalCents]).toEqual([0, 27 * 4200])
  })
  test('overhead by the hour and by percent is in the cost of the job', async () => {
    const firm = (lines: string) => newCompany().replace(/^grossMarginPct: 40.*$/m, lines)
    for (const [lines, of] of [['overheadPerHour: 20\nnetProfitPct: 10', (j: Record<string, number>) => cents(49.6 * 2000) + 0 * j['laborCents']!], ['overheadPct: 25\nnetProfitPct: 10', (j: Record<string, number>) => cents((j['materialsCents']! + j['salesTaxCents']! + j['laborCents']! + j['subcontractCents']! + j['otherCents']!) * 0.25)]] as const) {
      const ran = await run(body(), { job: JOB, line: '--json --company firm.yaml', more: { 'firm.yaml': firm(lines) } })
      const j = (JSON.parse(ran.out) as AsBuiltOut).cost.job! as unknown as Record<string, number>
      expect(j['overheadCents'], lines).toBe(of(j))
    }
  })
  test('a tax that the customer pays is no part of what was sold', async () => {
    const ran = await run(body(), { job: JOB, line: '--json --company firm.yaml', more: { 'firm.yaml': newCompany().replace(/^# salesTax: contractor-pays/m, 'salesTax: customer-taxed ') } })
    const { cost } = JSON.parse(ran.out) as AsBuiltOut
    expect(cost.estimate.soldCents % 500).toBe(0) // rounded up to $5 before the tax
    expect(cost.job!.salesTaxCents).toBe(0)
  })
})
