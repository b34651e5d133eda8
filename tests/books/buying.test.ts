// Price breaks, stock and substitutes: worked by hand from what the same house needs without them.
import { describe, expect, test } from 'vitest'
import { demoPrices } from '../../src/books/demo.ts'
import type { BlownRow, PriceBook, ProductRow } from '../../src/books/price-book.ts'
import { readPrices } from '../../src/books/read.ts'
import type { EstimateOut, MaterialOut } from '../../src/estimate/output.ts'
import { newJob } from '../../src/papers/new-job.ts'
import { lidwork } from '../cli/test-io.ts'

const JOB = newJob()
const SEALANT = 'sealant-10oz', BAGS = 'demo-loose-cellulose', GLASS = 'demo-loose-fiberglass'

/** The built-in book with some of its rows changed, and rows added. YAML reads JSON. */
const book = (changes: Readonly<Record<string, Partial<ProductRow & BlownRow>>>, more: readonly ProductRow[] = []): string => JSON.stringify({
  ...demoPrices, products: [...demoPrices.products.map(p => ({ ...p, ...changes[p.item] })), ...more], blown: demoPrices.blown.map(p => ({ ...p, ...changes[p.item] })),
} as PriceBook)
const priced = async (prices: string, job = JOB): Promise<EstimateOut> => {
  const ran = await lidwork('estimate a.job.yaml --json --prices p.yaml', { files: { 'a.job.yaml': job, 'p.yaml': prices } })
  expect(ran.err).toBe('')
  return JSON.parse(ran.out) as EstimateOut
}
const of = (e: EstimateOut, item: string): MaterialOut => e.materials.find(m => m.item === item)!
const plain = await priced(book({}))
const codes = (e: EstimateOut): string[] => e.findings.map(f => f.code)

describe('a price break', () => {
  const n = of(plain, BAGS).buy
  test('the house of these tests takes some tens of bags, at $14', () => { expect(n).toBeGreaterThan(10); expect(of(plain, BAGS).unitPriceCents).toBe(1400) })
  test.each([
    ['one more than it takes', n + 1, 1400], ['as many as it takes', n, 1200], ['one less', n - 1, 1200],
  ])('%s: each costs what it should', async (_, from, cents) => {
    const e = await priced(book({ [BAGS]: { breaks: [{ atLeast: from, price: 12 }] } })), m = of(e, BAGS)
    expect([m.unitPriceCents, m.totalCents]).toEqual([cents, n * cents])
    expect([m.breakFrom, m.listPriceCents]).toEqual(cents === 1400 ? [undefined, undefined] : [from, 1400])
    expect(plain.price.materialsCents! - e.price.materialsCents!).toBe(n * (1400 - cents))
  })
  test('of several, the last that is reached', async () => {
    const e = await priced(book({ [BAGS]: { breaks: [{ atLeast: 2, price: 13 }, { atLeast: n - 3, price: 12.5 }, { atLeast: n + 1, price: 10 }] } }))
    expect(of(e, BAGS)).toMatchObject({ unitPriceCents: 1250, totalCents: n * 1250, breakFrom: n - 3 })
  })
  test('of a product charged as used, by the whole packs that are bought', async () => {
    const m = of(plain, SEALANT), e = await priced(book({ [SEALANT]: { breaks: [{ atLeast: Math.ceil(m.charged), price: 4 }] } }))
    expect(m.charged).not.toBe(Math.ceil(m.charged))
    expect(of(e, SEALANT).totalCents).toBe(Math.round(m.charged * 400))
  })
  test('that would cost less than what is bought is told, and the price stays', async () => {
    const e = await priced(book({ [BAGS]: { breaks: [{ atLeast: n + 1, price: 10 }] } }))
    expect(of(e, BAGS).totalCents).toBe(n * 1400)
    expect(e.findings.find(f => f.code === 'more-costs-less')!.message).toContain(`$${((n + 1) * 10).toFixed(2)}`)
    expect(codes(await priced(book({ [BAGS]: { breaks: [{ atLeast: n * 2, price: 13 }] } })))).not.toContain('more-costs-less')
  })
  test('counts for the rows beside the one blown', async () => {
    const rows = (e: EstimateOut): [number, number][] => e.areas.flatMap(a => a.neighborRows ?? []).map(r => [r.bags, r.bagsCents])
    const e = await priced(book({ [BAGS]: { wastePct: 0, breaks: [{ atLeast: 1, price: 7 }] } }))
    expect(rows(e).length).toBeGreaterThan(0)
    for (const [bags, cents] of rows(e)) expect(cents).toBe(Math.ceil(bags - 1e-9) * 700)
  })
  test('explain names the row and the amount that reached it', async () => {
    const files = { 'a.job.yaml': JOB, 'p.yaml': book({ [BAGS]: { breaks: [{ atLeast: 5, price: 12 }] } }) }
    const { out } = await lidwork(`explain a.job.yaml materials.${BAGS}.unitPriceCents --prices p.yaml`, { files })
    expect(out).toContain(`demo prices: ${BAGS}, from 5, picked by ${n}`)
  })
})

