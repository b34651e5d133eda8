// Which part of the price buys what: sealing, ducts, insulation. What serves the whole visit is spread over them.
import { shareOf } from '../../calc/energy.ts'
import { lineCents } from '../../calc/price.ts'
import type { Books } from '../../books/books.ts'
import { total, work, type Quantity } from '../../units/quantity.ts'
import type { Phase } from '../../scope/kind.ts'
import type { MaterialLine } from './bill.ts'
import type { Step } from '../tasks/order.ts'

export const partIds = ['air', 'ducts', 'ceiling'] as const
export type PartId = (typeof partIds)[number]

const PARTS: Partial<Record<Phase, PartId>> = { seal: 'air', ducts: 'ducts', wrap: 'ducts', prepare: 'ceiling', ventilate: 'ceiling', contain: 'ceiling', insulate: 'ceiling', close: 'ceiling' }

/** By direct cost: hours, other trades, and of each material what the part uses. */
export function partPrices(steps: readonly Step[], materials: readonly MaterialLine[], totalCents: Quantity<'cents'>, books: Books): Partial<Record<PartId, Quantity<'cents'>>> {
  const direct = Object.fromEntries(partIds.map(id => [id, {} as Record<string, Quantity>])) as Record<PartId, Record<string, Quantity>>
  const partOf = (s: Step): PartId | undefined => (s.work === 'clean-up' ? undefined : PARTS[s.phase])
  for (const s of steps) {
    const id = partOf(s)
    if (!id) continue
    direct[id][s.id] = work(lineCents, { amount: s.personHours, unitPriceCents: books.company.wageCents })
    if (s.subcontractCents) direct[id][`${s.id}, other trade`] = s.subcontractCents
  }
  for (const m of materials) {
    const by: Record<string, Quantity[]> = {}
    for (const s of steps) for (const n of s.needs) if (n.item === m.product.item) (by[partOf(s) ?? 'visit'] ??= []).push(n.quantity)
    const all = total(m.product.unit as Quantity['unit'], Object.values(by).flat())
    if (all.value > 0) for (const id of partIds) if (by[id]) direct[id][m.product.item] = work(shareOf, { priceCents: m.totalCents, part: total(m.product.unit as Quantity['unit'], by[id]) as never, all: all as never })
  }
  const used = partIds.filter(id => Object.keys(direct[id]).length > 0), sums = Object.fromEntries(used.map(id => [id, total('cents', direct[id])])), all = total('cents', sums)
  if (all.value === 0) return {}
  return Object.fromEntries(used.map(id => [id, work(shareOf, { priceCents: totalCents, part: sums[id]!, all })]))
}
