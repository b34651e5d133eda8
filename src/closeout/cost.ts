// Job cost: hours and materials against the estimate, task by task, and the margin that was kept.
import type { Product } from '../books/books.ts'
import { difference, lineCents, marginOf, pctOf } from '../calc/price.ts'
import type { Estimate } from '../estimate/estimate.ts'
import { titled } from '../estimate/parts.ts'
import { byText } from '../findings/finding.ts'
import { cents } from '../units/money.ts'
import { exactly, given, total, work, type Quantity } from '../units/quantity.ts'
import type { CloseoutFile } from './format.ts'

type Cents = Quantity<'cents'>
type Sums = Readonly<Record<'materialsCents' | 'salesTaxCents' | 'laborCents' | 'subcontractCents' | 'otherCents' | 'overheadCents' | 'contingencyCents' | 'costCents' | 'soldCents' | 'marginPct', Quantity>>

interface Used { readonly product: Product; readonly packs: Quantity; readonly unitPriceCents: Cents; readonly asEstimated: boolean }

/** What the job used up: bags by area, the rest by its list; what nobody wrote is taken as estimated, and said to be. */
function used(file: CloseoutFile, estimate: Estimate): ReadonlyMap<string, Used> {
  const { books, materials } = estimate, out = new Map<string, Used>(materials.map(m => [m.product.item, { product: m.product, packs: m.charged, unitPriceCents: m.product.unitPriceCents, asEstimated: true }]))
  const bags = new Map<string, Quantity[]>()
  // A product that went nowhere, since another took its place, was used 0 times.
  for (const [i, a] of (file.areas ?? []).entries()) {
    const area = estimate.out.areas.find(o => String(o.id) === a.in), planned = area?.product === undefined ? undefined : String(area.product), item = a.product ?? planned
    if (a.bags === undefined || item === undefined || !books.blown(item)) continue
    bags.set(item, [...bags.get(item) ?? [], given(a.bags, 'bag', `/areas/${i}/bags`)])
    if (planned !== undefined && planned !== item && !bags.has(planned) && books.blown(planned)) bags.set(planned, [])
  }
  const unfilled = new Set(estimate.out.areas.filter(o => o.product !== undefined && !(file.areas ?? []).some(a => a.in === String(o.id) && a.bags !== undefined)).map(o => String(o.product)))
  for (const [item, list] of bags) {
    const product = books.blown(item)!
    if (!unfilled.has(item)) out.set(item, { product, packs: list.length === 0 ? exactly(0, 'bag', 'another product took its place') : total('bag', list), unitPriceCents: product.unitPriceCents, asEstimated: false })
  }
  for (const [i, m] of (file.materials ?? []).entries()) {
    const product = books.blown(m.item) ?? books.item(m.item), before = out.get(m.item), at = `/materials/${i}`
    out.set(m.item, { product, packs: m.used === undefined ? before?.packs ?? exactly(0, 'each', 'not in the estimate') : given(m.used, product.unit as Quantity['unit'], `${at}/used`), unitPriceCents: m.price === undefined ? product.unitPriceCents : given(cents(m.price), 'cents', `${at}/price`),
      asEstimated: m.used === undefined && (before?.asEstimated ?? true) })
  }
  return new Map([...out].sort(([a], [b]) => byText(a, b)))
}

const sum = (lines: Readonly<Record<string, Quantity>>): Cents => total('cents', lines)

