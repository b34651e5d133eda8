// From what tasks need to what is bought: added up by product, waste once, rounded once.
import { usedPacks, wholePacks } from '../calc/arithmetic.ts'
import { lineCents } from '../calc/price.ts'
import type { Product } from '../books/books.ts'
import { byText } from '../findings/finding.ts'
import { total, work, type Quantity } from '../units/quantity.ts'
import type { Step } from './order.ts'

export interface MaterialLine {
  readonly product: Product
  readonly needed: Quantity
  readonly buy: Quantity
  readonly charged: Quantity
  readonly totalCents: Quantity<'cents'>
  readonly usedFor: readonly string[]
}

export function bill(steps: readonly Pick<Step, 'id' | 'needs'>[], productOf: (item: string) => Product): MaterialLine[] {
  const by = new Map<string, { quantities: Record<string, Quantity>; usedFor: string[] }>()
  for (const s of steps) for (const n of s.needs) {
    const line = by.get(n.item) ?? { quantities: {}, usedFor: [] }
    by.set(n.item, line)
    line.quantities[s.id in line.quantities ? `${s.id} (${Object.keys(line.quantities).length + 1})` : s.id] = n.quantity
    if (!line.usedFor.includes(s.id)) line.usedFor.push(s.id)
  }
  return [...by].sort(([a], [b]) => byText(a, b)).map(([item, { quantities, usedFor }]) => {
    const product = productOf(item)
    const all = Object.values(quantities)
    const needed = all.length === 1 ? all[0]! : total(all[0]!.unit, quantities)
    const packs = { needed, wastePct: product.wastePct, pack: product.pack }
    const buy = work(wholePacks, packs), charged = product.charge === 'whole' ? buy : work(usedPacks, packs)
    return { product, needed, buy, charged, totalCents: work(lineCents, { amount: charged, unitPriceCents: product.unitPriceCents }), usedFor: usedFor.sort(byText) }
  })
}
