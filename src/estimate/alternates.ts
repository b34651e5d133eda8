// What else of the price book would do, should the supplier have none.
import { wholePacks } from '../calc/arithmetic.ts'
import type { Books, Product } from '../books/books.ts'
import { work, type Quantity } from '../units/quantity.ts'
import type { MaterialLine } from './bill.ts'

const least = (other: Quantity | undefined, mine: Quantity | undefined): boolean => mine === undefined || (other !== undefined && other.value >= mine.value)
const same = (a: Product['sizeIn'], b: Product['sizeIn']): boolean => a?.[0].value === b?.[0].value && a?.[1].value === b?.[1].value

/** No worse for the work as planned: its hours, heights and fire rules stand. */
const stands = (other: Product, mine: Product): boolean => other.unit === mine.unit && (other.noncombustible || !mine.noncombustible) && other.ratedFor === mine.ratedFor
  && least(other.heightIn, mine.heightIn) && least(other.rValue, mine.rValue) && same(other.sizeIn, mine.sizeIn) && other.thicknessIn?.value === mine.thicknessIn?.value

/** None for a blown product: bags, depth and weight follow from its own chart, so another one is another estimate. */
export const alternatesOf = ({ product, needed }: MaterialLine, books: Books) => books.products(product.role).filter(p => p.item !== product.item && stands(p, product))
  .map(p => ({ item: p.item, name: p.name, buy: work(wholePacks, { needed, wastePct: p.wastePct, pack: p.pack }), buyUnit: p.buyUnit }))
