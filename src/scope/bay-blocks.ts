// Joist bays under a knee wall: air runs under the wall from the cold side into the floor of the warm room.
import * as f from '../fields/index.ts'
import { personHours } from '../calc/arithmetic.ts'
import { baysOf, blockArea, blockEdge } from '../calc/dense.ts'
import { bead } from '../calc/seal.ts'
import type { Books } from '../books/books.ts'
import { lumber } from '../reference/ceilings.ts'
import { fromRow } from '../reference/table.ts'
import { given, work, type Quantity } from '../units/quantity.ts'
import { CAUTION, itself, seamBead, takes, type Found, type Task } from './kind.ts'

export const blockKeys = {
  wallFt: f.feet(500, 'length of the knee wall: a block in each joist bay below it', { examples: [22] }),
  openBays: f.optional(f.count(500, 'joist bays open under the wall, counted; without it length ÷ spacing', { min: 0 })),
}

interface Walled { readonly id: string; readonly joists: { readonly size: string; readonly spacingIn: number }; readonly wallFt: number; readonly openBays?: number }

/** A block in each open bay; none where all are closed already. */
export function bayBlocks({ item, at, q }: Found<Walled>, access: Quantity<'factor'>, books: Books): readonly Task[] {
  const joist = lumber.rows.find(r => r.size === item.joists.size)!, spacingIn = given(item.joists.spacingIn, 'in', `${at}/joists/spacingIn`)
  const bays = q('openBays', work(baysOf, { widthFt: q('wallFt'), spacingIn }))
  if (bays.value === 0) return []
  const sizes = { bays, spacingIn, framingIn: fromRow(lumber, joist, joist.widthIn, 'in', joist.size), depthIn: fromRow(lumber, joist, joist.depthIn, 'in', joist.size) }
  const { needs } = takes([books.product('rigid-cover'), work(blockArea, sizes)], [books.product('seam-sealant'), work(bead, { runIn: work(blockEdge, sizes), beadIn: seamBead(books) })])
  return [{ id: `block-bays-${item.id}`, title: 'Block each joist bay in line with the knee wall, rigid, all edges sealed', count: bays.value, phase: 'seal', work: 'big-hole', size: 'large', touches: [item.id], serves: itself, closes: `${item.id}-bays`, role: 'crew', needs,
    personHours: work(personHours, { amount: bays, rate: books.rate('joist-bay-block', 0.25, 'each'), access }), cautions: [CAUTION.wires, 'A batt alone is no block: air goes through it.', CAUTION.framing], proof: 'photo of each row' }]
}