describe('stock', () => {
  const { buy, charged, totalCents } = of(plain, BAGS)
  test.each([[0, buy], [10, buy - 10], [buy - 1, 1], [buy, 0], [buy + 30, 0]])('%f on hand leave %i to order, and the price as it is', async (stock, left) => {
    const e = await priced(book({ [BAGS]: { stock } })), m = of(e, BAGS)
    expect([m.buy, m.charged, m.totalCents, e.price.totalCents]).toEqual([left, charged, totalCents, plain.price.totalCents])
    if (stock > 0) { expect(m.fromStock).toBe(Math.min(stock, m.packs!)); expect(m.onHand).toBe(stock) } else expect(m.onHand).toBeUndefined()
  })
  test('in parts of a pack', async () => {
    const m = of(plain, SEALANT), part = 0.5, e = await priced(book({ [SEALANT]: { stock: part } }))
    expect(of(e, SEALANT).buy).toBe(Math.ceil(m.charged - part))
    expect(of(e, SEALANT).fromStock).toBe(part)
  })
  test('that leaves the order under its break is told', async () => {
    const e = await priced(book({ [BAGS]: { stock: 10, breaks: [{ atLeast: buy, price: 12 }] } }))
    expect(of(e, BAGS)).toMatchObject({ unitPriceCents: 1200, buy: buy - 10 })
    expect(codes(e)).toContain('order-under-break')
  })
  test('is there once, for all jobs of one list', async () => {
    const second = JOB.replace(/^  id: .+$/m, '  id: house-2'), files = { 'a.job.yaml': JOB, 'b.job.yaml': second, 'p.yaml': book({ [BAGS]: { stock: buy + 4, code: 'DS-1', supplier: 'demo supply' } }) }
    const rows = (await lidwork('estimate a.job.yaml b.job.yaml --csv --prices p.yaml', { files })).out.split('\r\n').filter(l => l.includes(BAGS)).map(l => l.split(','))
    const packs = of(await priced(files['p.yaml']), BAGS).packs!
    expect(rows.map(r => r.at(-3))).toEqual([String(packs), String(Math.round((buy + 4 - packs) * 100) / 100)])
    // Name and unit hold no comma here but the name's own: the order stands before the unit.
    expect(rows.map(r => Number(r[r.indexOf('bag') - 1]))).toEqual([0, Math.ceil(Math.round((2 * packs - buy - 4) * 100) / 100)])
    expect(rows[0]!.slice(-5, -3)).toEqual(['demo supply', 'DS-1'])
  })
})

describe('a substitute', () => {
  const other = (item: string, change: Partial<ProductRow> = {}): ProductRow => ({ ...demoPrices.products.find(p => p.item === SEALANT)!, item, name: `${item} of these tests`, price: 6, ...change })
  test('the first that can be had takes the place, and says so', async () => {
    const e = await priced(book({ [SEALANT]: { available: 'no', substitutes: ['seal-b', 'seal-c', 'seal-d'] } }, [other('seal-d'), other('seal-b', { available: 'no', substitutes: ['seal-d'] }), other('seal-c')]))
    expect(of(e, SEALANT)).toBeUndefined()
    expect(of(e, 'seal-c')).toMatchObject({ charged: of(plain, SEALANT).charged, unitPriceCents: 600, insteadOf: { item: SEALANT, why: 'it can’t be had now' } })
    expect(e.findings.find(f => f.code === 'substitute-taken')!.message).toContain('seal-c of these tests in place of latex sealant')
    expect(e.sealing.flatMap(s => s.materials).some(m => m.item === SEALANT)).toBe(false)
  })
  test('none that can be had: an error at what needs it', async () => {
    const files = { 'a.job.yaml': JOB, 'p.yaml': book({ [SEALANT]: { available: 'no' } }) }
    const ran = await lidwork('estimate a.job.yaml --prices p.yaml', { files })
    expect([ran.code, ran.out]).toEqual([1, ''])
    expect(ran.err).toMatch(/a\.job\.yaml:\d+:\d+: error product-not-to-be-had/)
    expect(ran.err).toContain('names no substitute')
  })
  test('of a blown product, one whose chart reaches the need', async () => {
    const short = { ...demoPrices.blown[1]!, item: 'short-chart', chart: demoPrices.blown[1]!.chart.slice(0, 2) }
    const text = (substitutes: string[]) => { const b = JSON.parse(book({ [BAGS]: { available: 'no', substitutes } })) as PriceBook; return JSON.stringify({ ...b, blown: [...b.blown, short] }) }
    const need = plain.areas.find(a => a.product === BAGS)!.chartR!
    expect(need).toBeGreaterThan(short.chart.at(-1)!.r)
    const e = await priced(text(['short-chart', GLASS]))
    expect(e.areas.find(a => a.chartR !== undefined)!.product).toBe(GLASS)
    expect(of(e, GLASS).insteadOf!.item).toBe(BAGS)
  })
  test('is no lighter or cheaper choice while it can’t be had itself', async () => {
    const heavy = JOB.replace(/choices:[\s\S]*$/, '')
    const e = await priced(book({ [GLASS]: { available: 'no', substitutes: [BAGS] } }), heavy)
    for (const a of e.areas) expect(a.lighter?.product).not.toBe(GLASS)
  })
})

