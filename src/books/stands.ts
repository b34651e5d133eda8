// Whether one product does the work of another.
import type { Quantity } from '../units/quantity.ts'
import type { Product } from './books.ts'

const least = (other: Quantity | undefined, mine: Quantity | undefined): boolean => mine === undefined || (other !== undefined && other.value >= mine.value)
const same = (a: Product['sizeIn'], b: Product['sizeIn']): boolean => a?.[0].value === b?.[0].value && a?.[1].value === b?.[1].value

/** No worse for the work as planned: its hours, heights and fire rules stand. Never of blown products, whose charts are their own. */
export const standsFor = (other: Product, mine: Product): boolean => other.unit === mine.unit && (other.noncombustible || !mine.noncombustible) && other.ratedFor === mine.ratedFor
  && least(other.heightIn, mine.heightIn) && least(other.rValue, mine.rValue) && same(other.sizeIn, mine.sizeIn) && other.thicknessIn?.value === mine.thicknessIn?.value
