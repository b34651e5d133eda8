// Two price books, item by item: what came, what went, what changed and by how much; and what that moves in jobs at hand.
import { cents } from '../../units/money.ts'
import { byText } from '../../findings/finding.ts'
import { riseOf } from '../../calc/price.ts'
import { goodsOf } from '../../books/products.ts'
import type { BlownRow, PriceBook, ProductRow } from '../../books/price-book.ts'
import { lineOf, type MaterialLine } from '../money/bill.ts'
import { printed } from '../to-json.ts'

export const PRICES_DIFF_FORMAT = 'lidwork-prices-diff/1'

export interface PriceDiffItem {
  item: string; name: string; change: 'added' | 'dropped' | 'changed'
  /** Of one purchase unit, in cents; parts of a cent stay. */
  oldPriceCents?: number; newPriceCents?: number
  /** Of the cost of what it does: price by pack and waste; of a blown product, of the row of its chart that changes most. */
  changePct?: number
  /** What else is different. */
  also: string[]
  /** What the materials of the jobs cost more for it, as planned with the old book. */
  effectCents?: number
  /** Jobs that take it; where it was dropped, they have no price. */
  jobs?: number
}
export interface PricesDiffOut {
  format: typeof PRICES_DIFF_FORMAT
  old: { name: string; dated: string }; new: { name: string; dated: string }
  items: PriceDiffItem[]
  /** With jobs: how many were planned, and what all of it moves. */
  jobs?: number; effectCents?: number
}

type Row = ProductRow | BlownRow
const isBlown = (p: Row): p is BlownRow => 'chart' in p
/** Items in the order of the book, each once. */
const rowsOf = (book: PriceBook): ReadonlyMap<string, Row> => new Map([...book.blown, ...book.products].reverse().map(p => [p.item, p]))

/** Cost of one unit of need, waste in it. */
const perUnit = (p: Row): number => cents(p.price) * (1 + (p.wastePct ?? 0) / 100) / (isBlown(p) ? 1 : p.pack)
const rise = (before: number, after: number): number | undefined => (before <= 0 ? undefined : riseOf.fn({ before, after }))

/** How much more what it does costs; of a blown product by its rows. */
function changeOf(a: Row, b: Row): { readonly pct: number | undefined; readonly row?: number } {
  if (!isBlown(a) || !isBlown(b)) return { pct: rise(perUnit(a), perUnit(b)) }
  const rows = a.chart.flatMap(x => { const y = b.chart.find(o => o.r === x.r), pct = y && rise(perUnit(a) * x.bagsPer1000Ft2, perUnit(b) * y.bagsPer1000Ft2); return pct === undefined ? [] : [{ row: x.r, pct }] })
  return rows.reduce<{ readonly pct: number | undefined; readonly row?: number }>((most, r) => (Math.abs(r.pct) > Math.abs(most.pct ?? 0) + 1e-9 ? r : most), { pct: rise(perUnit(a), perUnit(b)) })
}

const told = (value: unknown): string => (value === undefined ? 'none' : typeof value === 'string' || typeof value === 'number' ? String(value) : Array.isArray(value) ? value.map(told).join(' ') : Object.values(value as object).map(told).join(': '))
/** Keys whose change is no price. */
const NO_PRICE = ['price', 'chart', 'dated', 'item'] as const

/** What a row of a chart says, and in which words. */
const CHART = [['bagsPer1000Ft2', 'bags for 1,000 ft2'], ['settledIn', 'in settled'], ['blownIn', 'in as blown'], ['coverageFt2', 'ft2 a bag'], ['weightPsf', 'psf']] as const
/** Told with the bags, which they follow. */
const FROM_BAGS: readonly string[] = ['coverageFt2', 'weightPsf']

