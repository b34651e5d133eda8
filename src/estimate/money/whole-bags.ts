// What the crew counts: whole bags for each area, which together are no more than the floor takes.
import { wholeBags } from '../../calc/fill.ts'
import { roundUp } from '../../units/money.ts'
import { exactly, work, type Quantity } from '../../units/quantity.ts'

export interface Bagged { readonly id: string; readonly product: string; readonly bags: Quantity<'bag'> }

/** Whole bags by area: exact bags down, and what is over to the largest shares of a bag, in each product by itself. */
export function wholeBagsOf(areas: readonly Bagged[]): ReadonlyMap<string, Quantity<'bag'>> {
  const out = new Map<string, Quantity<'bag'>>()
  for (const product of new Set(areas.map(a => a.product))) {
    const mine = areas.filter(a => a.product === product).map((a, i) => ({ ...a, i, part: a.bags.value - Math.floor(a.bags.value + 1e-9) }))
    const over = roundUp(mine.reduce((sum, a) => sum + a.bags.value, 0)) - mine.reduce((sum, a) => sum + Math.floor(a.bags.value + 1e-9), 0)
    const first = new Set([...mine].sort((a, b) => b.part - a.part || a.i - b.i).slice(0, over).map(a => a.id))
    for (const a of mine) out.set(a.id, work(wholeBags, { bags: a.bags, more: exactly(first.has(a.id) ? 1 : 0, 'each', 'a bag that the areas of the product share') }))
  }
  return out
}
