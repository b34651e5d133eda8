// How a company prices: figures worked by hand, line by line.
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import type { CompanyFile } from '../../src/books/company-file.ts'
import type { OwnValues } from '../../src/books/own-values.ts'
import { shelf } from '../../src/books/open.ts'
import { readCompany } from '../../src/books/read.ts'
import { lineCents, markupOf, marginOf, pctOf, sale } from '../../src/calc/price.ts'
import { estimateJson } from '../../src/estimate/to-json.ts'
import { estimate } from '../../src/estimate/estimate.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { readJob } from '../../src/job/read.ts'
import { newCompany } from '../../src/papers/new-books.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { inputsOf } from '../../src/units/quantity.ts'
import { lidwork } from '../cli/test-io.ts'

const TARGET = { code: 'iecc-2018', climateZone: '5' } as const
const PARTS: CompanyFile['builtUpWage'] = {
  basePerHour: 24, productivePct: 80,
  burden: [{ what: 'FICA', pct: 7.65 }, { what: 'unemployment', pct: 3.5 }, { what: 'workers’ compensation', pct: 12 }, { what: 'liability', pct: 3 }, { what: 'health and time off', pct: 14 }],
}
const { wage: _, ...unpaid } = demoCompany
const { grossMarginPct: __, ...unpriced } = demoCompany
const JOB = newJob()
const priced = (company: CompanyFile, text = JOB): EstimateOut => {
  const read = readJob(text, 'a.job.yaml')
  if (!read.ok) throw new Error(JSON.stringify(read.findings))
  const { data } = read.job
  return estimateJson(estimate(read.job, shelf(demoPrices, company).for({ code: data.target.code!, climateZone: data.house.climateZone!, ...(data.choices === undefined ? {} : { choices: data.choices as OwnValues }) })), read.job)
}
/** Half up, in whole numbers. */
const share = (cents: number, hundredthsOfPct: number): number => Math.floor((2 * cents * hundredthsOfPct + 10000) / 20000)

test.each([[9.1, 10], [16.7, 20], [20, 25], [25, 100 / 3], [33.3, 50], [40, 200 / 3]])('a price at a margin of %f %% carries a markup of %f %% (the same table, the other way)', (marginPct, markup) => {
  expect(markupOf.fn({ priceCents: sale.fn({ costCents: 1e7, marginPct }), costCents: 1e7 })).toBeCloseTo(markup, 0)
})

describe('a price worked by hand: wage from its parts, 26 h, materials $1,450 with tax, an electrician at $380', () => {
  const { company } = shelf(demoPrices, { ...unpaid, builtUpWage: PARTS }).for(TARGET)
  test('$24.00 and 40.15 % make $33.64 for each paid hour, and at 80 % $42.05 for each productive one', () => {
    expect(company.wageCents.value).toBe(4204.5)
    const { paidCents, productivePct } = inputsOf(company.wageCents)
    expect([paidCents!.value, productivePct!.value]).toEqual([3363.6, 80])
    expect(inputsOf(paidCents!)['burdenPct']!.value).toBeCloseTo(40.15, 9)
  })
  test('labor $1,093.17, direct $3,024.67, cost $3,236.40, price $4,979.08 at 35 %', () => {
    const labor = lineCents.fn({ amount: 26, unitPriceCents: company.wageCents.value })
    expect(labor).toBe(109317)
    const direct = 145000 + pctOf.fn({ cents: 145000, pct: 7 }) + labor + 38000
    expect(direct).toBe(302467)
    const cost = direct + pctOf.fn({ cents: direct, pct: 7 })
    expect(cost).toBe(323640)
    expect(sale.fn({ costCents: cost, marginPct: 35 })).toBe(497908)
  })
  test('35 % put on as markup would be $4,369.14, a margin of 25.9 %', () => {
    const marked = 323640 + pctOf.fn({ cents: 323640, pct: 35 })
    expect(marked).toBe(436914)
    expect(marginOf.fn({ priceCents: marked, costCents: 323640 })).toBeCloseTo(25.9, 1)
  })
})

// Markup and the margin it leaves: the table of a remodeling trade journal on managing markups, to the digit it prints (33 and 67 there are a third and two thirds: 25 and 40 %).
test.each([[10, 9.1], [20, 16.7], [25, 20], [100 / 3, 25], [33, 24.8], [50, 33.3], [200 / 3, 40], [67, 40.1]])('a markup of %f %% is a margin of %f %%', (markup, margin) => {
  expect(marginOf.fn({ priceCents: 100 + markup, costCents: 100 })).toBeCloseTo(margin, 1)
  expect(markupOf.fn({ priceCents: 100 + markup, costCents: 100 })).toBeCloseTo(markup, 9)
})

