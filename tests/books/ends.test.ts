// Every figure of a company file at both ends of its range: a job is priced, or a finding says what is wrong; the program never fails.
import { describe, expect, test } from 'vitest'
import { stringify } from 'yaml'
import { companySchema } from '../../src/books/company-file.ts'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { valueIds, workNames } from '../../src/books/names.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from '../cli/test-io.ts'

/** The invented house with all that is asked of air and fuel, so that each of its values is used. */
const JOB = newJob().replace(/^# (energy|ventilation|ducts): ?/gm, '$1: ').replace(/^ {2}# (- \{id: (trunk|.*use: supply))/gm, '  $1').replace(/^# tests:$/m, 'tests: {cfm50: 2400}')
const run = async (book: 'prices' | 'company', content: object) => {
  const ran = await lidwork(`estimate a.job.yaml --json --${book} b.yaml`, { files: { 'a.job.yaml': JOB, 'b.yaml': stringify(content) } })
  if (ran.code === 0) { const { price } = JSON.parse(ran.out) as { price: { totalCents: number } }; expect(Number.isSafeInteger(price.totalCents)).toBe(true) } else expect(ran.err).toMatch(/^(a\.job|b)\.yaml:\d+:\d+: error /m)
  return ran.code
}
interface Range { readonly minimum?: number; readonly exclusiveMinimum?: number; readonly maximum?: number; readonly multipleOf?: number; readonly enum?: readonly string[] }
const ends = (at: Range): readonly (number | string)[] => (at.enum ? at.enum : at.maximum === undefined ? [] : [at.minimum ?? (at.exclusiveMinimum ?? 0) + (at.multipleOf ?? 0.01), at.maximum])
const keys = Object.entries(companySchema().properties as unknown as Record<string, Range>).flatMap(([key, at]) => ends(at).map(end => [key, end] as const))

describe('a company file', () => {
  test('has figures to try', () => expect(keys.length).toBeGreaterThan(40))
  test.each(keys)('%s: %s', async (key, end) => { expect(await run('company', { ...demoCompany, [key]: end })).toBeLessThan(2) })
  test.each(workNames.flatMap(work => [0, 100].map(hours => [work, hours] as const)))('rate of %s: %i h', async (work, hours) => { expect(await run('company', { ...demoCompany, rates: [{ work, hours }] })).toBeLessThan(2) })
  test.each(valueIds.flatMap(id => [0, 100000].map(value => [id, value] as const)))('value of %s: %i', async (id, value) => { expect(await run('company', { ...demoCompany, values: [{ id, value }] })).toBeLessThan(2) })
})

describe('several figures at once', () => {
  test.each([
    { crew: 20, hoursPerDay: 14, rates: [{ work: 'day-start', hours: 8 }, { work: 'day-close', hours: 8 }] },
    { crew: 20, hoursPerDay: 14, rates: [{ work: 'day-start', hours: 5 }, { work: 'day-close', hours: 5 }], billWholeDays: 'yes' },
    { wage: 1000000, contingencyPct: 100, grossMarginPct: 90, minimumCharge: 1000000, salesTax: 'customer-taxed', salesTaxPct: 30 },
    { crew: 1, hoursPerDay: 1.6, wage: 0, roundUpTo: 0.01 },
  ])('%j', async change => { expect(await run('company', { ...demoCompany, ...change })).toBeLessThan(2) })
})

describe('a price book', () => {
  test.each([0, 0.0001, 1000000])('every price %d', async price => { expect(await run('prices', { ...demoPrices, products: demoPrices.products.map(p => ({ ...p, price })), blown: demoPrices.blown.map(p => ({ ...p, price })) })).toBeLessThan(2) })
  test.each([0.01, 100000])('every pack %d', async pack => { expect(await run('prices', { ...demoPrices, products: demoPrices.products.map(p => ({ ...p, pack })) })).toBeLessThan(2) })
  test('every waste at 100 %', async () => { expect(await run('prices', { ...demoPrices, products: demoPrices.products.map(p => ({ ...p, wastePct: 100 })) })).toBeLessThan(2) })
})