/** What else of a row is different, chart rows one by one. */
function alsoOf(a: Row, b: Row): string[] {
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])].filter(k => !(NO_PRICE as readonly string[]).includes(k))
  const out = keys.flatMap(k => { const [x, y] = [a[k as keyof Row], b[k as keyof Row]]; return JSON.stringify(x) === JSON.stringify(y) ? [] : [`${k} ${told(x)} to ${told(y)}`] })
  if (!isBlown(a) || !isBlown(b)) return out
  for (const x of a.chart) {
    const y = b.chart.find(o => o.r === x.r)
    if (!y) out.push(`row R-${x.r} dropped`)
    else {
      const moved = CHART.filter(([key]) => x[key] !== y[key]), first = moved.filter(([key]) => x.bagsPer1000Ft2 === y.bagsPer1000Ft2 || !FROM_BAGS.includes(key))
      if (first.length > 0) out.push(`row R-${x.r}: ${first.map(([key, said]) => `${x[key]} to ${y[key]} ${said}`).join(', ')}`)
    }
  }
  for (const y of b.chart) if (!a.chart.some(x => x.r === y.r)) out.push(`row R-${y.r} added`)
  return out
}

/** @param jobs the materials of each job as planned with the old book; without them the list goes by percent */
export function priceDiff(old: PriceBook, now: PriceBook, jobs?: readonly (readonly MaterialLine[])[]): PricesDiffOut {
  const before = rowsOf(old), after = rowsOf(now), goods = goodsOf([now]).forJob({})
  const moved = new Map<string, { effectCents: number; jobs: number }>()
  for (const lines of jobs ?? []) for (const { product: { item }, needed, totalCents } of lines) {
    const product = after.has(item) ? goods.blown(item) ?? goods.item(item) : undefined, m = moved.get(item) ?? { effectCents: 0, jobs: 0 }
    moved.set(item, { effectCents: m.effectCents + (product ? lineOf(product, needed).totalCents.value - totalCents.value : 0), jobs: m.jobs + 1 })
  }
  const effect = (item: string): Pick<PriceDiffItem, 'effectCents' | 'jobs'> => { const m = moved.get(item); return jobs === undefined ? {} : { ...(after.has(item) ? { effectCents: m?.effectCents ?? 0 } : {}), jobs: m?.jobs ?? 0 } }
  const items: PriceDiffItem[] = []
  for (const [item, a] of before) {
    const b = after.get(item)
    if (!b) { items.push({ item, name: a.name, change: 'dropped', oldPriceCents: cents(a.price), also: [], ...effect(item) }); continue }
    const { pct, row } = changeOf(a, b), also = alsoOf(a, b)
    if (a.price === b.price && also.length === 0) continue
    if (row !== undefined && also.some(t => t.startsWith('row'))) also.unshift(`row R-${row} changes most`)
    items.push({ item, name: b.name, change: 'changed', oldPriceCents: cents(a.price), newPriceCents: cents(b.price), ...(pct === undefined ? {} : { changePct: printed('changePct', pct) }), also, ...effect(item) })
  }
  for (const [item, b] of after) if (!before.has(item)) items.push({ item, name: b.name, change: 'added', newPriceCents: cents(b.price), also: [], ...(jobs === undefined ? {} : { effectCents: 0, jobs: 0 }) })
  // What jobs take and have no price for comes first, then what moves most.
  const weight = (i: PriceDiffItem): number => (i.change === 'dropped' && (i.jobs ?? 0) > 0 ? Infinity : jobs === undefined ? 0 : Math.abs(i.effectCents ?? 0))
  const size = (i: PriceDiffItem): number => (i.change === 'changed' ? Math.abs(i.changePct ?? 0) : -1)
  items.sort((a, b) => (weight(a) === weight(b) ? 0 : weight(b) - weight(a)) || size(b) - size(a) || byText(a.change, b.change) || byText(a.item, b.item))
  return {
    format: PRICES_DIFF_FORMAT, old: { name: old.name, dated: old.dated }, new: { name: now.name, dated: now.dated }, items,
    ...(jobs === undefined ? {} : { jobs: jobs.length, effectCents: items.reduce((sum, i) => sum + (i.effectCents ?? 0), 0) }),
  }
}
