// What the price leaves open or out, in sentences for the quote.
import type { NamedGate } from './tasks/gates.ts'
import { merged } from './tasks/order.ts'
import { titled } from './parts.ts'
import { idle, type Declined, type Standing } from './tasks/standing.ts'

/** A house where nothing may start has no price but the visit's. */
export const onlyTheVisit = (gates: readonly NamedGate[]): string[] =>
  gates.filter(g => g.open && g.state === 'stop').map(g => `No work is priced while ${g.id} is shut; it opens with ${g.clearedBy}.`)

/** What the price leaves open or out, the conditions of a hold first. */
export function excluded(gates: readonly NamedGate[], stands: Standing, unknowns: readonly string[], declined: readonly Declined[], areas: number): string[] {
  const conditions = gates.filter(g => g.open && g.state === 'hold' && !idle(g, stands.open)).flatMap(g => g.condition ?? [])
  // The closing of a leak, and the cover itself; what only served them is in the list of stopped work.
  const stopped = merged(stands.stopped.map(s => s.task)).filter(t => t.closes.length > 0 || t.buries !== undefined)
    .map(t => `Not in this price: ${titled(t)}${areas > 1 && t.touches !== 'house' ? `, in ${t.touches.join(', ')}` : ''}.`)
  return [...new Set([...conditions, ...unknowns, ...declined.map(d => `The owner keeps the opening at ${d.where} open; nothing in its area is covered.`), ...stopped])]
}
