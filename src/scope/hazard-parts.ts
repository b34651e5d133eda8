// What hazards share: where a gate shuts, and what silence means.
import * as f from '../fields/index.ts'
import { personHours } from '../calc/arithmetic.ts'
import type { Books } from '../books/books.ts'
import { assumed, exactly, work, type Quantity } from '../units/quantity.ts'
import type { Clearable, Gate, House, Measure, Phase, Task } from './kind.ts'

/** Keys of most hazards. */
export const seenAt = (example: string) => ({
  in: f.optional(f.id('area it is in; left out, the whole attic')),
  at: f.text('where, in your words', { examples: [example] }),
})

export interface Seen { readonly in?: string; readonly at: string }

/** Where a gate of this hazard stands and what it shuts: its area, or the whole attic where none is named. */
export const shutHere = (item: Seen, path: string, phases: readonly Phase[]): Pick<Gate, 'where' | 'in' | 'path' | 'stops'> => ({
  where: item.at, in: item.in ?? 'house', path, stops: { phases, places: item.in === undefined ? [] : [item.in] },
})

/** A hazard that no year rules out, and that nobody wrote down either way: taken as not there, and said so. */
export const takenAsAbsent = (kind: string, what: string): Measure => ({ figures: {}, tasks: [], assumes: [assumed(`no-${kind}`, 0, 'each', `no ${what}`, `${kind} is neither in hazards nor in notFound: taken as not there`)] })

interface Silence {
  readonly gate: Pick<Gate, 'code' | 'state'>
  readonly kind: string
  /** As in "nobody looked for …". */
  readonly what: string
  readonly limit: Quantity<'year'>
  readonly why: string
  readonly phases: readonly Phase[]
  readonly look: Pick<Task, 'title' | 'cautions' | 'work'>
  readonly clearable: readonly Clearable[]
}

/** A hazard of its years that nobody looked for counts as present: the work is held until somebody has. */
export function heldUntilLooked(s: Silence, house: House, books: Books, at: string): Measure | undefined {
  if (house.yearBuilt !== undefined && house.yearBuilt > s.limit.value) return undefined
  return {
    figures: {}, assumes: [s.limit],
    tasks: [{ id: `look-${s.kind}`, ...s.look, phase: 'clear', touches: 'house', serves: { is: 'itself' }, role: 'lead', ownVisit: true,
      personHours: work(personHours, { amount: exactly(1, 'each', 'one look'), rate: books.rate('look-at-hazard', 0.25, 'each'), access: exactly(1, 'factor', 'from the hatch') }), needs: [], proof: 'photo with date' }],
    gates: [{
      ...s.gate, where: 'attic', in: 'house', path: at, why: `nobody looked for ${s.what} in a house ${house.yearBuilt === undefined ? 'of unknown year' : `of ${house.yearBuilt}`}; ${s.why}`,
      stops: { phases: s.phases, places: [] }, clearedByTask: `look-${s.kind}`, clearable: s.clearable, clearedBy: `a look, written as \`notFound: [${s.kind}]\`, or as a hazard where it is found`,
      condition: `The price holds only if a look finds no ${s.what} before work starts.`,
    }],
  }
}
