// Several price books side by side: each thing from whoever sells what does the work for least; or from the one named.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import type { BlownRow, PriceBook, ProductRow } from '../../src/books/price-book.ts'
import type { EstimateOut, MaterialOut } from '../../src/estimate/output.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from '../cli/test-io.ts'

const JOB = newJob().replace(/^choices:[\s\S]*?(?=^\S)/m, '').replace(/^choices:[\s\S]*$/m, '')
const SEALANT = 'sealant-10oz', BAGS = 'demo-loose-cellulose', GLASS = 'demo-loose-fiberglass'
const sealant = demoPrices.products.find(p => p.item === SEALANT)!, cellulose = demoPrices.blown.find(p => p.item === BAGS)!
const main: PriceBook = { ...demoPrices, name: 'main book', supplier: 'first supply' }
/** A second book that sells these alone. YAML reads JSON. */
const other = (products: readonly ProductRow[], blown: readonly BlownRow[] = [cellulose], more: Partial<PriceBook> = {}): PriceBook => ({ ...demoPrices, name: 'other book', dated: '2026-02-01', supplier: 'second supply', products: [...products], blown: [...blown], ...more })
const ran = (books: readonly PriceBook[], options = '--json', job = JOB, files: Record<string, string> = {}) =>
  lidwork(`estimate a.job.yaml ${options} ${books.map((_, i) => `--prices p${i}.yaml`).join(' ')}`, { files: { 'a.job.yaml': job, ...files, ...Object.fromEntries(books.map((b, i) => [`p${i}.yaml`, JSON.stringify(b)])) } })
const priced = async (books: readonly PriceBook[], job = JOB, files: Record<string, string> = {}): Promise<EstimateOut> => {
  const { out, err } = await ran(books, `--json${files['c.yaml'] === undefined ? '' : ' --company c.yaml'}`, job, files)
  expect(err).toBe('')
  return JSON.parse(out) as EstimateOut
}
const of = (e: EstimateOut, item: string): MaterialOut => e.materials.find(m => m.item === item)!
const plain = await priced([main])

describe('the cheapest', () => {
  test('of one item at two suppliers', async () => {
    const e = await priced([main, other([{ ...sealant, price: 4.5 }])])
    expect(of(e, SEALANT)).toMatchObject({ supplier: 'second supply', unitPriceCents: 450, totalCents: Math.round(of(plain, SEALANT).charged * 450) })
    expect(of(e, SEALANT).offers).toEqual([{ supplier: 'first supply', item: SEALANT, name: sealant.name, totalCents: of(plain, SEALANT).totalCents }])
    expect(of(e, SEALANT).insteadOf).toBeUndefined()
  })
  test('is the first book where it costs the same, and where the other is dearer', async () => {
    for (const price of [5, 5.01]) expect(of(await priced([main, other([{ ...sealant, price }])]), SEALANT).supplier).toBe('first supply')
  })
  test('goes by what this job takes: a large pack, charged whole, against a small one', async () => {
    const { needed } = of(plain, SEALANT), withWaste = needed * (1 + sealant.wastePct! / 100)
    const whole = Math.ceil(withWaste / 1000 - 1e-9)
    const drum = (price: number) => other([{ ...sealant, item: 'sealant-drum', name: 'latex sealant, drum', pack: 1000, buyUnit: 'drum', charge: 'whole', price }])
    const cheap = await priced([main, drum(of(plain, SEALANT).totalCents / 100 / whole - 1)])
    expect(of(cheap, 'sealant-drum')).toMatchObject({ charged: whole, insteadOf: { item: SEALANT, why: 'it costs less at second supply' } })
    expect(of(cheap, SEALANT)).toBeUndefined()
    expect(cheap.sealing.flatMap(s => s.materials).every(m => m.item !== SEALANT)).toBe(true)
    const dear = await priced([main, drum(of(plain, SEALANT).totalCents / 100 / whole + 1)])
    expect(of(dear, SEALANT).supplier).toBe('first supply')
  })
  test('by a break that this job reaches', async () => {
    const n = of(plain, BAGS).buy
    const breaks = (atLeast: number) => other([sealant], [{ ...cellulose, price: 15, breaks: [{ atLeast, price: 12 }] }])
    expect(of(await priced([main, breaks(n)]), BAGS)).toMatchObject({ supplier: 'second supply', unitPriceCents: 1200, breakFrom: n })
    expect(of(await priced([main, breaks(n + 1)]), BAGS)).toMatchObject({ supplier: 'first supply', unitPriceCents: 1400 })
  })
  test('is never one that does less', async () => {
    const e = await priced([main, other(demoPrices.products.filter(p => p.noncombustible === 'yes' || p.rValue !== undefined || p.ratedFor !== undefined).map(({ noncombustible: _, ...p }) => ({ ...p, item: `less-${p.item}`, price: 0.01, ...(p.rValue === undefined ? {} : { rValue: 1 }) })))])
    for (const m of e.materials.filter(x => x.item.startsWith('less-'))) {
      const was = demoPrices.products.find(p => p.item === m.item.slice(5))!
      expect([m.item, was.noncombustible, was.rValue]).toEqual([m.item, undefined, undefined])
    }
  })
  test('comes before a substitute, where an item can be had elsewhere', async () => {
    const without = { ...main, products: main.products.map(p => (p.item === SEALANT ? { ...p, available: 'no' as const } : p)) }
    expect(of(await priced([without, other([{ ...sealant, price: 9 }])]), SEALANT)).toMatchObject({ supplier: 'second supply', unitPriceCents: 900 })
  })
  test('no set of offers makes a house dearer than the first book alone', async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.constantFrom(...plain.materials.map(m => m.item)), fc.integer({ min: 1, max: 400 })), { maxLength: 6 }), async changes => {
      const rows = demoPrices.products.flatMap(p => changes.filter(([item]) => item === p.item).slice(0, 1).map(([, pct]) => ({ ...p, price: Math.round(p.price * pct) / 100 })))
      const e = await priced([main, other(rows.length > 0 ? rows : [sealant])])
      expect(e.price.costCents!).toBeLessThanOrEqual(plain.price.costCents!)
    }), { seed: 7, numRuns: 12 })
  })
})