/** The cost of the job; `job` is absent while hours are missing. */
export function jobCost(file: CloseoutFile, estimate: Estimate) {
  const { books, steps, materials } = estimate, { company } = books, price = estimate.out.price as unknown as Partial<Record<string, Quantity>>
  const took = new Map((file.hours ?? []).flatMap((h, i): [string, Quantity<'h'>][] => (h.personHours === undefined ? [] : [[h.task, given(h.personHours, 'h', `/hours/${i}/personHours`)]])))
  const tasks = steps.map(s => { const h = took.get(s.id); return { id: s.id, title: titled(s), phase: s.phase, estimatedHours: s.personHours, ...(h ? { personHours: h, overHours: { ...h, value: h.value - s.personHours.value } } : {}) } })
  const unplanned = (file.unplanned ?? []).map((u, i) => ({ what: u.what, ...(u.personHours === undefined ? {} : { personHours: given(u.personHours, 'h', `/unplanned/${i}/personHours`) }) }))
  // A task of another trade takes no hours of the crew.
  const without = steps.filter(s => s.personHours.value > 0 && !took.has(s.id))
  const missing = [...(without.length > 0 ? [`hours of ${without.length === steps.length ? 'all tasks' : without.map(s => s.id).join(', ')}`] : []), ...unplanned.filter(u => !u.personHours).map(u => `hours of ${u.what}`), ...(file.costs ?? []).filter(c => c.paid === undefined).map(c => `cost of ${c.what}`), ...(file.changes ?? []).filter(c => c.price === undefined).map(c => `price of ${c.what}`)]

  const lines = [...used(file, estimate)].map(([item, u]) => {
    const line = materials.find(m => m.product.item === item)
    return { item, name: u.product.name, buyUnit: u.product.buyUnit, estimated: line?.charged ?? exactly(0, 'each', 'not in the estimate'), used: u.packs, asEstimated: u.asEstimated, unitPriceCents: u.unitPriceCents,
      estimatedCents: line?.totalCents ?? exactly(0, 'cents', 'not in the estimate'), totalCents: work(lineCents, { amount: u.packs, unitPriceCents: u.unitPriceCents }) }
  })
  const hours = total('h', { ...Object.fromEntries(took), ...Object.fromEntries(unplanned.flatMap((u, i) => (u.personHours ? [[`unplanned${i + 1}`, u.personHours]] : []))) })
  const changesCents = sum(Object.fromEntries((file.changes ?? []).map((c, i) => [`change${i + 1}`, given(cents(c.price ?? 0), 'cents', `/changes/${i}/price`)])))
  const offered = price['totalCents'] && work(difference, { after: price['totalCents'] as Cents, before: (price['customerTaxCents'] ?? exactly(0, 'cents', 'none')) as Cents })
  const contract = file.soldFor === undefined ? offered : given(cents(file.soldFor), 'cents', '/soldFor')
  const zero = exactly(0, 'cents', 'none')
  const sums = (parts: Omit<Sums, 'costCents' | 'marginPct'>): Sums => {
    const { soldCents, ...costs } = parts, costCents = sum(costs)
    return { ...costs, costCents, soldCents, marginPct: soldCents.value > 0 ? work(marginOf, { priceCents: soldCents as Cents, costCents }) : exactly(0, 'pct', 'no price') }
  }
  const line = (key: string): Quantity => price[key] ?? zero
  const planned = sums({ materialsCents: line('materialsCents'), salesTaxCents: line('salesTaxCents'), laborCents: line('laborCents'), subcontractCents: line('subcontractCents'), otherCents: line('otherCents'), overheadCents: line('overheadCents'), contingencyCents: line('contingencyCents'), soldCents: offered ?? zero })
  const paid = (of: 'subcontract' | 'other'): Cents => sum(Object.fromEntries((file.costs ?? []).flatMap((c, i) => (c.of === of && c.paid !== undefined ? [[`cost${i + 1}`, given(cents(c.paid), 'cents', `/costs/${i}/paid`)]] : []))))
  const asEstimated = [...(file.costs === undefined && (line('subcontractCents').value > 0 || line('otherCents').value > 0) ? ['other trades and other costs'] : []), ...lines.filter(l => l.asEstimated).map(l => l.item)]
  const built = (): Sums => {
    const materialsCents = sum(Object.fromEntries(lines.map(l => [l.item, l.totalCents]))), subcontractCents = file.costs ? paid('subcontract') : line('subcontractCents'), otherCents = file.costs ? paid('other') : line('otherCents')
    const salesTaxCents = company.salesTax === 'contractor-pays' ? work(pctOf, { cents: materialsCents, pct: company.salesTaxPct }) : zero
    const laborCents = sum(Object.fromEntries([...took, ...unplanned.flatMap((u, i): [string, Quantity<'h'>][] => (u.personHours ? [[`unplanned${i + 1}`, u.personHours]] : []))].map(([id, h]) => [id, work(lineCents, { amount: h, unitPriceCents: company.wageCents })])))
    const overheadCents = company.overhead === undefined ? zero : company.overhead.per === 'hour' ? work(lineCents, { amount: hours, unitPriceCents: company.overhead.cents })
      : work(pctOf, { cents: sum({ materialsCents, salesTaxCents, laborCents, subcontractCents, otherCents }), pct: company.overhead.pct })
    return sums({ materialsCents, salesTaxCents, laborCents, subcontractCents, otherCents, overheadCents, contingencyCents: zero, soldCents: sum({ contract: contract ?? zero, changesCents }) })
  }
  const job = missing.length === 0 && contract ? built() : undefined
  return { tasks, unplanned, estimatedHours: total('h', Object.fromEntries(steps.map(s => [s.id, s.personHours]))), personHours: hours, wageCents: company.wageCents, materials: lines, changesCents, estimate: planned, ...(job ? { job, marginKeptPct: job.marginPct } : {}), missing, asEstimated }
}
