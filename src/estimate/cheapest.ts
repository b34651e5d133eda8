// Several price books side by side: each thing from whoever sells what does the work for least. Decided on the plan itself, since breaks and packs go by how much it takes.
import type { Books, Offer, Product } from '../books/books.ts'
import { byText } from '../findings/finding.ts'
import type { JobFile } from '../job/job-file.ts'
import { hasCeilingGoal } from '../scope/index.ts'
import { assumed, type Quantity } from '../units/quantity.ts'
import { bill, lineOf, type MaterialLine } from './money/bill.ts'
import { plan, priced, productOf, type Plan } from './plan.ts'

/** Who sells each line for least: of equals, whoever stands first in the books. */
function taken(lines: readonly MaterialLine[], books: Books): ReadonlyMap<string, Product> {
  const out = new Map<string, Product>()
  for (const { product, needed, totalCents } of lines) {
    const others = books.offers(product).map(p => ({ p, totalCents: lineOf(p, needed).totalCents }))
    if (others.length === 0) continue
    const all = [{ p: product, totalCents }, ...others], best = all.reduce((a, b) => (b.totalCents.value < a.totalCents.value ? b : a))
    const told = (o: (typeof all)[number]): Offer => ({ supplier: o.p.supplier ?? '', item: o.p.item, name: o.p.name, totalCents: o.totalCents })
    const { insteadOf: _, ...plain } = best.p
    out.set(product.item, { ...plain, offers: all.filter(o => o !== best).map(told), ...(best.p.item === product.item ? product.insteadOf ? { insteadOf: product.insteadOf } : {} : { insteadOf: { item: product.item, name: product.name, why: `it costs less at ${best.p.supplier ?? 'another supplier'}` } }) })
  }
  // What stands for another is asked for by its own name too.
  for (const p of [...out.values()]) if (!out.has(p.item)) out.set(p.item, p)
  return out
}

/** What a plan costs with each line from whoever sells it for least. */
function costOf(planned: Plan, books: Books): number {
  const offers = taken(bill(planned.steps, productOf(books)), books), bought = books.taking(offers)
  const { prices } = priced({ ...planned, steps: planned.steps.map(s => ({ ...s, needs: s.needs.map(n => ({ ...n, item: offers.get(n.item)?.item ?? n.item })) })) }, bought)
  return 'costCents' in prices ? prices.costCents.value : Infinity
}

/** Where no fill is named: the blown product with which the whole house costs least, of those whose chart reaches every need within every ceiling. */
function cheapestFill(data: JobFile, books: Books): JobFile {
  const open = data.areas.filter(a => hasCeilingGoal(a) && data.choices?.fill?.[a.id] === undefined)
  if (open.length === 0 || data.choices?.supplier !== undefined) return data
  const tried = books.blownItems.map(item => {
    const with_: JobFile = { ...data, choices: { ...data.choices, fill: { ...data.choices?.fill, ...Object.fromEntries(open.map(a => [a.id, item])) } } }
    const planned = plan(with_, books), fails = planned.taken.findings.some(f => f.severity === 'error') || planned.gates.gates.some(g => g.open && g.code.startsWith('ceiling-over'))
    return { item, with_, cost: fails ? Infinity : costOf(planned, books) }
  })
  const best = tried.filter(t => t.cost < Infinity).sort((a, b) => a.cost - b.cost || byText(a.item, b.item))[0]
  return best?.with_ ?? data
}

/** The job and its books once it is decided what comes from where, and what was assumed for it; unchanged with one price book. */
export function bought(data: JobFile, books: Books): { readonly data: JobFile; readonly books: Books; readonly assumes: readonly Quantity[] } {
  if (!books.sideBySide) return { data, books, assumes: [] }
  const filled = cheapestFill(data, books), offers = taken(bill(plan(filled, books).steps, productOf(books)), books), taking = books.taking(offers)
  const fill = filled === data ? undefined : Object.entries(filled.choices?.fill ?? {}).find(([area]) => data.choices?.fill?.[area] === undefined)?.[1]
  return { data: filled, books: taking, assumes: fill === undefined ? [] : [assumed('fill', 1, 'each', `${books.blown(fill)?.name ?? fill} for areas that name no fill`, 'with it the house costs least, of the price books side by side')] }
}
