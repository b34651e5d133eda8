// What is bought, as the output tells it: how it is ordered, by which price, and where one thing stands for another.
import type { Books } from '../../books/books.ts'
import { breakAt } from '../../books/price-at.ts'
import { fromStock } from '../../calc/arithmetic.ts'
import { lineCents } from '../../calc/price.ts'
import type { Finding } from '../../findings/finding.ts'
import { exactly, work } from '../../units/quantity.ts'
import { usd } from '../../units/money.ts'
import { alternatesOf } from './alternates.ts'
import type { MaterialLine } from './bill.ts'

/** The line of one product. A name stands only where the price book says something of it. */
export function materialOut(m: MaterialLine, books: Books) {
  const { product: p } = m, reached = breakAt(p, wholeOf(m))
  return {
    item: p.item, name: p.name, needed: m.needed, unit: p.unit, wastePct: p.wastePct, pack: p.pack, alternates: alternatesOf(m, books), buy: m.buy, buyUnit: p.buyUnit, charge: p.charge, charged: m.charged,
    unitPriceCents: m.unitPriceCents, totalCents: m.totalCents, usedFor: m.usedFor,
    ...(p.supplier === undefined ? {} : { supplier: p.supplier }), ...(p.code === undefined ? {} : { code: p.code }),
    ...(reached ? { breakFrom: reached.from, listPriceCents: p.unitPriceCents } : {}),
    ...(p.stock && p.stock.value > 0 ? { packs: m.packs, onHand: p.stock, fromStock: work(fromStock, { packs: m.packs, stock: p.stock }) } : {}),
    ...(p.insteadOf ? { insteadOf: p.insteadOf } : {}), ...(p.offers ? { offers: p.offers } : {}),
  }
}

/** Whole purchase units, whatever is on hand. */
const wholeOf = (m: MaterialLine): number => Math.ceil(m.packs.value)

/** What whoever orders should know of prices by quantity and of what stands for another. */
export function orderNotes(materials: readonly MaterialLine[]): Finding[] {
  const note = (code: string, says: string, why: string, mend: string): Finding => ({ code, severity: 'note', path: '/job', says, why, mend })
  return materials.flatMap(m => {
    const { product: p } = m, whole = wholeOf(m), out: Finding[] = []
    if (p.insteadOf) out.push(note('substitute-taken', `${p.name} in place of ${p.insteadOf.name}`, p.insteadOf.why, 'tell the customer where the contract names the other'))
    const reached = breakAt(p, whole)
    if (reached && m.buy.value < reached.from && m.buy.value > 0) out.push(note('order-under-break', `${p.name}: ${m.buy.value} to order, ${whole} priced from ${reached.from} on`, 'what is on hand leaves the order under the break that the price counts on', 'order it with that of another job, or ask for the price'))
    const next = p.charge === 'whole' ? p.breaks?.find(b => b.from > whole) : undefined
    if (next) {
      const more = work(lineCents, { amount: exactly(next.from, 'each', 'least of the break'), unitPriceCents: next.unitPriceCents })
      if (more.value < m.totalCents.value) out.push(note('more-costs-less', `${p.name}: ${whole} cost ${usd(m.totalCents.value)}, ${next.from} would cost ${usd(more.value)}`, `from ${next.from} on each is ${usd(next.unitPriceCents.value)}`, 'order up to the break; the price of this job stays as it is'))
    }
    return out
  })
}
