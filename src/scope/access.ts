import type { Company } from '../books/books.ts'
import { fromRow, table } from '../reference/table.ts'
import { given, row, type Quantity } from '../units/quantity.ts'

// Access factors on person-hours (judgment; a company may put its own rates in the company file).

interface Step { readonly upTo: number; readonly factor: number }
const steps = (name: string, title: string, unit: string, rows: readonly Step[]) =>
  table<Step>({ name, title, source: 'judgment: starting access factors', obtained: 'judgment', units: { upTo: unit, factor: 'factor' }, rows })

export const headroomSteps = steps('access-headroom', 'Factor by headroom where the hand works', 'in', [
  { upTo: 24, factor: 2.2 }, { upTo: 36, factor: 1.6 }, { upTo: 60, factor: 1.2 }, { upTo: Infinity, factor: 1 }])
export const oldFillSteps = steps('access-old-fill', 'Factor by old fill over the work', 'in', [
  { upTo: 4, factor: 1 }, { upTo: 8, factor: 1.15 }, { upTo: 12, factor: 1.3 }, { upTo: Infinity, factor: 1.5 }])

export const websRows = table<{ webs: string; factor: number }>({ name: 'access-webs', title: 'Factor by roof framing in the way', source: 'judgment: starting access factors', obtained: 'judgment', units: { factor: 'factor' },
  rows: [{ webs: 'open', factor: 1 }, { webs: 'w', factor: 1.15 }, { webs: 'dense', factor: 1.3 }] })
export type Webs = 'open' | 'w' | 'dense'

/** Shorter and longer side of the largest hatch [in]. */
export const hatchRows = table<{ shortIn: number; longIn: number; factor: number }>({ name: 'access-hatch', title: 'Factor by the largest hatch', source: 'judgment: starting access factors', obtained: 'judgment', units: { shortIn: 'in', longIn: 'in', factor: 'factor' },
  rows: [{ shortIn: 22, longIn: 30, factor: 1 }, { shortIn: 18, longIn: 18, factor: 1.1 }, { shortIn: 0, longIn: 0, factor: 1.2 }] })

/** A row of the company’s own, and the figure that picked it. */
const picked = (factor: Quantity<'factor'>, by?: Quantity): Quantity<'factor'> => (factor.from.is === 'row' && by ? row(factor.value, 'factor', factor.from.at, factor.from.source, by) : factor)

/** Headroom at a step's edge is the roomier step: 60 in and more is 1.0. */
export const headroomFactor = (headroomIn: Quantity<'in'>, { accessFactors: own }: Company): Quantity<'factor'> => {
  if (own?.headroom) return picked(own.headroom.find(r => headroomIn.value < r.upTo)!.factor, headroomIn)
  const s = headroomSteps.rows.find(r => headroomIn.value < r.upTo)!
  return fromRow(headroomSteps, s, s.factor, 'factor', s.upTo === Infinity ? 'over the last step' : `under ${s.upTo} in`, headroomIn)
}
export const oldFillFactor = (depthIn: Quantity<'in'>, { accessFactors: own }: Company): Quantity<'factor'> => {
  if (own?.oldFill) return picked(own.oldFill.find(r => depthIn.value <= r.upTo + 1e-9)!.factor, depthIn)
  const s = oldFillSteps.rows.find(r => depthIn.value <= r.upTo + 1e-9)!
  return fromRow(oldFillSteps, s, s.factor, 'factor', s.upTo === Infinity ? 'over the last step' : `to ${s.upTo} in`, depthIn)
}
export const websFactor = (webs: Webs, at: string | undefined, { accessFactors: own }: Company): Quantity<'factor'> => {
  const mine = own?.webs?.find(r => r.webs === webs)?.factor
  if (mine) return picked(mine, at === undefined ? undefined : given(mine.value, 'factor', at, webs))
  const r = websRows.rows.find(x => x.webs === webs)!
  return fromRow(websRows, r, r.factor, 'factor', webs, at === undefined ? undefined : given(r.factor, 'factor', at, webs))
}
export const hatchFactor = (sides: readonly [Quantity, Quantity] | undefined, { accessFactors: own }: Company): Quantity<'factor'> => {
  if (!sides) return fromRow(hatchRows, {}, 1, 'factor', 'no hatch in the file')
  const fits = (short: number, long: number): boolean => sides[0].value >= short - 1e-9 && sides[1].value >= long - 1e-9
  if (own?.hatch) return picked(own.hatch.find(r => fits(...r.sides))!.factor, sides[0])
  const r = hatchRows.rows.find(x => fits(x.shortIn, x.longIn))!
  return fromRow(hatchRows, r, r.factor, 'factor', `${r.shortIn} × ${r.longIn} in and up`, sides[0])
}

/** What the factors come to, for comparing jobs that were alike to reach. */
export const accessClasses = table<{ access: string; upToFactor: number }>({ name: 'access-classes', title: 'Classes of access, by the product of the factors', use: 'names how hard a step is to reach, for the crew', source: 'judgment: classes of the access factors', obtained: 'judgment', units: { upToFactor: 'factor' },
  rows: [{ access: 'plain', upToFactor: 1.15 }, { access: 'tight', upToFactor: 1.6 }, { access: 'hard', upToFactor: 3 }] })
export const accessClass = (factor: number): string => (accessClasses.rows.find(r => factor <= r.upToFactor + 1e-9) ?? accessClasses.rows.at(-1)!).access
