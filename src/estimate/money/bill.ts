// From what tasks need to what is bought: added up by product, waste once, rounded once.
import { netOfStock, usedPacks, wholePacks } from '../../calc/arithmetic.ts'
import { lineCents } from '../../calc/price.ts'
import type { Product } from '../../books/books.ts'
import { priceAt } from '../../books/price-at.ts'
import { byText } from '../../findings/finding.ts'
import { total, work, type Line, type Quantity } from '../../units/quantity.ts'
import type { Step } from '../tasks/order.ts'

export interface MaterialLine {
  readonly product: Product
  readonly needed: Quantity
  /** Purchase units that the work takes, to 0.01, up. */
  readonly packs: Quantity<'each'>
  /** Whole purchase units to order, net of what is on hand. */
  readonly buy: Quantity
  readonly charged: Quantity
  /** Of one, by the price break that the job’s whole purchase units reach. */
  readonly unitPriceCents: Quantity<'cents'>
  readonly totalCents: Quantity<'cents'>
  readonly usedFor: readonly string[]
}

/** What an amount of a product takes in purchase units, and costs. Stock on hand lessens the order alone: the job pays for it. */
export function lineOf(product: Product, needed: Quantity, usedFor: readonly string[] = []): MaterialLine {
  const of = { needed, wastePct: product.wastePct, pack: product.pack }, whole = work(wholePacks, of), packs = work(usedPacks, of)
  const charged = product.charge === 'whole' ? whole : packs, unitPriceCents = priceAt(product, whole)
  return { product, needed, packs, buy: product.stock ? work(netOfStock, { packs, stock: product.stock }) : whole, charged, unitPriceCents, totalCents: work(lineCents, { amount: charged, unitPriceCents }), usedFor }
}

export function bill(steps: readonly Pick<Step, 'id' | 'needs'>[], productOf: (item: string) => Product): MaterialLine[] {
  const by = new Map<string, { readonly lines: Line[]; readonly usedFor: string[] }>()
  for (const s of steps) for (const n of s.needs) {
    let of = by.get(n.item)
    if (!of) by.set(n.item, of = { lines: [], usedFor: [] })
    const again = of.usedFor.includes(s.id)
    of.lines.push([again ? `${s.id} (${of.lines.length + 1})` : s.id, n.quantity])
    if (!again) of.usedFor.push(s.id)
  }
  return [...by].sort(([a], [b]) => byText(a, b)).map(([item, { lines, usedFor }]) => {
    const [, first] = lines[0]!
    return lineOf(productOf(item), lines.length === 1 ? first : total(first.unit, lines), usedFor.sort(byText))
  })
}
