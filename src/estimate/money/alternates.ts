// What else of the price book would do, should the supplier have none.
import { wholePacks } from '../../calc/arithmetic.ts'
import type { Books } from '../../books/books.ts'
import { standsFor } from '../../books/stands.ts'
import { work } from '../../units/quantity.ts'
import type { MaterialLine } from './bill.ts'

/** None for a blown product: bags, depth and weight follow from its own chart, so another one is another estimate. */
export const alternatesOf = ({ product, needed }: MaterialLine, books: Books) => books.products(product.role).filter(p => p.item !== product.item && standsFor(p, product))
  .map(p => ({ item: p.item, name: p.name, buy: work(wholePacks, { needed, wastePct: p.wastePct, pack: p.pack }), buyUnit: p.buyUnit }))
