// What a draft test may read: by the vent of the appliance and what shares its flue.
import type { Books } from '../books/books.ts'
import { draftLimits } from '../reference/draft.ts'
import { sourceOf } from '../reference/table.ts'
import type { Quantity } from '../units/quantity.ts'
import type { Appliance } from './appliances.ts'

/** The strictest row that fits it or what stands beside it; a vent that nobody looked at counts as the strictest. */
function ventOf(a: Appliance, drafting: readonly Appliance[]): string {
  const beside = (vent?: Appliance['vent']): boolean => drafting.some(b => b !== a && b.at === a.at && (vent === undefined || b.vent === vent))
  if (a.vent === 'unknown' || a.vent === 'unvented') return 'orphan'
  if (a.vent === 'natural-draft') return a.kind !== 'water-heater' ? 'natural-draft' : beside() ? 'common' : 'orphan'
  return beside('natural-draft') ? 'common' : 'fan-assisted'
}

/** How far its zone may be pulled down in a worst-case test [Pa]; the company file may replace it. @param drafting all of the house whose draft can be tested */
export function draftLimit(a: Appliance, drafting: readonly Appliance[], books: Books): Quantity<'Pa'> {
  const vent = ventOf(a, drafting), limit = draftLimits.rows.find(r => r.vent === vent)!
  return books.start(`draft-limit-${vent}`, limit.limitPa, 'Pa', `worst-case depressurization of a ${limit.title}`, `${sourceOf(draftLimits, limit)} (from memory, high)`)
}
