// What one house is under one book, as plain data that can be kept and priced again later: the quantities, without what made them.
import { exactly, type Quantity, type Unit } from '../../units/quantity.ts'
import type { Verdict } from '../output.ts'
import type { Billed } from '../plan.ts'
import type { RepriceGate, Stand } from './reprice.ts'

type KeptNeed = readonly [item: string, quantity: number, unit: Unit]
export interface KeptStand {
  readonly verdict: Verdict
  readonly gates: readonly RepriceGate[]
  readonly access?: Billed['site']['access']
  readonly choices?: Billed['site']['choices']
  readonly wholeDays: number
  readonly risks: Billed['risks']
  readonly disposal: Readonly<Record<string, number>>
  readonly steps: readonly { readonly id: string; readonly hours: number; readonly needs: readonly KeptNeed[]; readonly sub?: number; readonly ownVisit?: boolean }[]
}

/** A stand that no error stands in the way of. */
export const keptStand = ({ gates, billed: { verdict, site: { access, choices }, wholeDays, disposal, steps, risks } }: Stand): KeptStand => ({
  verdict, gates, ...(access === undefined ? {} : { access }), ...(choices === undefined ? {} : { choices }), wholeDays: wholeDays.value, risks,
  disposal: Object.fromEntries(Object.entries(disposal).map(([id, q]) => [id, q.value])),
  steps: steps.map(s => ({
    id: s.id, hours: s.personHours.value, needs: s.needs.map(n => [n.item, n.quantity.value, n.quantity.unit] as const),
    ...(s.subcontractCents === undefined ? {} : { sub: s.subcontractCents.value }), ...(s.ownVisit === undefined ? {} : { ownVisit: s.ownVisit }),
  })),
})

const kept = <U extends Unit>(value: number, unit: U): Quantity<U> => exactly(value, unit, 'taken off before')

export const standKept = ({ verdict, gates, access, choices, wholeDays, disposal, steps, risks }: KeptStand): Stand => ({
  gates, errors: [],
  billed: {
    verdict, site: { ...(access === undefined ? {} : { access }), ...(choices === undefined ? {} : { choices }) }, wholeDays: kept(wholeDays, 'day'), risks,
    disposal: Object.fromEntries(Object.entries(disposal).map(([id, value]) => [id, kept(value, 'cents')])),
    steps: steps.map(s => ({
      id: s.id, personHours: kept(s.hours, 'h'), needs: s.needs.map(([item, value, unit]) => ({ item, quantity: kept(value, unit) })),
      ...(s.sub === undefined ? {} : { subcontractCents: kept(s.sub, 'cents') }), ...(s.ownVisit === undefined ? {} : { ownVisit: s.ownVisit }),
    })),
  },
})