describe('the fill', () => {
  test('with which the whole house costs least, where the job names none', async () => {
    const cheapGlass = other([sealant], [{ ...demoPrices.blown.find(p => p.item === GLASS)!, item: 'other-glass', price: 5 }])
    const e = await priced([main, cheapGlass]), area = e.areas.find(a => a.bags !== undefined)!
    expect(area.product).toBe('other-glass')
    expect(e.assumptions.find(a => a.id === 'fill')!.what).toContain('loose fiberglass')
    expect(e.price.costCents!).toBeLessThan(plain.price.costCents!)
    expect((await priced([main, cheapGlass], `${JOB}\nchoices: {fill: {${area.id}: ${BAGS}}}\n`)).areas.find(a => a.bags !== undefined)!.product).toBe(BAGS)
  })
  test('is none whose chart ends under the need', async () => {
    const short = other([sealant], [{ ...cellulose, item: 'short-chart', price: 1, chart: cellulose.chart.slice(0, 2) }])
    expect((await priced([main, short])).areas.find(a => a.bags !== undefined)!.product).toBe(BAGS)
  })
})

describe('the one named', () => {
  const dear = other([{ ...sealant, price: 8 }], [{ ...cellulose, price: 20 }])
  test('by the job, whatever it costs, and it is an override', async () => {
    const e = await priced([main, dear], `${JOB}\nchoices: {supplier: second supply}\n`)
    expect([of(e, SEALANT).unitPriceCents, of(e, BAGS).unitPriceCents]).toEqual([800, 2000])
    expect(of(e, 'latch-pair')?.supplier ?? 'first supply').toBe('first supply')
    expect(e.overrides).toEqual([{ path: '/choices/supplier', value: 'second supply', insteadOf: 'the cheapest' }])
  })
  test('by the company', async () => {
    const e = await priced([main, dear], JOB, { 'c.yaml': JSON.stringify({ ...demoCompany, supplier: 'second supply' }) })
    expect(of(e, SEALANT)).toMatchObject({ supplier: 'second supply', unitPriceCents: 800 })
    expect(e.overrides).toEqual([])
  })
})

describe('in files and on papers', () => {
  test('a job names them; a path that leads nowhere is said at its line', async () => {
    const job = `${JOB}\nbooks: {prices: p0.yaml, suppliers: [sub/p1.yaml]}\n`, files = { 'p0.yaml': JSON.stringify(main), 'sub/p1.yaml': JSON.stringify(other([{ ...sealant, price: 4.5 }])), 'a.job.yaml': job }
    const e = JSON.parse((await lidwork('estimate a.job.yaml --json', { files })).out) as EstimateOut
    expect(of(e, SEALANT).supplier).toBe('second supply')
    expect(e.basis.priceBooks!.map(b => b.name)).toEqual(['main book', 'other book'])
    const { 'sub/p1.yaml': _, ...gone } = files, missing = await lidwork('estimate a.job.yaml', { files: gone })
    expect([missing.code, missing.err.split('\n')[0]]).toEqual([3, `a.job.yaml:${job.trimEnd().split('\n').length}:38: error book-unread`])
  })
  test('the terminal says who, for how much, and what the others asked', async () => {
    const { out } = await ran([main, other([{ ...sealant, price: 4.5 }])], '')
    expect(out.replace(/\s+/g, ' ')).toContain(`from second supply for ${(Math.round(of(plain, SEALANT).charged * 450) / 100).toFixed(2)}; first supply ${(of(plain, SEALANT).totalCents / 100).toFixed(2)}.`)
    expect(out).toContain('main book and other book of 2026-02-01')
  })
  test('a product in several roles is offered once', async () => {
    const e = await priced([main, other(demoPrices.products)]), inRoles = e.materials.filter(m => demoPrices.products.filter(p => p.item === m.item).length > 1)
    expect(inRoles.length).toBeGreaterThan(0)
    for (const m of inRoles) expect(m.offers).toHaveLength(1)
  })
  test('one file given twice is one book; books without a supplier go by their names', async () => {
    const files = { 'a.job.yaml': JOB, 'p.yaml': JSON.stringify(demoPrices) }
    expect((JSON.parse((await lidwork('estimate a.job.yaml --json --prices p.yaml --prices p.yaml', { files })).out) as EstimateOut).basis.priceBooks).toBeUndefined()
    const { supplier: _, ...unnamed } = other([{ ...sealant, price: 4 }])
    expect(of(await priced([main, unnamed]), SEALANT).supplier).toBe('other book')
  })
})