describe('what a company file may set', () => {
  const plain = priced(demoCompany)
  const { price } = plain
  test('the house of these tests has work of every kind that is charged', () => {
    expect(price.materialsCents).toBeGreaterThan(0)
    expect(price.laborCents).toBeGreaterThan(0)
  })
  test('overhead for each person-hour and a net profit, in place of a gross margin', () => {
    const { price: p, labor } = priced({ ...unpriced, overheadPerHour: 21, netProfitPct: 8 })
    expect(p.overheadCents).toBe(Math.round(labor.personHours * 2100))
    expect(p.costCents).toBe(p.directCents + p.contingencyCents! + p.overheadCents!)
    const before = Math.round(p.costCents! / 0.92)
    expect(p.totalCents).toBe(Math.ceil(before / 500) * 500)
    expect(p.directCents).toBe(price.directCents)
  })
  test('overhead as a share of cost', () => {
    const { price: p } = priced({ ...unpriced, overheadPct: 25, netProfitPct: 10 })
    expect(p.overheadCents).toBe(share(p.directCents + p.contingencyCents!, 2500))
    expect(p.totalCents).toBe(Math.ceil(Math.round(p.costCents! / 0.9) / 500) * 500)
  })
  test('a gross margin of the job stands in for overhead and net profit, and the output says for what', () => {
    const e = priced({ ...unpriced, overheadPct: 25, netProfitPct: 10 }, `${JOB}choices: {marginPct: 40}\n`)
    expect(e.price).toEqual(price)
    expect(e.overrides).toEqual([{ path: '/choices/marginPct', value: 40, insteadOf: 'overhead and net profit of 10 %' }])
  })
  test('sales tax that the customer pays stands below the margin', () => {
    const { price: p } = priced({ ...demoCompany, salesTax: 'customer-taxed' })
    expect(p.salesTaxCents).toBe(0)
    expect(p.directCents).toBe(price.directCents - price.salesTaxCents!)
    const offered = p.totalCents! - p.customerTaxCents!
    expect(offered % 500).toBe(0)
    expect(p.customerTaxCents).toBe(share(offered, 700))
    expect(p.marginPct).toBeCloseTo((offered - p.costCents!) / offered * 100, 1)
  })
  test('exempt: no sales tax anywhere', () => {
    const { price: p } = priced({ ...demoCompany, salesTax: 'exempt' })
    expect([p.salesTaxCents, p.customerTaxCents]).toEqual([0, 0])
  })
  test('travel by the mile, there and back each day; a job without its miles says what is missing', () => {
    const file = { ...demoCompany, travelPerMile: 0.7 }
    const far = priced(file, `${JOB}access: {driveMi: 18}\n`)
    // Whole days of the house: its set-up names them.
    const days = Math.ceil(far.labor.days)
    expect(far.price.otherCents - price.otherCents).toBe(2 * 18 * days * 70)
    expect(far.findings.filter(f => f.code === 'drive-missing')).toEqual([])
    const without = priced(file)
    expect(without.price.otherCents).toBe(price.otherCents)
    expect(without.findings.filter(f => f.code === 'drive-missing')).toHaveLength(1)
  })
  test('travel by the day, a permit, the job’s own permit', () => {
    const days = Math.ceil(plain.labor.days)
    expect(priced({ ...demoCompany, travelPerDay: 35 }).price.otherCents - price.otherCents).toBe(3500 * days)
    expect(priced({ ...demoCompany, permitFee: 60 }).price.otherCents - price.otherCents).toBe(6000)
    expect(priced({ ...demoCompany, permitFee: 60 }, `${JOB}choices: {permitFee: 85}\n`).price.otherCents - price.otherCents).toBe(8500)
  })
  test('a started day billed whole', () => {
    const { price: p, labor, tasks } = priced({ ...demoCompany, billWholeDays: 'yes' })
    const own = tasks.filter(t => /^(test-combustion-in|look-.+)$/.test(t.id)).reduce((sum, t) => sum + t.personHours, 0)
    const rest = Math.round((2 * 6.5 * Math.ceil(labor.days) - (labor.personHours - own)) * 100) / 100
    expect(rest).toBeGreaterThan(0)
    expect(p.otherCents - price.otherCents).toBe(Math.round(rest * 4800))
    expect(p.laborCents).toBe(price.laborCents)
  })
  test('a share on what other trades charge', () => {
    const swapped = { ...demoCompany, lightTreatment: 'swap' } as const
    const bare = priced(swapped).price, more = priced({ ...swapped, subMarkupPct: 15 }).price
    expect(bare.subcontractCents).toBeGreaterThan(0)
    expect(more.otherCents - bare.otherCents).toBe(share(bare.subcontractCents!, 1500))
    expect(more.subcontractCents).toBe(bare.subcontractCents)
  })
  test('explain shows the rates behind a wage from its parts', async () => {
    const file = newCompany().replace(/^wage: .*$/m, 'builtUpWage: {basePerHour: 24, productivePct: 80, burden: [{what: FICA, pct: 7.65}, {what: the rest, pct: 32.5}]}')
    const files = { 'a.job.yaml': JOB, 'firm.yaml': file }
    const { code, out } = await lidwork('explain a.job.yaml labor.wageCents --company firm.yaml', { files })
    expect(code).toBe(0)
    expect(out).toContain('paidCents')
    expect(out).toContain('productivePct')
    const { labor, tasks, price: p } = JSON.parse((await lidwork('estimate a.job.yaml --json --company firm.yaml', { files })).out) as EstimateOut
    expect(labor.wageCents).toBe(4204.5)
    expect(p.laborCents).toBe(tasks.reduce((sum, t) => sum + Math.round(t.personHours * 4204.5), 0))
  })
})

