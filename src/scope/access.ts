import { table } from '../reference/table.ts'
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

/** Headroom at a step's edge is the roomier step: 60 in and more is 1.0. */
export const headroomFactor = (headroomIn: Quantity<'in'>): Quantity<'factor'> => {
  const s = headroomSteps.rows.find(r => headroomIn.value < r.upTo)!
  return row(s.factor, 'factor', `${headroomSteps.name}: under ${s.upTo} in`, headroomSteps.source, headroomIn)
}
export const oldFillFactor = (depthIn: Quantity<'in'>): Quantity<'factor'> => {
  const s = oldFillSteps.rows.find(r => depthIn.value <= r.upTo + 1e-9)!
  return row(s.factor, 'factor', `${oldFillSteps.name}: to ${s.upTo} in`, oldFillSteps.source, depthIn)
}
export const websFactor = (webs: Webs, at: string | undefined): Quantity<'factor'> => {
  const r = websRows.rows.find(x => x.webs === webs)!
  return row(r.factor, 'factor', `${websRows.name}: ${webs}`, websRows.source, at === undefined ? undefined : given(r.factor, 'factor', at, webs))
}
export const hatchFactor = (sides: readonly [Quantity, Quantity] | undefined): Quantity<'factor'> => {
  if (!sides) return row(1, 'factor', `${hatchRows.name}: no hatch in the file`, hatchRows.source)
  const r = hatchRows.rows.find(x => sides[0].value >= x.shortIn - 1e-9 && sides[1].value >= x.longIn - 1e-9)!
  return row(r.factor, 'factor', `${hatchRows.name}: ${r.shortIn} × ${r.longIn} in and up`, hatchRows.source, sides[0])
}
