// What a ceiling has besides insulation.
import { surfaces } from '../reference/targets.ts'
import { fromRow } from '../reference/table.ts'
import { type Quantity, type Unit } from '../units/quantity.ts'

const surface = <U extends Unit>(what: string, unit: U): Quantity<U> => {
  const r = surfaces.rows.find(s => s.what === what)!
  return fromRow(surfaces, r, r.r, unit, what)
}
const base = surface('base', 'R'), boxLid = surface('box-lid', 'R'), perInch = surface('softwood-per-inch', 'R/in')
/** Films and board. */
export const baseR = (): Quantity<'R'> => base
/** The bare lid of a fire-rated box. */
export const boxLidR = (): Quantity<'R'> => boxLid
export const woodPerInch = (): Quantity<'R/in'> => perInch
