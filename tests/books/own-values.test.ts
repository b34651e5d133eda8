// What a job sets for itself: it counts, it is listed with what it stands in place of, and what cannot be taken is said where it stands.
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { companySchema } from '../../src/books/company-file.ts'
import type { EstimateOut } from '../../src/estimate/output.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from '../cli/test-io.ts'

const JOB = newJob().replace(/^choices:[\s\S]*?(?=^\S)/m, '').replace(/^choices:[\s\S]*$/m, '')
const withChoices = (choices: string): string => `${JOB}\nchoices: ${choices}\n`
const priced = async (choices?: string, options = '', files: Record<string, string> = {}): Promise<EstimateOut> => {
  const ran = await lidwork(`estimate a.job.yaml --json ${options}`, { files: { ...files, 'a.job.yaml': choices === undefined ? JOB : withChoices(choices) } })
  expect(ran.err).toBe('')
  return JSON.parse(ran.out) as EstimateOut
}
const faults = async (choices: string): Promise<string[]> => {
  const ran = await lidwork('check a.job.yaml --json', { files: { 'a.job.yaml': withChoices(choices) } })
  return (JSON.parse(ran.out) as { findings: { severity: string; code: string; path: string }[] }).findings.filter(f => f.severity === 'error').map(f => `${f.code} ${f.path}`)
}
const plain = await priced()

describe('a figure of one job', () => {
  test('a rate: it counts, and the output says for what; of one that nobody asks for too', async () => {
    const e = await priced('{rates: [{work: look, hours: 2}, {work: slope-plug, hours: 0.3}]}')
    expect(e.tasks.find(t => t.id === 'look')!.personHours).toBe(2)
    expect(e.labor.personHours).toBeCloseTo(plain.labor.personHours + 2 - plain.tasks.find(t => t.id === 'look')!.personHours, 9)
    expect(e.overrides).toEqual([{ path: '/choices/rates/0/hours', value: 2, insteadOf: 0.75 }, { path: '/choices/rates/1/hours', value: 0.3, insteadOf: 'nothing: this house has no use for it' }])
    expect(e.assumptions.some(a => a.id === 'rate.look')).toBe(false)
  })
  test('a rate of the company is what it stands in place of', async () => {
    const e = await priced('{rates: [{work: look, hours: 2}]}', '--company c.yaml', { 'c.yaml': JSON.stringify({ ...demoCompany, rates: [{ work: 'look', hours: 1 }] }) })
    expect(e.overrides).toEqual([{ path: '/choices/rates/0/hours', value: 2, insteadOf: 1 }])
  })
  test('a starting value, with its line in explain', async () => {
    const e = await priced('{values: [{id: bead-seam, value: 0.5}]}')
    expect(e.overrides).toEqual([{ path: '/choices/values/0/value', value: 0.5, insteadOf: 0.25 }])
    expect(e.materials.find(m => m.item === 'sealant-10oz')!.needed).toBeGreaterThan(plain.materials.find(m => m.item === 'sealant-10oz')!.needed)
    const job = withChoices('{values: [{id: bead-seam, value: 0.5}]}'), line = job.trimEnd().split('\n').length
    const { out } = await lidwork('explain a.job.yaml materials.sealant-10oz.needed', { files: { 'a.job.yaml': job } })
    expect(out).toContain('materials.sealant-10oz.needed')
    expect((await lidwork('estimate a.job.yaml', { files: { 'a.job.yaml': job } })).out).toContain('/choices/values/0/value: 0.5 instead of 0.25')
    expect(line).toBeGreaterThan(50)
  })
  test('a price, its breaks and its stock', async () => {
    const bags = plain.materials.find(m => m.item === 'demo-loose-cellulose')!
    const e = await priced('{prices: [{item: demo-loose-cellulose, price: 13.2, stock: 5}]}'), m = e.materials.find(x => x.item === bags.item)!
    expect([m.unitPriceCents, m.totalCents, m.buy]).toEqual([1320, bags.charged * 1320, bags.buy - 5])
    expect(e.overrides).toEqual([{ path: '/choices/prices/0/price', value: 13.2, insteadOf: 14 }, { path: '/choices/prices/0/stock', value: 5, insteadOf: '0' }])
    const broken = await priced(`{prices: [{item: demo-loose-cellulose, breaks: [{atLeast: ${bags.buy}, price: 12}]}]}`)
    expect(broken.materials.find(x => x.item === bags.item)).toMatchObject({ unitPriceCents: 1200, listPriceCents: 1400, breakFrom: bags.buy })
  })
  test('a price of its own takes the breaks of the book away', async () => {
    const prices = JSON.stringify({ ...demoPrices, blown: demoPrices.blown.map(p => ({ ...p, breaks: [{ atLeast: 2, price: 1 }] })) })
    const e = await priced('{prices: [{item: demo-loose-cellulose, price: 13.2}]}', '--prices p.yaml', { 'p.yaml': prices })
    expect(e.materials.find(m => m.item === 'demo-loose-cellulose')!.unitPriceCents).toBe(1320)
  })
  test('a product for a role', async () => {
    const prices = JSON.stringify({ ...demoPrices, products: [...demoPrices.products, { ...demoPrices.products[0]!, item: 'sealant-29oz', name: 'latex sealant, 29 oz', pack: 29, price: 9 }] })
    const e = await priced('{products: {seam-sealant: sealant-29oz}}', '--prices p.yaml', { 'p.yaml': prices })
    expect(e.materials.map(m => m.item)).toContain('sealant-29oz')
    expect(e.materials.map(m => m.item)).not.toContain('sealant-10oz')
    expect(e.overrides).toEqual([{ path: '/choices/products/seam-sealant', value: 'sealant-29oz', insteadOf: 'sealant-10oz' }])
  })
  test('what another trade charges', async () => {
    const light = JOB.replace(/^hazards: \[\]/m, 'hazards: [{kind: open-splice, in: main, at: north gable, count: 2}]')
    expect(light).not.toBe(JOB)
    const files = { 'a.job.yaml': `${light}\nchoices: {subcontract: [{work: wiring-repair, price: 110}]}\n` }
    const e = JSON.parse((await lidwork('estimate a.job.yaml --json', { files })).out) as EstimateOut
    expect(e.overrides).toEqual([{ path: '/choices/subcontract/0/price', value: 110, insteadOf: 95 }])
    expect(e.price.subcontractCents).toBe(22000)
  })
})

