// One opening taken off alone: in an area blown to 16 in above the ceiling plane, without access factors, with the demo books.
import { demoCompany, demoPrices } from '../../src/books/demo.ts'
import { shelf } from '../../src/books/open.ts'
import { found, type Measure } from '../../src/scope/kind.ts'
import { openingKinds, type Opening } from '../../src/scope/index.ts'
import { exactly } from '../../src/units/quantity.ts'

export const books = shelf(demoPrices, demoCompany).for({ rValue: 49 })

export function take(item: Opening, filled = true, house: { readonly climateZone?: string } = { climateZone: '5' }): Measure {
  const kind = openingKinds.find(k => k.kind === item.kind)!
  return kind.takeoff(found(item, '/openings/0', `${item.kind}-main-1`) as never, books, {
    area: { id: 'main', topOfFillInitialIn: exactly(16, 'in', 'blown top of these tests'), access: exactly(1, 'factor', 'no access factor'), filled }, house })
}

/** What each task needs, by task and item. */
export const needs = (m: Measure): Record<string, Record<string, number>> =>
  Object.fromEntries(m.tasks.map(t => [t.id, Object.fromEntries(t.needs.map(n => [n.item, n.quantity.value]))]))
export const hours = (m: Measure): Record<string, number> => Object.fromEntries(m.tasks.map(t => [t.id, t.personHours.value]))
export const cautions = (m: Measure): string => m.tasks.flatMap(t => t.cautions).join(' ')
export const gates = (m: Measure) => (m.gates ?? []).map(g => `${g.state} ${g.code}`)
export const codes = (m: Measure): string[] => (m.findings ?? []).map(x => x.code)
