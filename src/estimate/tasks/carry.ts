// What goes up for each phase. What is left of a pack goes on to the next, so that all phases together carry what is bought.
import { over, wholePacks } from '../../calc/arithmetic.ts'
import type { Product } from '../../books/books.ts'
import { byText } from '../../findings/finding.ts'
import { phases, type Phase } from '../../scope/kind.ts'
import { exactly, total, work, type Quantity } from '../../units/quantity.ts'
import type { Step } from './order.ts'

export interface Carried { readonly phase: Phase; readonly items: readonly { readonly item: string; readonly quantity: Quantity; readonly unit: string; readonly packs: Quantity; readonly buyUnit: string; readonly leftover: boolean }[] }

/** By phase, in their order: how much of each item its steps take, and the packs to bring up beside what earlier phases left over. */
export function carry(steps: readonly Pick<Step, 'phase' | 'needs'>[], productOf: (item: string) => Product): Carried[] {
  const soFar = new Map<string, Quantity[]>()
  return phases.flatMap(phase => {
    const needs = steps.filter(s => s.phase === phase).flatMap(s => s.needs)
    const items = [...new Set(needs.map(n => n.item))].sort(byText).map(item => {
      const product = productOf(item), now = needs.filter(n => n.item === item).map(n => n.quantity), before = soFar.get(item) ?? [], all = [...before, ...now]
      soFar.set(item, all)
      const packsFor = (of: readonly Quantity[]): Quantity => (of.length === 0 ? exactly(0, 'each', 'nothing taken up yet') : work(wholePacks, { needed: total(of[0]!.unit, of), wastePct: product.wastePct, pack: product.pack }))
      return { item, quantity: total(now[0]!.unit, now), unit: product.unit, packs: { ...work(over, { amount: packsFor(all), free: packsFor(before) }), unit: 'each' as const }, buyUnit: product.buyUnit, leftover: before.length > 0 }
    })
    return items.length === 0 ? [] : [{ phase, items }]
  })
}