describe('on papers', () => {
  test('the terminal says break, stock, supplier and substitute', async () => {
    const prices = book({ [BAGS]: { breaks: [{ atLeast: 5, price: 12 }], stock: 10, supplier: 'demo supply', code: 'DS-1042' } })
    const { out } = await lidwork('estimate a.job.yaml --prices p.yaml', { files: { 'a.job.yaml': JOB, 'p.yaml': prices } })
    const buying = out.slice(out.indexOf('\n     buying'), out.indexOf('\n     price')).replace(/\s+/g, ' ')
    expect(buying).toContain(`priced from 5 on, 14.00 by itself; 10 of 10 on hand, ${of(plain, BAGS).buy - 10} to order; from demo supply, DS-1042.`)
    expect((await lidwork('estimate a.job.yaml', { files: { 'a.job.yaml': JOB } })).out).not.toContain('buying')
  })
  test('a byte order mark stands once, before the list, where it is asked for', async () => {
    const files = { 'a.job.yaml': JOB, 'b.job.yaml': JOB }
    const marked = (await lidwork('estimate a.job.yaml b.job.yaml --csv --bom', { files })).out
    expect(marked).toBe(`\ufeff${(await lidwork('estimate a.job.yaml b.job.yaml --csv', { files })).out}`)
    expect(marked.lastIndexOf('\ufeff')).toBe(0)
  })
})

test('the book’s supplier is that of each product that names no other', async () => {
  const b = JSON.parse(book({ [SEALANT]: { supplier: 'another' } })) as PriceBook
  const e = await priced(JSON.stringify({ ...b, supplier: 'demo supply' }))
  expect([of(e, SEALANT).supplier, of(e, BAGS).supplier]).toEqual(['another', 'demo supply'])
})

describe('what is wrong in such a book', () => {
  const said = (changes: Readonly<Record<string, Partial<ProductRow & BlownRow>>>, more: readonly ProductRow[] = []): string[] => {
    const read = readPrices(book(changes, more))
    return read.findings.filter(f => f.severity !== 'note').map(f => `${f.severity} ${f.code} ${f.path}`)
  }
  const at = demoPrices.products.findIndex(p => p.item === SEALANT)
  test.each<[string, Partial<ProductRow>, string]>([
    ['breaks from many to few', { breaks: [{ atLeast: 10, price: 4 }, { atLeast: 5, price: 3 }] }, `error breaks-out-of-order /products/${at}/breaks/1/atLeast`],
    ['a break twice', { breaks: [{ atLeast: 10, price: 4 }, { atLeast: 10, price: 3 }] }, `error breaks-out-of-order /products/${at}/breaks/1/atLeast`],
    ['a break that costs as much', { breaks: [{ atLeast: 10, price: 5 }] }, `error break-not-cheaper /products/${at}/breaks/0/price`],
    ['a second that costs more than the first', { breaks: [{ atLeast: 10, price: 4 }, { atLeast: 20, price: 4.5 }] }, `error break-not-cheaper /products/${at}/breaks/1/price`],
    ['itself', { substitutes: [SEALANT] }, `error substitute-itself /products/${at}/substitutes/0`],
    ['a name that is not there', { substitutes: ['sealent'] }, `error substitute-unknown /products/${at}/substitutes/0`],
    ['a product of another role', { substitutes: ['gun-foam-24oz'] }, `error substitute-unknown /products/${at}/substitutes/0`],
    ['can’t be had, and nothing in its place', { available: 'no' }, `warning no-substitute /products/${at}/available`],
    ['a day that is none', { dated: '2026-02-30' }, `error date-not-real /products/${at}/dated`],
  ])('%s', (_, change, expected) => { expect(said({ [SEALANT]: change })).toEqual([expected]) })
  test('one that does less than what it stands for', () => {
    const hot = demoPrices.products.find(p => p.role === 'hot-sealant')!, i = demoPrices.products.indexOf(hot)
    const { noncombustible: _, ...burns } = { ...hot, item: 'burns' }
    expect(said({ [hot.item]: { substitutes: ['burns'] } }, [burns])).toEqual([`error substitute-falls-short /products/${i}/substitutes/0`])
    expect(said({ [hot.item]: { substitutes: ['same'] } }, [{ ...hot, item: 'same' }])).toEqual([])
    expect(said({ [hot.item]: { substitutes: ['tube'] } }, [{ ...hot, item: 'tube', unit: 'each' }])).toEqual([`error substitute-falls-short /products/${i}/substitutes/0`])
  })
  test('another currency', () => { expect(readPrices(JSON.stringify({ ...demoPrices, currency: 'CAD' })).ok).toBe(false) })
})
