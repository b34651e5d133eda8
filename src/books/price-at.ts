// What one of a product costs when so many are bought.
import { row, type Quantity } from '../units/quantity.ts'
import type { PriceBreak, Product } from './books.ts'

/** The break that so many reach, if any. @param packs whole purchase units */
export const breakAt = (p: Pick<Product, 'breaks'>, packs: number): PriceBreak | undefined => p.breaks?.filter(b => b.from <= packs).at(-1)

/** The price of one purchase unit when so many are bought for a job; a break says which amount reached it. */
export function priceAt(p: Pick<Product, 'breaks' | 'unitPriceCents'>, packs: Quantity): Quantity<'cents'> {
  const reached = breakAt(p, packs.value)
  if (!reached) return p.unitPriceCents
  const { from } = reached.unitPriceCents
  return from.is === 'row' ? row(reached.unitPriceCents.value, 'cents', from.at, from.source, packs) : reached.unitPriceCents
}
