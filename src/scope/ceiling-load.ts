// What a ceiling may carry, and what happens where fill would weigh more.
import { personHours } from '../calc/arithmetic.ts'
import type { Books } from '../books/books.ts'
import { ceilingLimits, MOST_PSF_ROW } from '../reference/ceilings.ts'
import { fromRow } from '../reference/table.ts'
import { asTape } from '../units/tape.ts'
import { exactly, given, work, type Quantity } from '../units/quantity.ts'
import { COVERING, itself, type Found, type Gate, type Task } from './kind.ts'

/** The parts of an area that its ceiling hangs on. */
export interface Ceiling {
  readonly id: string
  readonly joists: { readonly spacingIn: number }
  readonly ceiling: { readonly board: string; readonly thicknessIn: number; readonly condition: string }
}

/** The published limit of this board at this spacing: the row at hand, or of the next wider spacing. */
export function ceilingLimit(found: Found<Ceiling>): Quantity<'lb/ft2'> | undefined {
  const { ceiling: { board, thicknessIn }, joists: { spacingIn } } = found.item
  const rows = ceilingLimits.rows.filter(r => r.board === board && thicknessIn >= r.thicknessIn - 1e-9 && r.spacingIn >= spacingIn - 1e-9)
  const best = rows.sort((a, b) => a.spacingIn - b.spacingIn || b.thicknessIn - a.thicknessIn)[0]
  return best && fromRow(ceilingLimits, best, best.limitPsf, 'lb/ft2', `${board} ${asTape(best.thicknessIn)} in at ${best.spacingIn} in`, given(spacingIn, 'in', `${found.at}/joists/spacingIn`))
}

/** Over the limit a look may open it; over what any listed ceiling carries, or on a sagging one, nothing is blown. */
export function loadGates(found: Found<Ceiling>, load: Quantity<'lb/ft2'>, limit: Quantity<'lb/ft2'> | undefined, books: Books): { gates: Gate[]; tasks: Task[] } {
  const { item, at } = found
  const { id, ceiling: { condition, board } } = item
  const gates: Gate[] = []
  const loadStop = (state: 'stop' | 'hold', code: string, why: string, clearedBy: string, kind: string): Gate => ({
    code, state, why, where: `${id}, ceiling`, in: id, path: `${at}/ceiling`, stops: { phases: COVERING, places: [id] }, clearedBy, clearable: [{ kind }],
    ...(state === 'hold' ? { clearedByTask: `inspect-ceiling-${id}`, condition: `The price holds only if the ceiling of ${id} is looked at and found sound before work starts.` } : {}),
  })
  if (condition !== 'sound') gates.push(loadStop('stop', 'ceiling-sagging', `the ceiling is ${condition}: it may not carry more`, 'a contractor’s repair, or the old fill removed and the ceiling fastened', 'ceiling-repair'))
  if (load.value > MOST_PSF_ROW.limitPsf + 1e-9) gates.push(loadStop('stop', 'ceiling-overloaded', `${load.value.toFixed(2)} psf is over ${MOST_PSF_ROW.limitPsf}, the most any listed ceiling carries`, 'a lighter product, less R, old fill out, or an engineer', 'engineer-letter'))
  else if (!limit) gates.push(loadStop('hold', 'ceiling-no-limit', `no published limit for ${board} ${asTape(item.ceiling.thicknessIn)} in`, 'a recorded look from below and the owner’s initials', 'ceiling-look'))
  else if (load.value > limit.value + 1e-9) gates.push(loadStop('hold', 'ceiling-over-limit', `${load.value.toFixed(2)} psf is over the ${limit.value} psf of this board at ${item.joists.spacingIn} in`, 'a recorded look: fastened tight, no sag, no water texture, no leak; and the owner’s initials', 'ceiling-look'))
  const tasks: Task[] = gates.some(g => g.clearedByTask) ? [{
    id: `inspect-ceiling-${id}`, title: 'Look at the ceiling from below: fastening, sag, water marks; owner initials', phase: 'clear', work: 'clearing', touches: [id], serves: itself, role: 'lead',
    personHours: work(personHours, { amount: exactly(1, 'each', 'one look to an area'), rate: books.rate('look-at-hazard', 0.25, 'each'), access: exactly(1, 'factor', 'from the rooms') }), needs: [], cautions: ['Look from the rooms; do not load the ceiling.'], proof: 'photo, initials', ownVisit: true }] : []
  return { gates, tasks }
}
