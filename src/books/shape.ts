// What a plan depends on in a price book: all of it but the prices. Two books of one shape give one house one plan.
import type { PriceBook } from './price-book.ts'

/** Words that say what a product costs, where it comes from, what is on hand and what it is called: no quantity that the work takes depends on them. */
const OF_THE_PRICE = new Set(['price', 'supplier', 'name', 'dated', 'demo', 'stock', 'code'])

/** The book without its prices, as text. */
export const shapeOf = (book: PriceBook): string => JSON.stringify(book, (key, value: unknown) => (OF_THE_PRICE.has(key) ? undefined : value))
