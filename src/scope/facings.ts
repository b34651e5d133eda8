// Facings of old batts: one that ends up under new fill, or between layers, traps water.
import { personHours } from '../calc/arithmetic.ts'
import type { Books } from '../books/books.ts'
import type { Finding } from '../findings/finding.ts'
import { work, type Quantity } from '../units/quantity.ts'
import { COVERING, CAUTION, fillOf, type Gate, type Task } from './kind.ts'
import type { Layer } from './layers.ts'

const WORDS = { 'kraft-up': 'paper facing up', poly: 'plastic sheet', foil: 'foil' } as const
type Upper = keyof typeof WORDS

export interface FacedFloor { readonly id: string; readonly layers: readonly Layer[]; readonly blown: boolean; readonly thousands: Quantity; readonly access: Quantity<'factor'> }

/** What faces up, or lies between layers, is slashed or taken off before it is covered; what would stay in the open is said. */
export function facingWork({ id, layers, blown, thousands, access }: FacedFloor, books: Books): { tasks: Task[]; gates: Gate[]; findings: Finding[] } {
  const tasks: Task[] = [], gates: Gate[] = [], findings: Finding[] = []
  const kept = layers.filter(l => l.kept)
  for (const l of kept) {
    const facing = l.item.facing ?? 'none', n = layers.indexOf(l) + 1
    if (!(facing in WORDS)) continue
    if (blown) {
      tasks.push({ id: `slash-facing-${id}-${n}`, title: `Slash or take off the ${WORDS[facing as Upper]}`, phase: 'prepare', work: 'old-fill', touches: [id], serves: fillOf(id), role: 'crew',
        personHours: work(personHours, { amount: thousands, rate: books.rate('slash-facing', 2, '1000 ft2'), access }), needs: [], cautions: ['Knife away from wires: power off where they lie under it.', 'Respirator, gloves, long sleeves.', CAUTION.framing], proof: 'photo' })
      gates.push({ code: 'facing-up', state: 'mend', where: `${id}, old fill`, in: id, path: `${l.at}/facing`, why: `a ${WORDS[facing as Upper]} under new fill holds water on its warm side`, stops: { phases: COVERING, places: [id] }, clearedByTask: `slash-facing-${id}-${n}`, clearedBy: 'own slashing or removal, photo', clearable: [] })
    } else if (facing === 'kraft-up' || facing === 'foil') findings.push({ code: 'facing-exposed', severity: 'warning', path: `${l.at}/facing`, says: `${WORDS[facing as Upper]} stays in the open`, why: 'paper and foil facings burn: their label asks for a cover', mend: 'turn the batts over, take the facing off, or blow this area' })
  }
  return { tasks, gates, findings }
}