describe('a company file that would charge twice or not at all is refused', () => {
  const COMPANY = newCompany()
  const line = (key: string): string => COMPANY.split('\n').find(l => l.startsWith(`${key}:`))!
  test.each([
    ['a gross margin and overhead by the hour', line('grossMarginPct'), `${line('grossMarginPct')}\noverheadPerHour: 20`, 'overhead-twice', '/overheadPerHour'],
    ['a gross margin and overhead on cost', line('grossMarginPct'), `${line('grossMarginPct')}\noverheadPct: 20`, 'overhead-twice', '/overheadPct'],
    ['a gross margin and a net profit', line('grossMarginPct'), `${line('grossMarginPct')}\nnetProfitPct: 8`, 'overhead-twice', '/netProfitPct'],
    ['overhead two ways', line('grossMarginPct'), 'overheadPct: 20\noverheadPerHour: 20\nnetProfitPct: 8', 'overhead-twice', '/overheadPct'],
    ['neither margin nor overhead', line('grossMarginPct'), '', 'margin-missing', ''],
    ['a net profit alone', line('grossMarginPct'), 'netProfitPct: 8', 'margin-missing', ''],
    ['overhead without profit', line('grossMarginPct'), 'overheadPct: 20', 'margin-missing', '/overheadPct'],
    ['no wage', line('wage'), '', 'wage-missing', ''],
    ['two wages', line('wage'), `${line('wage')}\nbuiltUpWage: {basePerHour: 24, productivePct: 80, burden: []}`, 'wage-twice', '/builtUpWage'],
    ['one part of the burden twice', line('wage'), 'builtUpWage: {basePerHour: 24, productivePct: 80, burden: [{what: tax, pct: 8}, {what: tax, pct: 8}]}', 'name-twice', '/builtUpWage/burden/1/what'],
    ['travel two ways', line('wage'), `${line('wage')}\ntravelPerMile: 0.7\ntravelPerDay: 35`, 'travel-twice', '/travelPerDay'],
    ['a day that set-up and close-up fill', `${line('crew')}\n${line('hoursPerDay')}`, 'crew: 1\nhoursPerDay: 1.5', 'day-too-short', '/hoursPerDay'],
  ])('%s', (_, before, after, code, path) => {
    expect(COMPANY).toContain(before)
    expect(readCompany(COMPANY.replace(before, after)).findings.map(f => [f.code, f.path])).toEqual([[code, path]])
  })
  test('overhead with a net profit, 0 too, is taken', () => {
    for (const way of ['overheadPerHour: 21\nnetProfitPct: 8', 'overheadPct: 25\nnetProfitPct: 0']) expect(readCompany(COMPANY.replace(line('grossMarginPct'), way)).findings).toEqual([])
  })
})