describe('a figure of the company, for one job', () => {
  test('wage, contingency and rounding, redone by hand', async () => {
    const e = await priced('{company: {wage: 50, contingencyPct: 10, roundUpTo: 1}}'), { price: p, labor, tasks } = e
    const laborCents = tasks.reduce((sum, t) => sum + Math.floor(t.personHours * 5000 + 0.5 + 1e-6), 0)
    expect([labor.wageCents, p.laborCents]).toEqual([5000, laborCents])
    expect(p.contingencyCents).toBe(Math.floor((p.materialsCents! + laborCents) / 10 + 0.5))
    expect(p.totalCents! % 100).toBe(0)
    expect(e.overrides).toEqual([{ path: '/choices/company/wage', value: 50, insteadOf: 48 }, { path: '/choices/company/contingencyPct', value: 10, insteadOf: 7 }, { path: '/choices/company/roundUpTo', value: 1, insteadOf: 5 }])
  })
  test('overhead and net profit in place of the company’s gross margin', async () => {
    const { price: p, labor } = await priced('{company: {overheadPerHour: 21, netProfitPct: 8}}')
    expect(p.overheadCents).toBe(Math.round(labor.personHours * 2100))
    expect(p.totalCents).toBe(Math.ceil(Math.round(p.costCents! / 0.92) / 500) * 500)
  })
  test('any key of the company file that is not its name or its papers', async () => {
    const apart = ['format', 'name', 'dated', 'demo', 'letterhead', 'terms', 'subcontract', 'rates', 'values', 'supplier']
    const { out } = await lidwork('schema job'), schema = JSON.parse(out) as { properties: { choices: { properties: { company: { properties: object } } } } }
    expect(Object.keys(schema.properties.choices.properties.company.properties).sort()).toEqual(Object.keys(companySchema().properties).filter(k => !apart.includes(k)).sort())
  })
  test('the same figures as the company file has change nothing but the list', async () => {
    const { wage, crew, hoursPerDay, grossMarginPct, contingencyPct, minimumCharge, salesTaxPct, roundUpTo, validDays } = demoCompany
    const e = await priced(JSON.stringify({ company: { wage, crew, hoursPerDay, grossMarginPct, contingencyPct, minimumCharge, salesTaxPct, roundUpTo, validDays } }))
    expect(e.overrides).toHaveLength(9)
    expect({ ...e, overrides: [], assumptions: [] }).toEqual({ ...plain, overrides: [], assumptions: [] })
  })
})

describe('what a job cannot set', () => {
  test.each([
    ['{rates: [{work: lok, hours: 2}]}', ['rate-unknown /choices/rates/0/work']],
    ['{rates: [{work: look, hours: 2}, {work: look, hours: 1}]}', ['name-twice /choices/rates/1/work']],
    ['{values: [{id: bead-sem, value: 2}]}', ['value-unknown /choices/values/0/id']],
    ['{subcontract: [{work: light-swap, price: 2.555}]}', ['part-of-a-cent /choices/subcontract/0/price']],
    ['{prices: [{item: demo-lose-cellulose, price: 2}]}', ['item-unknown /choices/prices/0/item']],
    ['{prices: [{item: latch-pair, price: 2}, {item: latch-pair, price: 3}]}', ['item-twice /choices/prices/1/item']],
    ['{prices: [{item: latch-pair, price: 2, breaks: [{atLeast: 3, price: 2}]}]}', ['break-not-cheaper /choices/prices/0/breaks/0/price']],
    ['{products: {seam-sealent: sealant-10oz}}', ['role-unknown /choices/products/seam-sealent']],
    ['{products: {seam-sealant: gun-foam-24oz}}', ['item-unknown /choices/products/seam-sealant']],
    ['{supplier: nobody}', ['supplier-unknown /choices/supplier']],
    ['{company: {wage: 50, builtUpWage: {basePerHour: 24, productivePct: 80, burden: []}}}', ['wage-twice /choices/company/builtUpWage']],
    ['{company: {overheadPerHour: 21}}', ['margin-missing /choices/company/overheadPerHour']],
    ['{marginPct: 30, company: {grossMarginPct: 35}}', ['overhead-twice /choices/marginPct']],
    ['{company: {crew: 1, hoursPerDay: 1}}', ['day-too-short /choices/company/hoursPerDay']],
    ['{company: {visitFee: 1.005}}', ['part-of-a-cent /choices/company/visitFee']],
    ['{company: {name: Other}}', ['key-unknown /choices/company/name']],
    ['{permitFee: 85.555}', ['part-of-a-cent /choices/permitFee']],
  ])('%s', async (choices, expected) => { expect(await faults(choices)).toEqual(expected) })
  test('the same in a batch under two price books', async () => {
    const files = { 'a.job.yaml': withChoices('{rates: [{work: lok, hours: 2}]}'), 'p.yaml': JSON.stringify(demoPrices) }
    const ran = await lidwork('reprice a.job.yaml --from p.yaml --to p.yaml', { files })
    expect(ran.code).toBe(1)
    expect(ran.err).toContain('rate-unknown')
  })
})
