// What a ceiling has besides insulation.
import { surfaces } from '../reference/targets.ts'
import { fromRow } from '../reference/table.ts'
import { type Quantity, type Unit } from '../units/quantity.ts'

const surface = <U extends Unit>(what: string, unit: U): Quantity<U> => {
  const r = surfaces.rows.find(s => s.what === what)!
  return fromRow(surfaces, r, r.r, unit, what)
}
/** Films and board. */
export const baseR = (): Quantity<'R'> => surface('base', 'R')
/** The bare lid of a fire-rated box. */
export const boxLidR = (): Quantity<'R'> => surface('box-lid', 'R')
export const woodPerInch = (): Quantity<'R/in'> => surface('softwood-per-inch', 'R/in')
